/** How much of a paint makes its masstone: `fullStrength` on the scale of the measured watercolours. */
import { deltaE00 } from '../../colour/difference.js';
import type { Lab } from '../../colour/index.js';
import type { Coefficients, Ground } from '../../optics/index.js';
import type { Tinting } from '../catalogue.js';
import acrylics from '../data/tinting-strength.json' with { type: 'json' };
import { filmColour } from './aims.js';
import { sourceSpectrum } from './carried-spectra.js';
import { FIRST_BAND, LAST_BAND } from './medium.js';

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

/** Greatest K of the bands that matter: what tinting strength is read from (ASTM D4838). */
export function greatestK({ K }: Pick<Coefficients, 'K'>): number {
  return Math.max(...K.subarray(FIRST_BAND, LAST_BAND + 1));
}

/** Names in the table of acrylics, each with its tinting strength; the geometric mean where both sets have it. */
const ACRYLIC_STRENGTH: ReadonlyMap<string, number> = new Map(
  acrylics.acrylic.map(({ name, acrylic2016, acrylic2005 }) => {
    const figures = [acrylic2016, acrylic2005].filter((figure) => figure !== undefined);
    return [name, figures.reduce((product, figure) => product * figure, 1) ** (1 / figures.length)];
  }),
);

/**
 * Tinting strength of an acrylic against ultramarine blue, equal amounts of paint as sold.
 * @throws RangeError when the table has no such paint
 */
export function acrylicStrength(name: string): number {
  const strength = ACRYLIC_STRENGTH.get(name);
  if (strength === undefined) throw new RangeError(`data/tinting-strength.json has no ${name}`);
  return strength;
}

/** Tinting strength of a watercolour against the measured ultramarine blue: greatest K per unit load over greatest K per unit load. */
export function strengthAgainstUltramarine(perUnitLoad: Pick<Coefficients, 'K'>): number {
  return greatestK(perUnitLoad) / greatestK(sourceSpectrum('watercolour', 'ultramarine-blue'));
}

/**
 * Load of the masstone film of a paint that is not measured, so that its strength against ultramarine blue is that of an acrylic.
 * Changing it changes amounts only: the film stays as it is.
 * @param film K and S of the masstone film
 */
export function fullStrengthFrom(film: Coefficients, tinting: Tinting): number {
  if (tinting.usual !== undefined) return USUAL_FULL_STRENGTH[tinting.usual];
  return strengthAgainstUltramarine(film) / acrylicStrength(tinting.same ?? tinting.like);
}
