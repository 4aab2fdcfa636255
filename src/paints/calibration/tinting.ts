/** How much of a paint makes its masstone: `fullStrength` on the scale of the measured watercolours. */
import { deltaE00 } from '../../colour/difference.js';
import type { Lab } from '../../colour/index.js';
import type { Coefficients, Ground } from '../../optics/index.js';
import type { Tinting } from '../catalogue.js';
import { acrylicStrength } from '../tinting-strength.js';
import { filmColour } from './aims.js';
import { sourceSpectrum } from './carried-spectra.js';
import { greatestK } from './medium.js';

/** Loads searched: from a trace to many strokes. */
const LEAST_LOAD = 0.01;
const MOST_LOAD = 20;

/** Above this L* a yellow or white hardly darkens with more paint, so its lightness does not tell the load. */
export const TOO_LIGHT_TO_TELL = 80;

/** Load at which a film falls to this lightness (D50, 10 degrees), or undefined when it never does. */
export function loadAtLightness(paint: Coefficients, lightness: number, on: Ground): number | undefined {
  let low = Math.log(LEAST_LOAD);
  let high = Math.log(MOST_LOAD);
  const at = (logLoad: number) => filmColour(paint, Math.exp(logLoad), 'D50-10', on).l;
  if (at(low) < lightness || at(high) > lightness) return undefined;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (at(middle) > lightness) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

/** Load at which a film comes nearest to a colour (D50, 10 degrees). */
export function loadNearestColour(paint: Coefficients, lab: Lab, on: Ground): number {
  let best = LEAST_LOAD;
  let least = Number.POSITIVE_INFINITY;
  const steps = 600;
  for (let step = 0; step <= steps; step++) {
    const load = LEAST_LOAD * (MOST_LOAD / LEAST_LOAD) ** (step / steps);
    const difference = deltaE00(filmColour(paint, load, 'D50-10', on), lab);
    if (difference < least) {
      least = difference;
      best = load;
    }
  }
  return best;
}

/**
 * Load of a masstone where nothing is known of a paint's strength but whether its pigment is mineral or organic: the middle one of
 * the measured and anchored paints of that kind (mineral 0.17-1.35 over 18, organic 0.13-1.03 over 11).
 */
export const USUAL_FULL_STRENGTH = { mineral: 0.37, organic: 0.2 } as const;

/**
 * Load of the masstone film of a paint that is not measured, so that its strength against ultramarine blue is that of an acrylic.
 * Changing it changes amounts only: the film stays as it is.
 * @param film K and S of the masstone film
 */
export function fullStrengthFrom(film: Coefficients, tinting: Tinting): number {
  if (tinting.usual !== undefined) return USUAL_FULL_STRENGTH[tinting.usual];
  const ultramarine = greatestK(sourceSpectrum('watercolour', 'ultramarine-blue').K);
  return greatestK(film.K) / (ultramarine * acrylicStrength(tinting.same ?? tinting.like));
}
