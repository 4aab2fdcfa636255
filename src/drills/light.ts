/** A surface under less light, and the same with its colour weakened or forced. */
import { readColour } from '../colour/reading.js';
import { valueFromStep, yFromMunsellValue } from '../colour/value.js';
import { reflectanceToXyz } from '../colour/xyz.js';
import type { Spectrum } from '../optics/index.js';

/**
 * What reaches the eye from a surface in shade, as a share of what white in full light sends: every part of the light
 * falls alike, so the colour goes down the shading line by itself.
 * @param step painter's step that the shade has
 */
export function inShade(lit: Spectrum, step: number): Spectrum {
  const share = yFromMunsellValue(valueFromStep(step)) / reflectanceToXyz(lit).y;
  return lit.map((band) => Math.min(1, band * share));
}

/** The spectrum pulled towards a grey of its own luminance (t below 1) or away from it (t above 1), held to 0-1. */
function pulled(from: Spectrum, t: number): Spectrum {
  const grey = reflectanceToXyz(from).y / 100;
  return from.map((band) => Math.min(1, Math.max(0, grey + t * (band - grey))));
}

/** Halvings of the search; each doubles the precision. */
const ROUNDS = 40;
/** Furthest that a spectrum is pulled apart. */
const MOST_PULL = 4;

/** The same colour with another chroma, as near as its spectrum allows, its value about kept. */
export function withChroma(from: Spectrum, chroma: number): Spectrum {
  let low = 0;
  let high = MOST_PULL;
  for (let round = 0; round < ROUNDS; round++) {
    const middle = (low + high) / 2;
    if (readColour(pulled(from, middle)).chroma < chroma) low = middle;
    else high = middle;
  }
  return pulled(from, high);
}
