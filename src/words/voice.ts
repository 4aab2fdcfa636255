/** How a learner is spoken to: on which scale values are counted, and whether the words are read or heard. */
import { formatStep, VALUE_SCALES, type ValueScaleId, valueFromStep } from '../colour/value.js';

export interface Voice {
  readonly scale: ValueScaleId;
  /** Heard from a screen reader: no signs that stand for words. */
  readonly spoken: boolean;
}

/** Painter's steps, read: what files, reports and commands are written in. */
export const WRITTEN: Voice = { scale: 'paper-first', spoken: false };

/** A painter's step on the learner's scale: "4.2", or "6.3" where values are Munsell's. */
export function stepText(step: number, { scale }: Pick<Voice, 'scale'>): string {
  return formatStep(valueFromStep(step), VALUE_SCALES[scale]);
}

/** "step" or "V", short for the learner's scale; "value" where it is heard. */
export function scaleUnit({ scale, spoken }: Voice): string {
  return scale === 'paper-first' ? 'step' : spoken ? 'value' : 'V';
}

/** "step 4.2", "V 6.3". */
export function stepWords(step: number, voice: Voice): string {
  return `${scaleUnit(voice)} ${stepText(step, voice)}`;
}

/** A band of painter's steps on the learner's scale, lower number first: "4.9 to 5.9". */
export function bandText(band: readonly [number, number], voice: Voice): string {
  const [low, high] = band.map((step) => stepText(step, voice)).sort((a, b) => Number(a) - Number(b));
  return low === high ? `${low}` : `${low} to ${high}`;
}

/** Signs that a label may hold, in words where it is heard: "30 %" is "30 per cent". */
export function signsText(text: string, { spoken }: Voice): string {
  if (!spoken) return text;
  return text
    .replaceAll(' %', ' per cent')
    .replaceAll(' ± ', ' give or take ')
    .replaceAll('°', ' degrees')
    .replaceAll(' > ', ', then ');
}

/** A share, 0-1: "14 %", or "14 per cent" where it is heard. */
export const shareText = (share: number, voice: Voice): string =>
  signsText(`${Math.round(100 * share)} %`, voice);
