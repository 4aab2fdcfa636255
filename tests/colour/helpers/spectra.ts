import fc from 'fast-check';
import type { ObserverId } from '../../../src/colour/xyz.js';
import { GRID, type Spectrum, spectrum } from '../../../src/optics/grid.js';

/**
 * A reflectance measured over a shorter range, on the program's grid: the first and last value stand for the bands
 * that are missing, which is what ASTM E308 does when it adds their weights to the end bands.
 */
export function widen(reflectance: readonly number[], startNm: number): Spectrum {
  const before = (startNm - GRID.startNm) / GRID.stepNm;
  const after = GRID.count - before - reflectance.length;
  return spectrum([
    ...new Array<number>(before).fill(reflectance[0] as number),
    ...reflectance,
    ...new Array<number>(after).fill(reflectance.at(-1) as number),
  ]);
}

/** Any reflectance at all, 0-1 in every band. */
export const anyReflectance: fc.Arbitrary<Spectrum> = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: GRID.count, maxLength: GRID.count })
  .map((values) => spectrum(values));

/** The same reflectance in every band. */
export const flat = (reflectance: number): Spectrum => new Float64Array(GRID.count).fill(reflectance);

/** Every observer that the program knows. */
export const OBSERVER_IDS: readonly ObserverId[] = ['D65-2', 'D50-2', 'D50-10'];
