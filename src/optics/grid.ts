/**
 * The wavelength grid that every spectrum in the program lives on: 380 to 750 nm in steps of 10 nm, 38 bands.
 * It is the grid of the measured watercolours, so no figure is interpolated on its way in.
 */
export const GRID = { startNm: 380, endNm: 750, stepNm: 10, count: 38 } as const;

/** One number for each band of {@link GRID}: reflectance 0-1, or K or S per unit load. */
export type Spectrum = Float64Array;

/** The band centres in nanometres, 380 first. */
export const WAVELENGTHS_NM: readonly number[] = Array.from(
  { length: GRID.count },
  (_, band) => GRID.startNm + band * GRID.stepNm,
);

/**
 * Turns a plain list of 38 numbers (as data files hold them) into a spectrum.
 * @throws RangeError when the length is not 38 or a number is not finite.
 */
export function spectrum(values: readonly number[], name = 'spectrum'): Spectrum {
  if (values.length !== GRID.count) {
    throw new RangeError(`${name}: expected ${GRID.count} bands (380-750 nm), got ${values.length}`);
  }
  for (const [band, value] of values.entries()) {
    if (!Number.isFinite(value))
      throw new RangeError(`${name}: band ${band} is ${value}, not a finite number`);
  }
  return Float64Array.from(values);
}
