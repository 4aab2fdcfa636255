/** Intervals against published worked cases and scipy; the source of each stands in the data file. */
import { mean } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { criticalT, meanInterval, shareInterval } from '../../src/quiz/intervals.js';
import published from './data/quiz-intervals.json' with { type: 'json' };

const near = (interval: readonly number[] | undefined, wanted: readonly number[], decimals: number): void => {
  expect(interval).toHaveLength(2);
  for (const [at, end] of wanted.entries()) expect(interval?.[at]).toBeCloseTo(end, decimals);
};

describe('intervals against published worked cases', () => {
  it('critical values of Student’s t (NIST/SEMATECH e-Handbook 1.3.6.7.2; scipy)', () => {
    for (const [freedom, t] of published.criticalT.printed.values as [number, number][])
      expect(criticalT(freedom)).toBeCloseTo(t, 3);
    for (const [freedom, t] of published.criticalT.values as [number, number][])
      expect(criticalT(freedom)).toBeCloseTo(t, 8);
    for (const freedom of [0, -1, 1.5, Number.NaN]) expect(() => criticalT(freedom)).toThrow(RangeError);
  });

  it('mean of paired differences (Student 1908, the sleep of ten patients)', () => {
    const { differences, publishedMean, publishedInterval, scipy } = published.paired;
    expect(mean(differences)).toBeCloseTo(publishedMean, 10);
    near(meanInterval(differences), publishedInterval, 6);
    near(meanInterval(differences), scipy, 10);
    expect(meanInterval([3])).toBeUndefined();
  });

  it('mean of paired differences of marks (scipy.stats.ttest_rel)', () => {
    for (const { before, after, interval } of published.made.cases)
      near(meanInterval(after.map((mark, at) => mark - (before[at] ?? 0))), interval, 8);
  });

  it('a share by the score method (Newcombe 1998, table I; scipy)', () => {
    for (const { hits, count, published: printed, scipy } of published.share.cases) {
      near(shareInterval(hits, count), printed, 4);
      near(shareInterval(hits, count), scipy, 10);
    }
    expect(shareInterval(20, 20)?.[1]).toBe(1);
    expect(shareInterval(0, 0)).toBeUndefined();
  });
});
