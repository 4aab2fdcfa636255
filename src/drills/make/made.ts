/** What the generators of the kinds beside `mix` share: washes, things to paint, cases with one true statement. */

import { type Draw, shuffled } from '../../chance/draw.js';
import type { ColourReading } from '../../colour/reading.js';
import type { Studio } from '../../paints/index.js';
import type { Laid, Wash } from '../../washes/index.js';
import { seeAlone, seeLaid } from '../../washes/index.js';
import { namesOf } from '../../words/laid.js';
import type { CaseItem, Statement } from '../kinds/worked/schema.js';
import { weigh } from '../kinds/worked/weigh.js';
import type { DrillDraft } from './types.js';

/** One paint at a strength. */
export function wash(paint: string, strength: number): Wash {
  return { paints: { [paint]: 1 }, strength };
}

/** Two paints in one puddle. */
export function pair(
  first: string,
  second: string,
  parts: readonly [number, number],
  strength: number,
): Wash {
  return { paints: { [first]: parts[0], [second]: parts[1] }, strength };
}

/** Colour of laid paint. */
export function colourOf(studio: Studio, laid: Laid): ColourReading {
  return seeLaid(studio, laid).colour;
}

/** Paints of a palette that are colours, not whites, greys or blacks. */
export function colours(studio: Studio, palette: readonly string[]): string[] {
  return palette.filter((id) => seeAlone(studio, id, 0.4).colour.chroma >= 18);
}

/** Paints that reach at least this painter's step by themselves. */
export function deepOnes(studio: Studio, palette: readonly string[], step: number): string[] {
  return palette.filter((id) => seeAlone(studio, id, 1).colour.step >= step);
}

/** To a tenth. */
export const tenth = (x: number): number => Math.round(10 * x) / 10;

/** Name of a paint. */
export const nameOf = (studio: Studio, paint: string): string => namesOf(studio, wash(paint, 1));

/** Short name of a paint where room is short: its last telling word. */
export function shortName(studio: Studio, paint: string): string {
  const name = nameOf(studio, paint).split(',')[0] as string;
  if (name.length <= 12) return name;
  const words = name
    .split(' ')
    .filter((word) => !['hue', 'blue', 'red', 'yellow', 'deep', 'shade'].includes(word));
  return (words.at(-1) ?? name).slice(0, 12);
}

/**
 * A case with one clearly true statement and two clearly false ones out of the candidates.
 * @returns undefined when the case does not bear that out
 */
export function workedDraft(
  studio: Studio,
  words: {
    readonly title: string;
    readonly scene: string;
    readonly ask: string;
    readonly hint: string;
    readonly picture?: string;
  },
  items: readonly CaseItem[],
  candidates: readonly Statement[],
  draw: Draw,
): DrillDraft | undefined {
  const weighed = weigh(studio, { case: items, statements: candidates }).map((one, index) => ({
    ...one,
    statement: candidates[index] as Statement,
  }));
  const sure = weighed.filter(({ tooCloseToCall }) => !tooCloseToCall);
  const right = shuffled(
    sure.filter(({ isTrue }) => isTrue),
    draw,
  )[0];
  const wrong = shuffled(
    sure.filter(({ isTrue }) => !isTrue),
    draw,
  ).slice(0, 2);
  if (right === undefined || wrong.length < 2) return undefined;
  const statements = shuffled([right, ...wrong], draw).map(({ statement }) => statement);
  return { kind: 'worked', ...words, case: items, statements };
}
