/** Where each unknown of the fit stands, and what it means. */
import { type Coefficients, GRID } from '../../optics/index.js';
import { PAINT_IDS } from './measurements.js';

/** ln K and ln S of each paint band by band, then ln scale of each paint's transmittance. */
export type Unknowns = Float64Array;

export const PAINTS = PAINT_IDS.length;
export const PER_BAND = 2 * PAINTS;
export const FIRST_SCALE = GRID.count * PER_BAND;
export const UNKNOWNS = FIRST_SCALE + PAINTS;

export const kAt = (band: number, paint: number): number => band * PER_BAND + 2 * paint;
export const sAt = (band: number, paint: number): number => kAt(band, paint) + 1;
export const scaleAt = (paint: number): number => FIRST_SCALE + paint;

/** K and S of every paint, in the order of {@link PAINT_IDS}. */
export type Table = readonly Coefficients[];

/** What the unknowns stand for. */
export function tableOf(x: Unknowns): Table {
  const bands = Array.from({ length: GRID.count }, (_, band) => band);
  return PAINT_IDS.map((_, paint) => ({
    K: Float64Array.from(bands, (band) => Math.exp(x[kAt(band, paint)] as number)),
    S: Float64Array.from(bands, (band) => Math.exp(x[sAt(band, paint)] as number)),
  }));
}
