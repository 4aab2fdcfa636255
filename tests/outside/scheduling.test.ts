/**
 * Spacing and rating against published figures.
 *
 * FSRS-6: published default parameters and algorithm description, open-spaced-repetition project (MIT); the figures
 * below were recomputed from the published formulas with those parameters, four decimals.
 * Elo for education: R. Pelánek, Applications of the Elo rating system in adaptive educational systems, Computers &
 * Education 98 (2016): logistic expectation, guessing floor, U(n) = a / (1 + b n); the worked example recomputed.
 */
import { default_w, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, it } from 'vitest';
import { expectedScore, moved, rate, stepSize, UNRATED } from '../../src/practice/rating.js';
import { dueAt, recallAt, remember } from '../../src/practice/spacing.js';

const DAY = 86_400_000;
const NOON = Date.UTC(2026, 2, 1, 12);

const PARAMETERS = [
  0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629,
  1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
];

describe('spacing: FSRS-6, published default parameters and formulas', () => {
  it('schedules with the published parameters', () => {
    expect(default_w).toEqual(PARAMETERS);
  });

  it('starts stability and difficulty at S0 and D0 of the first answer', () => {
    const off = remember(undefined, 'off', NOON);
    const fair = remember(undefined, 'fair', NOON);
    const good = remember(undefined, 'good', NOON);
    expect([off.stability, fair.stability, good.stability]).toEqual([0.212, 1.2931, 2.3065]);
    expect(off.difficulty).toBeCloseTo(6.4133, 4);
    expect(fair.difficulty).toBeCloseTo(5.1122, 4);
    expect(good.difficulty).toBeCloseTo(2.1181, 4);
  });

  it('moves difficulty as published: next D from D0(3)', () => {
    const first = remember(undefined, 'good', NOON);
    const at = NOON + 2 * DAY;
    expect(remember(first, 'off', at).difficulty).toBeCloseTo(7.3945, 3);
    expect(remember(first, 'fair', at).difficulty).toBeCloseTo(4.7529, 3);
    expect(remember(first, 'good', at).difficulty).toBeCloseTo(2.1112, 3);
  });

  it('grows stability as published when recall has fallen to 0.9', () => {
    const model = fsrs({ enable_fuzz: false });
    expect(model.next_recall_stability(2.1181, 2.3065, 0.9, Rating.Hard)).toBeCloseTo(8.0815, 3);
    expect(model.next_recall_stability(2.1181, 2.3065, 0.9, Rating.Good)).toBeCloseTo(11.9091, 3);
    expect(model.next_forget_stability(2.1181, 2.3065, 0.9)).toBeCloseTo(0.6172, 4);
  });

  it('uses the same-day formula for a second answer on one day', () => {
    const first = remember(undefined, 'good', NOON);
    expect(remember(first, 'off', NOON + 60_000).stability).toBeCloseTo(0.7751, 4);
    expect(remember(first, 'good', NOON + 60_000).stability).toBeCloseTo(2.3065, 4);
    // The description keeps stability from shrinking for grades 3 and 4 only (a fair answer would give 1.3334);
    // ts-fsrs 5.4 keeps it for grade 2 as well. We follow the library: a fair answer is not forgetting.
    expect(remember(first, 'fair', NOON + 60_000).stability).toBeCloseTo(2.3065, 4);
  });

  it('forgets along the published curve: R is 0.9 at t = S, and 0.84588 for S 10 after 20 days', () => {
    const memory = { stability: 10, difficulty: 5, lastMs: NOON };
    expect(recallAt(memory, NOON)).toBe(1);
    expect(recallAt(memory, NOON + 10 * DAY)).toBeCloseTo(0.9, 6);
    expect(recallAt(memory, NOON + 20 * DAY)).toBeCloseTo(0.84588, 5);
  });

  it('is due when recall falls to 0.9: after S days, and after 33.16 days for 0.8', () => {
    const memory = { stability: 10, difficulty: 5, lastMs: NOON };
    expect((dueAt(memory) - NOON) / DAY).toBe(10);
    expect(recallAt(memory, NOON + 33.16 * DAY)).toBeCloseTo(0.8, 4);
  });
});

describe('rating: Pelánek 2016', () => {
  it('expects what the logistic says', () => {
    expect(expectedScore(0, 0)).toBe(0.5);
    expect(expectedScore(1, 0)).toBeCloseTo(0.7311, 4);
  });

  it('adds the guessing floor of one in four', () => {
    expect(expectedScore(0, 0, 0.25)).toBe(0.625);
  });

  it('shrinks the step: U(0) = 1, U(20) = 0.5', () => {
    expect(stepSize(0)).toBe(1);
    expect(stepSize(20)).toBe(0.5);
  });

  it('follows the worked example: skill 0.3, difficulty -0.2, K 0.4, a miss', () => {
    const surprise = 0 - expectedScore(0.3, -0.2);
    expect(-surprise).toBeCloseTo(0.6225, 4);
    expect(moved({ at: 0.3, answers: 0 }, surprise, 0.4).at).toBeCloseTo(0.051, 3);
    expect(moved({ at: -0.2, answers: 0 }, surprise, -0.4).at).toBeCloseTo(0.049, 3);
  });

  it('moves the skill up and the difficulty down after a good answer, and the other way after a miss', () => {
    const start = { overall: UNRATED, family: UNRATED, drill: UNRATED };
    const good = rate(start, 1, 0.25);
    const off = rate(start, 0, 0.25);
    expect(good.overall.at).toBeCloseTo(0.375, 10);
    expect(good.drill.at).toBeCloseTo(-0.375, 10);
    expect(off.family.at).toBeCloseTo(-0.625, 10);
    expect(off.drill.at).toBeCloseTo(0.625, 10);
  });
});
