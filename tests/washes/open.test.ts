/** Water and strength left open: what lies along such a line, and that the quick trial agrees with the full prediction. */
import { describe, expect, test } from 'vitest';
import {
  combinations,
  everyMixture,
  type Line,
  layAmounts,
  linesOf,
  mixtureOf,
  type Open,
  scalesOf,
  seeLaid,
  strengthAlong,
  strengthOf,
  trialOf,
  washesOf,
  washLoads,
} from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const FIRST = { paints: { 'burnt-sienna': 2, 'raw-sienna': 1 }, strength: 0.4 };
const OPEN: Open = {
  first: FIRST,
  tray: ['alizarin-crimson', 'ultramarine-blue'],
  most: 2,
  ratios: [1, 1 / 4, 1 / 2, 1 / 4],
  glazes: [0.4, 0.1],
  strokes: [
    { share: 0.6, strength: 0.3 },
    { share: 0.25, strength: 0.3 },
    { share: 0.4, strength: 0.65 },
  ],
  thins: [1, 3],
};
const WATER: Open = { ...OPEN, waters: [8, 1] };
const STRENGTH: Open = { ...OPEN, strengths: [0.8, 0.1] };

const says = ({ way, ids, strength, thin, last }: Line): string =>
  [way, ...ids, strength, thin, last].filter((part) => part !== undefined).join(' ');

describe('the lines of what is open', () => {
  test('with set water: every water stirred, every order of glazes, every strength of strokes', () => {
    expect(linesOf(OPEN).map(says)).toEqual([
      'puddle alizarin-crimson 0 1',
      'puddle alizarin-crimson 0 3',
      'puddle ultramarine-blue 0 1',
      'puddle ultramarine-blue 0 3',
      'puddle alizarin-crimson ultramarine-blue 0 1',
      'puddle alizarin-crimson ultramarine-blue 0 3',
      'glaze alizarin-crimson 0 1',
      'glaze ultramarine-blue 0 1',
      'glaze alizarin-crimson ultramarine-blue 0 1',
      'glaze ultramarine-blue alizarin-crimson 0 1',
      'strokes alizarin-crimson 0.3 1',
      'strokes ultramarine-blue 0.3 1',
      'strokes alizarin-crimson ultramarine-blue 0.3 1',
      'strokes alizarin-crimson 0.65 1',
      'strokes ultramarine-blue 0.65 1',
      'strokes alizarin-crimson ultramarine-blue 0.65 1',
    ]);
  });

  test('with open water: the first wash by itself is one too, and no water is set', () => {
    expect(linesOf({ ...WATER, glazes: [], strokes: [] }).map(says)).toEqual([
      'puddle 0 1 water',
      'puddle alizarin-crimson 0 1 water',
      'puddle ultramarine-blue 0 1 water',
      'puddle alizarin-crimson ultramarine-blue 0 1 water',
    ]);
    // Glazes and strokes are not thinned.
    expect(linesOf({ ...WATER, ratios: [] }).map(says)).toEqual(linesOf({ ...OPEN, ratios: [] }).map(says));
  });

  test('with open strength: in every way, strokes as strong as the wash', () => {
    expect(linesOf({ ...STRENGTH, most: 1 }).map(says)).toEqual([
      'puddle 0 1 strength',
      'puddle alizarin-crimson 0 1 strength',
      'puddle ultramarine-blue 0 1 strength',
      'glaze alizarin-crimson 0 1 strength',
      'glaze ultramarine-blue 0 1 strength',
      'strokes alizarin-crimson 0 1 strength',
      'strokes ultramarine-blue 0 1 strength',
    ]);
  });

  test('without further paints there are none but the first wash with its water', () => {
    expect(linesOf({ ...OPEN, most: 0 })).toEqual([]);
    expect(linesOf({ ...WATER, most: 0 }).map(says)).toEqual(['puddle 0 1 water']);
    expect(linesOf({ ...WATER, most: 0, ratios: [] })).toEqual([]);
  });

  test('bring no more new paints than are allowed; more of a paint that is there is not new', () => {
    const tray = ['burnt-sienna', 'alizarin-crimson', 'ultramarine-blue'];
    const sets = (mostNew: number): string[] =>
      linesOf({ ...OPEN, tray, mostNew, glazes: [], strokes: [], thins: [1] }).map(({ ids }) =>
        ids.join(' '),
      );
    expect(sets(0)).toEqual(['burnt-sienna']);
    expect(sets(1)).toEqual([
      'burnt-sienna',
      'alizarin-crimson',
      'ultramarine-blue',
      'burnt-sienna alizarin-crimson',
      'burnt-sienna ultramarine-blue',
    ]);
    expect(sets(2)).toHaveLength(6);
    // However many of them are new, there are no more further paints than are allowed.
    const count = (most: 0 | 1) =>
      linesOf({ ...OPEN, tray: tray.slice(0, 2), most, mostNew: 2, glazes: [], strokes: [], thins: [1] })
        .length;
    expect([count(0), count(1)]).toEqual([0, 2]);
  });
});

describe('the scales of a line', () => {
  const line = (open: Open, at: number): Line => linesOf(open)[at] as Line;

  test('have each amount once, least first, a scale for every paint', () => {
    expect(scalesOf(OPEN, line(OPEN, 0))).toEqual([[1 / 4, 1 / 2, 1]]);
    expect(scalesOf(OPEN, line(OPEN, 4))).toEqual([
      [1 / 4, 1 / 2, 1],
      [1 / 4, 1 / 2, 1],
    ]);
    expect(scalesOf(OPEN, line(OPEN, 6))).toEqual([[0.1, 0.4]]);
    expect(scalesOf(OPEN, line(OPEN, 10))).toEqual([[0.25, 0.6]]);
    expect(scalesOf(OPEN, line(OPEN, 13))).toEqual([[0.4]]);
  });

  test('and one for the water or the strength, last', () => {
    expect(scalesOf(WATER, line(WATER, 0))).toEqual([[1, 8]]);
    expect(scalesOf(WATER, line(WATER, 1))).toEqual([
      [1 / 4, 1 / 2, 1],
      [1, 8],
    ]);
    expect(scalesOf(STRENGTH, line(STRENGTH, 0))).toEqual([[0.1, 0.8]]);
    // Strokes of any strength: every share that is open.
    expect(scalesOf(STRENGTH, linesOf(STRENGTH).at(-1) as Line)[0]).toEqual([0.25, 0.4, 0.6]);
  });

  test('are all combined, the first amount fastest; strokes leave some paper, the water of them takes none', () => {
    const two = line(OPEN, 4);
    expect(
      combinations(two, [
        [1, 2],
        [3, 4],
      ]),
    ).toEqual([
      [1, 3],
      [2, 3],
      [1, 4],
      [2, 4],
    ]);
    const strokes = line(OPEN, 12);
    expect(combinations(strokes, scalesOf(OPEN, strokes))).toEqual([
      [0.25, 0.25],
      [0.6, 0.25],
      [0.25, 0.6],
    ]);
    expect(combinations(strokes, [[0.5], [0.5]])).toEqual([]);
    expect(combinations({ ...strokes, ids: ['alizarin-crimson'] }, [[0.5], [0.9]])).toEqual([[0.5, 0.9]]);
  });
});

describe('amounts along a line as a mixture', () => {
  test('the last one is the water or the strength where that is open', () => {
    const [wet, strong] = [linesOf(WATER)[1] as Line, linesOf(STRENGTH)[1] as Line];
    const added = [{ id: 'alizarin-crimson', amount: 0.5 }];
    expect(mixtureOf(wet, [0.5, 4])).toEqual({ way: 'puddle', added, strength: 0, thin: 4 });
    expect(mixtureOf(strong, [0.5, 0.7])).toEqual({ way: 'puddle', added, strength: 0.7, thin: 1 });
    expect(mixtureOf(linesOf(OPEN)[1] as Line, [0.5])).toEqual({
      way: 'puddle',
      added,
      strength: 0,
      thin: 3,
    });
  });
});

describe('the quick trial', () => {
  test.each([
    ['set', OPEN],
    ['open water', WATER],
    ['open strength', STRENGTH],
  ] as const)('agrees with what is laid, on every line and twice over: %s', (_, open) => {
    for (const line of linesOf(open)) {
      const trial = trialOf(STUDIO, open.first, line);
      const choices = combinations(line, scalesOf(open, line));
      // Forth and back: nothing of the amounts before is left over.
      for (const amounts of [...choices, ...choices.toReversed()]) {
        const quick = trial(amounts);
        const full = seeLaid(STUDIO, layAmounts(STUDIO, open.first, line, amounts)).colour;
        expect(Math.abs(quick.xyz.y - full.xyz.y), says(line)).toBeLessThan(1e-9);
        expect(Math.abs(quick.lab.a - full.lab.a), says(line)).toBeLessThan(1e-8);
        expect(Math.abs(quick.lab.b - full.lab.b), says(line)).toBeLessThan(1e-8);
      }
    }
  });

  test('gives the colours of every mixture on the scales, each once', () => {
    const all = [...everyMixture(STUDIO, WATER)];
    const count = linesOf(WATER).reduce(
      (sum, line) => sum + combinations(line, scalesOf(WATER, line)).length,
      0,
    );
    expect(all).toHaveLength(count);
    for (const { line, amounts, colour } of all.filter((_, at) => at % 7 === 0)) {
      const full = seeLaid(STUDIO, layAmounts(STUDIO, FIRST, line, amounts)).colour;
      expect(colour.step).toBeCloseTo(full.step, 9);
    }
  });
});

describe('the strength along a line', () => {
  test('is that of what lies in the puddle before the water', () => {
    for (const line of linesOf({ ...WATER, glazes: [], strokes: [] })) {
      const along = strengthAlong(STUDIO, FIRST, line);
      for (const amounts of combinations(line, scalesOf(WATER, line))) {
        const [wash] = washesOf(layAmounts(STUDIO, FIRST, line, [...amounts.slice(0, line.ids.length), 1]));
        if (wash === undefined) throw new Error('nothing laid');
        expect(along(amounts)).toBeCloseTo(strengthOf(washLoads(STUDIO, wash)), 9);
      }
    }
  });

  test('is the last amount where the strength is open', () => {
    const [, line] = linesOf(STRENGTH) as [Line, Line];
    expect(strengthAlong(STUDIO, FIRST, line)([0.5, 0.7])).toBe(0.7);
    const [wash] = washesOf(layAmounts(STUDIO, FIRST, line, [0.5, 0.7]));
    if (wash === undefined) throw new Error('nothing laid');
    expect(strengthOf(washLoads(STUDIO, wash))).toBeCloseTo(0.7, 9);
  });
});
