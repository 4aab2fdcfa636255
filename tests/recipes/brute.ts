/**
 * Recipes against brute force: what is open written out on a fine grid, without the search, and laid with the full prediction. Cases are
 * seeded: a wash and an aim, or a target that may lie out of reach, in a few paints of the library, in every way.
 */
import { expect } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { shadingLine } from '../../src/colour/chroma.js';
import { deltaE00 } from '../../src/colour/difference.js';
import { chromaOf, hueDifference, hueOf, type Lab } from '../../src/colour/lab.js';
import type { ColourReading } from '../../src/colour/reading.js';
import { type Judged, scoreColour } from '../../src/judgement/index.js';
import { evidenceOf } from '../../src/paints/index.js';
import { type Recipe, type RecipeAim, recipesFor } from '../../src/recipes/index.js';
import { type FirstWash, type Laid, type Seen, seeLaid, strengthOf } from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';

const PAINTS = STUDIO.paints.map(({ id }) => id);
/** Even steps of the logarithm, both ends included. */
const grid = (least: number, most: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => least * (most / least) ** (i / (count - 1)));

type Draw = (most: number) => number;
const pick = <T>(draw: Draw, from: readonly T[]): T => from[draw(from.length - 1)] as T;
const between = (draw: Draw, low: number, high: number): number => low + ((high - low) * draw(1e6)) / 1e6;

function someOf(draw: Draw, count: number): string[] {
  const ids = new Set<string>();
  while (ids.size < count) ids.add(pick(draw, PAINTS));
  return [...ids];
}

/** Pairs and singles of a tray. */
const setsOf = (tray: readonly string[]): string[][] => [
  [],
  ...tray.map((id) => [id]),
  ...tray.flatMap((a, i) => tray.slice(i + 1).map((b) => [a, b])),
];

/** Every amount of the grid for each paint. */
const amountsFor = (ids: readonly string[], scale: readonly number[]): Record<string, number>[] =>
  ids.reduce<Record<string, number>[]>(
    (all, id) => all.flatMap((one) => scale.map((amount) => ({ ...one, [id]: amount }))),
    [{}],
  );

/** Puddles, glazes and strokes from a wash on a fine grid, as the limits of recipes have it. */
function* laidFrom(first: FirstWash, tray: readonly string[]): Generator<Laid> {
  for (const ids of setsOf(tray)) {
    for (const add of amountsFor(ids, grid(1 / 32, 2, 13))) {
      const stirred = seeLaid(STUDIO, { ...first, add });
      if (strengthOf(stirred.loads.flat()) > 1) continue;
      for (const thin of grid(1, 10, 11)) yield { ...first, add, thin };
    }
    if (ids.length === 0) continue;
    const orders = ids.length === 2 ? [ids, [...ids].reverse()] : [ids];
    for (const order of orders)
      for (const amounts of amountsFor(order, grid(0.03, 0.5, 11)))
        yield {
          layers: [first, ...order.map((id) => ({ paints: { [id]: 1 }, strength: amounts[id] as number }))],
        };
    for (const strength of [0.15, 0.3, 0.6, 1])
      for (const shares of amountsFor(ids, grid(0.1, 0.5, 9))) {
        const rest = 1 - Object.values(shares).reduce((sum, share) => sum + share, 0);
        if (rest <= 0) continue;
        const strokes = ids.map((id) => ({ paints: { [id]: 1 }, strength, share: shares[id] as number }));
        yield { strokes: [{ ...first, share: rest }, ...strokes] };
      }
  }
}

/** Puddles made up of up to three paints on a fine grid. */
function* madeUpOf(paints: readonly string[]): Generator<Laid> {
  for (const [at, id] of paints.entries()) {
    const one = paintOf(id).fullStrength;
    for (const ids of setsOf(paints.slice(at + 1)))
      for (const balance of amountsFor(ids, grid(1 / 32, 32, 21))) {
        const more = Object.entries(balance).map(([other, by]) => [
          other,
          (by * paintOf(other).fullStrength) / one,
        ]);
        const all = { [id]: 1, ...Object.fromEntries(more) };
        for (const strength of grid(0.015, 1, 19)) yield { paints: all, strength };
      }
  }
}

const evidenceIn = ({ loads }: Seen) => evidenceOf(loads.flat().map(({ pigment }) => pigment));

/** Steps of each wash by itself, once. */
const STEPS = new Map<string, number>();
function stepOf(wash: FirstWash): number {
  const key = JSON.stringify(wash);
  const step = STEPS.get(key) ?? seeLaid(STUDIO, { ...wash }).colour.step;
  STEPS.set(key, step);
  return step;
}

/** Marks that strokes lose beyond three steps between them: 6 a step. */
function apartCost({ laid }: Seen): number {
  if (!('strokes' in laid)) return 0;
  const steps = laid.strokes.map(({ paints, strength }) => stepOf({ paints, strength }));
  return 6 * Math.max(0, Math.max(...steps) - Math.min(...steps) - 3);
}

/** Degrees within which each aim keeps the hue: src/judgement/README.md. */
const HUE_WITHIN: Readonly<Record<RecipeAim, number>> = { shade: 25, rich: 40, dull: 25, distance: 30 };

/** Degrees that a hue lies outside what its aim asks; a grey of less than C* 5 has none to miss. */
function turned({ start, goal: { aim } }: Judged, { chroma, hue }: ColourReading): number {
  const by = Math.abs(hueDifference(start.hue, hue));
  return chroma < 5 ? 0 : Math.max(0, by - HUE_WITHIN[aim as RecipeAim]);
}

/** How far outside a band. */
const beyond = (x: number, [low, high]: readonly [number, number]): number => Math.max(0, low - x, x - high);

/**
 * How good a mark is to a fraction, for an aim that lies in bands, less what a recipe loses outside them: 600 a step, 2 for each C*, below 0.85 of a mere shade
 * as well where rich is asked, 1 for each of the first five degrees of hue, and for strokes far apart.
 */
function exactMark(judged: Judged, seen: Seen): number {
  const { value, chroma = [0, 200] } = judged.goal;
  const { exact } = scoreColour(judged, seen.colour, { evidence: evidenceIn(seen), isNew: false });
  const { aim } = judged.goal;
  const { lab, chroma: strong } = seen.colour;
  const shade = shadingLine(judged.start.chroma, judged.start.lab.l, lab.l);
  const short = aim === 'rich' ? Math.max(0, 0.85 * shade - strong) : 0;
  return (
    exact -
    apartCost(seen) -
    2 * short -
    Math.min(5, turned(judged, seen.colour)) -
    600 * beyond(seen.colour.step, value) -
    2 * beyond(seen.colour.chroma, chroma)
  );
}

/** Whether it lies in the bands that are told and is good: beside such a recipe none is given that does not. */
function isMet(judged: Judged, seen: Seen): boolean {
  const { value, chroma = [0, 200], aim } = judged.goal;
  const { exact } = scoreColour(judged, seen.colour, { evidence: evidenceIn(seen), isNew: false });
  const { step, chroma: strong, lab } = seen.colour;
  const isShort =
    aim === 'rich' && strong < 0.85 * shadingLine(judged.start.chroma, judged.start.lab.l, lab.l);
  return exact >= 84.5 && !isShort && beyond(step, value) === 0 && beyond(strong, chroma) === 0;
}

/** One seeded case of an aim: marks of the best recipe and of brute force. */
export function goalCase(seed: number): void {
  const draw = seededDraw(seed);
  const aims: readonly RecipeAim[] = ['shade', 'rich', 'dull', 'distance'];
  const aim = pick(draw, aims);
  const darker = { shade: 1.5, rich: 2, dull: 0.5, distance: -1 }[aim] + between(draw, -0.5, 0.5);
  let from: FirstWash;
  let wash: ColourReading;
  do {
    from = { paints: { [pick(draw, PAINTS)]: 1 }, strength: between(draw, 0.15, 0.6) };
    wash = seeLaid(STUDIO, { ...from }).colour;
  } while (wash.chroma < 25 || wash.step + darker < 1 || wash.step + darker > 10);
  const paints = someOf(draw, 3);
  const ways = ['puddle', 'glaze', 'strokes'] as const;
  const found = recipesFor(STUDIO, { from, aim, darker }, { paints, ways, most: 1 });
  const [best] = found.recipes as [Recipe];
  if (found.goal === undefined || found.start === undefined) throw new Error('no goal');
  const { goal, start } = found;
  const tray = [...new Set([...Object.keys(from.paints), ...paints])];
  const all = [...laidFrom(from, tray)].map((laid) => seeLaid(STUDIO, laid));
  // What is rich is measured by the brightest that is open: here by the grid's own.
  const inBand = all.filter(({ colour: { step, hue } }) => {
    const turned = Math.abs(hueDifference(start.hue, hue));
    return step >= goal.value[0] && step <= goal.value[1] && (aim !== 'rich' || turned <= 40);
  });
  const reach = { best: Math.max(0, ...inBand.map(({ colour }) => colour.chroma)), dullest: 0 };
  const judged: Judged = {
    goal,
    start,
    reach: inBand.length === 0 ? { best: start.chroma, dullest: 0 } : reach,
  };
  const met = all.filter((seen) => isMet(judged, seen));
  const most = Math.max(...(met.length > 0 ? met : all).map((seen) => exactMark(judged, seen)));
  const ours = exactMark(judged, seeLaid(STUDIO, best.laid));
  expect(ours, `seed ${seed}: ${aim} of ${JSON.stringify(from)} in ${paints}`).toBeGreaterThan(most - 0.5);
}

/** One seeded case of a target: CIEDE2000 of the best recipe and of brute force. */
export function targetCase(seed: number): void {
  const draw = seededDraw(seed);
  const paints = someOf(draw, 3);
  const to: Lab = { l: between(draw, 20, 90), a: between(draw, -40, 50), b: between(draw, -40, 60) };
  const found = recipesFor(STUDIO, { to }, { paints, ways: ['puddle'], most: 1 });
  const [best] = found.recipes as [Recipe];
  let least = Number.POSITIVE_INFINITY;
  for (const laid of madeUpOf(paints)) {
    const { lab, hue } = seeLaid(STUDIO, laid).colour;
    // Another hue is no answer for a target that is a colour.
    if (chromaOf(to) >= 20 && Math.abs(hueDifference(hueOf(to), hue)) > 45) continue;
    least = Math.min(least, deltaE00(lab, to));
  }
  expect(best.deltaE00, `seed ${seed}: ${JSON.stringify(to)} in ${paints}`).toBeLessThan(least + 0.2);
}
