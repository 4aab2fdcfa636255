/** From a colour and a goal to verdicts and a mark. The formulas are published in README, "How a mark is made". */
import { shadingLine } from '../../colour/chroma.js';
import { hueDifference } from '../../colour/lab.js';
import type { ColourReading } from '../../colour/reading.js';
import type { Evidence } from '../../pigments/index.js';
import type { ChromaResult, HueResult, ValueResult, Verdict } from '../types.js';
import type { MixDrill } from './schema.js';

/**
 * How far the model itself may be off, by the weakest evidence in a mixture: value in painter's steps, chroma in C*.
 * Measured: from the mean error on the measured mixtures; the others from the residuals of the library.
 */
export const MODEL_ERROR: Readonly<Record<Evidence, { readonly step: number; readonly chroma: number }>> = {
  measured: { step: 0.2, chroma: 2.5 },
  transferred: { step: 0.35, chroma: 4 },
  estimated: { step: 0.5, chroma: 6 },
};

/** Marks taken for a paint that the painting does not have yet. */
export const COHESION_COST = 8;

/** What the drill can reach within its value band: the chroma of its best answer and of its dullest. */
export interface Reach {
  readonly best: number;
  readonly dullest: number;
}

function outside(x: number, [low, high]: readonly [number, number]): number {
  return x < low ? low - x : x > high ? x - high : 0;
}

function verdictOf(score: number, isGood: boolean): Verdict {
  return isGood ? 'good' : score >= 0.5 ? 'fair' : 'off';
}

/** 1 inside the band, 0.6 half a step outside it, 0 a step and a half outside. */
export function valueScore(step: number, band: readonly [number, number]): number {
  const gap = outside(step, band);
  return gap <= 0.5 ? 1 - 0.8 * gap : Math.max(0, 0.6 - 0.6 * (gap - 0.5));
}

/** Value: judged in painter's steps; a miss smaller than the model's error counts as good and says so. */
export function judgeValue(
  start: ColourReading,
  after: ColourReading,
  drill: MixDrill,
  evidence: Evidence,
): { result: ValueResult; score: number } {
  const gap = outside(after.step, drill.goal.value);
  const close = gap > 0 && gap <= MODEL_ERROR[evidence].step;
  const score = gap === 0 || close ? 1 : valueScore(after.step, drill.goal.value);
  return {
    score,
    result: {
      before: start.step,
      after: after.step,
      asked: drill.goal.value,
      verdict: verdictOf(score, gap === 0 || close),
      tooCloseToCall: close,
    },
  };
}

/**
 * The chroma that counts as bright: what keeps saturation on the way down, or what the tray can reach if that is less,
 * less 15 % or 5 units, whichever is more.
 */
export function brightBand(
  start: ColourReading,
  after: ColourReading,
  reach: Reach,
): readonly [number, number] {
  const line = shadingLine(start.chroma, start.lab.l, after.lab.l);
  const aim = Math.min(line, reach.best);
  return [Math.max(0, aim - Math.max(5, 0.15 * aim)), Number.POSITIVE_INFINITY];
}

/** Chroma: the asked band, or bright as above; between the dullest the tray can do and the band the score rises evenly. */
export function judgeChroma(
  start: ColourReading,
  after: ColourReading,
  drill: MixDrill,
  evidence: Evidence,
  reach: Reach,
): { result: ChromaResult; score: number } {
  const bright = drill.goal.chroma === 'bright';
  const asked = drill.goal.chroma === 'bright' ? brightBand(start, after, reach) : drill.goal.chroma;
  const gap = outside(after.chroma, asked);
  const close = gap > 0 && gap <= MODEL_ERROR[evidence].chroma / 2;
  const fall = bright ? Math.max(4, asked[0] - Math.min(reach.dullest, asked[0])) : 18;
  const score = gap === 0 || close ? 1 : Math.max(0, 1 - gap / fall);
  return {
    score,
    result: {
      before: start.chroma,
      after: after.chroma,
      asked,
      verdict: verdictOf(score, gap === 0 || close),
      kept: start.chroma > 0.5 ? after.chroma / start.chroma : 1,
      shadingLine: shadingLine(start.chroma, start.lab.l, after.lab.l),
      best: reach.best,
      tooCloseToCall: close,
    },
  };
}

/** Hue, where asked: 1 within the angle, falling to 0 at 40 degrees beyond it. Greys have no hue to miss. */
export function judgeHue(
  start: ColourReading,
  after: ColourReading,
  drill: MixDrill,
): { result: HueResult; score: number } | undefined {
  const asked = drill.goal.hue;
  if (asked === undefined) return undefined;
  const near = asked.near === 'start' ? start.hue : asked.near;
  const gap = after.chroma < 3 ? 0 : Math.max(0, Math.abs(hueDifference(near, after.hue)) - asked.within);
  const score = Math.max(0, 1 - gap / 40);
  return {
    score,
    result: {
      before: start.hue,
      after: after.hue,
      asked: { near, within: asked.within },
      verdict: verdictOf(score, gap === 0),
    },
  };
}

/** One mark: 35 for value, 35 for chroma (and hue), 30 for both at once; less the cost of a new paint. */
export function markOf(value: number, chroma: number, isNewPaint: boolean): number {
  const mark = 35 * value + 35 * chroma + 30 * value * chroma - (isNewPaint ? COHESION_COST : 0);
  return Math.max(0, Math.min(100, Math.round(mark)));
}
