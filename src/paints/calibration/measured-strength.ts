/** Load at which a measured paint reaches its published masstone. */
import type { Coefficients, Ground } from '../../optics/index.js';
import { appearanceOf, type CatalogueEntry } from '../catalogue.js';
import { loadAtLightness, loadNearestColour, TOO_LIGHT_TO_TELL } from './tinting.js';

/**
 * `fullStrength` of a measured paint: load whose film has the published masstone's lightness (D50, 10 degrees), or for a light
 * paint is nearest to it in colour; 1 where nothing is published or no load reaches it.
 * @param paint K and S per unit load
 */
export function measuredFullStrength(
  entry: Pick<CatalogueEntry, 'id' | 'lightnessFrom'>,
  paint: Coefficients,
  on: Ground,
): number {
  const { masstone, lightness } = appearanceOf(entry.lightnessFrom ?? entry.id);
  if (masstone === undefined) {
    return lightness === undefined ? 1 : (loadAtLightness(paint, lightness, on) ?? 1);
  }
  const [l = Number.NaN, a = Number.NaN, b = Number.NaN] = masstone;
  if (l > TOO_LIGHT_TO_TELL) return loadNearestColour(paint, { l, a, b }, on);
  return loadAtLightness(paint, l, on) ?? 1;
}
