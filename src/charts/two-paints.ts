/** Two paints in one puddle at one water: the way from one to the other, and what lies on it. */
import { paintOf, type Studio } from '../paints/index.js';
import {
  type Line,
  type Seen,
  seeLaid,
  type Trial,
  timesLibrary,
  trialOf,
  waterStrength,
} from '../washes/index.js';
import type { TwoParts } from '../washes/tidy.js';

/** Water of what is compared on charts, one part paint to so many: both paints of a pair still show their hue. */
export const CHART_WATER = '1:12';
const STRENGTH = waterStrength(CHART_WATER);

export type Pair = readonly [first: string, second: string];

/** Every two of some paints, each once, in their order. */
export const pairsOf = (ids: readonly string[]): Pair[] =>
  ids.flatMap((first, at) => ids.slice(at + 1).map((second) => [first, second] as const));

/** Strength of some parts of both in {@link CHART_WATER}. */
const strengthAt = (studio: Studio, paints: Readonly<Record<string, number>>): number =>
  Math.min(1, STRENGTH * timesLibrary(studio, paints));

/** Both paints in one puddle that is made up to {@link CHART_WATER}; no parts of one leave the other alone. */
export function seePair(studio: Studio, [first, second]: Pair, [a, b]: TwoParts): Seen {
  const paints = { ...(a > 0 ? { [first]: a } : {}), ...(b > 0 ? { [second]: b } : {}) };
  return seeLaid(studio, { paints, strength: strengthAt(studio, paints) });
}

/** The puddle that a pair makes, its balance open: what the search takes. */
const pairLine = ([, second]: Pair): Line => ({
  way: 'puddle',
  ids: [second],
  strength: 0,
  thin: 1,
  last: 'strength',
});

/** The colour at a balance: strengths of the second paint to one of the first. */
export function pairTrial(studio: Studio, pair: Pair): (balance: number) => ReturnType<Trial> {
  const trial = trialOf(studio, { paints: { [pair[0]]: 1 }, strength: 1 }, pairLine(pair));
  return (balance) => {
    const paints = { [pair[0]]: 1, [pair[1]]: partsAt(studio, pair, balance) };
    return trial([balance, strengthAt(studio, paints)]);
  };
}

/** Parts of tube paint of the second to one of the first that make a balance of strengths. */
export const partsAt = (studio: Studio, [first, second]: Pair, balance: number): number =>
  (balance * paintOf(studio, second).fullStrength) / paintOf(studio, first).fullStrength;

/** What the search is given: the first paint, the second with it, the water as it is. */
export const openPair = ([first, second]: Pair) => ({
  first: { paints: { [first]: 1 }, strength: 1 },
  tray: [second],
  most: 1 as const,
  ratios: [1 / 64, 1 / 16, 1 / 4, 1, 4, 16, 64],
  glazes: [],
  strokes: [],
  thins: [1],
  strengths: [STRENGTH, STRENGTH],
});
