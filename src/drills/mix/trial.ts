/** Trying thousands of amounts: the same prediction as candidates.ts, without making anything on the way. */
import { type ColourReading, readColour } from '../../colour/reading.js';
import {
  type Coefficients,
  filmReflectance,
  GRID,
  type Spectrum,
  throughSurface,
} from '../../optics/index.js';
import { type Load, loadsFromParts, PAPER, predict } from '../../paints/index.js';
import type { Recipe } from '../types.js';
import { type Line, pigmentOf, startParts, volumeOf } from './candidates.js';

/** The colour along a line, for an amount of the second paint in parts to one of the first. */
export type Trial = (ratio: number) => ColourReading;

function sum(loads: readonly Load[]): Coefficients {
  const K = new Float64Array(GRID.count);
  const S = new Float64Array(GRID.count);
  for (const { pigment, load } of loads) {
    for (let band = 0; band < GRID.count; band++) {
      K[band] = (K[band] as number) + load * (pigment.K[band] as number);
      S[band] = (S[band] as number) + load * (pigment.S[band] as number);
    }
  }
  return { K, S };
}

/** One film `one·first + other·second` over a ground, read into `out`. */
function film(
  out: Spectrum,
  first: Coefficients,
  one: number,
  second: Coefficients,
  other: number,
  below: Spectrum,
): ColourReading {
  for (let band = 0; band < GRID.count; band++) {
    const k = one * (first.K[band] as number) + other * (second.K[band] as number);
    const s = one * (first.S[band] as number) + other * (second.S[band] as number);
    out[band] = throughSurface(filmReflectance(k, s, below[band] as number), PAPER.surface);
  }
  return readColour(out);
}

/** Makes ready to try amounts along a line; same numbers as `outcomeOf` to rounding. */
export function trialOf(start: Recipe, { second: id, way, strength }: Line): Trial {
  const parts = startParts(start);
  const volume = volumeOf(parts);
  const second = pigmentOf(id);
  const out = new Float64Array(GRID.count);
  const perPart = sum(parts.map(({ pigment, parts: amount }) => ({ pigment, load: amount })));
  if (way === 'glaze') {
    const dry = sum(loadsFromParts(parts, start.strength));
    const below = PAPER.inside.map((paper, band) =>
      filmReflectance(dry.K[band] as number, dry.S[band] as number, paper),
    );
    return (ratio) => film(out, perPart, 0, second, strength * ratio * second.fullStrength, below);
  }
  if (way === 'strokes') {
    const one = predict(loadsFromParts(parts, strength), 'puddle');
    const other = predict(loadsFromParts([{ pigment: second, parts: 1 }], strength), 'puddle');
    return (ratio) => {
      const own = ratio / second.fullStrength;
      const share = own / (volume + own);
      for (let band = 0; band < GRID.count; band++) {
        out[band] = (1 - share) * (one[band] as number) + share * (other[band] as number);
      }
      return readColour(out);
    };
  }
  return (ratio) => {
    const scale = strength / (volume + ratio / second.fullStrength);
    return film(out, perPart, scale, second, scale * ratio, PAPER.inside);
  };
}
