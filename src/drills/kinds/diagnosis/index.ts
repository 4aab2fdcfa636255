/** The diagnosis kind: see schema.ts. */

import { shadingLine } from '../../../colour/chroma.js';
import { overall, togetherMark, verdictOf } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { type Finding, tell } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Field, Grade, Kind, Why } from '../../types.js';
import { diagnosisTold, diagnosisWhy, NONE, type Said } from './explain.js';
import {
  afterRepair,
  bestRepair,
  FAULTS,
  type FaultName,
  faultsOf,
  faultyArea,
  standingOf,
} from './judge.js';
import { repairLabel, repairNote, stains } from './repairs.js';
import type { DiagnosisDrill, PlannedArea, RepairOption } from './schema.js';

/** True where nothing may be out. */
const mayBeSound = (studio: Studio, drill: DiagnosisDrill): boolean =>
  drill.none === true || faultyArea(studio, drill) === undefined;

/** Only what can be at fault is offered: hue where a plan states one, none where nothing may be out. */
function faultNames(studio: Studio, drill: DiagnosisDrill): readonly FaultName[] {
  const hasHue = drill.areas.some(({ plan }) => plan.hue !== undefined);
  const hasNone = mayBeSound(studio, drill);
  return FAULTS.filter((name) => (name !== 'hue' || hasHue) && (name !== 'none' || hasNone));
}

function fields(studio: Studio, drill: DiagnosisDrill): readonly Field[] {
  const areas = drill.areas.map(({ id, name }) => ({ id, label: name }));
  return [
    {
      id: 'area',
      label: 'faulty area',
      shape: 'list',
      options: mayBeSound(studio, drill) ? [...areas, { id: NONE, label: 'none' }] : areas,
    },
    {
      id: 'fault',
      label: 'fault',
      shape: 'list',
      options: faultNames(studio, drill).map((id) => ({ id, label: id })),
    },
    {
      id: 'repair',
      label: 'repair',
      shape: 'list',
      options: drill.repairs.map((option) => ({
        id: option.id,
        label: repairLabel(studio, option),
        note: repairNote(option),
      })),
    },
  ];
}

function read(studio: Studio, drill: DiagnosisDrill, answer: Answer): Said {
  const open = fields(studio, drill);
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

/** What serves the faulty area best; where nothing is out, to leave it alone. */
function servingRepair(studio: Studio, drill: DiagnosisDrill): RepairOption {
  const faulty = faultyArea(studio, drill);
  return faulty === undefined ? leaveOf(drill) : bestRepair(studio, drill, faulty);
}

function best(studio: Studio, drill: DiagnosisDrill): Answer {
  const faulty = faultyArea(studio, drill);
  if (faulty === undefined) return { area: NONE, fault: NONE, repair: servingRepair(studio, drill).id };
  return {
    area: faulty.id,
    fault: faultsOf(standingOf(studio, faulty))[0] ?? NONE,
    repair: servingRepair(studio, drill).id,
  };
}

/** Score of naming the fault: of several that are out each counts. */
const faultScore = (faults: readonly FaultName[], said: FaultName): number =>
  (faults.length === 0 ? said === NONE : faults.includes(said)) ? 1 : 0;

function scores(
  studio: Studio,
  drill: DiagnosisDrill,
  { area, fault, repair }: Said,
): readonly [number, number, number] {
  const faulty = faultyArea(studio, drill);
  if (faulty?.id !== area?.id) return [0, 0, 0];
  if (faulty === undefined) return [1, faultScore([], fault), 'leave' in repair.repair ? 1 : 0];
  const after = afterRepair(studio, faulty, repair).score;
  return [1, faultScore(faultsOf(standingOf(studio, faulty)), fault), after];
}

function ideaOf(
  studio: Studio,
  said: Said,
  [area, fault, repair]: readonly [number, number, number],
): string | undefined {
  if (area < 1) return 'wrong-area';
  if (
    repair < 1 &&
    'lift' in said.repair.repair &&
    said.area !== undefined &&
    stains(studio, said.area.laid)
  ) {
    return 'lifted-a-stain';
  }
  if (fault < 1) return 'wrong-fault';
  return repair < 1 ? 'repair-missed' : undefined;
}

/** The area that the result is about: the one that is out, or else the one that was named. */
function subjectOf(studio: Studio, drill: DiagnosisDrill, { area }: Said): PlannedArea {
  return faultyArea(studio, drill) ?? area ?? (drill.areas[0] as PlannedArea);
}

function why(studio: Studio, drill: DiagnosisDrill, answer: Answer): Why {
  const said = read(studio, drill, answer);
  const subject = subjectOf(studio, drill, said);
  return diagnosisWhy(studio, subject, said, servingRepair(studio, drill));
}

function grade(studio: Studio, drill: DiagnosisDrill, answer: Answer): Grade {
  const said = read(studio, drill, answer);
  const three = scores(studio, drill, said);
  const mark = togetherMark(three);
  const idea = ideaOf(studio, said, three);
  const bestAnswer = best(studio, drill);
  const subject = subjectOf(studio, drill, said);
  const now = standingOf(studio, subject);
  // The figures are those of the faulty area: a repair that went elsewhere leaves it as it is.
  const after = said.area?.id === subject.id ? afterRepair(studio, subject, said.repair) : now;
  const bestOption = servingRepair(studio, drill);
  const bestAfter = afterRepair(studio, subject, bestOption);
  const before = now.seen.colour;
  const reached = after.seen.colour;
  const { plan } = subject;
  return {
    mark,
    verdict: overall(mark),
    value: {
      before: before.step,
      after: reached.step,
      asked: plan.step,
      verdict: verdictOf(after.value.score),
      tooCloseToCall: after.value.tooCloseToCall,
    },
    ...(plan.chroma === undefined
      ? {}
      : {
          chroma: {
            before: before.chroma,
            after: reached.chroma,
            asked: plan.chroma,
            verdict: verdictOf(after.chroma.score),
            kept: before.chroma > 0.5 ? reached.chroma / before.chroma : 1,
            shadingLine: shadingLine(before.chroma, before.lab.l, reached.lab.l),
            best: bestAfter.seen.colour.chroma,
            tooCloseToCall: after.chroma.tooCloseToCall,
          },
        }),
    told: diagnosisTold(studio, drill, said, bestOption, idea),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(studio, drill, bestAnswer), mark: 100 },
    swatches: [
      { label: subject.name, reflectance: now.seen.reflectance },
      { label: `yours, ${subject.name}`, reflectance: after.seen.reflectance },
      { label: 'best', reflectance: bestAfter.seen.reflectance },
    ],
    laid: laidParts(after.seen),
    evidence: after.seen.evidence,
  };
}

function label(studio: Studio, drill: DiagnosisDrill, answer: Answer): string {
  const open = fields(studio, drill);
  const [area, fault, repair] = ['area', 'fault', 'repair'].map((id) => chosen(open, answer, id).label);
  return `${area}, ${fault}: ${repair}`;
}

/** The plan in figures. What lies there is only shown: by how much it is off is to be judged. */
function goalLine({ name, plan: { step, chroma, hue } }: PlannedArea): Finding {
  return tell('passage-asked', {
    area: name,
    plan: {
      step,
      ...(chroma === undefined ? {} : { chroma }),
      ...(hue === undefined ? {} : { hue }),
    },
  });
}

/** At most one area may be out, or the question has two answers. */
function faults(studio: Studio, drill: DiagnosisDrill): string[] {
  const out = drill.areas.filter((area) => standingOf(studio, area).score < 1);
  const hasLeave = drill.repairs.some(({ repair }) => 'leave' in repair);
  return [
    ...(out.length <= 1 ? [] : [`${out.length} areas are out of their plans; there may be one`]),
    ...(out.length === 0 && !hasLeave ? ['nothing is out, and no repair leaves it alone'] : []),
    ...(out.length === 0 && drill.none !== true
      ? ['nothing is out: "none: true" has to say that it may be, and the scene as well']
      : []),
  ];
}

export const diagnosisKind = (studio: Studio): Kind<DiagnosisDrill> => ({
  kind: 'diagnosis',
  fields: (drill) => fields(studio, drill),
  given: ({ areas }) =>
    areas.map(({ name, laid }) => ({
      label: name,
      reflectance: seeLaid(studio, laid).reflectance,
      unread: 'figures',
    })),
  goalLines: (drill) => drill.areas.map(goalLine),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(studio, drill, answer),
  why: (drill, answer) => why(studio, drill, answer),
  faults: (drill) => faults(studio, drill),
});
