/** The diagnosis kind: see schema.ts. */

import { shadingLine } from '../../colour/chroma.js';
import { colourInWords } from '../../colour/words.js';
import { chosen, requireComplete } from '../answers.js';
import { IDEAS } from '../ideas.js';
import { overall, togetherMark, verdictOf } from '../laid/marks.js';
import { laidParts, seeLaid } from '../laid/predict.js';
import { reasonFor } from '../laid/reasons.js';
import type { Answer, Field, Grade, Kind } from '../types.js';
import {
  afterRepair,
  bestRepair,
  FAULTS,
  type FaultName,
  faultsOf,
  faultyArea,
  standingOf,
  standingWords,
} from './judge.js';
import { repairLabel, repairNote, stains } from './repairs.js';
import type { DiagnosisDrill, PlannedArea, RepairOption } from './schema.js';

const NONE = 'none';
/** From this level on the question tells no numbers of what lies there. */
const COLD = 5;

function fields(drill: DiagnosisDrill): readonly Field[] {
  return [
    {
      id: 'area',
      label: 'faulty area',
      shape: 'list',
      options: [...drill.areas.map(({ id, name }) => ({ id, label: name })), { id: NONE, label: 'none' }],
    },
    { id: 'fault', label: 'fault', shape: 'list', options: FAULTS.map((id) => ({ id, label: id })) },
    {
      id: 'repair',
      label: 'repair',
      shape: 'list',
      options: drill.repairs.map((option) => ({
        id: option.id,
        label: repairLabel(option),
        note: repairNote(option),
      })),
    },
  ];
}

/** What was answered. */
interface Said {
  readonly area: PlannedArea | undefined;
  readonly fault: FaultName;
  readonly repair: RepairOption;
}

function read(drill: DiagnosisDrill, answer: Answer): Said {
  const open = fields(drill);
  requireComplete(open, answer);
  const areaId = chosen(open, answer, 'area').id;
  const repairId = chosen(open, answer, 'repair').id;
  return {
    area: drill.areas.find(({ id }) => id === areaId),
    fault: chosen(open, answer, 'fault').id as FaultName,
    repair: drill.repairs.find(({ id }) => id === repairId) as RepairOption,
  };
}

const leaveOf = ({ repairs }: DiagnosisDrill): RepairOption =>
  repairs.find(({ repair }) => 'leave' in repair) ?? (repairs[0] as RepairOption);

function best(drill: DiagnosisDrill): Answer {
  const faulty = faultyArea(drill);
  if (faulty === undefined) return { area: NONE, fault: NONE, repair: leaveOf(drill).id };
  return {
    area: faulty.id,
    fault: faultsOf(standingOf(faulty))[0] ?? NONE,
    repair: bestRepair(drill, faulty).id,
  };
}

/** Score of naming the fault: the first in the order value, chroma, hue is right; another that is out too is half right. */
function faultScore(faults: readonly FaultName[], said: FaultName): number {
  if (said === (faults[0] ?? NONE)) return 1;
  return faults.includes(said) ? 0.5 : 0;
}

function scores(drill: DiagnosisDrill, { area, fault, repair }: Said): readonly [number, number, number] {
  const faulty = faultyArea(drill);
  if (faulty?.id !== area?.id) return [0, 0, 0];
  if (faulty === undefined) return [1, faultScore([], fault), 'leave' in repair.repair ? 1 : 0];
  const after = afterRepair(faulty, repair).score;
  return [1, faultScore(faultsOf(standingOf(faulty)), fault), after];
}

function ideaOf(said: Said, [area, fault, repair]: readonly [number, number, number]): string | undefined {
  if (area < 1) return 'wrong-area';
  if (repair < 1 && 'lift' in said.repair.repair && said.area !== undefined && stains(said.area.laid)) {
    return 'lifted-a-stain';
  }
  if (fault < 1) return 'wrong-fault';
  return repair < 1 ? 'repair-missed' : undefined;
}

function areaLine(drill: DiagnosisDrill, { area }: Said): string {
  const faulty = faultyArea(drill);
  if (area === undefined) {
    return faulty === undefined
      ? 'You found no fault, and every area is inside its plan.'
      : `You found no fault, but the ${faulty.name} is out: ${standingWords(standingOf(faulty), faulty.plan)}.`;
  }
  const words = standingWords(standingOf(area), area.plan);
  if (area.id === faulty?.id) return `You went to the ${area.name}, and it is out of its plan: ${words}.`;
  const where =
    faulty === undefined
      ? 'nothing is out of its plan'
      : `the fault is in the ${faulty.name}: ${standingWords(standingOf(faulty), faulty.plan)}`;
  return `You went to the ${area.name}, which is inside its plan (${words}); ${where}.`;
}

function faultLine(drill: DiagnosisDrill, { area, fault }: Said): string {
  const faulty = faultyArea(drill);
  const is = faulty === undefined ? [] : faultsOf(standingOf(faulty));
  const names = is.length === 0 ? 'none' : is.join(', then ');
  if (area?.id !== faulty?.id) return `The fault is: ${names}.`;
  if (is.length === 0 && fault === NONE) return 'There is no fault to name, as you said.';
  return fault === (is[0] ?? NONE)
    ? `The fault is ${names}, as you said.`
    : `You called it ${fault}; what is out is ${names}. Value comes first, then chroma, then hue.`;
}

function repairLine(area: PlannedArea, repair: RepairOption): string {
  const now = standingOf(area).seen.colour;
  const after = afterRepair(area, repair);
  const held = 'lift' in repair.repair && stains(area.laid) ? ' The paint stains and hardly lifts.' : '';
  const end = after.score >= 1 ? 'inside the plan' : standingWords(after, area.plan);
  return `On the ${area.name}, "${repairLabel(repair)}" moves step ${now.step.toFixed(1)} to ${after.seen.colour.step.toFixed(1)} and chroma ${now.chroma.toFixed(0)} to ${after.seen.colour.chroma.toFixed(0)}: ${end}.${held}`;
}

function grade(drill: DiagnosisDrill, answer: Answer): Grade {
  const said = read(drill, answer);
  const three = scores(drill, said);
  const mark = togetherMark(three);
  const idea = ideaOf(said, three);
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const bestAnswer = best(drill);
  const subject = faultyArea(drill) ?? said.area ?? (drill.areas[0] as PlannedArea);
  const after = afterRepair(subject, said.repair);
  const bestOption = faultyArea(drill) === undefined ? leaveOf(drill) : bestRepair(drill, subject);
  const bestAfter = afterRepair(subject, bestOption);
  const before = standingOf(subject).seen.colour;
  const reason = reasonFor(after.seen.laid);
  const { plan } = subject;
  return {
    mark,
    verdict: overall(mark),
    value: {
      before: before.step,
      after: after.seen.colour.step,
      asked: plan.step,
      verdict: verdictOf(after.value.score),
      tooCloseToCall: after.value.tooCloseToCall,
    },
    ...(plan.chroma === undefined
      ? {}
      : {
          chroma: {
            before: before.chroma,
            after: after.seen.colour.chroma,
            asked: plan.chroma,
            verdict: verdictOf(after.chroma.score),
            kept: before.chroma > 0.5 ? after.seen.colour.chroma / before.chroma : 1,
            shadingLine: shadingLine(before.chroma, before.lab.l, after.seen.colour.lab.l),
            best: bestAfter.seen.colour.chroma,
            tooCloseToCall: after.chroma.tooCloseToCall,
          },
        }),
    explanation: [
      areaLine(drill, said),
      faultLine(drill, said),
      repairLine(subject, said.repair),
      ...(reason === undefined || 'leave' in said.repair.repair ? [] : [reason]),
      ...(bestOption.id === said.repair.id ? [] : [`Better: ${repairLine(subject, bestOption)}`]),
      ...(next === undefined ? [] : [next]),
    ],
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches: [
      { label: subject.name, reflectance: seeLaid(subject.laid).reflectance },
      { label: 'yours', reflectance: after.seen.reflectance },
      { label: 'best', reflectance: bestAfter.seen.reflectance },
    ],
    laid: laidParts(after.seen.laid),
    evidence: after.seen.evidence,
  };
}

function label(drill: DiagnosisDrill, answer: Answer): string {
  const open = fields(drill);
  const [area, fault, repair] = ['area', 'fault', 'repair'].map((id) => chosen(open, answer, id).label);
  return `${area}, ${fault}: ${repair}`;
}

function goalLine({ level }: DiagnosisDrill, area: PlannedArea): string {
  const { step, chroma, hue } = area.plan;
  const { colour } = seeLaid(area.laid);
  const strong = chroma === undefined ? '' : `, chroma ${chroma[0]}-${chroma[1]}`;
  const turned = hue === undefined ? '' : `, hue ${hue.near}° ± ${hue.within}`;
  const now =
    level >= COLD
      ? colourInWords(colour.lab)
      : `is ${colour.step.toFixed(1)}, ${colour.chroma.toFixed(0)}${hue === undefined ? '' : `, ${colour.hue.toFixed(0)}°`}`;
  return `${area.name}: plan step ${step[0]}-${step[1]}${strong}${turned}; ${now}`;
}

/** At most one area may be out, or the question has two answers. */
function faults(drill: DiagnosisDrill): string[] {
  const out = drill.areas.filter((area) => standingOf(area).score < 1);
  const hasLeave = drill.repairs.some(({ repair }) => 'leave' in repair);
  return [
    ...(out.length <= 1 ? [] : [`${out.length} areas are out of their plans; there may be one`]),
    ...(out.length === 0 && !hasLeave ? ['nothing is out, and no repair leaves it alone'] : []),
  ];
}

export const diagnosisKind: Kind<DiagnosisDrill> = {
  kind: 'diagnosis',
  fields,
  given: ({ areas }) =>
    areas.map(({ name, laid }) => ({ label: name, reflectance: seeLaid(laid).reflectance })),
  goalLines: (drill) => drill.areas.map((area) => goalLine(drill, area)),
  grade,
  best,
  label,
  faults,
};
