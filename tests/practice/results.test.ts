/** Results: marks in a session, when they are shown, the mistakes gathered from them, and when sets rise. */
import { describe, expect, it } from 'vitest';
import {
  dueResults,
  feedbackFor,
  type HistoryEntry,
  mistakesOf,
  sessionMark,
} from '../../src/practice/index.js';
import { newTotals, type Totals } from '../../src/practice/totals.js';
import { hasRisen, isRising, trendOf } from '../../src/practice/trend.js';
import { entryOf, START } from './simulate.js';

const pick = (family: string, level: number, drill = 'd') =>
  ({ family, level, reason: 'due', feedback: 'each', drill }) as const;
const answer = (
  verdict: HistoryEntry['verdict'],
  more: Partial<HistoryEntry> = {},
  [family, level]: readonly [string, number] = ['family-1', 2],
): HistoryEntry => ({ ...entryOf(pick(family, level), verdict, START, 'set-1'), ...more });

describe('a mark in a session', () => {
  it.each([
    [90, 0, 1, 90],
    [90, 2, 1, 70],
    [15, 2, 1, 0],
    [90, 0, 2, 45],
    [90, 1, 3, 40],
    [91, 0, 2, 46],
  ])('%d with %d hints at try %d is %d: ten a hint, half for a later try', (mark, hints, attempt, wanted) => {
    expect(sessionMark(mark, hints, attempt)).toBe(wanted);
  });
});

describe('results', () => {
  it('are shown at once at levels 1-3, three together at 4, at the end at 5', () => {
    expect([1, 2, 3, 4, 5].map(feedbackFor)).toEqual(['each', 'each', 'each', 'third', 'end']);
  });

  it('wait for the third', () => {
    const held = (...feedback: ('each' | 'third' | 'end')[]) =>
      feedback.map((of, place) => ({ place, feedback: of }));
    expect(dueResults(held('each'))).toEqual([0]);
    expect(dueResults(held('third', 'third'))).toEqual([]);
    expect(dueResults(held('third', 'end', 'third', 'third'))).toEqual([0, 2, 3]);
    expect(dueResults(held('third', 'end', 'each'))).toEqual([2]);
  });
});

describe('mistakes', () => {
  const wrong = (idea: string, family: string, level: number, more: Partial<HistoryEntry> = {}) =>
    answer('off', { idea, ...more }, [family, level]);

  it('are gathered by idea, most frequent first, where they were met most and easiest', () => {
    const entries = [
      wrong('one', 'a', 3),
      wrong('two', 'a', 4),
      wrong('two', 'b', 5),
      wrong('two', 'b', 2),
      answer('fair', { idea: 'two' }, ['b', 3]),
    ];
    expect(mistakesOf(entries)).toEqual([
      { idea: 'two', count: 4, family: 'b', level: 2 },
      { idea: 'one', count: 1, family: 'a', level: 3 },
    ]);
    expect(mistakesOf([wrong('one', 'a', 1), wrong('one', 'b', 1)])[0]?.family, 'of equals the first').toBe(
      'a',
    );
  });

  it('are three at most, of first answers that were not good', () => {
    const four = ['a', 'b', 'c', 'd'].map((idea) => wrong(idea, 'f', 1));
    expect(mistakesOf(four).map(({ idea }) => idea)).toEqual(['a', 'b', 'c']);
    expect(
      mistakesOf([wrong('a', 'f', 1, { verdict: 'good' }), wrong('a', 'f', 1, { try: 2 }), answer('off')]),
    ).toEqual([]);
  });
});

describe('a rise', () => {
  const set = (mark: number, level: number): Totals => ({ ...newTotals('', '', 0), answers: 1, mark, level });
  const rises = (...sets: Totals[]): boolean => isRising(sets);

  it('is five marks on drills that are no easier, or a quarter of a level on marks that are no worse', () => {
    expect([rises(set(60, 2), set(65, 2)), rises(set(60, 2), set(64.9, 2))]).toEqual([true, false]);
    expect([rises(set(60, 2), set(60, 2.25)), rises(set(60, 2), set(60, 2.24))]).toEqual([true, false]);
    expect([rises(set(60, 2), set(80, 1.76)), rises(set(60, 2), set(80, 1.75))]).toEqual([true, false]);
    expect([rises(set(60, 2), set(55.1, 3)), rises(set(60, 2), set(55, 3))]).toEqual([true, false]);
  });

  it('needs sets to compare, the middle one with the earlier', () => {
    expect([trendOf([]), trendOf([set(60, 2)])]).toEqual([undefined, undefined]);
    expect([rises(), rises(set(90, 2))]).toEqual([false, false]);
    const trend = trendOf([set(50, 2), set(60, 2), set(90, 2)]);
    expect([trend?.earlier.mark, trend?.later.mark]).toEqual([55, 90]);
    expect(trend && hasRisen(trend)).toBe(true);
  });
});
