/** Laid paint in words. */

import type { ColourReading } from '../../colour/reading.js';
import { colourInWords } from '../../colour/words.js';
import { paintOf } from './predict.js';
import type { Laid, Wash } from './types.js';

/** "cadmium red + ultramarine blue 2:1"; a single paint by its name. */
export function paintsLabel({ paints }: Pick<Wash, 'paints'>): string {
  const entries = Object.entries(paints);
  const names = entries.map(([id]) => paintOf(id).name).join(' + ');
  return entries.length === 1 ? names : `${names} ${entries.map(([, parts]) => parts).join(':')}`;
}

/** The paints of a wash, without their parts: "cadmium red with ultramarine blue". */
export function namesOf({ paints }: Pick<Wash, 'paints'>): string {
  return Object.keys(paints)
    .map((id) => paintOf(id).name)
    .join(' with ');
}

/** "30 %" of masstone. */
export function strengthWords(strength: number): string {
  return `${Math.round(strength * 100)} %`;
}

const WAY_NOTES = { puddle: 'stirred', glaze: 'glazed, the first one dry', strokes: 'side by side' };

/** Short words for what lies there. */
export function laidLabel(laid: Laid): string {
  if ('layers' in laid) return laid.layers.map(paintsLabel).join(', then ');
  if ('strokes' in laid) return `strokes of ${laid.strokes.map(paintsLabel).join(' and ')}`;
  return paintsLabel(laid);
}

/** A second line: how it is laid and how strong. */
export function laidNote(laid: Laid): string {
  if ('layers' in laid)
    return `each dry before the next; ${laid.layers.map(({ strength }) => strengthWords(strength)).join(', ')} strong`;
  if ('strokes' in laid)
    return `side by side; ${laid.strokes.map(({ share }) => strengthWords(share)).join(' and ')} of the paper`;
  const way = Object.keys(laid.paints).length > 1 ? `${WAY_NOTES[laid.way ?? 'puddle']}, ` : '';
  return `${way}${strengthWords(laid.strength)} strong`;
}

/** "step 5.2, chroma 30, dark reddish brown". */
export function readingWords({ step, chroma, lab }: ColourReading): string {
  return `${colourInWords(lab)}, step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}`;
}

/** "a, b and c". */
export function listWords(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** A step as it is written, to one decimal: a difference told beside two steps has to be the difference of these. */
export const asShown = (step: number): number => Number(step.toFixed(1));

/** "1.0 step", "2.3 steps". */
export function stepsWords(gap: number): string {
  const text = Math.abs(gap).toFixed(1);
  return `${text} ${text === '1.0' ? 'step' : 'steps'}`;
}

/** The text with its first letter large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
