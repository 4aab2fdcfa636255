/** The optics and the search, against the raw arithmetic of one film. */
import { readColour } from '../../src/colour/reading.js';
import type { MixDrill } from '../../src/drills/kinds/mix/schema.js';
import { solve } from '../../src/drills/kinds/mix/solve.js';
import { readPictures } from '../../src/files/pictures.js';
import { findPalette, libraryStudio, type Pigment, paintOf } from '../../src/paints/index.js';
import { type Picture, painted, pixelsOf } from '../../src/pictures/index.js';
import { type Means, recipesFor, type Wish } from '../../src/recipes/index.js';
import { halfBlocks } from '../../src/tui/kit/half-blocks.js';
import { bestBetween, madeUp, type Open, puddleReflectance, WAYS } from '../../src/washes/index.js';
import { against, type BenchRow } from './base.js';
import { bareLoop, LOOPS_PER_MS, msEquivalent } from './film-loop.js';

/** The films that one prediction needs, 38 bands at each thickness of the tooth, and nothing else. */
function bareFilms(a: Pigment, b: Pigment, tooth: readonly number[], out: Float64Array): void {
  for (const thickness of tooth) bareLoop(a, b, 0.2 * thickness, 0.1 * thickness, 0.9, out);
}

const BASE = 'the bare loop of one film';

const TOUCHES = [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1];

/** Rows for the report. */
export function benchCore(): BenchRow[] {
  const studio = libraryStudio();
  const [a, b] = [paintOf(studio, 'burnt-sienna'), paintOf(studio, 'ultramarine-blue')];
  const { paper } = studio;
  const out = new Float64Array(38);
  const loads = madeUp(
    [
      { pigment: a, parts: 4 },
      { pigment: b, parts: 1 },
    ],
    0.4,
  );
  const bare = () => bareLoop(a, b, 0.2, 0.1, 0.9, out);
  const films = () => bareFilms(a, b, paper.tooth, out);
  const film = against(() => puddleReflectance(loads, paper), 10_000, films, 10_000);
  const seen = against(() => readColour(puddleReflectance(loads, paper)), 10_000, bare, 20_000);
  const tray = findPalette(studio, 'twelve')?.pigments ?? [];
  const drill: MixDrill = {
    kind: 'mix',
    id: 'bench',
    family: 'darken-bright',
    level: 5,
    title: 'bench',
    scene: 'bench',
    ask: 'bench',
    start: { paints: { 'burnt-sienna': 1 }, strength: 0.3 },
    goal: { value: [5, 6], aim: 'rich' },
    tray,
    amounts: ['1:32', '1:16', '1:8', '1:4', '1:2', '1:1'],
    glazes: [],
    strokes: [],
    thins: [1, 2],
  };
  const search = against(() => solve(studio, drill), 1, bare, 5_000);
  const open: Open = {
    first: drill.start,
    tray,
    most: 2,
    ratios: TOUCHES,
    glazes: [],
    strokes: [],
    thins: [1],
  };
  const three = against(
    () =>
      bestBetween(studio, open, ({ step, chroma }) => chroma - 100 * Math.max(0, Math.abs(step - 5.5) - 0.5)),
    1,
    bare,
    5_000,
    9,
  );
  const fromSienna: Wish = { from: drill.start, aim: 'rich', darker: 2 };
  const toBrown: Wish = { to: { l: 40, a: 10, b: 20 } };
  const many = [...new Set(studio.palettes.flatMap(({ pigments }) => pigments))].slice(0, 24);
  const recipe = (wish: Wish, paints: readonly string[], ways: Means['ways']) =>
    against(() => recipesFor(studio, wish, { paints, ways, most: 3 }), 1, bare, 5_000, 7);
  const recipes = (
    [
      ['recipes for a rich dark, every way', fromSienna, WAYS],
      ['recipes for a colour, in a puddle', toBrown, ['puddle'] as const],
      ['recipes for a colour, every way', toBrown, WAYS],
    ] as const
  ).flatMap(([name, wish, ways]) =>
    (
      [
        [12, tray, 100],
        [24, many, 1000],
      ] as const
    ).map(([count, paints, most]): BenchRow => {
      const { ratio } = recipe(wish, paints, ways);
      const atMost = most * LOOPS_PER_MS;
      return { name: `${name}, ${count} paints`, ratio, base: BASE, atMost, note: msEquivalent(ratio) };
    }),
  );
  const scene = painted(studio, readPictures(studio, 'exercises')[0] as Picture);
  const drawn = against(() => halfBlocks(pixelsOf(scene, 48, 28)), 20, bare, 5_000, 9);
  const base = BASE;
  return [
    {
      name: 'one prediction',
      ratio: film.ratio,
      base: 'the bare loop of its own films',
      atMost: 3,
      note: `${Math.round(1000 / film.ms)} a second`,
    },
    { name: 'one prediction read as a colour', ratio: seen.ratio, base },
    {
      name: 'best answer, two of twelve paints, 2 waters',
      ratio: search.ratio,
      base,
      atMost: 50 * LOOPS_PER_MS,
      note: msEquivalent(search.ratio),
    },
    {
      name: 'best mixture, three of twelve paints',
      ratio: three.ratio,
      base,
      atMost: 100 * LOOPS_PER_MS,
      note: msEquivalent(three.ratio),
    },
    ...recipes,
    {
      name: 'a picture drawn anew, 48 by 14 cells',
      ratio: drawn.ratio,
      base,
      atMost: 2 * LOOPS_PER_MS,
      note: msEquivalent(drawn.ratio),
    },
  ];
}
