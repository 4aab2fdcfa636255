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

/** A Munsell value on the learner's scale, with its unit: "step 4.2", "V 6.3". */
export function valueWords(value: number, voice: Voice): string {
  return `${scaleUnit(voice)} ${formatStep(value, VALUE_SCALES[voice.scale])}`;
}

/** The same of a painter's step. */
export const stepWords = (step: number, voice: Voice): string => valueWords(valueFromStep(step), voice);

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
