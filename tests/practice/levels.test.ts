/** The rules of levels: the rows up and down, the proof against guessing, and each rule at its edge. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LevelAnswer, LevelState } from '../../src/practice/levels.js';
import {
  addEvidence,
  doubtFrom,
  evidenceOf,
  FIRST_LEVEL,
  levelOutlook,
  PROOF,
  stepLevel,
} from '../../src/practice/levels.js';

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

describe('levels, at their edges', () => {
  const atTwo = good('b', { level: 2 });
  const ready = { ...FIRST_LEVEL, level: 2, row: 2, sittings: 1, sitting: 'a' };

  it('rise from 2 on with odds of a thousand, twenty times as much where all looks like guessing', () => {
    const from = (evidence: number, doubt = 0): number =>
      stepLevel({ ...ready, evidence }, { ...atTwo, doubt }).level;
    // One good answer of four options adds the logarithm of 3.4: (1/4 + 4/5 · 3/4) / (1/4).
    const one = Math.log(3.4);
    expect([from(PROOF - one), from(PROOF - one - 0.01)]).toEqual([3, 2]);
    expect([from(PROOF + Math.log(20) - one, 1), from(PROOF + Math.log(20) - one - 0.01, 1)]).toEqual([3, 2]);
    expect([
      from(PROOF + Math.log(20) / 2 - one, 0.5),
      from(PROOF + Math.log(20) / 2 - one - 0.01, 0.5),
    ]).toEqual([3, 2]);
    expect(
      stepLevel({ ...ready, level: 1, evidence: -PROOF }, { ...atTwo, level: 1 }).level,
      'not from 1',
    ).toBe(2);
    expect(
      stepLevel({ ...ready, level: 5, evidence: 9 }, { ...atTwo, level: 5 }),
      'nothing above 5',
    ).toMatchObject({ level: 5, row: 3 });
  });

  it('start with nothing in a row again, but keep the evidence', () => {
    const risen = stepLevel({ ...ready, evidence: PROOF }, atTwo);
    expect(risen).toMatchObject({ level: 3, row: 0, poor: 0, sittings: 0 });
    expect(risen.evidence).toBeCloseTo(PROOF + Math.log(3.4), 9);
  });

  it('count a sitting once, and two at most', () => {
    const first = stepLevel(FIRST_LEVEL, { ...atTwo, set: 'a' });
    expect(first).toMatchObject({ row: 1, sittings: 1, sitting: 'a' });
    expect(stepLevel(first, { ...atTwo, set: 'a' })).toMatchObject({ row: 2, sittings: 1 });
    const second = stepLevel(first, { ...atTwo, set: 'b' });
    expect(second).toMatchObject({ row: 2, sittings: 2, sitting: 'b' });
    // A sitting that an empty row remembers is no sitting of the new row.
    expect(stepLevel({ ...FIRST_LEVEL, sitting: 'a' }, { ...atTwo, set: 'a' })).toMatchObject({
      row: 1,
      sittings: 1,
    });
  });

  it('a good answer forgives a poor one; an easier good one and one with a hint do neither', () => {
    const poor = { ...FIRST_LEVEL, level: 3, poor: 1, row: 0 };
    expect(stepLevel(poor, { ...atTwo, level: 3 }).poor).toBe(0);
    expect(stepLevel(poor, { ...atTwo, level: 2 })).toMatchObject({ poor: 1, row: 0 });
    const hinted = stepLevel(poor, { ...atTwo, level: 3, hints: 1 });
    expect(hinted).toEqual(poor);
  });

  it('a poor answer ends a row, also one to a harder drill, which does not count towards falling', () => {
    const row = { ...FIRST_LEVEL, level: 3, row: 2, sittings: 2, sitting: 'a' };
    const off = { ...atTwo, verdict: 'off' } as const;
    expect(stepLevel(row, { ...off, level: 5 })).toMatchObject({ row: 0, sittings: 0, sitting: '', poor: 0 });
    expect(stepLevel({ ...row, poor: 1 }, { ...off, level: 5 })).toMatchObject({ level: 3, poor: 1 });
    expect(stepLevel({ ...row, poor: 1 }, { ...off, level: 3 })).toMatchObject({ level: 2, poor: 0 });
    expect(stepLevel({ ...row, poor: 1 }, { ...off, level: 1 })).toMatchObject({ level: 2 });
  });

  it('evidence stays within its bounds, and doubt is what it lacks', () => {
    expect(addEvidence(-PROOF, false, 0.25)).toBe(-PROOF);
    expect(addEvidence(PROOF + Math.log(20), true, 0.25)).toBe(PROOF + Math.log(20));
    for (const [evidence, doubt] of [
      [2 * PROOF, 0],
      [0, 0],
      [-PROOF / 2, 0.5],
      [-PROOF, 1],
      [-2 * PROOF, 1],
    ] as const)
      expect(doubtFrom(evidence)).toBeCloseTo(doubt, 12);
    // No single answer proves it, however unlikely by chance, and one that cannot fail proves next to nothing.
    expect(addEvidence(0, true, 0)).toBeCloseTo(Math.log((0.02 + 0.8 * 0.98) / 0.02), 9);
    expect(addEvidence(0, true, 1)).toBeCloseTo(Math.log((0.95 + 0.8 * 0.05) / 0.95), 9);
    expect(addEvidence(0, false, 0.25)).toBeCloseTo(Math.log(0.2), 9);
  });

  it('what is missing', () => {
    expect(levelOutlook({ ...ready, evidence: PROOF / 2 })).toEqual({
      atTop: false,
      goodAnswers: 1,
      anotherSitting: true,
      proof: 0.5,
    });
    expect(levelOutlook({ ...ready, row: 9, sittings: 2, evidence: 2 * PROOF })).toMatchObject({
      goodAnswers: 0,
      anotherSitting: false,
      proof: 1,
    });
    expect(levelOutlook({ ...ready, evidence: -1 }).proof).toBe(0);
    expect([levelOutlook({ ...ready, level: 4 }).atTop, levelOutlook({ ...ready, level: 5 }).atTop]).toEqual([
      false,
      true,
    ]);
  });
});
