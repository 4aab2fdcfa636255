/**
 * From a spectrum measured in another medium to the film of a watercolour: what is common to all paints.
 *
 * Three regularities, each fitted to the measured watercolours and recomputed by the tests:
 * - K ranges less widely in watercolour than in acrylic or oil (rough, uneven films), and a little wider than in dry powder;
 * - in a watercolour film S follows K, log S rising slowly with log K;
 * - the S of a masstone film falls with the paint's transparency rating.
 */
import { absorptionOverScattering, type Coefficients, GRID, type Spectrum } from '../../optics/index.js';

/** What the source spectrum was measured in. */
export type Medium = 'watercolour' | 'acrylic' | 'oil' | 'powder';

/**
 * Slope of log K in watercolour against log K of the same pigment or its near kin elsewhere, 420-690 nm. Found: acrylic 0.59-0.82,
 * in the middle 0.76 (ultramarine twice, cadmium red, phthalo blue, arylide yellow, quinacridone); oil 0.77 (Prussian blue).
 * Not carried, and found with level films: oil 0.92 (ultramarine), powder K/S 1.02-1.18 (ultramarine, cadmium red and yellow).
 * Earths are left out: one code covers unlike earths.
 */
const CONTRAST: Readonly<Record<Exclude<Medium, 'watercolour'>, number>> = {
  acrylic: 0.75,
  oil: 0.8,
  powder: 1.15,
};

/** Least K, as a share of the mean, that is believed: watercolours keep a little absorption everywhere. */
export const LEAST_SHARE = 0.005;

/** Slope of log S against log K inside one watercolour, median over the measured paints (0.31). */
export const SCATTER_FOLLOWS = 0.35;

/** Mean S of a masstone film: ln S = intercept + slope · transparency, over eight measured paints; scatter of ln S about it. */
export const SCATTER_BY_TRANSPARENCY = { intercept: -0.17, slope: -0.52, deviation: 0.58 } as const;

/** Bands 420-690 nm, over which means are taken: the ends are noisy and nearly invisible. */
const FIRST = 4;
const LAST = 31;

/** Mean over the bands that matter. */
export function visibleMean(values: Spectrum): number {
  let sum = 0;
  for (let band = FIRST; band <= LAST; band++) sum += values[band] as number;
  return sum / (LAST - FIRST + 1);
}

/** Mean S of the masstone film of a paint with this transparency rating (0 covering - 4 clear). */
export function scatterFromTransparency(transparency: number): number {
  return Math.exp(SCATTER_BY_TRANSPARENCY.intercept + SCATTER_BY_TRANSPARENCY.slope * transparency);
}

/** Starting shape of a film: ln K and ln S up to a constant each, and how far S follows a change of K. */
export interface StartingShape {
  readonly logK: Spectrum;
  readonly logS: Spectrum;
  readonly follows: number;
}

/**
 * The shape that a spectrum of another medium takes in watercolour.
 * @param source K and S in any unit; for a watercolour both shapes are kept, else only K counts
 */
export function startingShape(source: Coefficients, medium: Medium): StartingShape {
  const meanK = visibleMean(source.K);
  if (medium === 'watercolour') {
    return {
      logK: source.K.map((k) => Math.log(Math.max(k / meanK, 1e-4))),
      logS: source.S.map((s) => Math.log(Math.max(s / visibleMean(source.S), 1e-3))),
      follows: 0,
    };
  }
  return {
    logK: source.K.map((k) => CONTRAST[medium] * Math.log(Math.max(k / meanK, 1e-4) + LEAST_SHARE)),
    logS: new Float64Array(GRID.count),
    follows: SCATTER_FOLLOWS,
  };
}

/** K/S of a dry powder from its reflectance (Kubelka and Munk 1931), with S taken as 1. */
export function powderCoefficients(reflectance: Spectrum): Coefficients {
  return {
    K: reflectance.map((r) => absorptionOverScattering(Math.min(Math.max(r, 1e-3), 1))),
    S: new Float64Array(GRID.count).fill(1),
  };
}
