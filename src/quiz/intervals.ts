/** Intervals of 95 percent: for the mean of paired differences, and for a share. */
import { mean, sampleStandardDeviation } from 'simple-statistics';

/** Lower and upper end. */
export type Interval = readonly [number, number];

/** Standard normal quantile of 0.975. */
const Z = 1.959963984540054;

/**
 * Probability that Student's t with whole degrees of freedom lies within ±t: the finite series 26.7.3 and 26.7.4 of
 * Abramowitz and Stegun, Handbook of Mathematical Functions (1964).
 */
function withinT(t: number, freedom: number): number {
  const angle = Math.atan(t / Math.sqrt(freedom));
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? cos : 1;
  let series = 0;
  for (let power = isOdd ? 1 : 0; power <= freedom - 2; power += 2) {
    series += term;
    term *= ((power + 1) / (power + 2)) * cos * cos;
  }
  return isOdd ? (2 / Math.PI) * (angle + sin * series) : sin * series;
}

/**
 * Two-sided critical value of Student's t at 95 percent.
 * @param freedom degrees of freedom, whole, from 1
 * @throws RangeError for others
 */
export function criticalT(freedom: number): number {
  if (!Number.isInteger(freedom) || freedom < 1)
    throw new RangeError(`Student's t needs whole degrees of freedom from 1, not ${freedom}`);
  // 12.7 is the largest, of one degree.
  let [low, high] = [Z, 13];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (withinT(middle, freedom) < 0.95) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Interval of the mean of paired differences: mean ± t·s/√n, s with n − 1 (Student, The probable error of a mean, Biometrika 6, 1908).
 * Undefined with fewer than two.
 */
export function meanInterval(differences: readonly number[]): Interval | undefined {
  const count = differences.length;
  if (count < 2) return undefined;
  const middle = mean([...differences]);
  const half = (criticalT(count - 1) * sampleStandardDeviation([...differences])) / Math.sqrt(count);
  return [middle - half, middle + half];
}

/**
 * Interval of a share by the score method (Wilson, Probable inference, the law of succession, and statistical inference, Journal
 * of the American Statistical Association 22, 1927). Undefined without a case.
 */
export function shareInterval(hits: number, count: number): Interval | undefined {
  if (count < 1) return undefined;
  const share = hits / count;
  const square = (Z * Z) / count;
  const middle = share + square / 2;
  const half = Z * Math.sqrt((share * (1 - share)) / count + square / (4 * count));
  // Nobody and everybody end at 0 and 1, but for rounding.
  return [
    hits === 0 ? 0 : (middle - half) / (1 + square),
    hits === count ? 1 : (middle + half) / (1 + square),
  ];
}
