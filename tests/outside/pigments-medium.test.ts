/**
 * The regularities between media that calibration rests on, recomputed from carried measurements: the acrylics of Berns 2016 and
 * Okumura 2005, the oils of Geldof et al. 2018, the watercolours of Chen et al. 2019, transparency ratings of MacEvoy 2015
 * (full references in src/paints/data).
 */
import { linearRegression, mean, median, sampleVariance } from 'simple-statistics';
import { expect, test } from 'vitest';
import { sourceSpectrum } from '../../src/paints/calibration/carried-spectra.js';
import {
  type Medium,
  SCATTER_BY_TRANSPARENCY,
  SCATTER_FOLLOWS,
  startingShape,
  visibleMean,
} from '../../src/paints/calibration/medium.js';
import { appearanceOf, type SpectrumSet } from '../../src/paints/catalogue.js';
import { paintOf, STUDIO } from '../studio.js';

/** 420-690 nm. */
const visible = (values: Float64Array) => [...values].slice(4, 32);

function slope(x: Float64Array, y: Float64Array): number {
  const logs = visible(x).map((value, index) => [Math.log(value), Math.log(visible(y)[index] as number)]);
  return linearRegression(logs).m;
}

/** Paints of one pigment, or of near kin, in acrylic and in watercolour. */
const PAIRS = [
  ['acrylic-2016', 'PB29', 'ultramarine-blue'],
  ['acrylic-2005', 'ultramarine blue', 'ultramarine-blue'],
  ['acrylic-2016', 'PR108', 'cadmium-red'],
  ['acrylic-2016', 'PB15:1', 'cerulean-blue'],
  ['acrylic-2016', 'PY74', 'lemon-yellow'],
  ['acrylic-2016', 'PV19', 'alizarin-crimson'],
] as const;

/** The slope that calibration gives a source. */
function used(from: SpectrumSet, pigment: string, medium: Medium): number {
  const source = sourceSpectrum(from, pigment);
  return slope(source.K, startingShape(source, medium).logK.map(Math.exp));
}

test('K of a shared pigment ranges less widely in watercolour than in acrylic', () => {
  const slopes = PAIRS.map(([from, pigment, id]) =>
    slope(sourceSpectrum(from, pigment).K, sourceSpectrum('watercolour', id).K),
  );
  expect(Math.min(...slopes)).toBeGreaterThan(0.55);
  expect(Math.max(...slopes)).toBeLessThan(0.85);
  expect(Math.abs(used('acrylic-2016', 'PB29', 'acrylic') - median(slopes))).toBeLessThan(0.04);
});

test('K of Prussian blue and of ultramarine ranges less widely in watercolour than in oil', () => {
  const prussian = slope(sourceSpectrum('oil', 'PB27').K, sourceSpectrum('watercolour', 'prussian-blue').K);
  expect(Math.abs(prussian - 0.77)).toBeLessThan(0.05);
  // ultramarine in oil has 0.91; its spectrum is not carried
  expect(Math.abs(used('oil', 'PB27', 'oil') - (prussian + 0.91) / 2)).toBeLessThan(0.04);
});

test('a share added to K before the slope is taken makes the shared pigments fit worse', () => {
  const unlike = (share: number) => {
    const squares = PAIRS.map(([from, pigment, id]) => {
      const source = sourceSpectrum(from, pigment).K;
      const shifted = source.map((k) => k / visibleMean(source) + share);
      const film = sourceSpectrum('watercolour', id).K;
      const left = visible(film).map(
        (k, index) => Math.log(k) - 0.76 * Math.log(visible(shifted)[index] as number),
      );
      return sampleVariance(left);
    });
    return mean(squares);
  };
  expect(unlike(0)).toBeLessThan(unlike(0.001));
  expect(unlike(0.001)).toBeLessThan(unlike(0.005));
});

test('inside a watercolour film log S rises slowly with log K', () => {
  const slopes = STUDIO.paints
    .filter(({ evidence, id }) => evidence === 'measured' && id !== 'chinese-white')
    .map(({ K, S }) =>
      slope(
        K,
        S.map((value) => Math.max(value, 1e-3)),
      ),
    );
  expect(Math.abs(median(slopes) - SCATTER_FOLLOWS)).toBeLessThan(0.04);
});

test('S of a masstone film falls with the transparency rating', () => {
  const ids = [
    'cadmium-red',
    'alizarin-crimson',
    'burnt-sienna',
    'cadmium-yellow',
    'raw-sienna',
    'ultramarine-blue',
    'prussian-blue',
    'ivory-black',
  ];
  const points = ids.map((id) => {
    const pigment = paintOf(id);
    return [
      appearanceOf(id).transparency ?? Number.NaN,
      Math.log(visibleMean(pigment.S) * pigment.fullStrength),
    ];
  });
  const { m, b } = linearRegression(points);
  expect(m).toBeLessThan(0);
  const left = points.map(([rating = Number.NaN, log = Number.NaN]) => (log - b - m * rating) ** 2);
  const deviation = Math.sqrt(left.reduce((sum, square) => sum + square, 0) / (left.length - 2));
  expect(Math.abs(deviation - SCATTER_BY_TRANSPARENCY.deviation)).toBeLessThan(0.05);
  expect(Math.abs(m - SCATTER_BY_TRANSPARENCY.slope)).toBeLessThan(0.05);
  expect(Math.abs(b - SCATTER_BY_TRANSPARENCY.intercept)).toBeLessThan(0.1);
});
