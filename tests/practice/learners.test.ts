/** Simulated learners over fifteen families and five levels, with two options at levels 1 and 2. */
import { describe, expect, it } from 'vitest';
import { chooseSet } from '../../src/practice/index.js';
import { casesOf, some } from '../cases.js';
import { allBut, always, DAY, FAMILIES, fakeDrills, never, practise, START } from './simulate.js';

const SEEDS = [11, 12, 13, 14, 15];

describe('a learner who always answers best', () => {
  it.each(some(SEEDS, 2))('rises to the top level in every family (seed %i)', (seed) => {
    const { standing, setsToTop } = practise({ knows: always, sets: 40, count: 12, seed });
    expect([...standing.families.values()].map(({ level }) => level.level)).toEqual(Array(15).fill(5));
    expect(setsToTop).toBeLessThanOrEqual(30);
  });
});

describe('a learner who answers at random', () => {
  it.each(some(SEEDS, 2))('does not pass level 2 in 1,200 answers (seed %i)', (seed) => {
    const { highest, picks } = practise({ knows: never, sets: 100, count: 12, seed });
    expect(picks).toHaveLength(1200);
    expect(Math.max(...highest.values())).toBe(2);
  });

  it('passes it in at most one life of a hundred, over 200 of them', () => {
    let passed = 0;
    for (let seed = 1000; seed < 1000 + casesOf(200, 50); seed += 1) {
      const { highest } = practise({ knows: never, sets: 50, count: 12, seed });
      if (Math.max(...highest.values()) > 2) passed += 1;
    }
    expect(passed).toBeLessThanOrEqual(Math.ceil(0.01 * casesOf(200, 50)));
  });
});

describe('a learner who knows all but one family', () => {
  const cases = SEEDS.flatMap((seed) =>
    ['family-1', 'family-5', 'family-9', 'family-15'].map((weak) => [weak, seed] as const),
  );

  it.each(some(cases, 2))(
    'is given %s in more than half of the next 60 drills, in five sets (seed %i)',
    (weak, seed) => {
      const { standing } = practise({ knows: allBut(weak), sets: 40, count: 12, seed });
      const next = practise({
        knows: allBut(weak),
        sets: 5,
        count: 12,
        seed: seed + 99,
        standing,
        firstDay: 40,
      });
      expect(next.picks).toHaveLength(60);
      expect(next.picks.filter(({ family }) => family === weak).length).toBeGreaterThan(30);
    },
  );

  it.each(some(cases, 2))('is given %s in more than half of one set of 60 (seed %i)', (weak, seed) => {
    const { standing } = practise({ knows: allBut(weak), sets: 40, count: 12, seed });
    const now = new Date(START + 40 * DAY);
    const picks = chooseSet({ standing, families: FAMILIES, drills: fakeDrills(), now, seed, count: 60 });
    expect(picks).toHaveLength(60);
    expect(picks.filter(({ family }) => family === weak).length).toBeGreaterThan(30);
  });

  it('is given it too when it was never met', () => {
    const others = FAMILIES.slice(0, 14);
    const drills = fakeDrills(3, others);
    const { standing } = practise({ knows: always, sets: 40, count: 12, seed: 3, drills });
    expect(standing.families.has('family-15')).toBe(false);
    const now = new Date(START + 40 * DAY);
    const picks = chooseSet({ standing, families: FAMILIES, drills: fakeDrills(), now, seed: 3, count: 60 });
    expect(picks.filter(({ family }) => family === 'family-15').length).toBeGreaterThan(30);
  });
});

describe('a learner who knows three in four', () => {
  it('works at the upper levels of every family', () => {
    const { standing } = practise({ knows: () => 0.75, sets: 90, count: 12, seed: 7 });
    for (const { level } of standing.families.values()) expect(level.level).toBeGreaterThanOrEqual(3);
  });
});
