/** The sentences of a set: the whole, each skill with its level, and the placing round. */
import { describe, expect, it } from 'vitest';
import { foldSorted, type HistoryEntry, summariseSet } from '../../src/practice/index.js';
import { DAY, entryOf, FAMILIES, START } from './simulate.js';

/** An answer of family n without a value or a chroma. */
const answer = (
  day: number,
  n: number | string,
  verdict: HistoryEntry['verdict'],
  more: Partial<HistoryEntry> = {},
): HistoryEntry => {
  const { value, chroma, ...entry } = entryOf(
    { family: `family-${n}`, level: 1, reason: 'steady', feedback: 'each', drill: `drill-${n}` },
    verdict,
    START + day * DAY,
    `set-${day}`,
  );
  return { ...entry, ...more };
};
const valueAt = (after: number) => ({ value: { before: 3, after, asked: [6.5, 7.5] as const } });
const summary = (before: readonly HistoryEntry[], set: readonly HistoryEntry[]) =>
  summariseSet(foldSorted(before), set, FAMILIES, new Date(START + 9 * DAY));

describe('the lines of a set', () => {
  it('of one skill are one, with its level where that went up', () => {
    const two = [answer(0, 1, 'good'), answer(0, 1, 'good')];
    expect(summary(two, [answer(1, 1, 'good')])?.lines).toEqual(['This set: 1 of 1 good. Up to level 2.']);
    expect(summary(two.slice(1), [answer(1, 1, 'good')])?.lines).toEqual(['This set: 1 of 1 good.']);
  });

  it('tell a level that went down', () => {
    const atTwo = [...Array(3).keys()].map((day) => answer(day, 1, 'good'));
    const poor = answer(3, 1, 'off', { level: 2 });
    expect(summary(atTwo, [poor, poor])?.lines).toEqual(['This set: 0 of 2 good. Back to level 1.']);
    expect(summary(atTwo, [poor])?.lines).toEqual(['This set: 0 of 1 good.']);
  });

  it('of several are the whole, then each in the order met, with its own figures and level', () => {
    const before = [
      answer(0, 2, 'good', valueAt(6)),
      answer(0, 2, 'good', valueAt(6)),
      answer(0, 1, 'off', valueAt(5)),
    ];
    const set = [
      answer(1, 2, 'good', valueAt(7)),
      answer(1, 1, 'off', valueAt(4.5)),
      answer(1, 3, 'fair', valueAt(6.4)),
      answer(1, 2, 'good', valueAt(7)),
    ];
    const found = summary(before, set);
    expect(found?.lines).toEqual([
      'This set: 2 of 4 good; value error 0.5 steps, was 0.8: nearer.',
      'Family 2: 2 of 2 good; value error 0.0 steps, was 0.5: nearer. Up to level 2.',
      'Family 1: 0 of 1 good; value error 2.0 steps, was 1.5: further off.',
      'Family 3: 0 of 1 good; value error 0.1 steps.',
    ]);
    expect(
      found?.families.map(({ title, isFirst, levelBefore, levelAfter }) => [
        title,
        isFirst,
        levelBefore,
        levelAfter,
      ]),
    ).toEqual([
      ['Family 2', false, 1, 2],
      ['Family 1', false, 1, 1],
      ['Family 3', true, 1, 1],
    ]);
  });

  it('hold one skill against itself, not against the other skills of the sets before', () => {
    const before = [answer(0, 1, 'off', valueAt(5)), answer(0, 2, 'good', valueAt(7))];
    const found = summary(before, [answer(1, 1, 'off', valueAt(5))]);
    expect(found?.lines).toEqual(['This set: 0 of 1 good; value error 1.5 steps, as before.']);
    expect(found?.before).toMatchObject({ answers: 1, valueError: 1.5 });
    expect(summary(before, [answer(1, 3, 'off', valueAt(5))])?.before, 'a new one, against nothing').toBe(
      undefined,
    );
  });

  it('count first answers alone, and there is no summary without one', () => {
    const again = answer(0, 1, 'good', { try: 2 });
    expect(summary([], [answer(0, 1, 'off'), again])?.lines).toEqual(['This set: 0 of 1 good.']);
    expect(summary([], [again])).toBeUndefined();
    expect(summary([], [])).toBeUndefined();
  });

  it('name a skill that the curriculum has no more by its id', () => {
    expect(summary([], [answer(0, 1, 'good'), answer(0, 'gone', 'off')])?.lines).toEqual([
      'This set: 1 of 2 good.',
      'Family 1: 1 of 1 good.',
      'family-gone: 0 of 1 good.',
    ]);
  });
});

describe('the lines of the placing round', () => {
  const decided = (count: number, verdict: HistoryEntry['verdict'], level = 4) =>
    Array.from({ length: count }, (_, n) =>
      answer(0, n + 1, verdict, { level, guess: 0.05, placing: true, set: 'placing' }),
    );
  const lines = (set: readonly HistoryEntry[]) => summary([], set)?.lines;

  it('tell where the skills start', () => {
    expect(lines(decided(8, 'off'))).toEqual([
      'Placing round: 0 of 8 good.',
      'Your skills start at level 1, with worked cases.',
    ]);
    expect(lines(decided(8, 'good'))).toEqual([
      'Placing round: 8 of 8 good.',
      'Your skills start at level 3; those asked about here, by how each decision went.',
    ]);
  });

  it('say so where it was left before its end', () => {
    expect(lines(decided(1, 'good'))).toEqual([
      'Placing round: 1 of 1 good.',
      'Left before its end: so far your skills start at level 1, with worked cases.',
    ]);
    expect(lines(decided(3, 'good', 2))).toEqual([
      'Placing round: 3 of 3 good.',
      'Left before its end: so far your skills start at level 3; those asked about here, by how each decision went.',
    ]);
  });

  it('call no start a rise', () => {
    const found = summary([], decided(8, 'good'));
    for (const { levelBefore, levelAfter } of found?.families ?? []) expect(levelBefore).toBe(levelAfter);
    expect(found?.warm).toBe('Well done: all 8 of them good.');
  });
});
