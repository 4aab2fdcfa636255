/** One answer from the screen to the record: laid down, graded, and what it earns. */
import type { Answer, DrillCommon, Grade } from '../drills/types.js';
import type { Feedback } from './feedback.js';

/** A graded answer. */
export interface Graded {
  readonly drill: DrillCommon;
  readonly answer: Answer;
  readonly grade: Grade;
  /** 0-100, after what hints and tries cost. */
  readonly mark: number;
}

/** What became of an answer that was handed over for the record. */
export interface Kept {
  readonly saved: boolean;
  /** One line for the learner when it was not saved. */
  readonly note?: string;
  /** One line: how it compares with the learner's last time at that family. */
  readonly compared?: string;
}

/** An answer of a set. */
export interface Answered extends Graded {
  /** How many hints were taken before it. */
  readonly hints: number;
  /** 1 for the first answer to this drill in this set, 2 for the second ... */
  readonly attempt: number;
  readonly feedback: Feedback;
  /** Why the drill was picked. */
  readonly why: string;
  /** When the drill was shown and when it was answered, milliseconds since 1970. */
  readonly shownAt: number;
  readonly answeredAt: number;
  /** Absent until it has been handed over. */
  readonly kept?: Kept;
}

/** Marks that one hint costs. */
export const HINT_COST = 10;

/**
 * The mark of an answer in a session.
 * @param mark 0-100, the grade's own
 * @param hints hints opened before answering
 * @param attempt 1 for the first answer; a later one earns half, since the answer has been seen
 * @returns 0-100, rounded to a whole mark
 */
export function sessionMark(mark: number, hints: number, attempt: number): number {
  const afterHints = Math.max(0, mark - HINT_COST * hints);
  return Math.round(attempt > 1 ? afterHints / 2 : afterHints);
}
