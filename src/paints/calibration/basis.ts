/** Smooth curves over the wavelength grid: a clamped cubic B-spline basis (de Boor, A Practical Guide to Splines, 1978). */
import { GRID, WAVELENGTHS_NM } from '../../optics/index.js';

/** Where the eye hardly sees and sources disagree, a correction keeps the value it has at the edge. */
const FROM_NM = 400;
const TO_NM = 700;
const DEGREE = 3;

/** Number of splines: one for every 27 nm, finer than any organic pigment's band, coarser than its shoulders. */
export const SPLINES = 14;

const KNOTS: readonly number[] = [
  ...Array(DEGREE).fill(FROM_NM),
  ...Array.from(
    { length: SPLINES - DEGREE + 1 },
    (_, i) => FROM_NM + (i * (TO_NM - FROM_NM)) / (SPLINES - DEGREE),
  ),
  ...Array(DEGREE).fill(TO_NM),
];

function spline(index: number, degree: number, x: number): number {
  const at = (i: number) => KNOTS[i] as number;
  if (degree === 0) return at(index) <= x && x < at(index + 1) ? 1 : 0;
  const rise = at(index + degree) - at(index);
  const fall = at(index + degree + 1) - at(index + 1);
  return (
    (rise > 0 ? ((x - at(index)) / rise) * spline(index, degree - 1, x) : 0) +
    (fall > 0 ? ((at(index + degree + 1) - x) / fall) * spline(index + 1, degree - 1, x) : 0)
  );
}

/** Value of every spline in every band: `BASIS[band][spline]`, each row adding up to 1. */
export const BASIS: readonly (readonly number[])[] = WAVELENGTHS_NM.map((nm) => {
  const x = Math.min(Math.max(nm, FROM_NM), TO_NM - 1e-6);
  return Array.from({ length: SPLINES }, (_, index) => spline(index, DEGREE, x));
});

/** The curve with these spline weights, one number a band. */
export function curve(weights: ArrayLike<number>): Float64Array {
  const out = new Float64Array(GRID.count);
  for (let band = 0; band < GRID.count; band++) {
    const row = BASIS[band] as readonly number[];
    let sum = 0;
    for (let i = 0; i < SPLINES; i++) sum += (row[i] as number) * (weights[i] as number);
    out[band] = sum;
  }
  return out;
}

/** Second differences of the spline weights: all zero for a straight line. */
export function bends(weights: ArrayLike<number>): number[] {
  return Array.from(
    { length: SPLINES - 2 },
    (_, i) => (weights[i] as number) - 2 * (weights[i + 1] as number) + (weights[i + 2] as number),
  );
}
