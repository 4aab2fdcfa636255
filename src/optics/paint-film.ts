/**
 * Films of several paints over paper, band by band: one puddle, films laid over dry films, areas side by side.
 *
 * A wash is not of one thickness: it settles into the tooth of the paper. Every film is therefore computed at the thickness
 * factors of its ground and the reflectances are averaged. All films of a stack share the factor at each spot, for it is the
 * same tooth: a paint laid over itself equals one film of both loads.
 */
import { filmReflectance } from './film.js';
import { GRID, type Spectrum } from './grid.js';
import { belowSurface, DRY_WATERCOLOUR, type Surface, throughSurface } from './surface.js';

/** Absorption and scattering of a paint for one unit of load, dimensionless, one number a band. */
export interface Coefficients {
  readonly K: Spectrum;
  readonly S: Spectrum;
}

/** An amount of one paint in a film. Load 1 is the film that 0.01 mL of paint made on one patch of the measured set. */
export interface LoadedPaint {
  readonly paint: Coefficients;
  readonly load: number;
}

/** What the paint lies on: measured reflectance of the dry paper, its surface, the internal reflectance behind it, its tooth. */
export interface Ground {
  readonly reflectance: Spectrum;
  readonly surface: Surface;
  readonly inside: Spectrum;
  /** Thickness of a film at equal shares of the area, as multiples of its mean: averaging 1. */
  readonly tooth: readonly number[];
}

/**
 * Thickness of a film over the tooth of watercolour paper: means of five equal parts of a gamma distribution with mean 1 and
 * coefficient of variation 0.65. Chosen with the fit of the measured paints: K and S fitted so predict reflectance as well as a
 * level film does, and transmittance, hue shift on thinning and chroma of pale washes far better.
 */
export const WATERCOLOUR_TOOTH: readonly number[] = [
  0.2946494798, 0.587989176, 0.8661853598, 1.2247610017, 2.0264149827,
];

/** A film of one thickness, as the textbooks have it. */
export const LEVEL: readonly number[] = [1];

/** Makes a ground, by default with the surface and the tooth of dry watercolour. */
export function ground(
  reflectance: Spectrum,
  surface: Surface = DRY_WATERCOLOUR,
  tooth: readonly number[] = WATERCOLOUR_TOOTH,
): Ground {
  const inside = reflectance.map((measured) => belowSurface(measured, surface));
  return { reflectance, surface, inside, tooth };
}

/** K and S of paints stirred together: loads add (Duncan, Proc. Phys. Soc. 52, 390, 1940). */
export function mixCoefficients(paints: readonly LoadedPaint[]): Coefficients {
  const K = new Float64Array(GRID.count);
  const S = new Float64Array(GRID.count);
  for (const { paint, load } of paints) {
    for (let band = 0; band < GRID.count; band++) {
      K[band] = (K[band] as number) + load * (paint.K[band] as number);
      S[band] = (S[band] as number) + load * (paint.S[band] as number);
    }
  }
  return { K, S };
}

/**
 * One film, the mean over the tooth, written into `out`: searches spend their time here.
 * @param k absorption of the whole film, one number a band
 * @param s scattering of the whole film
 */
export function layInto(out: Spectrum, k: Spectrum, s: Spectrum, { inside, surface, tooth }: Ground): void {
  const nodes = tooth.length;
  for (let band = 0; band < GRID.count; band++) {
    const below = inside[band] as number;
    const K = k[band] as number;
    const S = s[band] as number;
    let sum = 0;
    for (let node = 0; node < nodes; node++) {
      const thickness = tooth[node] as number;
      sum += throughSurface(filmReflectance(K * thickness, S * thickness, below), surface);
    }
    out[band] = sum / nodes;
  }
}

/**
 * One puddle of all the paints, one film.
 * @returns measured reflectance, 0-1 in each band
 */
export function puddle(paints: readonly LoadedPaint[], on: Ground): Spectrum {
  const { K, S } = mixCoefficients(paints);
  const out = new Float64Array(GRID.count);
  layInto(out, K, S, on);
  return out;
}

/**
 * Films laid one over the other, each dry before the next, the first on the paper.
 * @param films what each film holds
 * @param surface of the last film; that of the ground where left out
 * @returns measured reflectance, 0-1 in each band
 */
export function stack(films: readonly Coefficients[], on: Ground, surface: Surface = on.surface): Spectrum {
  const out = new Float64Array(GRID.count);
  for (let band = 0; band < GRID.count; band++) {
    let sum = 0;
    for (const thickness of on.tooth) {
      let below = on.inside[band] as number;
      for (const { K, S } of films) {
        below = filmReflectance((K[band] as number) * thickness, (S[band] as number) * thickness, below);
      }
      sum += throughSurface(below, surface);
    }
    out[band] = sum / on.tooth.length;
  }
  return out;
}

/** Films of paints laid one over the other, the first on the paper. @returns measured reflectance */
export function layers(films: readonly (readonly LoadedPaint[])[], on: Ground): Spectrum {
  return stack(films.map(mixCoefficients), on);
}

/**
 * Side-by-side areas as the eye fuses them from a distance: the area-weighted mean of what each reflects
 * (Murray 1936; Neugebauer 1937).
 * @param reflectances measured-side reflectance of each area
 * @param areas share of each area, adding up to 1
 */
export function fuseAreas(reflectances: readonly Spectrum[], areas: readonly number[]): Spectrum {
  const out = new Float64Array(GRID.count);
  for (const [index, reflectance] of reflectances.entries()) {
    const area = areas[index] ?? 0;
    for (let band = 0; band < GRID.count; band++) {
      out[band] = (out[band] as number) + area * (reflectance[band] as number);
    }
  }
  return out;
}
