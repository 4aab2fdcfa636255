/**
 * The sum of squares that the fit makes least, and its normal equations.
 *
 * A film holds at most two paints, so in one band it touches four unknowns of 26. Bands meet only in the one scale of each paint's
 * transmittance and in the wish for smooth curves.
 */
import { GRID, type Ground } from '../../optics/index.js';
import { addTo, type EnvelopeMatrix, emptyEnvelope } from './envelope.js';
import { type MeasuredFilm, type MeasuredTransmittance, TRANSMITTANCE_BANDS } from './measurements.js';
import { type Evidence, type FitModel, groundOf } from './model.js';
import { reflectanceWithSlopes, type Sloped, transmittanceWithSlopes } from './slopes.js';
import { FIRST_SCALE, kAt, PAINTS, PER_BAND, sAt, scaleAt, UNKNOWNS, type Unknowns } from './unknowns.js';

/** The instrument read no less than about this. */
const TRANSMITTANCE_FLOOR = 5e-4;

/** Keeps the equations solvable where nothing depends on an unknown. */
const RIDGE = 1e-9;

/** The sum of squares at some unknowns. */
export interface Squares {
  readonly sum: number;
  /** J'J of the residuals. */
  readonly normal: EnvelopeMatrix;
  /** -J'r. */
  readonly right: Float64Array;
}

function emptyNormal(): EnvelopeMatrix {
  return emptyEnvelope(
    Array.from({ length: UNKNOWNS }, (_, row) => {
      if (row >= FIRST_SCALE) return 0;
      // Second differences reach two bands back.
      return Math.max(0, Math.min(row - 2 * PER_BAND, row - (row % PER_BAND)));
    }),
  );
}

class Adding implements Squares {
  sum = 0;
  readonly normal = emptyNormal();
  readonly right = new Float64Array(UNKNOWNS);

  /** @param at places of the unknowns it depends on, rising @param slopes of the residual in each */
  add(residual: number, at: readonly number[], slopes: readonly number[]): void {
    this.sum += residual * residual;
    for (let i = 0; i < at.length; i++) {
      const row = at[i] as number;
      const slope = slopes[i] as number;
      this.right[row] = (this.right[row] as number) - slope * residual;
      for (let j = 0; j <= i; j++) addTo(this.normal, row, at[j] as number, slope * (slopes[j] as number));
    }
  }
}

const sloped: Sloped = { value: 0, byK: 0, byS: 0 };

function addReflectance(into: Adding, x: Unknowns, film: MeasuredFilm, band: number, on: Ground): void {
  // The paint with the lower place first: places rise.
  const swap = film.a > film.b;
  const [a, b] = swap ? [film.b, film.a] : [film.a, film.b];
  const [loadA, loadB] = swap ? [film.loadB, film.loadA] : [film.loadA, film.loadB];
  const alone = film.loadB === 0;
  const ka = loadA * Math.exp(x[kAt(band, a)] as number);
  const sa = loadA * Math.exp(x[sAt(band, a)] as number);
  const kb = alone ? 0 : loadB * Math.exp(x[kAt(band, b)] as number);
  const sb = alone ? 0 : loadB * Math.exp(x[sAt(band, b)] as number);
  reflectanceWithSlopes(sloped, ka + kb, sa + sb, on.inside[band] as number, on.surface, on.tooth);
  const root = Math.cbrt(sloped.value);
  const residual = root - Math.cbrt(film.reflectance[band] as number);
  const byValue = 1 / (3 * root * root);
  const byK = byValue * sloped.byK;
  const byS = byValue * sloped.byS;
  const at = [kAt(band, a), sAt(band, a)];
  const slopes = [byK * ka, byS * sa];
  if (!alone) {
    at.push(kAt(band, b), sAt(band, b));
    slopes.push(byK * kb, byS * sb);
  }
  into.add(residual, at, slopes);
}

function addTransmittance(
  into: Adding,
  x: Unknowns,
  { paint, load, values }: MeasuredTransmittance,
  { transmittance: weight, tooth }: FitModel,
): void {
  const scale = Math.exp(x[scaleAt(paint)] as number);
  for (const [index, band] of TRANSMITTANCE_BANDS.entries()) {
    const k = load * Math.exp(x[kAt(band, paint)] as number);
    const s = load * Math.exp(x[sAt(band, paint)] as number);
    transmittanceWithSlopes(sloped, k, s, tooth);
    const read = scale * sloped.value + TRANSMITTANCE_FLOOR;
    const residual = weight * Math.log(read / ((values[index] as number) + TRANSMITTANCE_FLOOR));
    const by = (weight * scale) / read;
    into.add(
      residual,
      [kAt(band, paint), sAt(band, paint), scaleAt(paint)],
      [by * sloped.byK * k, by * sloped.byS * s, by * sloped.value],
    );
  }
}

function addSmoothness(into: Adding, x: Unknowns, { smoothK, smoothS }: FitModel): void {
  for (const [at, weight] of [
    [kAt, smoothK],
    [sAt, smoothS],
  ] as const) {
    for (let band = 0; band + 2 < GRID.count; band++) {
      for (let paint = 0; paint < PAINTS; paint++) {
        const places = [at(band, paint), at(band + 1, paint), at(band + 2, paint)];
        const [one = 0, two = 0, three = 0] = places.map((place) => x[place] as number);
        into.add(weight * (one - 2 * two + three), places, [weight, -2 * weight, weight]);
      }
    }
  }
}

/** The sum of squares at some unknowns, with its normal equations. */
export function squaresAt(x: Unknowns, evidence: Evidence, model: FitModel): Squares {
  const into = new Adding();
  const on = groundOf(model);
  for (const film of evidence.films) {
    for (let band = 0; band < GRID.count; band++) addReflectance(into, x, film, band, on);
  }
  if (model.transmittance > 0) {
    for (const film of evidence.transmittances) addTransmittance(into, x, film, model);
  }
  addSmoothness(into, x, model);
  for (let row = 0; row < UNKNOWNS; row++) addTo(into.normal, row, row, RIDGE);
  return into;
}
