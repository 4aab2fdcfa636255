/** A wash of the palette, of one paint or of two, with something that has its colour. */
import { type Draw, pick, shuffled } from '../../chance/draw.js';
import type { ColourReading } from '../../colour/reading.js';
import type { Studio } from '../../paints/index.js';
import type { Wash } from '../../washes/index.js';
import type { Subject } from '../lexicon.js';
import { colourOf, colours, pair, wash } from './made.js';
import { isVioletPair } from './mix-rules.js';

const PARTS = [
  [3, 1],
  [1, 1],
] as const;
/** Draws of a wash before a palette is held to have no such colours. */
const MOST_WASHES = 16;

/** @param find the subject for a colour, if there is one */
export function thingAt(
  studio: Studio,
  palette: readonly string[],
  strengths: readonly number[],
  draw: Draw,
  find: (colour: ColourReading) => Subject | undefined,
): { readonly laid: Wash; readonly colour: ColourReading; readonly subject: Subject } | undefined {
  for (let tries = 0; tries < MOST_WASHES; tries++) {
    const strength = pick(strengths, draw);
    const [one, two] = shuffled(palette, draw) as [string, string];
    const isOne = draw(1) === 0 || isVioletPair(studio, one, two);
    const laid = isOne ? wash(one, strength) : pair(one, two, pick(PARTS, draw), strength);
    const colour = colourOf(studio, laid);
    const subject = find(colour);
    if (subject !== undefined) return { laid, colour, subject };
  }
  return undefined;
}

/** Two colours of the palette in random order, no blue with a crimson. */
export function twoColours(
  studio: Studio,
  palette: readonly string[],
  draw: Draw,
): readonly [string, string] | undefined {
  const [a, b] = shuffled(colours(studio, palette), draw);
  if (a === undefined || b === undefined) return undefined;
  return isVioletPair(studio, a, b) ? undefined : [a, b];
}

/** The other paints of the palette in random order, but for those that make a violet with the first. */
export function helpersFor(studio: Studio, palette: readonly string[], first: string, draw: Draw): string[] {
  return shuffled(
    palette.filter((id) => id !== first && !isVioletPair(studio, first, id)),
    draw,
  );
}
