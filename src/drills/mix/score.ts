/** From a colour and a goal to verdicts and a mark. The formulas are published in README, "How a mark is made". */
import { shadingLine } from '../../colour/chroma.js';
import { hueDifference } from '../../colour/lab.js';
import type { ColourReading } from '../../colour/reading.js';
import type { Evidence } from '../../paints/index.js';
import { GOOD_MARK } from '../marks.js';
import type { ChromaResult, HueResult, ValueResult, Verdict } from '../types.js';
import type { MixDrill } from './schema.js';

export { FAIR_MARK, GOOD_MARK, overall } from '../marks.js';

/**
 * How far the model itself may be off, by the weakest evidence in a mixture: value in painter's steps, chroma in C*.
 * Measured: between the mean error (0.14 steps, 2.0) and the 90th percentile (0.28 steps, 4.4) on 620 measured mixtures
 * of the library's measured paints. The others: scaled up with the colour error of the library's own records.
 */
export const MODEL_ERROR: Readonly<Record<Evidence, { readonly step: number; readonly chroma: number }>> = {
  measured: { step: 0.2, chroma: 2.5 },
  transferred: { step: 0.35, chroma: 4 },
  estimated: { step: 0.5, chroma: 6 },
};

/** Marks taken for a paint that the painting does not have yet. */
export const COHESION_COST = 8;

/** Beyond the asked band: painter's steps that still count as fair. */
const VALUE_MARGIN = 0.5;
/** Degrees beyond the asked angle that still count as fair. */
const HUE_MARGIN_DEG = 15;
/** Chroma below which a colour has no hue to speak of. */
export const NO_HUE_CHROMA = 5;

/** What the drill can reach within its value band, C*: the brightest and the dullest of all its mixtures. */
export interface Reach {
  readonly best: number;
  readonly dullest: number;
}

/** How far outside a band; 0 inside. */
function outside(x: number, [low, high]: readonly [number, number]): number {
  return x < low ? low - x : x > high ? x - high : 0;
}

/** C* beyond a bound that still counts as fair: 15 % of it or 5 units, whichever is more. */
export function chromaMargin(bound: number): number {
  return Math.max(5, 0.15 * bound);
}

/** A part of the answer: 1 in the band or within the model's error of it, a half one margin further out, 0 at two. */
interface Part {
  readonly score: number;
  readonly verdict: Verdict;
  readonly tooCloseToCall: boolean;
}

function judge(gap: number, error: number, margin: number): Part {
  const beyond = Math.max(0, gap - error);
  return {
    score: Math.max(0, 1 - (0.5 * beyond) / margin),
    verdict: beyond === 0 ? 'good' : beyond <= margin ? 'fair' : 'off',
    tooCloseToCall: gap > 0 && beyond === 0,
  };
}

/** 1 inside a band of painter's steps, a half half a step outside it, 0 a step outside. */
export function valueScore(step: number, band: readonly [number, number]): number {
  return judge(outside(step, band), 0, VALUE_MARGIN).score;
}

/** Value: judged in painter's steps against the asked band. */
export function judgeValue(
  start: ColourReading,
  after: ColourReading,
  drill: MixDrill,
  evidence: Evidence,
): { result: ValueResult; score: number } {
  const { score, ...judged } = judge(
    outside(after.step, drill.goal.value),
    MODEL_ERROR[evidence].step,
    VALUE_MARGIN,
  );
  return {
    score,
    result: { before: start.step, after: after.step, asked: drill.goal.value, ...judged },
  };
}

/** Share of the tray's brightest that is asked where it can do better than hold the line. */
const TRAY_SHARE = 0.75;

/**
 * The chroma that counts as bright at the value reached: what keeps saturation on the way down, or three quarters of
 * what the tray can reach if that is more, but never more than the tray can reach; less one margin.
 */
export function brightBand(
  start: ColourReading,
  after: ColourReading,
  reach: Reach,
): readonly [number, number] {
  const line = shadingLine(start.chroma, start.lab.l, after.lab.l);
  const aim = Math.min(reach.best, Math.max(line, TRAY_SHARE * reach.best));
  return [Math.max(0, aim - chromaMargin(aim)), Number.POSITIVE_INFINITY];
}

/** Chroma: against the asked band, or against what counts as bright. */
export function judgeChroma(
  start: ColourReading,
  after: ColourReading,
  drill: MixDrill,
  evidence: Evidence,
  reach: Reach,
): { result: Omit<ChromaResult, 'best'>; score: number } {
  const asked = drill.goal.chroma === 'bright' ? brightBand(start, after, reach) : drill.goal.chroma;
  const bound = after.chroma < asked[0] ? asked[0] : Math.min(asked[1], 150);
  const { score, ...judged } = judge(
    outside(after.chroma, asked),
    MODEL_ERROR[evidence].chroma,
    chromaMargin(bound),
  );
  return {
    score,
    result: {
      before: start.chroma,
      after: after.chroma,
      asked,
      kept: start.chroma > 0.5 ? after.chroma / start.chroma : 1,
      shadingLine: shadingLine(start.chroma, start.lab.l, after.lab.l),
      dullest: reach.dullest,
      ...judged,
    },
  };
}

/** Hue, where asked: against the angle; a mixture that is nearly grey has no hue to miss. */
export function judgeHue(
  start: ColourReading,
  after: ColourReading,
  drill: MixDrill,
): { result: HueResult; score: number } | undefined {
  const asked = drill.goal.hue;
  if (asked === undefined) return undefined;
  const near = asked.near === 'start' ? start.hue : asked.near;
  const turned = Math.abs(hueDifference(near, after.hue));
  const gap = after.chroma < NO_HUE_CHROMA && !hueIsThePoint(drill) ? 0 : Math.max(0, turned - asked.within);
  const { score, verdict } = judge(gap, 0, HUE_MARGIN_DEG);
  return {
    score,
    result: { before: start.hue, after: after.hue, asked: { near, within: asked.within }, verdict },
  };
}

/** True when the drill asks for a lean of a grey: then even a weak hue counts. */
function hueIsThePoint({ goal }: MixDrill): boolean {
  return goal.chroma !== 'bright' && goal.chroma[0] > 0 && goal.hue !== undefined;
}

/**
 * One mark: 35 for value, 35 for chroma (and hue), 30 for both at once, less the cost of a new paint.
 * Held at 84 while any part is only fair, so that no mark of 85 hides a dull colour or a missed value.
 */
export function markOf(value: number, chroma: number, isNewPaint: boolean): number {
  const sum = 35 * value + 35 * chroma + 30 * value * chroma - (isNewPaint ? COHESION_COST : 0);
  const most = value === 1 && chroma === 1 ? 100 : GOOD_MARK - 1;
  return Math.max(0, Math.min(most, Math.round(sum)));
}
