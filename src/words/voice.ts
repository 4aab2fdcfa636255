/** How a learner is spoken to: on which scale values are counted, and whether the words are read or heard. */
import { bandEnds, formatStep, VALUE_SCALES, type ValueScaleId, valueFromStep } from '../colour/value.js';

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
export function bandText(band: readonly [number, number], { scale }: Pick<Voice, 'scale'>): string {
  const [low, high] = bandEnds(band, VALUE_SCALES[scale]);
  return low === high ? low : `${low} to ${high}`;
}

/** Signs that a screen reader leaves out or misreads, as it should say them. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/\s*(→|->)\s*/g, ' to '],
  [/\s*±\s*/g, ' give or take '],
  [/\s*%/g, ' percent'],
  [/\s*°/g, ' degrees'],
  [/\s*~\s*/g, ' about '],
  [/\s+×\s+/g, ' times '],
  [/\s+\/\s+/g, ' over '],
];

/** The line as this learner gets it: signs become words where it is heard. */
export function toVoice(text: string, { spoken }: Pick<Voice, 'spoken'>): string {
  return spoken ? SIGNS.reduce((line, [sign, words]) => line.replace(sign, words), text).trim() : text;
}

/** Signs that a label may hold, in words where it is heard: "30 %" is "30 per cent". */
export function signsText(text: string, { spoken }: Voice): string {
  if (!spoken) return text;
  return text.replaceAll(' %', ' per cent').replaceAll(' ± ', ' give or take ').replaceAll('°', ' degrees');
}

/** A share, 0-1: "14 %", or "14 per cent" where it is heard. */
export const shareText = (share: number, voice: Voice): string =>
  signsText(`${Math.round(100 * share)} %`, voice);
