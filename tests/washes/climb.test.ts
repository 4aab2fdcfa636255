/** Climbing on hills whose tops are known, and the most and the least along one amount. */
import { describe, expect, test } from 'vitest';
import { climb, extremesAlong } from '../../src/washes/index.js';

type Amounts = readonly number[];
const range = (least: number, most: number, count = 1): [number, number][] =>
  Array.from({ length: count }, () => [least, most]);
const log = Math.log2;

describe('a climb', () => {
  /** A round hill in doublings, with its top there. */
  const hill =
    (...top: number[]) =>
    (at: Amounts): number =>
      -at.reduce((sum, amount, i) => sum + (log(amount) - (top[i] as number)) ** 2, 0);

  test.each([[[-2.3]], [[1.1]], [[-1.7, 0.4]], [[0.3, -3.2]], [[-1, 0.7, -2.2]]])(
    'finds the top at %j, from the middle and from a corner',
    (top) => {
      const ranges = range(1 / 32, 4, top.length);
      for (const start of [1, 1 / 32, 4]) {
        const found = climb(
          hill(...top),
          top.map(() => start),
          { ranges },
        );
        for (const [i, amount] of found.at.entries())
          expect(Math.abs(log(amount) - (top[i] as number))).toBeLessThan(1e-3);
        expect(found.height).toBe(hill(...top)(found.at));
      }
    },
  );

  test('ends at the edge where the top lies beyond it', () => {
    expect(climb(hill(-9), [1], { ranges: range(1 / 32, 4) }).at).toEqual([1 / 32]);
    expect(climb(hill(9, -9), [1, 1], { ranges: range(1 / 32, 4, 2) }).at).toEqual([4, 1 / 32]);
  });

  test('follows a ridge across both amounts, either way', () => {
    for (const sign of [1, -1]) {
      const ridge = ([x = 0, y = 0]: Amounts): number => {
        const [a, b] = [log(x), log(y)];
        return -100 * (a + sign * b + (sign > 0 ? 3 : 0)) ** 2 - 0.01 * (a + 2) ** 2;
      };
      const { at } = climb(ridge, [1, 1 / 2], { ranges: range(1 / 64, 64, 2) });
      expect(Math.abs(log(at[0] as number) + 2)).toBeLessThan(0.05);
    }
  });

  test('goes far in few looks: each stride is twice the one before', () => {
    for (const slope of [
      ([x = 0]: Amounts): number => log(x),
      ([x = 0, y = 0]: Amounts): number => -((log(x) + log(y)) ** 2) + 0.1 * log(x),
    ]) {
      let looks = 0;
      const { at } = climb(
        (amounts) => {
          looks += 1;
          return slope(amounts);
        },
        [1, 1],
        { ranges: range(2 ** -40, 2 ** 40, 2), steps: [1 / 2, 1 / 2] },
      );
      expect(at[0]).toBe(2 ** 40);
      expect(looks).toBeLessThan(80);
    }
  });

  test('stays where nothing is higher, and where less than the gain asked is gained', () => {
    expect(climb(() => 7, [0.5, 2], { ranges: range(1 / 32, 4, 2) })).toEqual({ at: [0.5, 2], height: 7 });
    const slope = ([x = 0]: Amounts): number => 0.01 * log(x);
    expect(climb(slope, [1], { ranges: range(1 / 32, 4), gain: 0.1 }).at).toEqual([1]);
    expect(climb(slope, [1], { ranges: range(1 / 32, 4), gain: 0.001 }).at).toEqual([4]);
  });

  test('is as fine as its last step', () => {
    const rough = climb(hill(-0.3), [1], { ranges: range(1 / 32, 4), steps: [1 / 2, 1 / 2] }).at[0] as number;
    expect([0, -0.5]).toContainEqual(expect.closeTo(log(rough), 9));
    const fine = climb(hill(-0.3), [1], { ranges: range(1 / 32, 4), steps: [1 / 2, 1 / 64] }).at[0] as number;
    expect(Math.abs(log(fine) + 0.3)).toBeLessThanOrEqual(1 / 64);
    expect(Math.abs(log(fine) + 0.3)).toBeGreaterThan(1e-4);
  });

  test('asks for no place twice, and for none outside', () => {
    const asked: string[] = [];
    const top = climb(
      (at) => {
        asked.push(at.map(Math.fround).join());
        for (const amount of at) expect(amount >= 1 / 8 && amount <= 2).toBe(true);
        return hill(-1.3, 0.6)(at);
      },
      [1, 1],
      { ranges: range(1 / 8, 2, 2) },
    );
    expect(new Set(asked).size).toBe(asked.length);
    expect(top.height).toBeGreaterThan(-1e-6);
  });

  test('shares together stay below the whole; amounts after them are free', () => {
    const up = (at: Amounts): number => at.reduce((sum, amount) => sum + amount, 0);
    const { at } = climb(up, [0.1, 0.1, 0.1], { ranges: range(0.05, 0.8, 3), shares: 2 });
    expect((at[0] as number) + (at[1] as number)).toBeLessThan(1);
    expect((at[0] as number) + (at[1] as number)).toBeGreaterThan(0.9);
    expect(at[2]).toBe(0.8);
  });

  test('goes nowhere where nothing is open', () => {
    let asked = 0;
    const count = (): number => {
      asked += 1;
      return asked;
    };
    expect(climb(count, [0.3], { ranges: [[0.3, 0.3]] })).toEqual({ at: [0.3], height: 1 });
    expect(asked).toBe(1);
    const { at } = climb(hill(-1, 0), [0.3, 0.5], {
      ranges: [
        [0.3, 0.3],
        [1 / 4, 4],
      ],
    });
    expect(at[0]).toBe(0.3);
    expect(at[1]).toBeCloseTo(1, 3);
  });
});

describe('along one amount', () => {
  /** Counts where the log of the amount lies in a window: 10 less the distance from a top. */
  const windows =
    (...of: readonly (readonly [from: number, to: number, top: number, height: number])[]) =>
    (x: number): number => {
      const here = of.find(([from, to]) => log(x) >= from && log(x) <= to);
      return here === undefined ? -1 : here[3] - (log(x) - here[2]) ** 2;
    };

  test('the top lies between the samples, and the least at an edge that does too', () => {
    const found = extremesAlong(windows([-2.137, 0.711, -0.613, 10]), [1 / 32, 4]);
    expect(found?.most).toBeCloseTo(10, 6);
    expect(found?.least).toBeCloseTo(10 - (-2.137 + 0.613) ** 2, 2);
  });

  test('of two stretches the higher top and the lower edge count, whichever comes first', () => {
    for (const flip of [1, -1]) {
      const both = windows(
        ...(
          [
            [-4.1, -3.2, -3.7, 5],
            [0.3, 1.4, 0.9, 8],
          ] as const
        ).map(([from, to, top, height]) =>
          flip > 0 ? ([from, to, top, height] as const) : ([-to, -from, -top, height] as const),
        ),
      );
      const found = extremesAlong(both, [1 / 32, 32]);
      expect(found?.most).toBeCloseTo(8, 6);
      expect(found?.least).toBeCloseTo(5 - 0.5 ** 2, 2);
    }
  });

  test('a slope has its most at the end, and a flat all the same', () => {
    expect(extremesAlong((x) => 5 + log(x), [1 / 8, 8])).toEqual({ most: 8, least: 2 });
    expect(extremesAlong((x) => 5 - log(x), [1 / 8, 8])).toEqual({ most: 8, least: 2 });
    expect(extremesAlong(() => 0, [1 / 8, 8])).toEqual({ most: 0, least: 0 });
  });

  test('a height of nothing counts, less does not', () => {
    expect(extremesAlong((x) => 0 - Math.abs(log(x)), [1 / 4, 4])).toEqual({ most: 0, least: 0 });
    expect(extremesAlong(() => -1e-9, [1 / 4, 4])).toBeUndefined();
  });
});

describe('climbing', () => {
  const both = (least: number, most: number): [number, number][] => [
    [least, most],
    [least, most],
  ];

  test('finds the top of a hill of one and of two amounts', () => {
    const one = climb(([x = 0]) => -((Math.log2(x) + 2.3) ** 2), [1], { ranges: [[1 / 32, 4]] });
    expect(Math.log2(one.at[0] ?? 0)).toBeCloseTo(-2.3, 3);
    // A ridge that lies across both amounts.
    const ridge = ([x = 0, y = 0]: readonly number[]): number =>
      -((Math.log2(x * y) + 3) ** 2) - 0.05 * (Math.log2(x / y) - 0.7) ** 2;
    const two = climb(ridge, [1, 1 / 32], { ranges: both(1 / 32, 4) });
    expect(two.height).toBeGreaterThan(-1e-6);
  });

  test('stays between the ends, and shares below the whole', () => {
    const up = ([x = 0, y = 0]: readonly number[]): number => x + y;
    expect(
      climb(up, [0.1, 0.1], { ranges: both(0.05, 0.8), shares: 2 }).at.reduce((a, b) => a + b, 0),
    ).toBeLessThan(1);
    expect(climb(up, [0.1, 0.1], { ranges: both(0.05, 0.8) }).at).toEqual([0.8, 0.8]);
    expect(climb(up, [0.3], { ranges: [[0.3, 0.3]] }).at).toEqual([0.3]);
  });

  test('the most and the least along one amount, where it counts', () => {
    // Counts between 1/4 and 1 alone; a hill with its top at 1/2.
    const hill = (x: number): number => (x >= 0.25 && x <= 1 ? 10 - Math.abs(Math.log2(x) + 1) : -1);
    const found = extremesAlong(hill, [1 / 32, 4]);
    expect(found?.most).toBeCloseTo(10, 2);
    expect(found?.least).toBeCloseTo(9, 2);
    expect(extremesAlong(() => -1, [1 / 32, 4])).toBeUndefined();
    expect(extremesAlong(() => 3, [0.2, 0.2])).toEqual({ most: 3, least: 3 });
  });
});
