/**
 * Classical item statistics. One kind of variance throughout: population variance with sums of p·q, since mixing the sample
 * variance in changes KR-20 and the point-biserial (worked numbers in tests/outside/quiz-item-analysis.test.ts).
 */
import { mean, standardDeviation, variance } from 'simple-statistics';

/** Below this a variance or a standard deviation is nothing but rounding. */
const NOTHING = 1e-12;

/** Difficulty index p: the share that was right, 0-1. @throws RangeError without a sitting */
export function difficultyIndex(right: number, count: number): number {
  if (count <= 0) throw new RangeError('difficulty index: there is no sitting');
  return right / count;
}

/**
 * Discrimination index D = (U − L) / n, −1 to 1.
 * @param upperRight how many of the upper group were right
 * @param lowerRight how many of the lower group were right
 * @param groupSize size of one group
 */
export function discriminationIndex(upperRight: number, lowerRight: number, groupSize: number): number {
  if (groupSize <= 0) throw new RangeError('discrimination index: the groups are empty');
  return (upperRight - lowerRight) / groupSize;
}

/**
 * How many of the `size` highest totals were right. Students with equal totals at the edge of the group share its last places,
 * so that the figure does not hang on who is listed first.
 */
function rightAmongHighest(right: readonly boolean[], totals: readonly number[], size: number): number {
  const edge = [...totals].sort((a, b) => b - a)[size - 1] as number;
  const count = (keep: (total: number) => boolean): [number, number] => {
    const inside = right.filter((_, index) => keep(totals[index] as number));
    return [inside.length, inside.filter(Boolean).length];
  };
  const [above, aboveRight] = count((total) => total > edge);
  const [tied, tiedRight] = count((total) => total === edge);
  return aboveRight + (tiedRight * (size - above)) / tied;
}

/** Upper and lower group of a class and what they got right. */
export interface UpperLower {
  readonly groupSize: number;
  readonly upperRight: number;
  readonly lowerRight: number;
  readonly discrimination: number;
}

/**
 * Compares the `groupSize` best with the `groupSize` weakest by total.
 * @param right whether each student had the question right
 * @param totals each student's total, this question included
 */
export function upperLower(
  right: readonly boolean[],
  totals: readonly number[],
  groupSize: number,
): UpperLower {
  if (right.length !== totals.length || groupSize * 2 > totals.length || groupSize < 1)
    throw new RangeError(`upper and lower groups of ${groupSize} do not fit ${totals.length} sittings`);
  const upperRight = rightAmongHighest(right, totals, groupSize);
  const lowerRight = rightAmongHighest(
    right,
    totals.map((total) => -total),
    groupSize,
  );
  return {
    groupSize,
    upperRight,
    lowerRight,
    discrimination: discriminationIndex(upperRight, lowerRight, groupSize),
  };
}

/**
 * Point-biserial correlation r = (Mp − Mq)/S · √(p·q), S the population standard deviation of the totals; the same as
 * Pearson's r of the 0/1 item and the total. Undefined when all are right, none is, or all totals are equal.
 */
export function pointBiserial(right: readonly boolean[], totals: readonly number[]): number | undefined {
  const ofRight = totals.filter((_, index) => right[index] === true);
  const ofWrong = totals.filter((_, index) => right[index] !== true);
  if (ofRight.length === 0 || ofWrong.length === 0) return undefined;
  const spread = standardDeviation([...totals]);
  if (spread < NOTHING) return undefined;
  const p = ofRight.length / totals.length;
  return ((mean(ofRight) - mean(ofWrong)) / spread) * Math.sqrt(p * (1 - p));
}

/** The item-total correlation without the item in its own total, which inflates it on a short quiz. */
export function correctedPointBiserial(
  right: readonly boolean[],
  totals: readonly number[],
  itemScores: readonly number[],
): number | undefined {
  return pointBiserial(
    right,
    totals.map((total, index) => total - (itemScores[index] as number)),
  );
}

/**
 * Cronbach's alpha = k/(k − 1) · (1 − Σ item variances / variance of totals). At most 1; may be negative.
 * Undefined with fewer than two items or two students, or when all totals are equal.
 * @param scores one row a student, one column an item
 */
export function cronbachAlpha(scores: readonly (readonly number[])[]): number | undefined {
  const items = scores[0]?.length ?? 0;
  if (items < 2 || scores.length < 2) return undefined;
  const ofTotals = variance(scores.map((row) => row.reduce((sum, score) => sum + score, 0)));
  if (ofTotals < NOTHING) return undefined;
  let ofItems = 0;
  for (let item = 0; item < items; item++) ofItems += variance(scores.map((row) => row[item] as number));
  return alphaFromVariances(items, ofItems, ofTotals);
}

/** Alpha from its parts. */
export function alphaFromVariances(items: number, sumOfItemVariances: number, ofTotals: number): number {
  return (items / (items - 1)) * (1 - sumOfItemVariances / ofTotals);
}

/** KR-20 (Kuder and Richardson's formula 20): alpha of right and wrong alone. Undefined where alpha is. */
export function kr20(right: readonly (readonly boolean[])[]): number | undefined {
  return cronbachAlpha(right.map((row) => row.map(Number)));
}

/** Standard error of measurement S·√(1 − reliability), in the unit of the spread. Undefined for a reliability below 0. */
export function standardErrorOfMeasurement(spread: number, reliability: number): number | undefined {
  return reliability < 0 || reliability > 1 ? undefined : spread * Math.sqrt(1 - reliability);
}
