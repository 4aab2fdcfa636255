/**
 * Strengths against the middle tube. The readings tell tubes against each other; most tubes of a box are near the library's, so that the
 * middle one is the best to count 1: a single tube that is unlike pulls a mean along, and not a median.
 */
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { median, probit, quantile } from 'simple-statistics';
import { fraction, seededDraw } from '../chance/draw.js';

/** Enough that the ends of an interval move by a few hundredths at most. */
const DRAWS = 2000;
const ONE_IN_TWENTY = 0.05;

export interface AgainstMiddle {
  /** Natural logarithm of the strength, the median of all being 0. */
  readonly log: number;
  /** In which that lies nine times in ten; it holds that another tube may be the middle one. */
  readonly interval: readonly [number, number];
}

/**
 * Takes the median off logarithms that are known with a covariance. How far the median itself may be off is no linear matter, so it
 * is found by drawing; the same numbers give the same interval.
 */
export function againstMiddle(
  logs: readonly number[],
  covariance: readonly (readonly number[])[],
): AgainstMiddle[] {
  if (logs.length === 0) return [];
  // An inverse is symmetric but for its last digits.
  const both = new Matrix(covariance.map((row) => [...row]));
  const root = new CholeskyDecomposition(Matrix.add(both, both.transpose()).div(2)).lowerTriangularMatrix;
  const draw = seededDraw(1);
  const drawn = Array.from({ length: DRAWS }, () => {
    const deviates = Matrix.columnVector(logs.map(() => probit(fraction(draw))));
    const off = root.mmul(deviates).to1DArray();
    const values = logs.map((log, at) => log + (off[at] as number));
    const middle = median(values);
    return values.map((value) => value - middle);
  });
  const middle = median([...logs]);
  return logs.map((log, at) => {
    const one = drawn.map((values) => values[at] as number);
    return {
      log: log - middle,
      interval: [quantile(one, ONE_IN_TWENTY), quantile(one, 1 - ONE_IN_TWENTY)],
    };
  });
}
