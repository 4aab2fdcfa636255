/** Which pairs make a grey, at what proportion, and which way it leans. */
import { hueDifference } from '../colour/lab.js';
import { NEUTRAL_CHROMA, NO_HUE_CHROMA, type RelationKind, relationOf } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import { bestBetween, type Seen } from '../washes/index.js';
import { tidyParts } from '../washes/tidy.js';
import { openPair, type Pair, partsAt, seePair } from './two-paints.js';

/** A pair and its greyest mixture. */
export interface Greyest {
  readonly pair: Pair;
  readonly relation: RelationKind;
  /** Least C* of the pair, found between all amounts. */
  readonly least: number;
  /** The greyest that can be counted out. */
  readonly seen: Seen;
  /** Of the two the one with less colour by itself. */
  readonly duller: string;
  readonly makes: Makes;
}

/**
 * - `grey`: C* of {@link NO_HUE_CHROMA} or less, no hue to speak of;
 * - `leaning`: they take each other's colour, but a hue is left;
 * - `none`: the colour is kept, another one appears, or one of the two is a grey by itself.
 */
export type Makes = 'grey' | 'leaning' | 'none';

/** A grey that is duller than the duller paint by so much of its chroma is of their making. */
const OF_THEIR_MAKING = 0.8;
/** Proportions beside the greyest that are looked at: the grey is narrow, and counting out misses it by a little. */
const COUNTED = 3;

/** The greyest mixture of a pair. */
export function greyestOf(studio: Studio, pair: Pair): Greyest {
  const found = bestBetween(studio, openPair(pair), ({ chroma }) => -chroma, 2).find(
    ({ line }) => line.ids.length === 1,
  );
  if (found === undefined) throw new RangeError(`no mixture of ${pair.join(' and ')} was tried`);
  const parts = partsAt(studio, pair, found.amounts[0] as number);
  const seen = tidyParts(parts)
    .slice(0, COUNTED)
    .map((counted) => seePair(studio, pair, counted))
    .reduce((best, next) => (next.colour.chroma < best.colour.chroma ? next : best));
  const relation = relationOf(studio, { [pair[0]]: 1 }, pair[1]).kind;
  const ends = [seePair(studio, pair, [1, 0]), seePair(studio, pair, [0, 1])];
  const [one, other] = ends.map(({ colour }) => colour.chroma) as [number, number];
  const dullest = Math.min(one, other);
  const { chroma } = seen.colour;
  const isTheirs = chroma <= NEUTRAL_CHROMA && chroma <= OF_THEIR_MAKING * dullest;
  const takes = relation === 'across' || (relation !== 'neutral' && isTheirs);
  const makes: Makes = !takes ? 'none' : chroma <= NO_HUE_CHROMA ? 'grey' : 'leaning';
  return {
    pair,
    relation,
    least: found.colour.chroma,
    seen,
    duller: one <= other ? pair[0] : pair[1],
    makes,
  };
}

/** Below this C* no one sees a lean. */
const NO_LEAN = 2;
/** Middle of the warm hues, degrees; a lean within a right angle less a bit of it is warm, as far from its opposite cool. */
const WARM_DEG = 55;
const WARM_SPAN_DEG = 75;

/** Which way a grey leans; `none` where no one sees it. */
export function leanOf({ chroma, hue }: { readonly chroma: number; readonly hue: number }) {
  if (chroma < NO_LEAN) return 'none';
  const away = Math.abs(hueDifference(WARM_DEG, hue));
  if (away <= WARM_SPAN_DEG) return 'warm';
  return away >= 180 - WARM_SPAN_DEG ? 'cool' : 'neither';
}
