/** Paint to water as painters say it, and the strength on our scale that each stands for. */
import type { Pigment } from '../paints/index.js';

/** Paint to water, weakest first; the water halves from one to the next. */
export const WATERS = ['1:96', '1:48', '1:24', '1:12', '1:6', '1:3'] as const;
export type Water = (typeof WATERS)[number];

/** Parts of water to one of paint in a wash at masstone. */
export const MASSTONE_WATER = 3;

/**
 * Strength, 0-1, of a wash of one part paint to so many of water: the share of paint in the puddle, 1 / (1 + water),
 * against that of the masstone.
 *
 * A calibration of our own: with the masstone at 1:3 the median of the measured colours has its strongest chroma at
 * about 1:5, in the 1:4 to 1:6 that B. MacEvoy gives for most paints (handprint.com, color18b.html).
 */
export function waterStrength(water: string): number {
  const parts = Number(water.split(':')[1]);
  if (!(parts >= MASSTONE_WATER && parts <= 1000)) {
    throw new RangeError(`water must be 1:${MASSTONE_WATER} or more water, got ${water}`);
  }
  return (1 + MASSTONE_WATER) / (1 + parts);
}

/** Parts of water to one of paint in a wash of that strength, above 0 to 1: the inverse of {@link waterStrength}. */
export const waterOf = (strength: number): number => (1 + MASSTONE_WATER) / strength - 1;

/**
 * The same of a paint alone: a tube that tints so many times as strong as the library's makes a wash so many times as strong with the
 * same water, to the masstone at most.
 */
export const washStrength = ({ timesLibrary = 1 }: Pick<Pigment, 'timesLibrary'>, water: string): number =>
  Math.min(1, timesLibrary * waterStrength(water));

/** Painter's step from which no wash is called tea: tea is pale. */
const TEA_STEP = 3.5;

/**
 * How thick a wash with so much water is, as painters say it (common practice, no source; the bounds are ours, midway between the
 * waters of {@link WATERS}): cream at 1:3, milk at 1:6 and 1:12, tea at 1:24. Butter is paint straight from the tube, which no wash is.
 * Undefined of a thin wash so dark that no painter would call it tea.
 * @param strength of the library's paint with that water: of stronger tubes a wash is as thick as its water, not as its colour
 * @param step painter's step of the wash
 */
export function consistency(strength: number, step: number): string | undefined {
  if (strength < 0.22 && step >= TEA_STEP) return undefined;
  if (strength < 0.115) return 'thin as weak tea';
  if (strength < 0.22) return 'thin as tea';
  if (strength < 0.75) return 'thick as milk';
  return 'thick as cream';
}
