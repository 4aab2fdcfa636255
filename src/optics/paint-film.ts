/** Films of several paints over paper, band by band: one puddle, a glaze over a dry film, strokes side by side. */
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

/** What the paint lies on: measured reflectance of the dry paper, its surface, and the internal reflectance behind it. */
export interface Ground {
  readonly reflectance: Spectrum;
  readonly surface: Surface;
  readonly inside: Spectrum;
}

/** Makes a ground, by default with the surface of dry watercolour. */
export function ground(reflectance: Spectrum, surface: Surface = DRY_WATERCOLOUR): Ground {
  return { reflectance, surface, inside: reflectance.map((measured) => belowSurface(measured, surface)) };
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
 * Lays a film over something whose internal reflectance is known.
 * @returns internal reflectance, 0-1 in each band
 */
export function layFilm(film: Coefficients, below: Spectrum): Spectrum {
  const out = new Float64Array(GRID.count);
  for (let band = 0; band < GRID.count; band++) {
    out[band] = filmReflectance(film.K[band] as number, film.S[band] as number, below[band] as number);
  }
  return out;
}

/** Measured reflectance of a surface whose internal reflectance is known. */
export function seen(internal: Spectrum, surface: Surface): Spectrum {
  const out = new Float64Array(GRID.count);
  for (let band = 0; band < GRID.count; band++) out[band] = throughSurface(internal[band] as number, surface);
  return out;
}

/**
 * One puddle of all the paints, one film.
 *
 * The same as {@link seen} of {@link layFilm} of {@link mixCoefficients}, in one pass: searches spend their time here.
 * @returns measured reflectance, 0-1 in each band
 */
export function puddle(paints: readonly LoadedPaint[], { inside, surface }: Ground): Spectrum {
  const out = new Float64Array(GRID.count);
  for (let band = 0; band < GRID.count; band++) {
    let k = 0;
    let s = 0;
    for (const { paint, load } of paints) {
      k += load * (paint.K[band] as number);
      s += load * (paint.S[band] as number);
    }
    out[band] = throughSurface(filmReflectance(k, s, inside[band] as number), surface);
  }
  return out;
}

/** Films laid one over the other, each dry before the next, the first on the paper. @returns measured reflectance */
export function layers(films: readonly (readonly LoadedPaint[])[], on: Ground): Spectrum {
  let below = on.inside;
  for (const film of films) below = layFilm(mixCoefficients(film), below);
  return seen(below, on.surface);
}

/** Each paint a film of its own over the dry one before it, the first on the paper. @returns measured reflectance */
export function glaze(paints: readonly LoadedPaint[], on: Ground): Spectrum {
  return layers(
    paints.map((paint) => [paint]),
    on,
  );
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

/**
 * Strokes of the single paints side by side. Each load is the amount over the whole passage, so a paint that
 * covers a share of it lies there at load / share: the same paint as in the puddle, kept apart.
 */
export function strokes(paints: readonly LoadedPaint[], areas: readonly number[], on: Ground): Spectrum {
  const reflectances = paints.map(({ paint, load }, index) => {
    const area = areas[index] ?? 0;
    return area > 0 ? puddle([{ paint, load: load / area }], on) : on.reflectance;
  });
  return fuseAreas(reflectances, areas);
}
