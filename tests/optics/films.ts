/** Films as published tables have them, from the functions that the program works with. */
import { filmReflectance } from '../../src/optics/film.js';
import { type Sloped, transmittanceWithSlopes } from '../../src/paints/refit/slopes.js';

/** Internal reflectance, 0-1, of a film so thick that nothing passes. @param ratio K/S */
export const masstoneReflectance = (ratio: number): number =>
  ratio === Number.POSITIVE_INFINITY ? filmReflectance(1e9, 0, 0) : filmReflectance(ratio * 1e20, 1e20, 0);

/** Internal transmittance, 0-1, of an even film: what the fit of the measured paints takes. */
export function filmTransmittance(k: number, s: number): number {
  const out: Sloped = { value: 0, byK: 0, byS: 0 };
  transmittanceWithSlopes(out, k, s, [1]);
  return out.value;
}
