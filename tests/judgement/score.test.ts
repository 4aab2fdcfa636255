import { describe, expect, test } from 'vitest';
import { pickMark, scoreStep, togetherMark } from '../../src/judgement/index.js';

describe('marks of parts and picks', () => {
  test('parts that must all hold: half for the mean, half for the worst', () => {
    expect(togetherMark([1, 1, 1])).toBe(100);
    expect(togetherMark([1, 1, 0])).toBe(33);
    expect(togetherMark([1, 0.5])).toBe(63);
    expect(togetherMark([])).toBe(0);
  });

  test('one pick: full for the best and for what cannot be told from it, else at most 45', () => {
    const scores = [10, 9, 4, 0];
    expect(pickMark(10, scores, 2)).toEqual({ mark: 100, tooCloseToCall: false });
    expect(pickMark(9, scores, 2)).toEqual({ mark: 100, tooCloseToCall: true });
    expect(pickMark(9, scores, 0.5)).toEqual({ mark: 41, tooCloseToCall: false });
    expect(pickMark(0, scores, 2)).toEqual({ mark: 0, tooCloseToCall: false });
    expect(pickMark(9, scores, 1), 'just as far as the model can tell').toMatchObject({ mark: 100 });
    // Half way from the worst to the best, wherever these lie.
    expect(pickMark(-4, [-2, -6, -4], 0)).toEqual({ mark: 23, tooCloseToCall: false });
    expect(pickMark(7, [9, 5, 7], 0)).toEqual({ mark: 23, tooCloseToCall: false });
  });

  test('a step: full in the band and within the error, a half half a step further, none at a whole one', () => {
    expect(scoreStep(5, [4, 5], 0.2)).toEqual({ score: 1, tooCloseToCall: false });
    expect(scoreStep(5.2, [4, 5], 0.21)).toEqual({ score: 1, tooCloseToCall: true });
    expect(scoreStep(5.5, [4, 5], 0).score).toBeCloseTo(0.5, 9);
    expect(scoreStep(3, [4, 5], 0).score).toBeCloseTo(0, 9);
    expect(scoreStep(5.3, [4, 5], 0.2).tooCloseToCall).toBe(false);
  });
});
