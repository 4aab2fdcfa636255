/** How an area stands against its plan. */

import { hueDifference } from '../../../colour/lab.js';
import {
  NO_HUE_CHROMA,
  type PartScore,
  PLAN_HUE_FALL,
  scoreChroma,
  scoreValue,
} from '../../../judgement/index.js';
import { once, type Studio } from '../../../paints/index.js';
import type { Laid } from '../../../washes/index.js';
import { type Seen, seeLaid } from '../../../washes/index.js';
import { repaired } from './repairs.js';
import type { DiagnosisDrill, Plan, PlannedArea, RepairOption } from './schema.js';

export const FAULTS = ['value', 'chroma', 'hue', 'none'] as const;
export type FaultName = (typeof FAULTS)[number];

/** An area's colour, each part scored against the plan, 0-1. */
export interface Standing {
  readonly seen: Seen;
  readonly value: PartScore;
  readonly chroma: PartScore;
  readonly hue: number;
  /** The worst of the three. */
  readonly score: number;
}

function hueScore({ colour }: Seen, { hue }: Plan): number {
  if (hue === undefined || colour.chroma < NO_HUE_CHROMA) return 1;
  const gap = Math.abs(hueDifference(hue.near, colour.hue)) - hue.within;
  return gap <= 0 ? 1 : Math.max(0, 1 - gap / PLAN_HUE_FALL);
}

/** Scores what lies there against a plan. */
export function standing(studio: Studio, laid: Laid, plan: Plan): Standing {
  const seen = seeLaid(studio, laid);
  const value = scoreValue(seen.colour.step, plan.step, seen.evidence);
  const chroma =
    plan.chroma === undefined
      ? { score: 1, tooCloseToCall: false }
      : scoreChroma(seen.colour.chroma, plan.chroma, seen.evidence);
  const hue = hueScore(seen, plan);
  return { seen, value, chroma, hue, score: Math.min(value.score, chroma.score, hue) };
}

/** Everything that is out, in the order in which to look: value, chroma, hue. */
export function faultsOf({ value, chroma, hue }: Standing): FaultName[] {
  const out: FaultName[] = [];
  if (value.score < 1) out.push('value');
  if (chroma.score < 1) out.push('chroma');
  if (hue < 1) out.push('hue');
  return out;
}

/** How an area stands now; computed once. */
export const standingOf: (studio: Studio, area: PlannedArea) => Standing = once(
  (studio, { laid, plan }: PlannedArea) => standing(studio, laid, plan),
);

/** The area furthest out of its plan, or undefined when all are in. */
export function faultyArea(studio: Studio, { areas }: DiagnosisDrill): PlannedArea | undefined {
  const worst = areas.reduce((low, next) =>
    standingOf(studio, next).score < standingOf(studio, low).score ? next : low,
  );
  return standingOf(studio, worst).score < 1 ? worst : undefined;
}

const repairsOf = once((_studio, _area: PlannedArea) => new Map<RepairOption, Standing>());

/** How an area stands after a repair; computed once. */
export function afterRepair(studio: Studio, area: PlannedArea, option: RepairOption): Standing {
  const known = repairsOf(studio, area);
  let after = known.get(option);
  if (after === undefined) {
    after = standing(studio, repaired(studio, area.laid, option.repair), area.plan);
    known.set(option, after);
  }
  return after;
}

/** How far from the middle of the plan, for choosing between repairs that all serve. */
function offCentre({ seen }: Standing, { step, chroma }: Plan): number {
  const off = (x: number, [low, high]: readonly [number, number]): number =>
    Math.abs(x - (low + high) / 2) / (high - low);
  return off(seen.colour.step, step) + (chroma === undefined ? 0 : off(seen.colour.chroma, chroma));
}

/** The repair that serves an area best. Of repairs that serve alike, leaving it alone comes first. */
export function bestRepair(studio: Studio, { repairs }: DiagnosisDrill, area: PlannedArea): RepairOption {
  const rated = repairs.map((option) => {
    const after = afterRepair(studio, area, option);
    const leaves = 'leave' in option.repair ? -1 : 0;
    return { option, score: after.score, off: offCentre(after, area.plan) + leaves };
  });
  return rated.reduce((best, next) => {
    if (next.score !== best.score) return next.score > best.score ? next : best;
    return next.off < best.off ? next : best;
  }).option;
}
