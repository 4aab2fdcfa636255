/**
 * What drying does to a wash.
 *
 * Two things change. The wet surface is a mirror, which throws its reflection away to one side; dry, it is matt and sends
 * it everywhere (the k1 term of the surface). And pigment in water scatters less than pigment that stands in air and
 * dry gum, so the wet film is clearer and deeper.
 *
 * The second share has one number in it, {@link WET_SCATTERING}. It is set so that the measured paints at full strength
 * rise by 2.3 L* on average, the mean over 75 watercolours that B. MacEvoy published (handprint.com, pages cdsl.html and
 * cdsp.html, drying shift). That the loss of chroma is then about three times the change of lightness, that dark and
 * strong washes change most and pale ones hardly, is not put in; it comes out, and the same pages report it.
 *
 * Limits: the pages say that a good many paints dry darker; this model never darkens one. They also find more change in
 * cool paints than in cadmiums, which it does not show. Take from it the direction and the rough size, no more.
 */

import type { Spectrum } from './grid.js';
import { type Ground, type LoadedPaint, mixCoefficients, stack } from './paint-film.js';
import type { Surface } from './surface.js';

/** Scattering of a wet film as a share of the dry one's, 0-1; see above. */
const WET_SCATTERING = 0.7;

/** A wet surface, seen from anywhere but the mirror's direction: nothing comes back from the outside. */
function wetSurface({ k2 }: Surface): Surface {
  return { k1: 0, k2 };
}

/**
 * Washes laid one over the other, the last still wet, the ones below it dry.
 * @param films each one puddle, the first on the paper; at least one
 * @returns measured reflectance, 0-1 in each band
 * @throws RangeError for no films
 */
export function lastFilmWet(films: readonly (readonly LoadedPaint[])[], on: Ground): Spectrum {
  const last = films.at(-1);
  if (last === undefined) throw new RangeError('a wet film needs a film');
  const { K, S } = mixCoefficients(last);
  const wet = { K, S: S.map((scattering) => scattering * WET_SCATTERING) };
  return stack([...films.slice(0, -1).map(mixCoefficients), wet], on, wetSurface(on.surface));
}
