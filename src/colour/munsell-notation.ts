/** Munsell notation of a colour. Not for inner loops: a conversion is an iteration over tables of chips. */
import { ILLUMINANT_D65, mhvcToMunsell, xyzToMhvc } from 'munsell';
import type { Xyz } from './xyz.js';

/** Below this Munsell chroma a colour is written N: nearer to grey than neighbouring chips differ. */
const NEUTRAL_CHROMA = 0.3;

/**
 * Munsell notation, one decimal: '4.2YR 3.6/5.1', or 'N 6.5' for a neutral.
 *
 * Goes through tristimulus values, since the library's CIELAB entry expects illuminant C. Adapted from D65 to
 * illuminant C (Bradford). Colours outside the renotation (very dark and very strong) give the last approximation.
 * @param xyz D65, 2 degrees, 0-100; clamped where it cannot belong to a surface
 * @throws RangeError when a component is not a number
 */
export function munsellNotation(xyz: Xyz): string {
  if (![xyz.x, xyz.y, xyz.z].every(Number.isFinite)) {
    throw new RangeError(`Munsell notation: (${xyz.x}, ${xyz.y}, ${xyz.z}) is not a colour`);
  }
  const [x, y, z] = [xyz.x, xyz.y, xyz.z].map((component) => Math.max(0, component) / 100);
  const [hue, value, chroma] = xyzToMhvc(x ?? 0, y ?? 0, z ?? 0, ILLUMINANT_D65, 1e-6, 200, 'last');
  if (chroma < NEUTRAL_CHROMA) return `N ${value.toFixed(1)}`;
  // The library spends one decimal fewer on hue than on value and chroma; two there are one here.
  const [hueText] = mhvcToMunsell(hue, value, chroma, 2).split(' ');
  return `${hueText} ${value.toFixed(1)}/${chroma.toFixed(1)}`;
}
