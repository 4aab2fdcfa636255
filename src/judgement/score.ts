/** Verdicts and marks, the same for every kind of drill. The formulas are published in README.md beside it. */
import type { Evidence } from '../paints/index.js';
import { CHROMA_MARGIN, FAIR_MARK, GOOD_MARK, MODEL_ERROR, VALUE_MARGIN, WRONG_PICK_MARK } from './table.js';
import type { Verdict } from './types.js';

/** Verdict on a whole answer from its mark. */
export function overall(mark: number): Verdict {
  return mark >= GOOD_MARK ? 'good' : mark >= FAIR_MARK ? 'fair' : 'off';
}

/** Verdict on one part from its score, 0-1. */
export function verdictOf(score: number): Verdict {
  return score >= 1 ? 'good' : score >= 0.5 ? 'fair' : 'off';
}

/** How far outside a band, 0 inside. */
export function outside(x: number, [low, high]: readonly [number, number]): number {
  return x < low ? low - x : x > high ? x - high : 0;
}

/** A part of an answer: 1 in its band or within the model's error of it, a half one margin further out, 0 at two. */
export interface PartScore {
  readonly score: number;
  readonly tooCloseToCall: boolean;
}

/**
 * The curve that everything is scored by.
 * @param gap how far outside the band
 * @param error how far off the prediction itself may be
 * @param margin how far beyond that is still fair
 */
export function scoreGap(gap: number, error: number, margin: number): PartScore {
  const beyond = Math.max(0, gap - error);
  return { score: Math.max(0, 1 - (0.5 * beyond) / margin), tooCloseToCall: gap > 0 && beyond === 0 };
}

/** A value, in painter's steps, against its band. @param error steps that the value itself may be off */
export function scoreStep(step: number, band: readonly [number, number], error: number): PartScore {
  return scoreGap(outside(step, band), error, VALUE_MARGIN);
}

/** A predicted value against its band, allowing for the model's error. */
export function scoreValue(step: number, band: readonly [number, number], evidence: Evidence): PartScore {
  return scoreStep(step, band, MODEL_ERROR[evidence].step);
}

/** C* beyond a bound that still counts as fair. */
export function chromaMargin(bound: number): number {
  return Math.max(CHROMA_MARGIN.least, CHROMA_MARGIN.share * bound);
}

/** A chroma against its band, allowing for the model's error. A band that ends nowhere is one of an intense colour. */
export function scoreChroma(chroma: number, band: readonly [number, number], evidence: Evidence): PartScore {
  const bound = chroma < band[0] ? band[0] : Math.min(band[1], MOST_CHROMA);
  return scoreGap(outside(chroma, band), MODEL_ERROR[evidence].chroma, chromaMargin(bound));
}
const MOST_CHROMA = 150;

/** The band round a chroma that counts as hitting it: one margin each way. */
export function aroundChroma(chroma: number): readonly [number, number] {
  const room = chromaMargin(chroma);
  return [Math.max(0, chroma - room), chroma + room];
}

/**
 * One mark from parts that must all hold, scores 0-1: half for their mean, half for the worst of them. A ladder with one
 * broken rung is a broken ladder.
 */
export function togetherMark(scores: readonly number[]): number {
  if (scores.length === 0) return 0;
  const mean = scores.reduce((sum, score) => sum + score, 0) / scores.length;
  return Math.round(50 * mean + 50 * Math.min(...scores));
}

/**
 * Mark of one pick among options by their scores: 100 for the best, and for any that the model cannot tell from it;
 * else at most {@link WRONG_PICK_MARK}, in proportion to where it lies between the worst and the best.
 */
export function pickMark(
  picked: number,
  scores: readonly number[],
  tolerance: number,
): { readonly mark: number; readonly tooCloseToCall: boolean } {
  const best = Math.max(...scores);
  const worst = Math.min(...scores);
  if (picked >= best) return { mark: 100, tooCloseToCall: false };
  if (best - picked <= tolerance) return { mark: 100, tooCloseToCall: true };
  const mark = Math.round((WRONG_PICK_MARK * (picked - worst)) / (best - worst));
  return { mark, tooCloseToCall: false };
}
