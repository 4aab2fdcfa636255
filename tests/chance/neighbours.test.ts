/**
 * Neighbouring seeds are unrelated wherever something is drawn. Critical values of chi-squared at 0.001 are from the
 * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4; the seeds are fixed, so the figures are too.
 */
import { describe, expect, it } from 'vitest';
import { seededDraw, seedOf } from '../../src/chance/draw.js';
import { planPicks } from '../../src/commands/plan-picks.js';
import { chooseSet, emptyStanding, type SetRequest } from '../../src/practice/index.js';
import { chooseQuestions } from '../../src/quiz/choose.js';
import { questionOrder } from '../../src/quiz/order.js';
import { FAMILIES, fakeDrills, START } from '../practice/simulate.js';
import { someDrill, someHandout } from '../quiz/fixture.js';

const CRITICAL: Readonly<Record<number, number>> = {
  2: 13.816,
  8: 26.124,
  9: 27.877,
  15: 37.697,
  23: 49.728,
};
const SEEDS = 1000;

/** Holds what each of a thousand seeds in a row draws first against an even spread over so many cells. */
function expectEven(cells: number, drawn: (seed: number) => string | number, from = 0): void {
  const counts = new Map<string | number, number>();
  for (let seed = from; seed < from + SEEDS; seed++) {
    const cell = drawn(seed);
    counts.set(cell, (counts.get(cell) ?? 0) + 1);
  }
  const expected = SEEDS / cells;
  const met = [...counts.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  expect(counts.size).toBe(cells);
  expect(met + (cells - counts.size) * expected).toBeLessThan(CRITICAL[cells - 1] as number);
}

/** As {@link expectEven} over what a seed and the next one draw together: neither tells the other. */
function expectUnrelated(cells: readonly string[], drawn: (seed: number) => string): void {
  const pair = (seed: number): string => `${drawn(2 * seed)} ${drawn(2 * seed + 1)}`;
  expectEven(cells.length ** 2, pair);
}

const now = new Date(START);
const request = { standing: emptyStanding(), families: FAMILIES, drills: fakeDrills(), now };
const NEW = ['family-1', 'family-2', 'family-3'];
const set = (more: Partial<SetRequest> & { readonly seed: number }) =>
  chooseSet({ ...request, count: 12, ...more });
/** Seeds of made drills have 31 bits; these are the uppermost four, and the lowest. */
const top = (seed: number): number => seed >>> 27;
const low = (seed: number): number => seed & 15;

describe('the first draws of neighbouring seeds', () => {
  it.each([0, 1, 2])('are even at place %i', (place) => {
    expectEven(24, (seed) => {
      const draw = seededDraw(seed);
      for (let skipped = 0; skipped < place; skipped++) draw(23);
      return draw(23);
    });
  });

  it('are even where a seed is made of a name and a number', () => {
    expectEven(24, (seed) => seededDraw(seedOf('darken-bright', seed))(23));
    expectEven(24, (seed) => seededDraw(seedOf(seed, 'darken-bright'))(23));
    expect(seedOf('a', 1)).not.toBe(seedOf('a1'));
  });
});

describe('sets of neighbouring seeds', () => {
  const opens = (seed: number): string => set({ seed })[0]?.family ?? '';

  it('open with each new family as often as with another', () => {
    expectEven(3, opens);
    expectEven(3, opens, 999_999_000);
  });

  it('open without regard to what the set before opened with', () => {
    expectUnrelated(NEW, opens);
  });

  it('of a hundred in a row, no family opens more than chance would have it', () => {
    // 33.3 expected; 50 or more come in four of ten thousand such hundreds (binomial, 100 draws of one in three).
    for (let from = 0; from < 1000; from += 100) {
      const first = Array.from({ length: 100 }, (_, n) => opens(from + n));
      for (const family of NEW) expect(first.filter((opened) => opened === family).length).toBeLessThan(50);
    }
  });

  it('ask for drills to be made from seeds spread over all there are', () => {
    const made = (seed: number): number => {
      const picks = set({ seed, drills: [], generated: new Set(FAMILIES.map(({ id }) => id)) });
      return picks[0]?.make?.seed ?? -1;
    };
    expectEven(16, (seed) => top(made(seed)));
    expectEven(16, (seed) => low(made(seed)));
  });

  it('share no planned family of one set with another of the next', () => {
    const plan = {
      name: 'Ann',
      quiz: 'Week 3',
      families: ['family-1', 'family-2'].map((family) => ({ family, drills: 1, why: '' })),
    };
    const firsts = (seed: number): readonly (number | undefined)[] =>
      planPicks(plan, { ...request, drills: [], generated: new Set(['family-1', 'family-2']), seed }).map(
        ({ make }) => make?.seed,
      );
    const all = Array.from({ length: SEEDS }, (_, seed) => firsts(seed)).flat();
    expect(new Set(all).size).toBe(2 * SEEDS);
    expectEven(16, (seed) => top(firsts(seed)[1] ?? -1));
  });
});

describe('quizzes of neighbouring seeds', () => {
  const four = someHandout(4);

  it('put the questions of one student in every order alike', () => {
    expectEven(24, (seed) => questionOrder({ ...four, seed }, 'Ann Lee').join(''));
  });

  it('choose their first question evenly', () => {
    const drills = Array.from({ length: 20 }, (_, index) => someDrill(index));
    const families = ['darken-bright'];
    const size = drills.filter(({ family }) => family === 'darken-bright').length;
    expect(size).toBe(10);
    expectEven(size, (seed) => chooseQuestions({ families, count: 1, seed }, drills)[0]?.id ?? '');
  });
});
