/**
 * Chance, from seeds alone: the same seed gives the same numbers on every machine, and seeds that are alike give
 * numbers that have nothing to do with each other.
 */
import { createHash } from 'node:crypto';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A source of whole numbers `0 … most`, each equally likely; `most` is below 2^32. */
export type Draw = (most: number) => number;

/**
 * One seed made of several parts, as a name and a number: the first 32 bits of their SHA-256.
 * @returns a whole number of 32 bits, with its sign
 */
export function seedOf(...parts: readonly (string | number)[]): number {
  return createHash('sha256').update(parts.join('\n')).digest().readInt32BE(0);
}

/** Spreads the bits of a seed (the 32-bit finaliser of MurmurHash3): the generator's first numbers are alike for seeds that are. */
function spread(seed: number): number {
  let bits = seed | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85eb_ca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2_ae35);
  return bits ^ (bits >>> 16);
}

/**
 * A seeded source.
 * @param seed whole number; its low 32 bits count
 */
export function seededDraw(seed: number): Draw {
  const generator = xoroshiro128plus(spread(seed));
  return (most) => uniformInt(generator, 0, most);
}

const FRACTION_STEPS = 2 ** 24;

/** A number from 0 to just below 1, in steps of 2^-24. */
export function fraction(draw: Draw): number {
  return draw(FRACTION_STEPS - 1) / FRACTION_STEPS;
}

/** One of a list, evenly. @throws RangeError for an empty list */
export function pick<T>(list: readonly T[], draw: Draw): T {
  if (list.length === 0) throw new RangeError('nothing to pick from');
  return list[draw(list.length - 1)] as T;
}

/** A list in random order, every order equally likely (Fisher-Yates; Knuth, The Art of Computer Programming 2, 3.4.2, algorithm P). */
export function shuffled<T>(list: readonly T[], draw: Draw): T[] {
  const out = [...list];
  for (let last = out.length - 1; last > 0; last--) {
    const other = draw(last);
    [out[last], out[other]] = [out[other] as T, out[last] as T];
  }
  return out;
}
