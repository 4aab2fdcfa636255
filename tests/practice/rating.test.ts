/** Ratings of skill and difficulty, and memory, each at its edge. */
import { describe, expect, it } from 'vitest';
import { moved, priorDifficulty, rate, usualGuess } from '../../src/practice/rating.js';
import { isUndated, recallAt, remember, UNDATED } from '../../src/practice/spacing.js';
import { DAY, START } from './simulate.js';

describe('ratings', () => {
  it('stay on the scale however long a row is', () => {
    expect(moved({ at: 7.9, answers: 3 }, 1, 1)).toEqual({ at: 8, answers: 4 });
    expect(moved({ at: -7.9, answers: 3 }, -1, 1)).toEqual({ at: -8, answers: 4 });
  });

  it('a skill is that in everything and in the family together', () => {
    const before = {
      overall: { at: 1, answers: 0 },
      family: { at: -1, answers: 0 },
      drill: { at: 0, answers: 0 },
    };
    expect(rate(before, 1, 0)).toEqual({
      overall: { at: 1.5, answers: 1 },
      family: { at: -0.5, answers: 1 },
      drill: { at: -0.5, answers: 1 },
    });
  });

  it('a drill begins a logit harder a level, the middle at nothing; a blind choice is as good as its options are few', () => {
    expect([1, 3, 5].map(priorDifficulty)).toEqual([-2, 0, 2]);
    expect([1, 2, 3, 4, 5, 6].map(usualGuess)).toEqual([0.5, 0.5, 0.25, 0.1, 0.05, 0.05]);
  });
});

describe('memory', () => {
  it('of a time that cannot be believed begins with the next answer', () => {
    expect([isUndated(UNDATED), isUndated({ ...UNDATED, lastMs: 1 })]).toEqual([true, false]);
    expect(remember(UNDATED, 'good', START)).toEqual(remember(undefined, 'good', START));
  });

  it('goes by days: a time before the last is the same day, and the later of both is kept', () => {
    const known = remember(undefined, 'good', START);
    const back = remember(known, 'good', START - 3 * DAY);
    expect(back.lastMs).toBe(START);
    expect(back.stability).toBe(remember(known, 'good', START).stability);
    expect(recallAt(known, START - DAY)).toBe(1);
  });
});
