/** No drill comes twice in a day, nor twice in three sets, while others are left; a level can be picked by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addAnswer,
  chooseMend,
  chooseSet,
  emptyStanding,
  type HistoryEntry,
  mistakesOf,
  type Standing,
} from '../../src/practice/index.js';
import { DAY, entryOf, FAMILIES, fakeDrills, START } from './simulate.js';

const everyFamily = new Set(FAMILIES.map(({ id }) => id));

/** Answers sets at the times given; the drills of each, made ones by their seed. */
function sets(options: {
  readonly times: readonly number[];
  readonly seed: number;
  readonly standing?: Standing;
  readonly generated?: ReadonlySet<string>;
  readonly perLevel?: number;
  readonly verdict?: (n: number) => HistoryEntry['verdict'];
}): string[][] {
  const { times, seed, standing = emptyStanding(), generated, perLevel = 3, verdict = () => 'off' } = options;
  let n = 0;
  return times.map((atMs, place) => {
    const picks = chooseSet({
      standing,
      families: FAMILIES,
      drills: fakeDrills(perLevel),
      now: new Date(atMs),
      seed: seed + place,
      count: 8,
      ...(generated && { generated }),
    });
    for (const pick of picks) addAnswer(standing, entryOf(pick, verdict(n++), atMs, `set-${place}`));
    return picks.map(({ drill, make }) => drill ?? `made-${make?.seed}`);
  });
}

describe('the same drill', () => {
  const verdicts = fc.array(fc.constantFrom('good', 'fair', 'off' as const), { minLength: 5, maxLength: 40 });

  it('does not come twice in a day, however many sets, where drills can be made', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), verdicts, (seed, list) => {
        const times = Array.from({ length: 8 }, (_, hour) => START + hour * 3_600_000);
        const shown = sets({
          times,
          seed,
          generated: everyFamily,
          verdict: (n) => list[n % list.length] ?? 'off',
        });
        expect(new Set(shown.flat()).size).toBe(shown.flat().length);
      }),
      { numRuns: 40 },
    );
  });

  it('does not come twice in three sets, days apart', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), verdicts, (seed, list) => {
        const times = Array.from({ length: 12 }, (_, day) => START + day * 5 * DAY);
        const shown = sets({
          times,
          seed,
          generated: everyFamily,
          verdict: (n) => list[n % list.length] ?? 'off',
        });
        for (let i = 2; i < shown.length; i += 1) {
          const three = [...(shown[i - 2] ?? []), ...(shown[i - 1] ?? []), ...(shown[i] ?? [])];
          expect(new Set(three).size).toBe(three.length);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('comes again after three sets where it was missed', () => {
    const times = Array.from({ length: 30 }, (_, day) => START + day * 2 * DAY);
    const shown = sets({ times, seed: 3, generated: everyFamily }).flat();
    expect(new Set(shown).size).toBeLessThan(shown.length);
  });

  it('comes again at once only where none can be made and none is left', () => {
    const [first = [], second = []] = sets({ times: [START, START + 60_000], seed: 5, perLevel: 12 });
    expect(second.filter((id) => first.includes(id))).toEqual([]);
    const few = sets({ times: [START, START + 60_000], seed: 5, perLevel: 1 });
    expect(few[1]?.length).toBeGreaterThan(0);
  });
});

describe('a level picked by hand', () => {
  const base = { families: FAMILIES, now: new Date(START), seed: 5, count: 8, standing: emptyStanding() };

  it.each([1, 2, 3, 4, 5])('gives drills of level %i, written ones first, then made ones', (level) => {
    const picks = chooseSet({
      ...base,
      drills: fakeDrills(3),
      generated: everyFamily,
      family: 'family-4',
      level,
    });
    expect(picks.map((pick) => pick.level)).toEqual(Array(8).fill(level));
    expect(picks.map(({ drill }) => drill !== undefined)).toEqual([
      true,
      true,
      true,
      ...Array(5).fill(false),
    ]);
    const mixed = chooseSet({ ...base, drills: fakeDrills(3), level });
    expect(mixed.every((pick) => pick.level === level)).toBe(true);
  });

  it('leaves out what has no drill of that level', () => {
    const drills = fakeDrills(3).filter(({ family, level }) => family !== 'family-1' || level !== 4);
    expect(chooseSet({ ...base, drills, family: 'family-1', level: 4 })).toEqual([]);
    expect(chooseSet({ ...base, drills, level: 4 }).some(({ family }) => family === 'family-1')).toBe(false);
    expect(() => chooseSet({ ...base, drills, level: 6 })).toThrow(/levels are 1 to 5/);
  });
});

describe('mending', () => {
  const missed = (family: string, level: number, idea: string, drill: string): HistoryEntry => ({
    ...entryOf({ family, level, reason: 'due', feedback: 'each', drill }, 'off', START, 's'),
    idea,
  });
  const entries = [
    missed('family-2', 3, 'too-dark', 'family-2-3-1'),
    missed('family-1', 4, 'went-across', 'family-1-4-1'),
    missed('family-1', 2, 'went-across', 'family-1-2-1'),
    { ...missed('family-3', 2, 'too-light', 'family-3-2-1'), try: 2 },
    { ...missed('family-3', 2, 'too-light', 'family-3-2-2'), verdict: 'good' as const },
  ];

  it('gathers first answers that were not good by their idea, the most frequent first', () => {
    expect(mistakesOf(entries)).toEqual([
      { idea: 'went-across', count: 2, family: 'family-1', level: 2 },
      { idea: 'too-dark', count: 1, family: 'family-2', level: 3 },
    ]);
    expect(mistakesOf([])).toEqual([]);
  });

  it('gives one drill for each, of its family and level, none of them just done, and asks whether it can show it', () => {
    const standing = emptyStanding();
    for (const entry of entries) addAnswer(standing, entry);
    const source = {
      standing,
      families: FAMILIES,
      drills: fakeDrills(3),
      now: new Date(START + 60_000),
      seed: 1,
    };
    const picks = chooseMend(source, mistakesOf(entries));
    expect(picks.map(({ family, level, reason }) => [family, level, reason])).toEqual([
      ['family-1', 2, 'mend'],
      ['family-2', 3, 'mend'],
    ]);
    for (const { drill } of picks) expect(standing.drills.has(drill ?? '')).toBe(false);
    const only = chooseMend(source, mistakesOf(entries), (drill) => drill.endsWith('3'));
    expect(only.map(({ drill }) => drill)).toEqual(['family-1-2-3', 'family-2-3-3']);
    const made = chooseMend({ ...source, generated: everyFamily }, mistakesOf(entries), () => false);
    expect(made.map(({ make, idea }) => [make !== undefined, idea])).toEqual([
      [true, 'went-across'],
      [true, 'too-dark'],
    ]);
  });
});
