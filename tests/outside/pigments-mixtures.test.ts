/**
 * The measured paints against measured watercolour films.
 * Source: Chen, Huang, Chang, Ouhyoung (2019), arXiv:1904.00275, NTU WPSM data set, January 2019 (Apache-2.0 distribution), carried
 * in src/paints/refit/data. K and S are fitted to these films: the first test says how well they are met, not how well others are
 * foretold; that is the second and third, from fits that did not see what they had to predict (recomputed in
 * tests/paints/refit.long.test.ts). Limits are the project's own.
 */
import { mean, quantile } from 'simple-statistics';
import { expect, test } from 'vitest';
import errors from '../../src/accuracy/data/blind.json' with { type: 'json' };
import { findPigment } from '../../src/paints/index.js';
import { differences } from '../../src/paints/refit/blind.js';
import {
  MIXTURE_FILMS,
  PAINT_IDS,
  SINGLE_FILMS,
  TRANSMITTANCES,
} from '../../src/paints/refit/measurements.js';
import { SHIPPED_MODEL } from '../../src/paints/refit/model.js';

const table = PAINT_IDS.map((id) => {
  const paint = findPigment(id);
  if (paint === undefined) throw new Error(`no paint ${id}`);
  return paint;
});

test('the carried films are all there: 13 paints at 12 loads, 62 pairs at 10', () => {
  expect(new Set(SINGLE_FILMS.map(({ a, loadA }) => `${a} ${loadA}`)).size).toBe(13 * 12);
  expect(MIXTURE_FILMS.length).toBe(620);
  expect(new Set(MIXTURE_FILMS.map(({ a, b }) => `${a} ${b}`)).size).toBe(62);
  expect(TRANSMITTANCES.length).toBe(13 * 4);
});

test('the films that were fitted are met: CIEDE2000 of mixtures 2.1 in the mean, 4 at the 90th percentile', () => {
  const mixtures = differences(table, MIXTURE_FILMS, SHIPPED_MODEL);
  expect(mean(mixtures)).toBeLessThanOrEqual(2.1);
  expect(quantile(mixtures, 0.9)).toBeLessThanOrEqual(4);
  expect(mean(differences(table, SINGLE_FILMS, SHIPPED_MODEL))).toBeLessThanOrEqual(2.4);
});

test('blind mixtures: median CIEDE2000 at most 2.5, mean at most 3.0, every pair blind once', () => {
  const { blind } = errors;
  expect(blind.n).toBe(620);
  expect(blind.median).toBeLessThanOrEqual(2.5);
  expect(blind.mean).toBeLessThanOrEqual(3);
  const pairs = blind.folds.flatMap((fold) => fold.pairs.map((pair) => pair.toSorted().join(' ')));
  expect(pairs.length).toBe(blind.pairs);
  expect(new Set(pairs).size).toBe(62);
});

test('thinnest films: mean at most 3.3, chroma too high by at most 3', () => {
  const { thinnest } = errors;
  expect(thinnest.n).toBe(13);
  expect(thinnest.mean).toBeLessThanOrEqual(3.3);
  expect(Math.abs(thinnest.chromaBias)).toBeLessThanOrEqual(3);
});
