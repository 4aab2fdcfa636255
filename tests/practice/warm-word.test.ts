/** The warm sentence at the end of a set: each of them, word for word, and which one goes before which. */
import { describe, expect, it } from 'vitest';
import { foldSorted, type HistoryEntry, summariseSet } from '../../src/practice/index.js';
import { DAY, entryOf, FAMILIES, START } from './simulate.js';

/** An answer of family n without a value or a chroma, of the set before or of this one. */
const answer = (
  day: number,
  n: number,
  verdict: HistoryEntry['verdict'],
  more: Partial<HistoryEntry> = {},
): HistoryEntry => {
  const drill = `drill-${n}`;
  const { value, chroma, ...entry } = entryOf(
    { family: `family-${n}`, level: 1, reason: 'steady', feedback: 'each', drill },
    verdict,
    START + day * DAY,
    `set-${day}`,
  );
  return { ...entry, ...more };
};
const was = (n: number, verdict: HistoryEntry['verdict'], more: Partial<HistoryEntry> = {}) =>
  answer(0, n, verdict, more);
const now = (n: number, verdict: HistoryEntry['verdict'], more: Partial<HistoryEntry> = {}) =>
  answer(1, n, verdict, more);
const warm = (before: readonly HistoryEntry[], set: readonly HistoryEntry[]): string | undefined =>
  summariseSet(foldSorted(before), set, FAMILIES, new Date(START + DAY))?.warm;

const valueAt = (after: number) => ({ value: { before: 3, after, asked: [6.5, 7.5] as const } });
const dulledTo = (after: number) => ({
  aim: 'dull' as const,
  chroma: { before: 50, after, kept: after / 50, asked: [5, 20] as const },
});

describe('skills that rose a level', () => {
  /** Two good answers before and one now: a level more. */
  const rose = (...skills: readonly number[]) =>
    warm(
      skills.flatMap((n) => [was(n, 'good'), was(n, 'good')]),
      skills.map((n) => now(n, 'good')),
    );

  it('are named, two of them at most', () => {
    expect(rose(1)).toBe('Well done: Family 1 rose to level 2.');
    expect(rose(1, 2)).toBe('Well done: 2 skills rose a level, Family 1 and Family 2.');
    expect(rose(1, 2, 3)).toBe('Well done: 3 skills rose a level, Family 1 and Family 2 among them.');
  });

  it('are named alone where others stayed', () => {
    const before = [was(2, 'good'), was(2, 'good'), was(1, 'good')];
    expect(warm(before, [now(1, 'good'), now(2, 'good')])).toBe('Well done: Family 2 rose to level 2.');
  });
});

describe('a figure that came nearer', () => {
  it('is said of dulling', () => {
    expect(warm([was(1, 'off', dulledTo(32))], [now(1, 'off', dulledTo(25))])).toBe(
      'You dulled nearer to what was asked: 5 of chroma beside it, after 12 before.',
    );
  });

  it('is said of the first that did, though another got worse', () => {
    const before = [was(1, 'off', { ...valueAt(6), ...dulledTo(32) })];
    expect(warm(before, [now(1, 'off', { ...valueAt(5), ...dulledTo(25) })])).toBe(
      'You dulled nearer to what was asked: 5 of chroma beside it, after 12 before.',
    );
    expect(warm(before, [now(1, 'off', { ...valueAt(6.2), ...dulledTo(25) })])).toBe(
      'Your values came nearer: 0.3 steps off, after 0.5 before.',
    );
  });

  it('is not said where both round to the same', () => {
    expect(warm([was(1, 'off', valueAt(5.01))], [now(1, 'off', valueAt(5.04))])).toBe(
      'One decision made before the brush touched the paper; the next one has it to build on.',
    );
  });
});

describe('a skill that came right', () => {
  it('is named with the misses before it', () => {
    expect(warm([was(1, 'off')], [now(1, 'good')])).toBe('Family 1 came right, after one that did not.');
    expect(warm([was(1, 'off'), was(1, 'fair')], [now(1, 'good')])).toBe(
      'Family 1 came right, after 2 that did not.',
    );
  });

  it('is neither one met for the first time, nor one that was good before, nor one still missed', () => {
    const before = [was(2, 'good'), was(2, 'off'), was(3, 'off'), was(4, 'off'), was(4, 'off')];
    expect(warm(before, [now(1, 'good'), now(2, 'good'), now(3, 'off'), now(4, 'good')])).toBe(
      'Family 4 came right, after 2 that did not.',
    );
  });

  it('goes before a row of good answers', () => {
    expect(warm([was(1, 'off')], [now(1, 'good'), now(1, 'good'), now(1, 'good')])).toBe(
      'Family 1 came right, after one that did not.',
    );
  });
});

describe('a row of good answers', () => {
  const off = now(1, 'off');
  const good = now(1, 'good');
  const best = 'Your best was Family 1, 90 of 100: well done.';

  it('is all of a set of two and more', () => {
    expect(warm([], [good, good])).toBe('Well done: all 2 of them good.');
    expect(warm([], [good])).toBe(best);
  });

  it('is three and more in a set with a miss, the longest of them', () => {
    expect(warm([], [good, good, off])).toBe(best);
    expect(warm([], [good, good, good, off, good])).toBe('Well done: 3 good answers in a row.');
    expect(warm([], [good, off, good, good, good, good, off])).toBe('Well done: 4 good answers in a row.');
    expect(warm([], [good, good, now(1, 'fair'), good, good])).toBe(best);
  });
});

describe('the mean mark', () => {
  const rose = (before: number, after: number) =>
    warm([was(1, 'fair', { mark: before })], [now(1, 'fair', { mark: after })]);
  const best = (mark: number) => `Your best was Family 1, ${mark} of 100.`;

  it('is said from five marks on, as rounded', () => {
    expect(rose(50, 55)).toBe('Your mean mark rose to 55, from 50 before.');
    expect(rose(50, 54)).toBe(best(54));
    expect(rose(50.4, 54.5)).toBe('Your mean mark rose to 55, from 50 before.');
    expect(rose(49.5, 54.4)).toBe(best(54.4));
    expect(rose(60, 40)).toBe(best(40));
  });

  it('goes before the best answer, and after a row', () => {
    const before = [was(1, 'good', { mark: 80 }), was(1, 'off')];
    expect(warm(before, [now(1, 'good', { mark: 80 }), now(1, 'fair', { mark: 60 })])).toBe(
      'Your mean mark rose to 70, from 48 before.',
    );
    expect(warm(before, [now(1, 'good'), now(1, 'good')])).toBe('Well done: all 2 of them good.');
  });
});

describe('the best answer', () => {
  it('is named by its skill; of equals the first', () => {
    const marked = (...marks: readonly number[]) =>
      warm(
        [],
        marks.map((mark, n) => now(n + 1, 'fair', { mark })),
      );
    expect(marked(50, 60, 40)).toBe('Your best was Family 2, 60 of 100.');
    expect(marked(60, 60, 40)).toBe('Your best was Family 1, 60 of 100.');
    expect(marked(40, 50, 60)).toBe('Your best was Family 3, 60 of 100.');
  });

  it('is praised only where it was good', () => {
    expect(warm([], [now(1, 'good', { mark: 88 }), now(2, 'off')])).toBe(
      'Your best was Family 1, 88 of 100: well done.',
    );
  });
});

describe('a set with nothing good in it', () => {
  it('tells what was met for the first time', () => {
    expect(warm([], [now(1, 'off')])).toBe('You met one skill for the first time.');
    expect(warm([], [now(1, 'off'), now(2, 'off'), now(1, 'off')])).toBe(
      'You met 2 skills for the first time.',
    );
    expect(warm([was(1, 'off')], [now(1, 'off'), now(2, 'off')])).toBe(
      'You met one skill for the first time.',
    );
  });

  it('else counts the decisions', () => {
    expect(warm([was(1, 'off')], [now(1, 'off')])).toBe(
      'One decision made before the brush touched the paper; the next one has it to build on.',
    );
    expect(warm([was(1, 'off')], [now(1, 'off'), now(1, 'off')])).toBe(
      '2 decisions made before the brush touched the paper; each miss below names one thing to change.',
    );
  });
});
