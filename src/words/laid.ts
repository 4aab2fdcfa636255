/** Laid paint in words. */

import { paintOf, type Studio } from '../paints/index.js';
import { listWords } from '../text/list-words.js';
import type { Laid, Wash } from '../washes/index.js';

/** The text with its first letter large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "30 %". */
export function strengthWords(strength: number): string {
  return `${Number((strength * 100).toFixed(1))} %`;
}

/** " at 30 %" after a figure of a paint; nothing where it has no strength of its own. */
export const atStrength = (strength: number | undefined): string =>
  strength === undefined ? '' : ` at ${strengthWords(strength)}`;

/** The touches that painters count in, as parts to one: 1/8 is "1:8". */
export function ratioWords(ratio: number): string {
  if (ratio > 1) return `${Number(ratio.toFixed(2))}:1`;
  const parts = 1 / ratio;
  return `1:${Number.isInteger(Number(parts.toFixed(6))) ? Math.round(parts) : parts.toFixed(1)}`;
}

/** "thinned to a half": how much water, as a painter names it. */
export function thinWords(thin: number): string {
  const named: Readonly<Record<number, string>> = {
    2: 'a half',
    3: 'a third',
    4: 'a quarter',
    8: 'an eighth',
  };
  if (thin === 1) return 'no water';
  return `thinned to ${named[thin] ?? `one part in ${Number(thin.toFixed(1))}`}`;
}

/** "cadmium red + ultramarine blue 2:1"; a single paint by its name. */
function madeOf(studio: Studio, paints: Wash['paints']): string {
  const entries = Object.entries(paints);
  const names = entries.map(([id]) => paintOf(studio, id).name).join(' + ');
  return entries.length === 1 ? names : `${names} ${entries.map(([, parts]) => parts).join(':')}`;
}

/** "cadmium red + ultramarine blue 2:1, alizarin crimson 1:4 stirred in". */
export function paintsLabel(studio: Studio, { paints, add }: Pick<Wash, 'paints' | 'add'>): string {
  const added = Object.entries(add ?? {}).map(
    ([id, ratio]) => `${paintOf(studio, id).name} ${ratioWords(ratio)}`,
  );
  const first = madeOf(studio, paints);
  return added.length === 0 ? first : `${first}, ${listWords(added)} stirred in`;
}

/** The paints of a wash, without their parts: "cadmium red with ultramarine blue". */
export function namesOf(studio: Studio, { paints, add }: Pick<Wash, 'paints' | 'add'>): string {
  return [...new Set([...Object.keys(paints), ...Object.keys(add ?? {})])]
    .map((id) => paintOf(studio, id).name)
    .join(' with ');
}

/** Short words for what lies there. */
export function laidLabel(studio: Studio, laid: Laid): string {
  const label = (wash: Wash): string => paintsLabel(studio, wash);
  if ('layers' in laid) return laid.layers.map(label).join(', then ');
  if ('strokes' in laid) return `strokes of ${laid.strokes.map(label).join(' and ')}`;
  return label(laid);
}

function strengthNote({ strength, thin = 1 }: Pick<Wash, 'strength' | 'thin'>): string {
  return thin === 1 ? strengthWords(strength) : `${strengthWords(strength)} ${thinWords(thin)}`;
}

/** A second line: how it is laid and how strong. */
export function laidNote(laid: Laid): string {
  if ('layers' in laid) return `each dry before the next; ${laid.layers.map(strengthNote).join(', ')} strong`;
  if ('strokes' in laid)
    return `side by side; ${laid.strokes.map(({ share }) => strengthWords(share)).join(' and ')} of the paper`;
  const many = Object.keys(laid.paints).length + Object.keys(laid.add ?? {}).length > 1;
  const water = laid.thin === undefined || laid.thin === 1 ? '' : `, ${thinWords(laid.thin)}`;
  return `${many ? 'stirred, ' : ''}${strengthWords(laid.strength)} strong${water}`;
}

/** A step as it is written, to one decimal: a difference told beside two steps has to be the difference of these. */
export const asShown = (step: number): number => Number(step.toFixed(1));

/** "1 step", "2.3 steps". */
export function stepsWords(gap: number): string {
  const text = Math.abs(gap).toFixed(1);
  return text === '1.0' ? '1 step' : `${text} steps`;
}

/** "38 %". @param share 0-1 */
export const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** "a green", "an orange". */
export const withArticle = (noun: string): string => `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
