/** Parts that a painter can count out: a ratio as two small numbers, or as many to one. */

/** Ratios of the larger part to the smaller, each about a quarter above the one before or nearer. */
const RATIOS: readonly (readonly [many: number, few: number])[] = [
  ...([
    [1, 1],
    [5, 4],
    [3, 2],
    [5, 3],
    [2, 1],
    [5, 2],
    [3, 1],
    [7, 2],
    [4, 1],
    [9, 2],
  ] as const),
  ...[5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 24, 28, 32, 36, 40, 48, 56, 64, 80, 100, 125, 160, 200].map(
    (many) => [many, 1] as const,
  ),
];

/** Parts of a first and a second paint. */
export type TwoParts = readonly [first: number, second: number];

/** All of them, from many of the first paint to many of the second. */
const ALL: readonly TwoParts[] = [
  ...RATIOS.toReversed(),
  ...RATIOS.slice(1).map(([many, few]) => [few, many] as const),
];

/** Parts that can be counted, nearest first. @param ratio parts of the second paint to one of the first, above 0 */
export function tidyParts(ratio: number): TwoParts[] {
  const away = ([first, second]: TwoParts): number => Math.abs(Math.log(second / first / ratio));
  return ALL.toSorted((one, other) => away(one) - away(other));
}
