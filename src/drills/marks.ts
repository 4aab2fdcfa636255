/** What a mark of 0-100 counts as, the same for every kind of drill. */
import type { Verdict } from './types.js';

/** A mark of this or more is good: every part of the answer is. */
export const GOOD_MARK = 85;
/** Below this an answer is off. */
export const FAIR_MARK = 55;
/** A trap must mark below this. */
export const POOR_MARK = 50;

/** The mark in a word. */
export function overall(mark: number): Verdict {
  return mark >= GOOD_MARK ? 'good' : mark >= FAIR_MARK ? 'fair' : 'off';
}
