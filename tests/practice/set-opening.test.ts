/** How the drills of one family follow each other in a set: the worked case, the level of the others, how often each comes. */
import { describe, expect, it } from 'vitest';
import { chooseSet, type DrillRef, foldSorted, type SetRequest } from '../../src/practice/index.js';
import type { FamilyStanding } from '../../src/practice/standing.js';
import { DAY, entryOf, FAMILIES, fakeDrills, START } from './simulate.js';

const ONE = 'family-1';
const SEEDS = Array.from({ length: 20 }, (_, n) => n + 1);
const isWorked = (id: string | undefined): boolean => id?.startsWith('worked') === true;

/** Three drills at each level and two worked cases at level 1, of every family. */
const DRILLS: readonly DrillRef[] = FAMILIES.flatMap(({ id }) => [
  ...fakeDrills(
    3,
    FAMILIES.filter((family) => family.id === id),
  ).map(({ isWorked: _, ...drill }): DrillRef => drill),
  ...[1, 2].map((n): DrillRef => ({ id: `worked-${id}-${n}`, family: id, level: 1, isWorked: true })),
]);

/** A standing in which every family was answered once long ago, and the first stands as given. */
function standingOf(own: Partial<FamilyStanding>, level: number, others = 1) {
  const standing = foldSorted(
    FAMILIES.map(({ id }) =>
      entryOf(
        { family: id, level: 1, reason: 'due', feedback: 'each', drill: `old-${id}` },
        'good',
        START,
        's',
      ),
    ),
  );
  for (const [id, known] of standing.families) {
    const at = id === ONE ? level : others;
    standing.families.set(id, { ...known, level: { ...known.level, level: at }, ...(id === ONE && own) });
  }
  return standing;
}
const EMPTY = foldSorted([]);
const SET: SetRequest = {
  standing: EMPTY,
  families: FAMILIES,
  drills: DRILLS,
  now: new Date(START + DAY),
  seed: 1,
  count: 4,
  family: ONE,
};
/** For each seed the levels of a set, a worked case as `w`. */
const shown = (request: Partial<SetRequest>): string[] => [
  ...new Set(
    SEEDS.map((seed) =>
      chooseSet({ ...SET, ...request, seed })
        .map(({ drill, level }) => (isWorked(drill) ? 'w' : level))
        .join(' '),
    ),
  ),
];

describe('the first drill of a family', () => {
  it('is a worked case where the family is new, and the learner decides from the second on', () => {
    expect(shown({})).toEqual(['w 2 2 2']);
  });

  it('is one of level 1 where no worked case is written', () => {
    expect(shown({ drills: DRILLS.filter(({ id }) => !isWorked(id)) })).toEqual(['1 2 2 2']);
  });

  it('is one of its own level where the placing round starts a new family higher', () => {
    const placed = foldSorted(
      Array.from({ length: 8 }, (_, n) => ({
        ...entryOf(
          { family: `family-${n + 2}`, level: 4, reason: 'placing', feedback: 'each', drill: `p-${n}` },
          'good',
          START,
          'placing',
        ),
        placing: true as const,
      })),
    );
    expect(shown({ standing: placed })).toEqual(['3 3 3 3']);
  });

  it('is a worked case where fewer than half of the answers are known, at any level', () => {
    const failing = (recent: number, level: number) => shown({ standing: standingOf({ recent }, level, 5) });
    // At level 1 the other worked case may come as well.
    for (const set of failing(0.49, 1)) expect(set).toMatch(/^w( [w1]){3}$/);
    expect(failing(0.49, 3)).toEqual(['w 3 3 3']);
  });

  it('is none where a family is only behind the others', () => {
    expect(shown({ standing: standingOf({ recent: 0.5 }, 3, 5) })).toEqual(['3 3 3 3']);
    expect(shown({ standing: standingOf({ recent: 0.9 }, 3, 5) })).toEqual(['3 3 3 3']);
  });

  it('is a decision where a family at level 1 goes well', () => {
    expect(shown({ standing: standingOf({ recent: 0.9 }, 1) })).toEqual(['2 2 2 2']);
  });

  it('is no worked case that was read a short while ago', () => {
    const standing = standingOf({ recent: 0.2 }, 3, 5);
    for (const n of [1, 2]) {
      const read = standing.drills.get(`old-${ONE}`);
      if (read !== undefined) standing.drills.set(`worked-${ONE}-${n}`, read);
    }
    expect(shown({ standing, now: new Date(START + DAY / 2) })).toEqual(['3 3 3 3']);
  });
});

describe('the drills of a set', () => {
  it.each([1, 500])('are %i where so many are asked', (count) => {
    expect(chooseSet({ ...SET, count })).toHaveLength(count);
    const { family: _, ...mixed } = SET;
    expect(chooseSet({ ...mixed, count })).toHaveLength(count);
  });

  it.each([0, 501, 1.5, Number.NaN])('are not %d', (count) => {
    expect(() => chooseSet({ ...SET, count })).toThrow(
      new RangeError(`count is ${count}; a set has 1 to 500 drills`),
    );
  });

  it('come equally often where there are fewer than asked', () => {
    for (const seed of SEEDS) {
      const times = new Map<string, number>();
      for (const { drill = '' } of chooseSet({ ...SET, seed, level: 3, count: 12 }))
        times.set(drill, (times.get(drill) ?? 0) + 1);
      expect([...times.values()]).toEqual([4, 4, 4]);
    }
  });

  it('are all made where none is written', () => {
    const made = chooseSet({ ...SET, drills: [], generated: new Set([ONE]), level: 4 });
    expect(made.map(({ level, make, drill }) => [level, make !== undefined, drill])).toEqual(
      Array(4).fill([4, true, undefined]),
    );
    expect(chooseSet({ ...SET, drills: [] })).toEqual([]);
  });

  it('are made at the level asked, rather than written ones of another', () => {
    const easy = DRILLS.filter(({ level }) => level < 3);
    const made = chooseSet({ ...SET, drills: easy, generated: new Set([ONE]), level: 4 });
    expect(made.map(({ level, make }) => [level, make !== undefined])).toEqual(Array(4).fill([4, true]));
  });
});
