/** Answers drawn evenly from all that a drill allows. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Answer, Field } from './types.js';

/** A source of whole numbers `0 … most`. */
export type Draw = (most: number) => number;

/** A seeded source: the same seed gives the same numbers on every machine. */
export function seededDraw(seed: number): Draw {
  const generator = xoroshiro128plus(seed);
  return (most) => uniformInt(generator, 0, most);
}

/** One answer, each field drawn on its own. */
export function randomAnswer(fields: readonly Field[], draw: Draw): Answer {
  return Object.fromEntries(
    fields.map(({ id, options }) => [id, options[draw(options.length - 1)]?.id ?? '']),
  );
}
