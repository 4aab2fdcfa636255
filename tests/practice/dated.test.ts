/** Times of answers: out of order, ahead of the clock, and put in order. */
import { describe, expect, it } from 'vitest';
import { noteTime, type Times } from '../../src/practice/dated.js';
import { placesByTime, standsAt } from '../../src/practice/index.js';

describe('times', () => {
  const times = (): Times => ({ lastMs: 0, isOutOfOrder: false });
  const MINUTE = 60_000;

  it('are out of order when one is more than five minutes older than one before it', () => {
    const one = times();
    noteTime(one, 100 * MINUTE, false);
    noteTime(one, 95 * MINUTE, false);
    expect(one).toEqual({ lastMs: 100 * MINUTE, isOutOfOrder: false });
    noteTime(one, 95 * MINUTE - 1, false);
    expect(one).toEqual({ lastMs: 100 * MINUTE, isOutOfOrder: true });
  });

  it('ahead of the clock are counted apart, the first and the last of them', () => {
    const one = times();
    for (const at of [50, 70, 40]) noteTime(one, at, true);
    noteTime(one, 5, false);
    expect(one).toEqual({ lastMs: 5, isOutOfOrder: false, ahead: { count: 3, firstMs: 40, lastMs: 70 } });
  });

  it('stand as long as the clock divides them as before', () => {
    const one: Times = { lastMs: 10, isOutOfOrder: false, ahead: { count: 1, firstMs: 40, lastMs: 70 } };
    expect([9, 10, 39, 40].map((latestMs) => standsAt(one, latestMs))).toEqual([false, true, true, false]);
    expect(standsAt({ lastMs: 10, isOutOfOrder: false }, 1000)).toBe(true);
  });

  it('put a list in order; equal ones and those ahead keep their places', () => {
    expect([...placesByTime([30, 10, 20], 100)]).toEqual([1, 2, 0]);
    expect([...placesByTime([10, 10, 5, 10], 100)]).toEqual([2, 0, 1, 3]);
    // What is ahead is taken for as late as the latest before it.
    expect([...placesByTime([10, 999, 30, 20], 100)]).toEqual([0, 1, 3, 2]);
    expect([...placesByTime([10, 100, 101, 30], 100)]).toEqual([0, 3, 1, 2]);
    expect([...placesByTime([30, 10, 999], 100)]).toEqual([1, 0, 2]);
  });
});
