/** The rules of src/practice/README.md and of the heads of its files, each at its edge. */
import { describe, expect, it } from 'vitest';
import { noteTime, type Times } from '../../src/practice/dated.js';
import {
  addAnswer,
  dueResults,
  emptyStanding,
  type FamilyRef,
  feedbackFor,
  type HistoryEntry,
  mistakesOf,
  placementOf,
  placesByTime,
  sessionMark,
  standsAt,
  startLevel,
} from '../../src/practice/index.js';
import {
  addEvidence,
  doubtFrom,
  FIRST_LEVEL,
  levelOutlook,
  PROOF,
  stepLevel,
} from '../../src/practice/levels.js';
import { familyNeeds } from '../../src/practice/need.js';
import { moved, priorDifficulty, rate, usualGuess } from '../../src/practice/rating.js';
import { isUndated, recallAt, remember, UNDATED } from '../../src/practice/spacing.js';
import { newTotals, type Totals } from '../../src/practice/totals.js';
import { hasRisen, isRising, trendOf } from '../../src/practice/trend.js';
import { DAY, entryOf, START } from './simulate.js';

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

describe('levels', () => {
  const good = { level: 2, verdict: 'good', hints: 0, set: 'b', guess: 0.25 } as const;
  const ready = { ...FIRST_LEVEL, level: 2, row: 2, sittings: 1, sitting: 'a' };

  it('rise from 2 on with odds of a thousand, twenty times as much where all looks like guessing', () => {
    const from = (evidence: number, doubt = 0): number =>
      stepLevel({ ...ready, evidence }, { ...good, doubt }).level;
    // One good answer of four options adds the logarithm of 3.4: (1/4 + 4/5 · 3/4) / (1/4).
    const one = Math.log(3.4);
    expect([from(PROOF - one), from(PROOF - one - 0.01)]).toEqual([3, 2]);
    expect([from(PROOF + Math.log(20) - one, 1), from(PROOF + Math.log(20) - one - 0.01, 1)]).toEqual([3, 2]);
    expect([
      from(PROOF + Math.log(20) / 2 - one, 0.5),
      from(PROOF + Math.log(20) / 2 - one - 0.01, 0.5),
    ]).toEqual([3, 2]);
    expect(
      stepLevel({ ...ready, level: 1, evidence: -PROOF }, { ...good, level: 1 }).level,
      'not from 1',
    ).toBe(2);
    expect(
      stepLevel({ ...ready, level: 5, evidence: 9 }, { ...good, level: 5 }),
      'nothing above 5',
    ).toMatchObject({ level: 5, row: 3 });
  });

  it('start with nothing in a row again, but keep the evidence', () => {
    const risen = stepLevel({ ...ready, evidence: PROOF }, good);
    expect(risen).toMatchObject({ level: 3, row: 0, poor: 0, sittings: 0 });
    expect(risen.evidence).toBeCloseTo(PROOF + Math.log(3.4), 9);
  });

  it('count a sitting once, and two at most', () => {
    const first = stepLevel(FIRST_LEVEL, { ...good, set: 'a' });
    expect(first).toMatchObject({ row: 1, sittings: 1, sitting: 'a' });
    expect(stepLevel(first, { ...good, set: 'a' })).toMatchObject({ row: 2, sittings: 1 });
    const second = stepLevel(first, { ...good, set: 'b' });
    expect(second).toMatchObject({ row: 2, sittings: 2, sitting: 'b' });
    // A sitting that an empty row remembers is no sitting of the new row.
    expect(stepLevel({ ...FIRST_LEVEL, sitting: 'a' }, { ...good, set: 'a' })).toMatchObject({
      row: 1,
      sittings: 1,
    });
  });

  it('a good answer forgives a poor one; an easier good one and one with a hint do neither', () => {
    const poor = { ...FIRST_LEVEL, level: 3, poor: 1, row: 0 };
    expect(stepLevel(poor, { ...good, level: 3 }).poor).toBe(0);
    expect(stepLevel(poor, { ...good, level: 2 })).toMatchObject({ poor: 1, row: 0 });
    const hinted = stepLevel(poor, { ...good, level: 3, hints: 1 });
    expect(hinted).toEqual(poor);
  });

  it('a poor answer ends a row, also one to a harder drill, which does not count towards falling', () => {
    const row = { ...FIRST_LEVEL, level: 3, row: 2, sittings: 2, sitting: 'a' };
    const off = { ...good, verdict: 'off' } as const;
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

describe('the placing round', () => {
  const one = { family: 'a', level: 1, verdict: 'good', guess: 0.02 } as const;

  it('one good answer of fifty options rules out guessing; it goes on to find how high', () => {
    // The odds are (0.02 + 0.8 · 0.98) / 0.02, just over 40.
    expect(placementOf([one])).toMatchObject({ isProved: true, nextLevel: 3, start: 2 });
    expect(placementOf([{ ...one, guess: 0.021 }])).toMatchObject({ isProved: false, start: 1 });
  });

  it('a decision that went badly above the start leaves a family at the start', () => {
    const off = { family: 'b', level: 5, verdict: 'off', guess: 0.02 } as const;
    expect(startLevel([one, off], 'b')).toBe(2);
    expect(startLevel([one, { ...off, level: 2 }], 'b')).toBe(1);
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

describe('what a family needs', () => {
  const FAMILIES: readonly FamilyRef[] = ['a', 'b', 'c'].map((id) => ({ id, title: id }));
  const reasons = (entries: readonly HistoryEntry[], now = START, families = FAMILIES) => {
    const standing = emptyStanding();
    for (const entry of entries) addAnswer(standing, entry);
    return familyNeeds(standing, families, now).map(({ reason }) => reason);
  };
  const rows = (family: string, verdicts: readonly HistoryEntry['verdict'][], level = 1) =>
    verdicts.map((verdict, at) => ({
      ...entryOf(pick(family, level, `${family}-${at}`), verdict, START, `set-${at % 2}`),
      guess: 0.1,
    }));
  const good = (count: number) => Array.from({ length: count }, () => 'good' as const);

  it('new where it was not met; the last one left is worked on like a weak one', () => {
    expect(reasons([])).toEqual(['new', 'new', 'new']);
    expect(reasons(rows('a', good(2)))).toEqual(['begun', 'new', 'new']);
    expect(reasons([...rows('a', good(2)), ...rows('b', good(2))])).toEqual(['begun', 'begun', 'weak']);
    expect(reasons([], START, FAMILIES.slice(0, 1)), 'a family by itself is new').toEqual(['new']);
  });

  it('weak where it is missed', () => {
    expect(reasons(rows('a', ['off', 'off']))).toEqual(['weak', 'new', 'new']);
  });

  it('begun up to three answers, steady from the fourth on', () => {
    expect(reasons(rows('a', good(3)))[0]).toBe('begun');
    expect(reasons(rows('a', good(4)))[0]).not.toBe('begun');
  });

  it('weak where four answers and more look like guessing, though few are wrong', () => {
    const of = (guess: number, count: number) =>
      reasons(
        rows('a', ['good', 'good', 'good', 'fair'])
          .slice(4 - count)
          .map((entry) => ({ ...entry, guess })),
      )[0];
    expect([of(0.6, 4), of(0.1, 4), of(0.6, 3)]).toEqual(['weak', 'steady', 'begun']);
  });

  it('due when recall has fallen', () => {
    expect(reasons(rows('a', good(3)), START + 60 * DAY)[0]).toBe('due');
  });

  it('weak where its level is two behind the middle one', () => {
    const standing = emptyStanding();
    for (const family of ['a', 'b', 'c'])
      for (const entry of rows(family, good(4))) addAnswer(standing, entry);
    const at = (family: string, level: number) => {
      const known = standing.families.get(family);
      if (known !== undefined) known.level = { ...known.level, level };
    };
    const reasonOf = (level: number) => {
      at('a', level);
      at('b', 4);
      at('c', 5);
      return familyNeeds(standing, FAMILIES, START)[0]?.reason;
    };
    expect(reasonOf(2)).toBe('weak');
    expect(reasonOf(3)).not.toBe('weak');
    // The middle one by level, wherever it stands in the list.
    at('b', 5);
    at('c', 4);
    expect(familyNeeds(standing, FAMILIES, START)[0]?.reason).not.toBe('weak');
    at('b', 4);
    at('c', 5);
    expect(familyNeeds(standing, FAMILIES, START)[2]).toMatchObject({
      reason: 'known',
      level: 5,
      answers: 4,
    });
  });
});
