/**
 * The regularities between media that calibration rests on, recomputed from carried measurements: the acrylics of Berns 2016 and
 * Okumura 2005, the oils of Geldof et al. 2018, the watercolours of Chen et al. 2019, transparency ratings of MacEvoy 2015
 * (full references in src/paints/data).
 */
import { linearRegression, median } from 'simple-statistics';
import { expect, test } from 'vitest';
import { sourceSpectrum } from '../../src/paints/calibration/carried-spectra.js';
import {
  SCATTER_BY_TRANSPARENCY,
  SCATTER_FOLLOWS,
  startingShape,
  visibleMean,
} from '../../src/paints/calibration/medium.js';
import { appearanceOf } from '../../src/paints/catalogue.js';
import { paintOf, STUDIO } from '../studio.js';

/** 420-690 nm. */
const visible = (values: Float64Array) => [...values].slice(4, 32);

function slope(x: Float64Array, y: Float64Array): number {
  const logs = visible(x).map((value, index) => [Math.log(value), Math.log(visible(y)[index] as number)]);
  return linearRegression(logs).m;
}

test('K of a shared pigment ranges less widely in watercolour than in acrylic or oil', () => {
  const pairs = [
    ['acrylic-2016', 'PB29', 'ultramarine-blue'],
    ['acrylic-2005', 'ultramarine blue', 'ultramarine-blue'],
    ['acrylic-2016', 'PR108', 'cadmium-red'],
    ['acrylic-2016', 'PB15:1', 'cerulean-blue'],
    ['acrylic-2016', 'PY74', 'lemon-yellow'],
    ['acrylic-2016', 'PV19', 'alizarin-crimson'],
  ] as const;
  const slopes = pairs.map(([from, pigment, id]) =>
    slope(sourceSpectrum(from, pigment).K, sourceSpectrum('watercolour', id).K),
  );
  expect(Math.max(...slopes)).toBeLessThan(0.9);
  const acrylic = sourceSpectrum('acrylic-2016', 'PB29');
  const used = slope(acrylic.K, startingShape(acrylic, 'acrylic').logK.map(Math.exp));
  expect(used).toBeGreaterThan(Math.min(...slopes));
  expect(Math.abs(used - median(slopes))).toBeLessThan(0.06);
  const oil = slope(sourceSpectrum('oil', 'PB27').K, sourceSpectrum('watercolour', 'prussian-blue').K);
  // With level films the same fit gave 0.67; averaged over the tooth, K of the blue has to range a little wider.
  expect(oil).toBeCloseTo(0.77, 1);
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
  expect(Math.abs(median(slopes) - SCATTER_FOLLOWS)).toBeLessThan(0.06);
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
  expect(Math.abs(m - SCATTER_BY_TRANSPARENCY.slope)).toBeLessThan(0.1);
  expect(Math.abs(b - SCATTER_BY_TRANSPARENCY.intercept)).toBeLessThan(0.3);
});
