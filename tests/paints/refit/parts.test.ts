/** The parts of the refit: thickness factors, slopes, equations. */
import { describe, expect, test } from 'vitest';
import {
  DRY_WATERCOLOUR,
  filmReflectance,
  throughSurface,
  WATERCOLOUR_TOOTH,
} from '../../../src/optics/index.js';
import { addTo, emptyEnvelope, solveDamped } from '../../../src/paints/refit/envelope.js';
import {
  reflectanceWithSlopes,
  type Sloped,
  transmittanceWithSlopes,
} from '../../../src/paints/refit/slopes.js';
import { gammaTooth } from '../../../src/paints/refit/tooth.js';

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('tooth', () => {
  test('the shipped factors are those of a gamma distribution of variation 0.65', () => {
    for (const [part, factor] of gammaTooth(0.65).entries()) {
      expect(factor).toBeCloseTo(WATERCOLOUR_TOOTH[part] as number, 6);
    }
  });
  test('a variation of 1 is the exponential distribution, whose lower half has the mean 1 - ln 2', () => {
    expect(gammaTooth(1, 2)[0]).toBeCloseTo(1 - Math.LN2, 4);
    expect(mean(gammaTooth(1, 2))).toBeCloseTo(1, 6);
  });
  test('many parts have the variation asked for', () => {
    const factors = gammaTooth(0.65, 200);
    expect(Math.sqrt(mean(factors.map((factor) => (factor - 1) ** 2)))).toBeCloseTo(0.65, 2);
  });
});

const CASES = [0, 1e-6, 0.002, 0.3, 2, 15, 90].flatMap((k) =>
  [1e-6, 0.01, 0.4, 3].map((s) => [k, s] as const),
);

/** T = b / (a·sinh bSX + b·cosh bSX), Kubelka 1948. */
function textbookTransmittance(k: number, s: number): number {
  const g = Math.sqrt(k * (k + 2 * s));
  if (g < 1e-6) return 1 / (1 + k + s);
  return g > 300 ? 0 : g / ((s + k) * Math.sinh(g) + g * Math.cosh(g));
}

describe('slopes', () => {
  const out: Sloped = { value: 0, byK: 0, byS: 0 };
  const trials = [
    [
      'reflectance',
      (k: number, s: number) => reflectanceWithSlopes(out, k, s, 0.9, DRY_WATERCOLOUR, WATERCOLOUR_TOOTH),
      (k: number, s: number) => throughSurface(filmReflectance(k, s, 0.9), DRY_WATERCOLOUR),
    ],
    [
      'transmittance',
      (k: number, s: number) => transmittanceWithSlopes(out, k, s, WATERCOLOUR_TOOTH),
      textbookTransmittance,
    ],
  ] as const;
  test.each(trials)(
    '%s agrees with the film of the program, and its slopes with small steps',
    (_, sloped, film) => {
      const level = (k: number, s: number) => mean(WATERCOLOUR_TOOTH.map((t) => film(k * t, s * t)));
      for (const [k, s] of CASES) {
        sloped(k, s);
        const { value, byK, byS } = out;
        expect(value).toBeCloseTo(level(k, s), 9);
        const step = 1e-5;
        // Sums of K and S below zero have no meaning, so the step goes one way at the edge.
        const backK = Math.min(step, k);
        const backS = Math.min(step, s);
        const slopeK = (level(k + step, s) - level(k - backK, s)) / (step + backK);
        const slopeS = (level(k, s + step) - level(k, s - backS)) / (step + backS);
        expect(Math.abs(byK - slopeK)).toBeLessThan(1e-4 + 2e-3 * Math.abs(slopeK));
        expect(Math.abs(byS - slopeS)).toBeLessThan(1e-4 + 2e-3 * Math.abs(slopeS));
      }
    },
  );
});

describe('equations', () => {
  test('an envelope with a full last row is solved as any symmetric system', () => {
    const first = [0, 0, 1, 2, 0];
    const matrix = emptyEnvelope(first);
    const entries = [
      [0, 0, 4],
      [1, 0, 1],
      [1, 1, 5],
      [2, 1, -2],
      [2, 2, 6],
      [3, 2, 1],
      [3, 3, 3],
      [4, 0, 1],
      [4, 2, 2],
      [4, 3, -1],
      [4, 4, 7],
    ] as const;
    const known = [1, -2, 3, 0.5, -1];
    const right = new Float64Array(5);
    for (const [row, column, value] of entries) {
      addTo(matrix, row, column, value);
      right[row] = (right[row] as number) + value * (known[column] as number);
      if (row !== column) right[column] = (right[column] as number) + value * (known[row] as number);
    }
    const found = solveDamped(matrix, right, 0);
    for (const [place, value] of known.entries()) expect(found?.[place]).toBeCloseTo(value, 10);
  });
  test('a matrix that is not positive definite is refused', () => {
    const matrix = emptyEnvelope([0]);
    addTo(matrix, 0, 0, -1);
    expect(solveDamped(matrix, Float64Array.of(1), 0)).toBeUndefined();
  });
});
