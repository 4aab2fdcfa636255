/**
 * The step of refractive index at the paint's surface (Saunderson, J. Opt. Soc. Am. 32, 727, 1942).
 * Kubelka-Munk works inside the film; an eye or an instrument sees it through this.
 */

/** k1: part of the light reflected before it enters. k2: part of the light inside that the surface turns back. Both 0-1. */
export interface Surface {
  readonly k1: number;
  readonly k2: number;
}

/**
 * Matt dry watercolour on paper, as used for the fit of the measured paints. The k1 term stays because a matt
 * surface sends its reflection everywhere, into every viewing direction.
 */
export const DRY_WATERCOLOUR: Surface = { k1: 0.01, k2: 0.6 };

/**
 * Measured reflectance of a surface whose inside reflects `internal`.
 * @param internal 0-1
 * @returns 0-1, specular part included
 */
export function throughSurface(internal: number, { k1, k2 }: Surface = DRY_WATERCOLOUR): number {
  return k1 + ((1 - k1) * (1 - k2) * internal) / (1 - k2 * internal);
}

/**
 * Internal reflectance behind a measured one: the inverse of {@link throughSurface}.
 * @param measured 0-1; below k1 nothing comes from inside and 0 is returned
 * @returns 0-1
 */
export function belowSurface(measured: number, { k1, k2 }: Surface = DRY_WATERCOLOUR): number {
  const inside = measured - k1;
  const internal = inside / ((1 - k1) * (1 - k2) + k2 * inside);
  return internal < 0 ? 0 : internal > 1 ? 1 : internal;
}
