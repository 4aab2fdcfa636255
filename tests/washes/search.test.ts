/** The search for the best mixture: against all choices written out, and against random ones. */
import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { hueDifference } from '../../src/colour/lab.js';
import type { ColourReading } from '../../src/colour/reading.js';
import {
  amountsOf,
  bestBetween,
  bestOnScale,
  everyMixture,
  type Line,
  layMixture,
  linesOf,
  type Merit,
  type Mixture,
  type Open,
  seeLaid,
  trialOf,
} from '../../src/washes/index.js';
import { IN_MUTANTS, some } from '../cases.js';
import { STUDIO } from '../studio.js';

const BOX = STUDIO.palettes.find(({ id }) => id === 'twelve')?.pigments ?? [];
const FIRST = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };

const SMALL: Open = {
  first: FIRST,
  tray: ['alizarin-crimson', 'ultramarine-blue', 'lemon-yellow'],
  most: 2,
  ratios: [1 / 8, 1 / 2, 1],
  glazes: [0.1, 0.4],
  strokes: [
    { share: 0.25, strength: 0.3 },
    { share: 0.6, strength: 0.3 },
    { share: 0.4, strength: 0.65 },
  ],
  thins: [1, 3],
};

/** A colour to come near to. */
interface Goal {
  readonly step: number;
  readonly chroma: number;
  readonly hue: number;
}

const GOALS: readonly Goal[] = [
  { step: 5.5, chroma: 45, hue: 35 },
  { step: 4, chroma: 6, hue: 250 },
  { step: 7.5, chroma: 20, hue: 300 },
  { step: 3, chroma: 40, hue: 80 },
];

/** Nearness: lightness, chroma and the arc of hue in units of CIELAB. */
const nearTo =
  (goal: Goal) =>
  ({ step, chroma, hue }: ColourReading): number => {
    const arc =
      2 * Math.sqrt(chroma * goal.chroma) * Math.sin((hueDifference(goal.hue, hue) * Math.PI) / 360);
    return -Math.hypot(10 * (step - goal.step), chroma - goal.chroma, arc);
  };

/** Every choice of the scales, written out without the search. */
function everyChoice({ tray, ratios, glazes, strokes, thins }: Open): Mixture[] {
  const pairs = tray.flatMap((a) => tray.filter((b) => b !== a).map((b) => [a, b] as const));
  const two = (amounts: readonly number[], rest: Omit<Mixture, 'added'>): Mixture[] => [
    ...tray.flatMap((id) => amounts.map((amount) => ({ ...rest, added: [{ id, amount }] }))),
    ...pairs.flatMap(([a, b]) =>
      amounts.flatMap((x) =>
        amounts.map((y) => ({
          ...rest,
          added: [
            { id: a, amount: x },
            { id: b, amount: y },
          ],
        })),
      ),
    ),
  ];
  return [
    ...thins.flatMap((thin) => two(ratios, { way: 'puddle', strength: 0, thin })),
    ...two(glazes, { way: 'glaze', strength: 0, thin: 1 }),
    ...[0.3, 0.65].flatMap((strength) =>
      two(
        strokes.filter((one) => one.strength === strength).map(({ share }) => share),
        { way: 'strokes', strength, thin: 1 },
      ).filter(({ added }) => added.reduce((sum, { amount }) => sum + amount, 0) < 1),
    ),
  ];
}

describe('what is open', () => {
  test('order matters in glazes alone; a way without amounts is closed', () => {
    const count = (open: Partial<Open>): number => linesOf({ ...SMALL, ...open }).length;
    // Three paints: 3 alone and 3 pairs, with two waters; 3 and 6 ordered pairs; 3 and 3 at two strengths.
    expect(count({})).toBe(2 * 6 + 9 + 2 * 6);
    expect(count({ most: 1 })).toBe(2 * 3 + 3 + 2 * 3);
    expect(count({ ratios: [], strokes: [] })).toBe(9);
    expect(count({ ratios: [], strokes: [], glazes: [] })).toBe(0);
    expect(bestOnScale(STUDIO, { ...SMALL, ratios: [], glazes: [], strokes: [] }, () => 1)).toBeUndefined();
  });

  test('strokes never cover more than the paper', () => {
    for (const { line, amounts } of everyMixture(STUDIO, SMALL)) {
      if (line.way === 'strokes') expect(amounts.reduce((sum, share) => sum + share, 0)).toBeLessThan(1);
    }
  });
});

describe('the best on the scales', () => {
  test.each(some(GOALS, 2))('is the best of all choices written out: %j', (goal) => {
    const merit = nearTo(goal);
    const best = Math.max(
      ...everyChoice(SMALL).map((mixture) => merit(seeLaid(STUDIO, layMixture(FIRST, mixture)).colour)),
    );
    const found = bestOnScale(STUDIO, SMALL, merit);
    expect(found?.merit).toBeCloseTo(best, 9);
    if (found === undefined) throw new Error('nothing found');
    expect(merit(seeLaid(STUDIO, layMixture(FIRST, found.mixture)).colour)).toBeCloseTo(best, 9);
  });

  test('of equals the first', () => {
    const [line] = linesOf(SMALL) as [Line];
    const found = bestOnScale(STUDIO, SMALL, () => 1);
    expect(found?.mixture.added).toEqual([{ id: line.ids[0], amount: Math.min(...SMALL.ratios) }]);
  });
});

const WIDE: Open = {
  first: FIRST,
  tray: BOX,
  most: 2,
  ratios: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1],
  glazes: [0.05, 0.1, 0.2, 0.4, 0.8],
  strokes: [0.1, 0.25, 0.45].map((share) => ({ share, strength: 0.3 })),
  thins: [1, 2],
};

/** The best of so many random mixtures, paints, way, water and amounts between the ends of the scales. */
function bestOfRandom(open: Open, merit: Merit, tries: number, seed: number): number {
  const draw = seededDraw(seed);
  const lines = linesOf(open).map((line) => ({ line, trial: trialOf(STUDIO, open.first, line) }));
  let best = Number.NEGATIVE_INFINITY;
  for (let count = 0; count < tries; count++) {
    const { line, trial } = lines[draw(lines.length - 1)] as (typeof lines)[number];
    const scale = amountsOf(open, line);
    const [low, high] = [Math.log(scale[0] as number), Math.log(scale.at(-1) as number)];
    const amounts = line.ids.map(() => Math.exp(low + ((high - low) * draw(1e6)) / 1e6));
    if (line.way === 'strokes' && amounts.reduce((sum, share) => sum + share, 0) >= 1) continue;
    best = Math.max(best, merit(trial(amounts), line, amounts));
  }
  return best;
}

describe('the best between the scales', () => {
  test.skipIf(IN_MUTANTS).each([1, 2] as const)(
    'with %d further paints no random amounts beat it',
    (most) => {
      for (const [seed, goal] of GOALS.entries()) {
        const open: Open = { ...WIDE, most };
        const merit = nearTo(goal);
        const [found] = bestBetween(STUDIO, open, merit);
        expect(bestOfRandom(open, merit, 2000, seed)).toBeLessThanOrEqual((found?.merit ?? -Infinity) + 1e-9);
        // Nor does the scale, and what it found gives what it says.
        expect(bestOnScale(STUDIO, open, merit)?.merit).toBeLessThanOrEqual((found?.merit ?? 0) + 1e-9);
        if (found === undefined) throw new Error('nothing found');
        expect(merit(seeLaid(STUDIO, layMixture(FIRST, found.mixture)).colour)).toBeCloseTo(found.merit, 9);
      }
    },
    60_000,
  );

  test.skipIf(IN_MUTANTS)(
    'nor do random amounts along the very line that it found',
    () => {
      for (const [seed, goal] of GOALS.entries()) {
        const merit = nearTo(goal);
        const [found] = bestBetween(STUDIO, WIDE, merit);
        if (found === undefined) throw new Error('nothing found');
        const { added, ...rest } = found.mixture;
        const tray = added.map(({ id }) => id);
        const here: Open = {
          ...WIDE,
          tray,
          ratios: rest.way === 'puddle' ? WIDE.ratios : [],
          glazes: rest.way === 'glaze' ? WIDE.glazes : [],
          strokes: rest.way === 'strokes' ? WIDE.strokes : [],
        };
        expect(bestOfRandom(here, merit, 2000, seed + 100)).toBeLessThanOrEqual(found.merit + 1e-9);
      }
    },
    60_000,
  );

  test('gives so many, best first, one for each set of paints and way, inside the ends of the scales', () => {
    const found = bestBetween(STUDIO, WIDE, nearTo(GOALS[0] as Goal), 5);
    expect(found).toHaveLength(5);
    expect(found.map(({ merit }) => merit)).toEqual(found.map(({ merit }) => merit).sort((a, b) => b - a));
    const keys = found.map(({ mixture: { added, way, strength, thin } }) =>
      [way, ...added.map(({ id }) => id), strength, thin].join(' '),
    );
    expect(new Set(keys).size).toBe(5);
    for (const { mixture } of found) {
      const scale = amountsOf(WIDE, { ...mixture, ids: [] });
      for (const { amount } of mixture.added) {
        expect(amount).toBeGreaterThanOrEqual(scale[0] as number);
        expect(amount).toBeLessThanOrEqual(scale.at(-1) as number);
      }
    }
  }, 30_000);

  test('is the same each time', () => {
    const merit = nearTo(GOALS[1] as Goal);
    expect(bestBetween(STUDIO, SMALL, merit, 3)).toEqual(bestBetween(STUDIO, SMALL, merit, 3));
  });
});
