/** Answers drawn evenly from all that a drill allows. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Answer, Field } from './types.js';

/** A source of whole numbers `0 … most`. */
export type Draw = (most: number) => number;

/** Spreads the bits of a seed (the 32-bit finaliser of MurmurHash3): the generator's first numbers are alike for seeds that are. */
function spread(seed: number): number {
  let bits = seed | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85eb_ca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2_ae35);
  return bits ^ (bits >>> 16);
}

/**
 * A seeded source: the same seed gives the same numbers on every machine.
 * @param seed whole number; its low 32 bits count
 */
export function seededDraw(seed: number): Draw {
  const generator = xoroshiro128plus(spread(seed));
  return (most) => uniformInt(generator, 0, most);
}

/** One answer, each field drawn on its own. */
export function randomAnswer(fields: readonly Field[], draw: Draw): Answer {
  return Object.fromEntries(
    fields.map(({ id, options }) => [id, options[draw(options.length - 1)]?.id ?? '']),
  );
}
