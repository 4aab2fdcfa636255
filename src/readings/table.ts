/** Every figure that readings are weighed by. Strengths are in natural logarithms where nothing else is said. */
import { MODEL_ERROR } from '../judgement/index.js';
import type { Evidence } from '../paints/index.js';

/**
 * Before anything is read: a tube is as strong as the library's within a factor of three, two times in three. Wide on purpose, so that
 * the readings speak: `anchored` strengths are good to a factor of two, `assumed` ones to nobody knows what. Bounded at four.
 */
export const TUBE = { spread: Math.log(3), most: Math.log(4) } as const;

/**
 * How well water is measured, with brush and dropper: within a factor of 1.5, two times in three. Ours, no source. A factor of 1.3 would
 * narrow the interval of a tube of 1.6 after nine exact readings from 0.91 to 2.52 to 0.99 to 2.35 alone, and where water is measured
 * within 1.5 it would hold the truth in 81 to 92 % of trials in place of 91 to 96 %: what makes it wide is the eye.
 */
export const WATER = { spread: Math.log(1.5), most: Math.log(6) } as const;

/** How far a reader's grey scale may be off as a whole, steps: a home print is no calibrated scale. Ours, no source. */
export const OFFSET = { spread: 1, most: 3 } as const;

/** Of a step read by eye on a grey scale, and of CIELAB read by an instrument. */
const READING_NOISE = { step: 0.5, lab: 1 } as const;

/** Figures that a patch can be read at: steps from half a step beyond either end of the scale, blackest black and whitest white; L*. */
export const READ_ENDS = { step: [0.5, 10.5], lab: [0, 100] } as const;

/** From so many readings it can be said that one disagrees with the others. */
export const LEAST_READINGS = 3;

/** L* of a step, about. */
export const LIGHTNESS_OF_STEP = 10;

/**
 * Standard deviation of a step that was read against the one predicted. The model's own error is that of measured paints whatever the paint:
 * of the others it holds what is not known of their strength, and that is what is asked here.
 */
export const STEP_NOISE = Math.hypot(READING_NOISE.step, MODEL_ERROR.measured.step);

/** The same of L*, a* and b*. */
export function labNoise(evidence: Evidence): readonly [number, number, number] {
  const lightness = Math.hypot(READING_NOISE.lab, LIGHTNESS_OF_STEP * MODEL_ERROR.measured.step);
  const colour = Math.hypot(READING_NOISE.lab, MODEL_ERROR[evidence].chroma);
  return [lightness, colour, colour];
}

/** From so many steps for e times the strength, or ten times as many units of CIELAB, a patch tells of a tube. */
export const LEAST_MOVE = 1;

/** Standard deviations either side: nine in ten of a normal distribution lie between. */
export const NINE_IN_TEN = 1.645;

/** An interval of up to twice as much and half as much is narrow enough to go by. */
export const NARROW = Math.log(2);

/** A tube told to be a quarter stronger or weaker looks unlike the library's. */
export const SEEMS_UNLIKE = Math.log(1.25);

/**
 * Chance below which a patch is said to disagree with the others, as the squared deviation that it goes with (chi-squared, 0.27 %:
 * three standard deviations of one figure): of a step, of the three of CIELAB. Larger shares of all patches are not left out.
 */
export const DISAGREES = { step: 9, lab: 14.16, mostShare: 0.25 } as const;

/** Readings that miss the prediction by more than is left to chance once in two hundred (0.995) are not believed: a normal deviate. */
export const MISFIT_DEVIATE = 2.5758;

/** Steps that might be written down without looking: their mean and standard deviation, about those of a scale of ten. */
export const ANY_STEP = { mean: 5.5, spread: 3 } as const;

/** Odds of one to a hundred and fifty, as a logarithm: very strong evidence (Kass and Raftery, J. Am. Stat. Assoc. 90, 773, 1995). */
export const VERY_STRONG = Math.log(150);
