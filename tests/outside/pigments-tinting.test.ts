/**
 * Tinting strengths. Sources: acrylic K of Berns (2016), Artist Paint Spectral Database, and of Okumura (2005), MS thesis, RIT (full
 * references in src/paints/data/tinting-strength.json), read after ASTM D4838; watercolours of Chen et al. 2019; the ratio of phthalo
 * to Prussian blue from B. MacEvoy, handprint.com, guide to watercolor pigments.
 */
import { median } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { tintingStrength } from '../../src/accuracy/index.js';
import { sourceSpectrum } from '../../src/paints/calibration/carried-spectra.js';
import { greatestK } from '../../src/paints/calibration/medium.js';
import { USUAL_FULL_STRENGTH } from '../../src/paints/calibration/tinting.js';
import acrylics from '../../src/paints/data/tinting-strength.json' with { type: 'json' };
import { paintOf, STUDIO } from '../studio.js';

const report = tintingStrength(STUDIO);

function againstUltramarine(id: string): number {
  return greatestK(paintOf(id).K) / greatestK(paintOf('ultramarine-blue').K);
}

describe('the table of acrylics', () => {
  const set2016 = acrylics.acrylic.flatMap(({ ci, acrylic2016 }) =>
    acrylic2016 === undefined ? [] : [[ci, acrylic2016] as const],
  );
  test.each(set2016)('%s is as in the spectra of 2016', (ci, figure) => {
    const ultramarine = greatestK(sourceSpectrum('acrylic-2016', 'PB29').K);
    expect(greatestK(sourceSpectrum('acrylic-2016', ci).K) / ultramarine).toBeCloseTo(figure, 2);
  });

  test.each([
    ['yellow ochre', 'yellow ochre'],
    ['burnt sienna', 'burnt sienna'],
    ['raw sienna', 'raw sienna'],
    ['raw umber', 'raw umber'],
    ['burnt umber', 'burnt umber'],
    ['red iron oxide', 'red oxide'],
    ['naphthol red', 'naphthol red'],
    ['indanthrone blue', 'anthraquinone blue'],
    ['chromium oxide green', 'chromium oxide green'],
    ['dark green mixture', 'dark green mixture'],
    ['carbon black', 'carbon black'],
  ])('%s is as in the spectra of 2005', (name, carried) => {
    const figure = acrylics.acrylic.find((row) => row.name === name)?.acrylic2005;
    const ultramarine = greatestK(sourceSpectrum('acrylic-2005', 'ultramarine blue').K);
    expect(greatestK(sourceSpectrum('acrylic-2005', carried).K) / ultramarine).toBeCloseTo(
      figure ?? Number.NaN,
      2,
    );
  });
});

describe('strength against ultramarine blue', () => {
  test('measured paints: as in acrylics within a factor of two for three of four, the middle one within 1.3', () => {
    const { measured } = report;
    expect(measured.n).toBe(4);
    const near = measured.rows.filter(({ ratio }) => ratio > 0.5 && ratio < 2);
    expect(near.length).toBeGreaterThanOrEqual(3);
    expect(measured.medianRatio).toBeGreaterThan(1 / 1.3);
    expect(measured.medianRatio).toBeLessThan(1.3);
  });

  test.each([
    ['phthalo-blue-green-shade', 7.45, 10.39],
    ['phthalo-green-blue-shade', 6.74, 7.76],
    ['dioxazine-violet', 3.81, 7.74],
    ['pyrrole-red', 2.03, 2.33],
    ['quinacridone-magenta', 1.9, 2.1],
    ['cobalt-aluminate-blue', 0.46, 0.65],
    ['cerulean-blue-chromium', 0.36, 0.46],
  ])('%s lies between the two acrylics', (id, least, most) => {
    expect(paintOf(id).strengthEvidence).toBe('anchored');
    expect(againstUltramarine(id)).toBeGreaterThan(least);
    expect(againstUltramarine(id)).toBeLessThan(most);
  });

  test('every anchored paint keeps the ratio of the acrylics', () => {
    expect(report.n).toBeGreaterThanOrEqual(20);
    for (const { id, ratio } of report.rows) expect(Math.abs(Math.log(ratio)), id).toBeLessThan(0.01);
  });

  // Published: about 2. Phthalo blue is anchored to acrylics, Prussian blue measured in watercolour: the one says nothing of the other.
  test('phthalo blue is about twice as strong as Prussian blue', () => {
    const ratio = againstUltramarine('phthalo-blue-green-shade') / againstUltramarine('prussian-blue');
    expect(ratio).toBeGreaterThan(1.5);
    expect(ratio).toBeLessThan(3);
  });

  // Common practice, no source.
  test('phthalo green is many times as strong as viridian', () => {
    expect(againstUltramarine('phthalo-green-blue-shade')).toBeGreaterThan(
      5 * againstUltramarine('viridian'),
    );
  });
});

test('the usual loads of a masstone are those in the middle of the measured and anchored paints', () => {
  const ORGANIC = /^P(Y74|O73|R83|R254|V19|R122|V23|B60|B15|G7$|G36)/;
  const known = STUDIO.paints.filter(
    ({ strengthEvidence, ci, id }) =>
      strengthEvidence !== 'assumed' && ci.length > 0 && id !== 'chinese-white',
  );
  const loadsOf = (organic: boolean) =>
    known.filter(({ ci }) => ORGANIC.test(ci[0] ?? '') === organic).map(({ fullStrength }) => fullStrength);
  expect(loadsOf(true).length + loadsOf(false).length).toBeGreaterThan(25);
  expect(Math.abs(Math.log(median(loadsOf(true)) / USUAL_FULL_STRENGTH.organic))).toBeLessThan(0.15);
  expect(Math.abs(Math.log(median(loadsOf(false)) / USUAL_FULL_STRENGTH.mineral))).toBeLessThan(0.15);
});
