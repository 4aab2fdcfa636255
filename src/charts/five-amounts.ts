/** A pair in five amounts, in equal steps as the eye sees them: parts in even shares would crowd them beside the stronger paint. */
import { deltaE00 } from '../colour/difference.js';
import type { Studio } from '../paints/index.js';
import type { Seen } from '../washes/index.js';
import { tidyParts } from '../washes/tidy.js';
import { type Pair, pairTrial, partsAt, seePair } from './two-paints.js';

/** Cells of a pair, the two paints alone among them. */
export const AMOUNTS = 5;
/** Places at which the way is measured. */
const PLACES = 60;

/** Strengths of the second paint to one of the first, with a share of the whole way (in CIEDE2000, summed along it) behind it. */
function balances(studio: Studio, pair: Pair): (share: number) => number {
  const trial = pairTrial(studio, pair);
  // Close to both ends too, where a strong paint takes over at once.
  const at = (place: number): number => 2 ** (16 * (place / PLACES) - 8);
  const first = seePair(studio, pair, [1, 0]).colour.lab;
  const last = seePair(studio, pair, [0, 1]).colour.lab;
  const labs = Array.from({ length: PLACES + 1 }, (_, place) => trial(at(place)).lab);
  let run = 0;
  const runs = [...labs, last].map((lab, place) => {
    run += deltaE00(place === 0 ? first : (labs[place - 1] ?? lab), lab);
    return run;
  });
  return (share) => {
    const wanted = share * run;
    const place = runs.findIndex((behind) => behind >= wanted);
    const [before, after] = [runs[place - 1] ?? 0, runs[place] as number];
    const part = after === before ? 0 : (wanted - before) / (after - before);
    return at(Math.min(PLACES, Math.max(0, place - 1 + part)));
  };
}

/** The first paint, three mixtures, the second paint. @returns what each is seen as, its parts those that a painter counts */
export function fiveAmounts(studio: Studio, pair: Pair): Seen[] {
  const balance = balances(studio, pair);
  const between = Array.from({ length: AMOUNTS - 2 }, (_, at) => {
    const [parts] = tidyParts(partsAt(studio, pair, balance((at + 1) / (AMOUNTS - 1))));
    return seePair(studio, pair, parts ?? [1, 1]);
  });
  return [seePair(studio, pair, [1, 0]), ...between, seePair(studio, pair, [0, 1])];
}
