import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LevelAnswer, LevelState } from '../../src/practice/levels.js';
import { evidenceOf, FIRST_LEVEL, levelOutlook, PROOF, stepLevel } from '../../src/practice/levels.js';

const answer = (
  verdict: LevelAnswer['verdict'],
  set: string,
  more: Partial<LevelAnswer> = {},
): LevelAnswer => ({
  level: 1,
  verdict,
  hints: 0,
  set,
  guess: 0.25,
  ...more,
});
const following = (answers: readonly LevelAnswer[], from: LevelState = FIRST_LEVEL): LevelState =>
  answers.reduce(stepLevel, from);
const good = (set: string, more: Partial<LevelAnswer> = {}): LevelAnswer => answer('good', set, more);
const off = (set: string, more: Partial<LevelAnswer> = {}): LevelAnswer => answer('off', set, more);

describe('levels: up after three good answers in a row over two sittings, down after two poor', () => {
  it('rises with the third good answer when it comes in a second sitting', () => {
    expect(following([good('a'), good('a'), good('b')]).level).toBe(2);
  });

  it('does not rise within one sitting, however many are good', () => {
    expect(following(Array.from({ length: 20 }, () => good('a'))).level).toBe(1);
  });

  it('starts the row again after a fair or a poor answer', () => {
    expect(following([good('a'), good('a'), answer('fair', 'b'), good('b')]).level).toBe(1);
    expect(following([good('a'), good('a'), off('b'), good('b'), good('b'), good('c')]).level).toBe(2);
  });

  it('falls after two poor answers in a row, never below 1, and a fair one between them saves the level', () => {
    const third: LevelState = { ...FIRST_LEVEL, level: 3, evidence: PROOF };
    expect(following([off('a', { level: 3 }), off('a', { level: 3 })], third).level).toBe(2);
    expect(
      following([off('a', { level: 3 }), answer('fair', 'a', { level: 3 }), off('b', { level: 3 })], third)
        .level,
    ).toBe(3);
    expect(following([off('a'), off('a')]).level).toBe(1);
  });

  it('takes no account of good answers to easier drills and of poor ones to harder drills', () => {
    const third: LevelState = { ...FIRST_LEVEL, level: 3, evidence: PROOF };
    expect(
      following(
        ['a', 'b', 'c'].map((set) => good(set, { level: 1 })),
        third,
      ).level,
    ).toBe(3);
    expect(
      following(
        ['a', 'b', 'c'].map((set) => off(set, { level: 5 })),
        third,
      ).level,
    ).toBe(3);
  });

  it('does not count a good answer that was given with a hint', () => {
    expect(following(['a', 'b', 'c', 'd'].map((set) => good(set, { hints: 1 }))).level).toBe(1);
  });

  it('asks twelve good answers to leave level 2 where there are two options, three where there are many', () => {
    const toLeave = (guess: number): number => {
      let state = FIRST_LEVEL;
      for (let n = 1; n < 50; n += 1) {
        state = stepLevel(state, good(`set-${n}`, { level: state.level, guess }));
        if (state.level === 3) return n;
      }
      return Number.NaN;
    };
    expect(toLeave(0.5)).toBe(12);
    expect(toLeave(0.25)).toBe(6);
    expect(toLeave(0.05)).toBe(6);
  });

  it('tells what is missing', () => {
    expect(levelOutlook(following([good('a')]))).toMatchObject({
      goodAnswers: 2,
      anotherSitting: true,
      proof: 1,
    });
    expect(levelOutlook({ ...FIRST_LEVEL, level: 5 }).atTop).toBe(true);
  });
});

describe('levels: the proof against guessing', () => {
  // J. Ville 1939: a non-negative martingale of mean 1 reaches 1000 with chance at most 1/1000.
  it('is a likelihood ratio: its mean under guessing is 1 for every chance of a blind hit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.95, noNaN: true }), (guess) => {
        const mean =
          guess * Math.exp(evidenceOf(true, guess)) + (1 - guess) * Math.exp(evidenceOf(false, guess));
        expect(mean).toBeCloseTo(1, 9);
      }),
    );
  });

  it('stays within the levels and its bounds whatever is answered', () => {
    const one = fc.record({
      level: fc.integer({ min: 1, max: 5 }),
      verdict: fc.constantFrom('good', 'fair', 'off' as const),
      hints: fc.integer({ min: 0, max: 2 }),
      set: fc.constantFrom('a', 'b', 'c'),
      guess: fc.double({ min: 0, max: 1, noNaN: true }),
      doubt: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 200 }), (answers) => {
        let state = FIRST_LEVEL;
        for (const given of answers as LevelAnswer[]) {
          const next = stepLevel(state, given);
          expect(Math.abs(next.level - state.level)).toBeLessThanOrEqual(1);
          expect(next.level).toBeGreaterThanOrEqual(1);
          expect(next.level).toBeLessThanOrEqual(5);
          expect(Math.abs(next.evidence)).toBeLessThanOrEqual(PROOF + 3);
          if (next.level > state.level) expect(given.verdict).toBe('good');
          if (next.level < state.level) expect(given.verdict).toBe('off');
          state = next;
        }
      }),
    );
  });
});
