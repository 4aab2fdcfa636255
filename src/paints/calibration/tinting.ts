/** How much of a paint makes its masstone: `fullStrength` on the scale of the measured watercolours. */
import { deltaE00 } from '../../colour/difference.js';
import type { Lab } from '../../colour/index.js';
import type { Coefficients, Ground } from '../../optics/index.js';
import type { SpectrumSet } from '../catalogue.js';
import { filmColour } from './aims.js';
import { sourceSpectrum } from './carried-spectra.js';
import { visibleMean } from './medium.js';

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
 * Paints that a set shares with the measured watercolours, or near kin: [set's name, watercolour id].
 * Organic paints come out at 3 to 5 times K, mineral ones at 13 to 18: makers load them differently, so the mean is rough.
 */
const SHARED: Readonly<Partial<Record<SpectrumSet, readonly (readonly [string, string])[]>>> = {
  'acrylic-2016': [
    ['PB29', 'ultramarine-blue'],
    ['PR108', 'cadmium-red'],
    ['PY74', 'lemon-yellow'],
    ['PV19', 'alizarin-crimson'],
  ],
  'acrylic-2005': [
    ['ultramarine blue', 'ultramarine-blue'],
    ['burnt sienna', 'burnt-sienna'],
    ['raw sienna', 'raw-sienna'],
  ],
  watercolour: [['ultramarine-blue', 'ultramarine-blue']],
};

/**
 * Strongest and weakest paint let through. Published talk of phthalo blue being forty times as strong as ultramarine is
 * about dry pigment; makers thin the one and load the other. A half of the load of Prussian blue is the least taken, after the
 * published ratio of two between those blues.
 */
export const FULL_STRENGTH_LIMITS = { least: 0.07, most: 2.5 } as const;

/** K of one unit load of watercolour for one unit of the set's K; undefined for a set without a common paint. */
function scaleOf(from: SpectrumSet): number | undefined {
  const shared = SHARED[from];
  if (shared === undefined) return undefined;
  let logs = 0;
  for (const [name, id] of shared) {
    logs += Math.log(
      visibleMean(sourceSpectrum('watercolour', id).K) / visibleMean(sourceSpectrum(from, name).K),
    );
  }
  return Math.exp(logs / shared.length);
}

/**
 * Load whose K is that of the masstone film, when paint of the source's tinting strength makes it.
 * @returns undefined when the source tells no tinting strength (a powder, a lone film)
 */
export function fullStrengthFromTinting(
  film: Coefficients,
  from: SpectrumSet,
  pigment: string,
): number | undefined {
  const scale = scaleOf(from);
  if (scale === undefined) return undefined;
  const load = visibleMean(film.K) / (scale * visibleMean(sourceSpectrum(from, pigment).K));
  return Math.min(Math.max(load, FULL_STRENGTH_LIMITS.least), FULL_STRENGTH_LIMITS.most);
}
