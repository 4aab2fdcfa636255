/** What is said of a shade: whether it reads as the same surface with less light. */
import { percent } from '../laid.js';
import { stepWords, type Voice } from '../voice.js';

export type ShadeAs = 'holds' | 'close' | 'glows' | 'mud';

const READS: Readonly<Record<ShadeAs, string>> = {
  holds: 'reads as the same surface with less light',
  close: 'counts: the prediction is no surer than that',
  glows: 'glows, as if the light had not gone',
  mud: 'is mud, duller than the light alone makes it',
};
/** Where two are told in one line. */
const SHORT: Readonly<Record<ShadeAs, string>> = {
  holds: 'holds',
  close: 'counts, the prediction being no surer',
  glows: 'glows',
  mud: 'is mud',
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
    { words, step, chroma }: { words: string; step: number; chroma: number },
    voice: Voice,
  ): string => `lit: ${words}, ${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}`,
  'shade-asked': ({ step }: { readonly step: number }, voice: Voice): string =>
    `shade: ${stepWords(step, voice)}`,
  /** Before the answer: painters differ. */
  'shade-turns': (): string => 'turn of hue: two of these pass',
  /** How the chroma and the swatch that were chosen look as a shade. */
  'shade-said': ({
    chroma,
    swatch,
  }: {
    readonly chroma?: ShadeAs;
    readonly swatch?: { readonly id: string; readonly as: ShadeAs };
  }): string => {
    if (chroma !== undefined && swatch !== undefined) {
      return `That chroma ${SHORT[chroma]}; the ${swatch.id} swatch ${SHORT[swatch.as]}.`;
    }
    if (swatch !== undefined) return `The ${swatch.id} swatch ${READS[swatch.as]}.`;
    return `A shade of that chroma ${READS[chroma ?? 'holds']}.`;
  },
  'shade-turn-said': ({
    hue,
    said,
    fits,
  }: {
    readonly hue: string;
    readonly said: Turn;
    readonly fits: Turn;
  }): string => {
    const way = fits === 'to-blue' && hue.includes('blue') ? 'a little cooler' : TURN_WORDS[fits];
    if (said === fits) return `Turned ${way}, as most painters turn a lit ${hue}.`;
    if (said === 'none') return `The hue may stay; many turn a lit ${hue} ${way}.`;
    return `In shade a lit ${hue} turns ${way}, or not at all.`;
  },
  /** The reason: what the light leaves. */
  'shade-line': ({ share }: { readonly share: number }): string =>
    share >= 0.995
      ? 'Hardly any light is lost, and all of the chroma stays.'
      : `Less light leaves ${percent(share)} of the chroma; more glows, less is mud.`,
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
      ...(chroma === undefined ? [] : [`chroma ${chroma}, nearest on offer`]),
      ...(swatch === undefined ? [] : [`the ${swatch} swatch`]),
      ...(turn === undefined ? [] : [`the hue turned ${TURN_WORDS[turn]}`]),
    ];
    return `Better: ${parts.join(', ')}.`;
  },
  'why-shade': (
    {
      step,
      band,
      room,
    }: {
      readonly step: number;
      readonly band: readonly [number, number];
      /** Chroma that the prediction may be off. */
      readonly room: number;
    },
    voice: Voice,
  ): string =>
    `At ${stepWords(step, voice)} every part of the curve is lower by the same share: that is the plain shade. Chroma ${chromaBand(band)} passes for it; ${room.toFixed(0)} beyond counts, since the prediction is no surer.`,
  'why-shade-yours': ({ as }: { readonly as: ShadeAs }): string =>
    as === 'glows'
      ? 'Yours is steeper than light alone can make it: its crest stands too high over its hollow.'
      : as === 'mud'
        ? 'Yours is flatter: what makes the colour, crest over hollow, is filled up with grey.'
        : 'Yours lies along it, near enough for the eye.',
  /** Lightness is L*, 0-100. */
  'why-shade-rule': ({
    chroma,
    lightness,
    shade,
  }: Record<'chroma' | 'lightness' | 'shade', number>): string =>
    `In figures: lit chroma × (shade lightness + 16) / (lit lightness + 16), here ${chroma.toFixed(0)} × (${shade.toFixed(0)} + 16) / (${lightness.toFixed(0)} + 16).`,
};

/** A band of chroma. */
function chromaBand([low, high]: readonly [number, number]): string {
  return `${low.toFixed(0)} to ${high.toFixed(0)}`;
}
