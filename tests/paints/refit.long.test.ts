/**
 * The shipped K, S and error figures follow from the carried films.
 * Source of the films: Chen, Huang, Chang, Ouhyoung (2019), arXiv:1904.00275 (src/paints/refit/data).
 */
import { mean } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import errors from '../../src/accuracy/data/blind.json' with { type: 'json' };
import shipped from '../../src/paints/data/measured.json' with { type: 'json' };
import { thinnestFilms } from '../../src/paints/refit/blind.js';
import { foldMean } from '../../src/paints/refit/errors-file.js';
import { measuredFile } from '../../src/paints/refit/file.js';
import { fitTable } from '../../src/paints/refit/fit.js';
import { fitWithout, foldPairs } from '../../src/paints/refit/folds.js';
import { ALL_EVIDENCE, SHIPPED_MODEL } from '../../src/paints/refit/model.js';

/** Four digits are shipped; the solver may differ in the last one on another machine. */
const TOLERANCE = 2e-3;

const PATIENCE_MS = 120_000;

describe('refit', () => {
  test(
    'gives the shipped K and S',
    () => {
      const refitted = JSON.parse(measuredFile(fitTable(ALL_EVIDENCE, SHIPPED_MODEL), shipped.date));
      expect({ ...refitted, pigments: [] }).toEqual({ ...shipped, pigments: [] });
      for (const [paint, { id, K, S }] of shipped.pigments.entries()) {
        for (const [name, carried] of [
          ['K', K],
          ['S', S],
        ] as const) {
          for (const [band, value] of carried.entries()) {
            const found = refitted.pigments[paint][name][band];
            expect(Math.abs(Math.log(found / value)), `${id} ${name} ${band}`).toBeLessThan(TOLERANCE);
          }
        }
      }
    },
    PATIENCE_MS,
  );

  test('deals the pairs out as listed', () => {
    expect(foldPairs()).toEqual(errors.blind.folds.map((fold) => fold.pairs));
  });

  test.each([0, 1])(
    'fold %i: pairs that the fit did not see are as far off as stated',
    (index) => {
      const fold = errors.blind.folds[index];
      const refitted = fitWithout(foldPairs()[index] ?? [], SHIPPED_MODEL);
      expect(refitted.unseen.length).toBe(fold?.n);
      expect(Math.abs(foldMean(refitted) - (fold?.mean ?? Number.NaN))).toBeLessThanOrEqual(0.011);
    },
    PATIENCE_MS,
  );

  test(
    'thinnest films that the fit did not see are as far off as stated',
    () => {
      const found = mean(thinnestFilms(SHIPPED_MODEL).map(({ deltaE00 }) => deltaE00));
      expect(Math.abs(found - errors.thinnest.mean)).toBeLessThanOrEqual(0.011);
    },
    PATIENCE_MS,
  );
});
