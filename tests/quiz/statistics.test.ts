import fc from 'fast-check';
import { sampleCorrelation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
  cronbachAlpha,
  difficultyIndex,
  discriminationIndex,
  pointBiserial,
  standardErrorOfMeasurement,
  upperLower,
} from '../../src/quiz/statistics.js';

const students = fc.array(fc.record({ right: fc.boolean(), total: fc.integer({ min: 0, max: 12 }) }), {
  minLength: 4,
  maxLength: 60,
});

describe('item statistics', () => {
  it('point-biserial is Pearson’s r of the 0/1 item, and nothing where that is not defined', () => {
    fc.assert(
      fc.property(students, (all) => {
        const right = all.map((each) => each.right);
        const totals = all.map(({ total }) => total);
        const r = pointBiserial(right, totals);
        const constant = new Set(right).size < 2 || new Set(totals).size < 2;
        expect(r === undefined).toBe(constant);
        if (r !== undefined) {
          expect(r).toBeCloseTo(sampleCorrelation(right.map(Number), totals), 8);
          expect(Math.abs(r)).toBeLessThanOrEqual(1 + 1e-12);
        }
      }),
    );
  });

  it('upper and lower groups do not depend on the order in which students are listed', () => {
    fc.assert(
      fc.property(students, fc.integer({ min: 0, max: 1000 }), (all, turn) => {
        const size = Math.floor(all.length / 2);
        const at = turn % all.length;
        const turned = [...all.slice(at), ...all.slice(0, at)].reverse();
        const [one, other] = [all, turned].map((list) =>
          upperLower(
            list.map(({ right }) => right),
            list.map(({ total }) => total),
            size,
          ),
        );
        expect(one?.discrimination).toBeCloseTo(other?.discrimination ?? 9, 10);
        expect(Math.abs(one?.discrimination ?? 9)).toBeLessThanOrEqual(1);
        if (all.length % 2 === 0)
          expect((one?.upperRight ?? 0) + (one?.lowerRight ?? 0)).toBeCloseTo(
            all.filter(({ right }) => right).length,
            10,
          );
      }),
    );
  });

  it('alpha is at most 1, and 1 for items that are all the same', () => {
    const rows = fc.array(fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 3, maxLength: 3 }), {
      minLength: 2,
      maxLength: 30,
    });
    fc.assert(fc.property(rows, (scores) => (cronbachAlpha(scores) ?? 1) <= 1 + 1e-9));
    expect(
      cronbachAlpha([
        [1, 1],
        [2, 2],
        [4, 4],
      ]),
    ).toBeCloseTo(1, 12);
  });

  it('says nothing where a figure is not defined, and refuses empty groups', () => {
    expect(
      cronbachAlpha([
        [1, 0],
        [0, 1],
      ]),
    ).toBeUndefined();
    expect(cronbachAlpha([[1], [0]])).toBeUndefined();
    expect(cronbachAlpha([[1, 2]])).toBeUndefined();
    expect(cronbachAlpha([])).toBeUndefined();
    expect(standardErrorOfMeasurement(2, -0.1)).toBeUndefined();
    expect(() => difficultyIndex(0, 0)).toThrow(RangeError);
    expect(() => discriminationIndex(0, 0, 0)).toThrow(RangeError);
    expect(() => upperLower([true], [1], 1)).toThrow(RangeError);
  });
});
