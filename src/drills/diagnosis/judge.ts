/** How an area stands against its plan. */
import { hueDifference } from '../../colour/lab.js';
import { outside, type PartScore, scoreChroma, scoreValue } from '../laid/marks.js';
import { type Seen, seeLaid } from '../laid/predict.js';
import type { Laid } from '../laid/types.js';
import { stepsWords } from '../laid/words.js';
import { NO_HUE_CHROMA } from '../mix/score.js';
import { repaired } from './repairs.js';
import type { DiagnosisDrill, Plan, PlannedArea, RepairOption } from './schema.js';

export const FAULTS = ['value', 'chroma', 'hue', 'none'] as const;
export type FaultName = (typeof FAULTS)[number];

/** Degrees beyond the plan at which a hue scores nothing. */
const HUE_FALL = 40;

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
  return gap <= 0 ? 1 : Math.max(0, 1 - gap / HUE_FALL);
}

/** Scores what lies there against a plan. */
export function standing(laid: Laid, plan: Plan): Standing {
  const seen = seeLaid(laid);
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

const STANDINGS = new WeakMap<PlannedArea, Standing>();

/** How an area stands now; computed once. */
export function standingOf(area: PlannedArea): Standing {
  let known = STANDINGS.get(area);
  if (known === undefined) {
    known = standing(area.laid, area.plan);
    STANDINGS.set(area, known);
  }
  return known;
}

/** The area furthest out of its plan, or undefined when all are in. */
export function faultyArea({ areas }: DiagnosisDrill): PlannedArea | undefined {
  const worst = areas.reduce((low, next) => (standingOf(next).score < standingOf(low).score ? next : low));
  return standingOf(worst).score < 1 ? worst : undefined;
}

const REPAIRED = new WeakMap<RepairOption, WeakMap<PlannedArea, Standing>>();

/** How an area stands after a repair; computed once. */
export function afterRepair(area: PlannedArea, option: RepairOption): Standing {
  let byArea = REPAIRED.get(option);
  if (byArea === undefined) {
    byArea = new WeakMap();
    REPAIRED.set(option, byArea);
  }
  let known = byArea.get(area);
  if (known === undefined) {
    known = standing(repaired(area.laid, option.repair), area.plan);
    byArea.set(area, known);
  }
  return known;
}

/** How far from the middle of the plan, for choosing between repairs that all serve. */
function offCentre({ seen }: Standing, { step, chroma }: Plan): number {
  const off = (x: number, [low, high]: readonly [number, number]): number =>
    Math.abs(x - (low + high) / 2) / (high - low);
  return off(seen.colour.step, step) + (chroma === undefined ? 0 : off(seen.colour.chroma, chroma));
}

/** The repair that serves an area best. Of repairs that serve alike, leaving it alone comes first. */
export function bestRepair({ repairs }: DiagnosisDrill, area: PlannedArea): RepairOption {
  const rated = repairs.map((option) => {
    const after = afterRepair(area, option);
    const leaves = 'leave' in option.repair ? -1 : 0;
    return { option, score: after.score, off: offCentre(after, area.plan) + leaves };
  });
  return rated.reduce((best, next) => {
    if (next.score !== best.score) return next.score > best.score ? next : best;
    return next.off < best.off ? next : best;
  }).option;
}

/** "step 5.2 (0.8 too light), chroma 14". */
export function standingWords({ seen, value, chroma, hue }: Standing, plan: Plan): string {
  const { step } = seen.colour;
  const lightOrDark =
    value.score < 1
      ? ` (${stepsWords(outside(step, plan.step))} too ${step < plan.step[0] ? 'light' : 'dark'})`
      : '';
  const c = seen.colour.chroma;
  const strongOrDull =
    plan.chroma !== undefined && chroma.score < 1
      ? ` (${outside(c, plan.chroma).toFixed(0)} too ${c < plan.chroma[0] ? 'dull' : 'strong'})`
      : '';
  const turned = hue < 1 ? ', hue off its plan' : '';
  return `step ${step.toFixed(1)}${lightOrDark}, chroma ${c.toFixed(0)}${strongOrDull}${turned}`;
}
