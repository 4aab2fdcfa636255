/**
 * Around, between, across against what painters and a spectrophotometer say.
 * Complements and pairs that do not neutralise: B. MacEvoy, guide to watercolor pigments (handprint.com), mixing complements and
 * the colour wheel page, rev. 2015; carried with source and licence in src/accuracy/data/complements.json.
 * The default box: common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import data from '../../src/accuracy/data/complements.json' with { type: 'json' };
import { type RelationKind, relationBetween, relationOf } from '../../src/judgement/index.js';
import { paintOf, STUDIO } from '../studio.js';

const kindOf = (a: string, b: string): RelationKind => relationOf(STUDIO, { [a]: 1 }, b).kind;

/** A pair with its figures, for a failure that explains itself. */
function figures(a: string, b: string): string {
  const { kind, kept, least, thirdDeg } = relationOf(STUDIO, { [a]: 1 }, b);
  return `${a} and ${b}: ${kind} (kept ${kept.toFixed(2)}, least ${least.toFixed(1)}, third ${thirdDeg.toFixed(0)})`;
}

const pairs = data.pairs.map(([a, b]) => [String(a), String(b)] as const);
const others = data.nonComplements.map(([a, b]) => [String(a), String(b)] as const);

describe('published complements', () => {
  test('lie across, or one of the two is itself neutral, in 85 of 100', () => {
    const odd = pairs.filter(([a, b]) => kindOf(a, b) !== 'across' && kindOf(a, b) !== 'neutral');
    expect(pairs.length).toBeGreaterThanOrEqual(100);
    expect(odd.length / pairs.length, odd.map(([a, b]) => figures(a, b)).join('; ')).toBeLessThanOrEqual(
      0.15,
    );
  });

  test('none of them goes around', () => {
    expect(pairs.filter(([a, b]) => kindOf(a, b) === 'around').map(([a, b]) => figures(a, b))).toEqual([]);
  });

  test('nor does a pair that makes another colour instead', () => {
    expect(others.length).toBeGreaterThanOrEqual(25);
    expect(others.filter(([a, b]) => kindOf(a, b) === 'around').map(([a, b]) => figures(a, b))).toEqual([]);
  });
});

const BLUES = ['ultramarine-blue', 'cobalt-blue', 'cerulean-blue', 'prussian-blue'];
const YELLOWS = ['lemon-yellow', 'cadmium-yellow'];
const each = (ones: readonly string[], twos: readonly string[]): [string, string][] =>
  ones.flatMap((one) => twos.map((two): [string, string] => [one, two]));

const BOX: Readonly<Record<'around' | 'between' | 'across', [string, string][]>> = {
  around: [
    ...each(['ultramarine-blue'], ['cobalt-blue', 'prussian-blue', 'cerulean-blue']),
    ...each(['burnt-sienna'], ['cadmium-red', 'alizarin-crimson', 'raw-sienna']),
    ...each(YELLOWS, ['raw-sienna', 'burnt-sienna', 'cadmium-red']),
  ],
  between: [
    ...each(YELLOWS, BLUES),
    ...each(['alizarin-crimson'], BLUES),
    ...each(['sap-green'], ['cadmium-red', 'alizarin-crimson', ...BLUES]),
    // A crimson holds blue: with a yellow it makes a quieter orange than a warm red does.
    ...each(YELLOWS, ['alizarin-crimson']),
  ],
  across: [
    ...each(['burnt-sienna'], BLUES),
    ...each(['cadmium-red'], ['prussian-blue', 'cerulean-blue']),
    ...each(['raw-sienna'], ['ultramarine-blue', 'cobalt-blue']),
  ],
};

describe('the default box (common practice, no source)', () => {
  test.each(Object.keys(BOX) as (keyof typeof BOX)[])('%s', (kind) => {
    const odd = BOX[kind].flatMap(([a, b]) => [
      ...(kindOf(a, b) === kind ? [] : [figures(a, b)]),
      ...(kindOf(b, a) === kind ? [] : [figures(b, a)]),
    ]);
    expect(odd).toEqual([]);
  });

  test('black is neutral to all, and so is a white', () => {
    const box = STUDIO.palettes.find(({ id }) => id === 'twelve')?.pigments ?? [];
    for (const id of box) {
      expect(kindOf(id, 'ivory-black')).toBe('neutral');
      expect(kindOf('chinese-white', id)).toBe('neutral');
    }
  });
});

describe('the word belongs to the pair', () => {
  test('it is the same from either side, for every pair of the library', () => {
    const ids = STUDIO.paints.map(({ id }) => id);
    const odd = ids.flatMap((a, at) =>
      ids
        .slice(at + 1)
        .filter((b) => kindOf(a, b) !== kindOf(b, a))
        .map((b) => `${figures(a, b)} / ${figures(b, a)}`),
    );
    expect(odd).toEqual([]);
  }, 60_000);

  test('it does not hang on how much of either lies there', () => {
    const [one, other] = [paintOf('burnt-sienna'), paintOf('ultramarine-blue')];
    const wanted = relationOf(STUDIO, { 'burnt-sienna': 1 }, 'ultramarine-blue');
    for (const [a, b] of [
      [0.01, 3],
      [2, 0.05],
    ] as const) {
      const found = relationBetween(STUDIO, [{ pigment: one, load: a }], [{ pigment: other, load: b }]);
      expect(found.kept).toBeCloseTo(wanted.kept, 9);
      expect(found.least).toBeCloseTo(wanted.least, 9);
    }
  });

  test('a paint goes around with itself, unless it is neutral', () => {
    for (const { id } of STUDIO.paints) expect(['around', 'neutral']).toContain(kindOf(id, id));
  });
});
