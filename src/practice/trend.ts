/** Whether figures rise or fall over the last sets: the later half of them against the earlier half. */
import type { Figures, Totals } from './totals.js';
import { figuresOf } from './totals.js';

/** Marks by which the mean has to rise before a skill is called rising. */
const RISE_MARKS = 5;
/** Levels by which the mean level of the drills has to rise or fall before they count as harder or easier. */
const RISE_LEVELS = 0.25;

export interface Trend {
  readonly earlier: Figures;
  readonly later: Figures;
}

/** The two halves of the sets, oldest first; the middle one of an odd number is earlier. Undefined for fewer than two. */
export function trendOf(sets: readonly Totals[]): Trend | undefined {
  const half = Math.ceil(sets.length / 2);
  const earlier = figuresOf(sets.slice(0, half));
  const later = figuresOf(sets.slice(half));
  return earlier && later && { earlier, later };
}

/** Whether a skill rises: clearly better marks on drills no easier, or harder drills on marks no worse. */
export function isRising(sets: readonly Totals[]): boolean {
  const trend = trendOf(sets);
  return trend !== undefined && hasRisen(trend);
}

/** The same for any two groups of sets. */
export function hasRisen(trend: Trend): boolean {
  const marks = trend.later.mark - trend.earlier.mark;
  const levels = trend.later.level - trend.earlier.level;
  return (marks >= RISE_MARKS && levels > -RISE_LEVELS) || (levels >= RISE_LEVELS && marks > -RISE_MARKS);
}
