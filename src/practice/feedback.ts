/**
 * When the result of an answer is shown: fading feedback (guidance hypothesis, R. Schmidt; challenge point, M.
 * Guadagnoli and T. Lee 2004). Each at once at levels 1-3, three together at level 4, all at the end of the set at level 5.
 */
export type Feedback = 'each' | 'third' | 'end';

/** Results that are shown together where every third answer brings them. */
const TOGETHER = 3;

export function feedbackFor(level: number): Feedback {
  return level <= 3 ? 'each' : level === 4 ? 'third' : 'end';
}

/** An answer whose result has not been shown. */
export interface HeldAnswer {
  /** Its place among the answers of the set, from 0. */
  readonly place: number;
  readonly feedback: Feedback;
}

/**
 * Which results are due after an answer, in the order of their answers; what is still held back when the set ends is shown with its
 * summary.
 * @param held every answer still held back, the one just given last
 */
export function dueResults(held: readonly HeldAnswer[]): readonly number[] {
  const placesOf = (wanted: Feedback): number[] =>
    held.flatMap(({ place, feedback }) => (feedback === wanted ? [place] : []));
  const thirds = placesOf('third');
  return [...placesOf('each'), ...(thirds.length >= TOGETHER ? thirds : [])];
}
