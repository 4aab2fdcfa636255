/** What a diagnosis gets told: the area, the fault, the repair and a better one; and what lies behind it. */
import { outside } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { asShown, sentence } from '../../../words/laid.js';
import type { Fault, Moved, OutOfPlan } from '../../../words/sentences/diagnosis.js';
import { type Finding, tell } from '../../../words/tell.js';
import type { ResultSwatch, Why } from '../../types.js';
import { whyFilms } from '../../why.js';
import { afterRepair, type FaultName, faultsOf, faultyArea, type Standing, standingOf } from './judge.js';
import { repairLabel, stains } from './repairs.js';
import type { DiagnosisDrill, Plan, PlannedArea, RepairOption } from './schema.js';

/** Option that names no area, and the fault of none. */
export const NONE = 'none';

/** What was answered. */
export interface Said {
  readonly area: PlannedArea | undefined;
  readonly fault: FaultName;
  readonly repair: RepairOption;
}

/** By how much a standing is out of a plan, dark and strong above 0. */
function outOfPlan({ seen, value, chroma, hue }: Standing, plan: Plan): OutOfPlan {
  const { step, chroma: has } = seen.colour;
  const signed = (at: number, band: readonly [number, number]): number =>
    at < band[0] ? -outside(at, band) : outside(at, band);
  return {
    ...(value.score < 1 ? { step: signed(step, plan.step) } : {}),
    ...(plan.chroma !== undefined && chroma.score < 1 ? { chroma: signed(has, plan.chroma) } : {}),
    ...(hue < 1 ? { hue: true as const } : {}),
  };
}

function movedBy(from: Standing, to: Standing): Moved {
  return {
    darker: to.seen.colour.step - from.seen.colour.step,
    stronger: to.seen.colour.chroma - from.seen.colour.chroma,
  };
}

function areaFinding(studio: Studio, faulty: PlannedArea | undefined, { area }: Said): Finding {
  if (faulty === undefined) return tell('passage-sound', area === undefined ? {} : { said: area.name });
  const found = { area: faulty.name, out: outOfPlan(standingOf(studio, faulty), faulty.plan) };
  if (area === undefined) return tell('passage-missed', found);
  return area.id === faulty.id
    ? tell('passage-found', found)
    : tell('passage-elsewhere', { said: area.name, ...found });
}

/** Nothing where the name fits; nor where the area was wrong: the fault has been told with it. */
function faultFindings(studio: Studio, faulty: PlannedArea | undefined, { area, fault }: Said): Finding[] {
  const faults = faulty === undefined ? [] : faultsOf(standingOf(studio, faulty));
  const is = faults[0] ?? NONE;
  if (area?.id !== faulty?.id || fault === is || faults.includes(fault)) return [];
  return [tell('passage-misnamed', { said: fault, is: is as Fault })];
}

/** What the repair did where it was laid. */
function repairFindings(studio: Studio, faulty: PlannedArea | undefined, { area, repair }: Said): Finding[] {
  if (area === undefined) return [];
  const now = standingOf(studio, area);
  const after = afterRepair(studio, area, repair);
  const out = outOfPlan(after, area.plan);
  const moved = movedBy(now, after);
  const isLeft = 'leave' in repair.repair;
  if (area.id !== faulty?.id) {
    if (after.score < 1) return [tell('repair-harms', { area: area.name, out })];
    const isSound = faulty === undefined;
    if (isSound && isLeft) return [];
    return [tell('repair-wasted', { area: area.name, isSound, ...(isLeft ? {} : { moved }) })];
  }
  if (after.score >= 1) return [tell('repair-serves', { moved })];
  if (isLeft) return [tell('repair-none', { out })];
  const held = 'lift' in repair.repair && stains(studio, area.laid);
  return [held ? tell('repair-stains', { out }) : tell('repair-fails', { moved, out })];
}

function betterFindings(
  studio: Studio,
  faulty: PlannedArea | undefined,
  said: Said,
  best: RepairOption,
): Finding[] {
  if (faulty === undefined) return said.repair.id === best.id ? [] : [tell('repair-leave', {})];
  if (said.area?.id === faulty.id && afterRepair(studio, faulty, said.repair).score >= 1) return [];
  const { step, chroma } = afterRepair(studio, faulty, best).seen.colour;
  return [
    tell('repair-better', {
      ...(said.area !== undefined && said.repair.id === best.id ? {} : { repair: repairLabel(studio, best) }),
      ...(said.area?.id === faulty.id ? {} : { area: faulty.name }),
      step: asShown(step),
      chroma: Math.round(chroma),
    }),
  ];
}

/** Everything that is said of an answer. @param best the repair that serves best */
export function diagnosisTold(
  studio: Studio,
  drill: DiagnosisDrill,
  said: Said,
  best: RepairOption,
  idea: string | undefined,
): Finding[] {
  const faulty = faultyArea(studio, drill);
  const by = (['glaze', 'lift', 'anew'] as const).find((way) => way in said.repair.repair);
  return [
    areaFinding(studio, faulty, said),
    ...faultFindings(studio, faulty, said),
    ...repairFindings(studio, faulty, said),
    ...(idea === undefined && faulty !== undefined && by !== undefined
      ? [
          tell('repair-reason', {
            by,
            ...movedBy(standingOf(studio, faulty), afterRepair(studio, faulty, said.repair)),
          }),
        ]
      : []),
    ...betterFindings(studio, faulty, said, best),
    ...(idea === undefined ? [] : [tell('advice', { idea })]),
  ];
}

/** The plan; the passage as it is, after the chosen repair and after the best. @param subject the area it is about */
export function diagnosisWhy(
  studio: Studio,
  subject: PlannedArea,
  { area, repair: chosen }: Said,
  best: RepairOption,
): Why {
  const { name, plan } = subject;
  const states: { label: string; repair?: RepairOption; standing: Standing }[] = [
    { label: `${name} now`, standing: standingOf(studio, subject) },
    {
      label: area?.id === subject.id ? 'after yours' : 'yours, had it gone here',
      repair: chosen,
      standing: afterRepair(studio, subject, chosen),
    },
    { label: 'after the best', repair: best, standing: afterRepair(studio, subject, best) },
  ];
  // The same state is told once: by the first name it has.
  const apart = states.filter(
    ({ standing }, at) => states.findIndex((one) => one.standing.seen.laid === standing.seen.laid) === at,
  );
  return {
    films: whyFilms(
      states.map(
        ({ label, standing }): ResultSwatch => ({
          label,
          reflectance: standing.seen.reflectance,
        }),
      ),
    ),
    told: [
      tell('passage-plan', {
        area: name,
        plan: {
          step: plan.step,
          ...(plan.chroma === undefined ? {} : { chroma: plan.chroma }),
          ...(plan.hue === undefined ? {} : { hue: plan.hue }),
        },
      }),
      ...apart.map(({ label, repair, standing }) =>
        tell('passage-stands', {
          label: sentence(repair === undefined ? label : `${label} (${repairLabel(studio, repair)})`),
          out: outOfPlan(standing, plan),
        }),
      ),
    ],
  };
}
