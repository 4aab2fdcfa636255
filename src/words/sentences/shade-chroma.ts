/** What is said of a shade: whether it reads as the same surface with less light. */
import { signsText, stepWords, type Voice } from '../voice.js';

export type ShadeAs = 'holds' | 'close' | 'strong' | 'glows' | 'dull' | 'mud';

const READS: Readonly<Record<ShadeAs, string>> = {
  holds: 'reads as the same surface with less light',
  close: 'stands on the edge, too close to call, so it counts',
  strong: 'is a little too strong, on the way to glowing',
  glows: 'glows: it has more colour than the light that is left can send back',
  dull: 'is a little too dull, on the way to mud',
  mud: 'is mud: it has lost more colour than the light took',
};

export type Turn = 'none' | 'to-blue' | 'to-red' | 'to-yellow';
const TURN_WORDS: Readonly<Record<Turn, string>> = {
  none: 'not at all',
  'to-blue': 'a little to blue',
  'to-red': 'a little to red',
  'to-yellow': 'a little to yellow',
};

export const SHADE_CHROMA = {
  'shade-lit': (
    { words, step, lightness, chroma }: { words: string; step: number; lightness: number; chroma: number },
    voice: Voice,
  ): string =>
    `lit: ${words}, ${stepWords(step, voice)}, L* ${lightness.toFixed(0)}, chroma ${chroma.toFixed(0)}`,
  'shade-asked': (
    { step, lightness }: { readonly step: number; readonly lightness: number },
    voice: Voice,
  ): string => `shade: ${stepWords(step, voice)}, L* ${lightness.toFixed(0)}`,
  'shade-chroma-said': ({ as }: { readonly as: ShadeAs }): string => `A shade of that chroma ${READS[as]}.`,
  'shade-swatch-said': ({ swatch, as }: { readonly swatch: string; readonly as: ShadeAs }): string =>
    `The ${swatch} swatch ${READS[as]}.`,
  'shade-turn-said': ({
    hue,
    said,
    fits,
  }: {
    readonly hue: string;
    readonly said: Turn;
    readonly fits: Turn;
  }): string => {
    if (said === fits)
      return `Turned ${TURN_WORDS[said]}, a lit ${hue} goes the way that most painters turn it.`;
    if (said === 'none')
      return `The hue kept is correct; many painters turn a lit ${hue} ${TURN_WORDS[fits]}.`;
    return `A lit ${hue} is not turned ${TURN_WORDS[said]} in the shade: ${TURN_WORDS[fits]}, or not at all.`;
  },
  /** The reason: what the light leaves. */
  'shade-line': (
    { chroma, share }: { readonly chroma: number; readonly share: number },
    voice: Voice,
  ): string =>
    signsText(
      share >= 0.995
        ? `So little light is lost that all of the colour stays: chroma ${chroma}.`
        : `Less light takes from every part of it alike: ${Math.round(100 * share)} % of the chroma is left, which is ${chroma}.`,
      voice,
    ),
  'shade-better': ({
    chroma,
    swatch,
    turn,
  }: {
    readonly chroma?: number;
    readonly swatch?: string;
    readonly turn?: Turn;
  }): string => {
    const parts = [
      ...(chroma === undefined ? [] : [`chroma ${chroma}`]),
      ...(swatch === undefined ? [] : [`the ${swatch} swatch`]),
      ...(turn === undefined ? [] : [`the hue turned ${TURN_WORDS[turn]}`]),
    ];
    return `Better: ${parts.join(', ')}.`;
  },
  'why-shade': (
    { step, band }: { readonly step: number; readonly band: readonly [number, number] },
    voice: Voice,
  ): string =>
    `At ${stepWords(step, voice)} every part of the curve is lower by the same share: that is the plain shade. Chroma ${chromaBand(band)} passes for it.`,
  'why-shade-yours': ({ as }: { readonly as: ShadeAs }): string =>
    as === 'glows' || as === 'strong'
      ? 'Yours is steeper than light alone can make it: its crest stands too high over its hollow.'
      : as === 'mud' || as === 'dull'
        ? 'Yours is flatter: what makes the colour, crest over hollow, is filled up with grey.'
        : 'Yours lies along it, near enough for the eye.',
  'why-shade-rule': (): string =>
    'In figures: the chroma of a plain shade is the lit chroma times (shade L* + 16) over (lit L* + 16).',
};

/** A band of chroma. */
function chromaBand([low, high]: readonly [number, number]): string {
  return `${low.toFixed(0)} to ${high.toFixed(0)}`;
}
