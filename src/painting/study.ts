/** Value studies: a painting in its greys, or in a few values with boundaries that are equal steps to the eye. Pure. */
import { codeOfLight } from '../colour/srgb.js';
import { painterStep, valueFromStep, yFromMunsellValue } from '../colour/value.js';
import { VALUE_BOUNDS } from '../judgement/table.js';
import type { FilePixels } from './file-pixels.js';
import { despeckled } from './reading/labels.js';
import type { Likeness } from './types.js';

/** Into how many values a painting is brought. */
export const STUDY_VALUES = [2, 3, 5] as const;
export type StudyValues = (typeof STUDY_VALUES)[number];

/** One study: the greys as they are, or so many values. */
export type Study = 'grey' | StudyValues;

/** The lightest and the darkest that watercolour reaches, steps: the ends of the three even parts that the bounds of light, middle and dark cut. */
const [LIGHT_BOUND, DARK_BOUND] = VALUE_BOUNDS;
const REACH = {
  from: LIGHT_BOUND - (DARK_BOUND - LIGHT_BOUND),
  to: DARK_BOUND + (DARK_BOUND - LIGHT_BOUND),
} as const;

/** Steps at which one value gives way to the next: even parts of what watercolour reaches. Of three they are 3.5 and 6. */
export function studyBounds(values: StudyValues): number[] {
  return Array.from(
    { length: values - 1 },
    (_, at) => REACH.from + ((at + 1) * (REACH.to - REACH.from)) / values,
  );
}

/** Which of the values a step falls in, 0 the lightest. */
export const studyValueOf = (step: number, bounds: readonly number[]): number =>
  bounds.filter((bound) => step >= bound).length;

/** The step that each value is shown as: evenly from paper to the darkest. */
export function studySteps(values: StudyValues): number[] {
  return Array.from(
    { length: values },
    (_, at) => REACH.from + (at * (REACH.to - REACH.from)) / (values - 1),
  );
}

/** Grey of a Munsell value in 8 bits. */
const greyOf = (value: number): number => Math.round(255 * codeOfLight(yFromMunsellValue(value) / 100));

/** Half the side of the window that a pixel is outvoted in, for each round. */
const REACHES = [2, 3];

/** Parts of a Munsell value that a grey is looked up in: finer than 8 bits tell apart. */
const PARTS = 100;

/** Makes a study. */
export function studyOf(likeness: Likeness, study: Study): FilePixels {
  const { width, height, value } = likeness;
  if (study === 'grey') {
    const greys = Uint8Array.from({ length: 10 * PARTS + 1 }, (_, at) => greyOf(at / PARTS));
    return { width, height, data: Uint8Array.from(value, (v) => greys[Math.round(v * PARTS)] as number) };
  }
  const bounds = studyBounds(study);
  const greys = studySteps(study).map((step) => greyOf(valueFromStep(step)));
  const values = Uint8Array.from(value, (v) => studyValueOf(painterStep(v), bounds));
  // Grain and soft edges would speckle the boundaries.
  const settled = despeckled(values, width, height, study, REACHES);
  return { width, height, data: settled.map((at) => greys[at] as number) };
}
