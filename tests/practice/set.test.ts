import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HeldAnswer } from '../../src/practice/feedback.js';
import {
  chooseSet,
  dueResults,
  emptyStanding,
  feedbackFor,
  nextSteps,
  type Pick,
  type Standing,
  standingFromJson,
  standingToJson,
} from '../../src/practice/index.js';
import { allBut, always, DAY, entryOf, FAMILIES, fakeDrills, practise, START } from './simulate.js';

const drills = fakeDrills();
const now = new Date(START + 30 * DAY);
const base = { families: FAMILIES, drills, now, seed: 5, count: 12 };

describe("today's set", () => {
  it('is the same for the same standing, time and seed, and another for another seed', () => {
    const { standing } = practise({ knows: always, sets: 8, count: 12, seed: 1 });
    const first = chooseSet({ ...base, standing });
    expect(chooseSet({ ...base, standing })).toEqual(first);
    expect(chooseSet({ ...base, standing, seed: 6 })).not.toEqual(first);
    expect(chooseSet({ ...base, standing: standingFromJson(standingToJson(standing)) as Standing })).toEqual(
      first,
    );
  });

  it('begins a beginner with the worked cases of the first families', () => {
    const picks = chooseSet({ ...base, standing: emptyStanding() });
    expect(new Set(picks.map(({ family }) => family))).toEqual(new Set(['family-1', 'family-2', 'family-3']));
    expect(picks.every(({ reason }) => reason === 'new')).toBe(true);
    for (const family of ['family-1', 'family-2', 'family-3']) {
      const levels = picks.filter((pick) => pick.family === family).map(({ level }) => level);
      expect(levels, 'one worked case, then decisions').toEqual([1, ...levels.slice(1).map(() => 2)]);
    }
  });

  it('puts a worked case first for a family that fails, at whatever level, while there is one not seen lately', () => {
    const { standing } = practise({ knows: allBut('family-4'), sets: 25, count: 12, seed: 9 });
    expect(standing.families.get('family-4')?.recent).toBeLessThan(0.5);
    const next = { ...base, standing, now: new Date(START + 60 * DAY) };
    const levels = (picks: readonly Pick[], id: string): number[] =>
      picks.filter(({ family }) => family === id).map(({ level }) => level);
    const own = standing.families.get('family-4')?.level.level;
    for (let seed = 1; seed <= 20; seed += 1) {
      const [first] = chooseSet({ ...next, seed }).filter(({ family }) => family === 'family-4');
      expect(drills.find(({ id }) => id === first?.drill)?.isWorked).toBe(true);
    }
    const unread = drills.filter(({ isWorked, family }) => isWorked !== true || family !== 'family-4');
    expect(levels(chooseSet({ ...next, drills: unread }), 'family-4')[0]).toBe(own === 1 ? 2 : own);
    expect(levels(chooseSet({ ...next, level: 3 }), 'family-4')[0], 'a level picked by hand holds').toBe(3);
  });

  it('keeps what the summary says of a family not met yet: it starts with a worked case', () => {
    const { standing } = practise({ knows: always, sets: 1, count: 12, seed: 4 });
    const said = nextSteps(standing, FAMILIES, now, 5).find((line) => line.includes('worked case'));
    const title = said?.split(':')[0];
    const id = FAMILIES.find((family) => family.title === title)?.id;
    const first = chooseSet({ ...base, standing }).find(({ family }) => family === id);
    expect(drills.find((drill) => drill.id === first?.drill)?.isWorked).toBe(true);
  });

  it('never sets the same drill twice in a row, also across sets', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 60 }), (seed, count) => {
        const { standing, picks } = practise({
          knows: allBut('family-2'),
          sets: 6,
          count: 10,
          seed,
          drills: fakeDrills(2),
        });
        const next = chooseSet({ ...base, drills: fakeDrills(2), standing, seed, count });
        const ids = [...picks, ...next].map(({ drill }) => drill);
        for (let i = 1; i < ids.length; i += 1) expect(ids[i]).not.toBe(ids[i - 1]);
      }),
      { numRuns: 25 },
    );
  });

  it('is shorter rather than repeat the only drill there is, and asks for made ones where they can be made', () => {
    const one = drills.slice(0, 1);
    const standing = emptyStanding();
    expect(chooseSet({ ...base, standing, drills: one, count: 5 })).toHaveLength(1);
    const made = chooseSet({ ...base, standing, drills: one, count: 5, generated: new Set(['family-1']) });
    expect(made).toHaveLength(5);
    expect(made.filter(({ make }) => make !== undefined)).toHaveLength(4);
    expect(new Set(made.map(({ make, drill }) => make?.seed ?? drill)).size).toBe(5);
  });

  it('keeps to one family when asked', () => {
    const picks = chooseSet({ ...base, standing: emptyStanding(), family: 'family-9', count: 6 });
    expect(picks.map(({ family }) => family)).toEqual(Array(6).fill('family-9'));
    expect(() => chooseSet({ ...base, standing: emptyStanding(), family: 'nobody' })).toThrow(
      /no family called nobody/,
    );
  });

  it('sets families that look alike side by side from level 3 on', () => {
    const { standing } = practise({ knows: always, sets: 30, count: 12, seed: 2 });
    let pairs = 0;
    let alike = 0;
    for (let seed = 1; seed <= 20; seed += 1) {
      const order = chooseSet({ ...base, standing, seed, now: new Date(START + 60 * DAY) }).map(
        ({ family }) => family,
      );
      for (let i = 1; i < order.length; i += 1) {
        const both = [order[i - 1], order[i]].sort().join(' ');
        if (['family-10 family-11', 'family-4 family-5', 'family-6 family-8'].includes(both)) alike += 1;
        pairs += 1;
        expect(order[i]).not.toBe(order[i - 1]);
      }
    }
    // Three of the 105 pairs of fifteen families look alike: 3 % by chance.
    expect(alike / pairs).toBeGreaterThan(0.15);
  });

  it('brings up what is due before what is fresh', () => {
    const { standing } = practise({ knows: always, sets: 30, count: 12, seed: 2 });
    const family = standing.families.get('family-7');
    if (family === undefined) throw new Error('family-7 was practised');
    family.memory = { ...family.memory, stability: 3, lastMs: START };
    const picks = chooseSet({ ...base, standing });
    expect(picks.find((pick) => pick.family === 'family-7')?.reason).toBe('due');
  });

  it('refuses a count out of range', () => {
    expect(() => chooseSet({ ...base, standing: emptyStanding(), count: 0 })).toThrow(RangeError);
    expect(() => chooseSet({ ...base, standing: emptyStanding(), count: 501 })).toThrow(RangeError);
  });
});

describe('feedback', () => {
  /** The places explained after each answer of a set with drills of these levels. */
  function explained(levels: readonly number[]): number[][] {
    let held: HeldAnswer[] = [];
    return levels.map((level, place) => {
      held = [...held, { place, feedback: feedbackFor(level) }];
      const due = dueResults(held);
      held = held.filter((answer) => !due.includes(answer.place));
      return [...due];
    });
  }

  it('is complete up to level 3, after every third answer at level 4, not before the end at level 5', () => {
    expect(explained([1, 4, 4, 5, 4, 3, 4])).toEqual([[0], [], [], [], [1, 2, 4], [5], []]);
  });

  it('explains no answer twice, and every one at levels 1-3', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 40 }), (levels) => {
        const shown = explained(levels).flat();
        expect(new Set(shown).size).toBe(shown.length);
        for (const [place, level] of levels.entries()) if (level <= 3) expect(shown).toContain(place);
        expect(shown.some((place) => levels[place] === 5)).toBe(false);
      }),
    );
  });
});

it('a made drill is answered like any other', () => {
  const pick = {
    family: 'family-1',
    level: 2,
    reason: 'weak',
    feedback: 'each',
    make: { seed: 9 },
  } as const;
  expect(entryOf(pick, 'good', START, 's').drill).toBe('made-9');
});
