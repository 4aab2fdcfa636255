/** A mass as it is pointed at in words. */
import { colourInWords } from '../colour/words.js';
import type { Named } from '../words/sentences/painting.js';
import type { Mass } from './types.js';

/** @param index of the mass in its reading: the number that is said is one more */
export function nameOf(masses: readonly Mass[], index: number): Named {
  const { x, y, colour } = masses[index] as Mass;
  return { number: index + 1, words: colourInWords(colour.lab), x, y };
}
