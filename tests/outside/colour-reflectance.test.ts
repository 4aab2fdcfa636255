// From reflectance to XYZ and CIELAB, against published measurements; sources inside the data files.
import { describe, expect, it } from 'vitest';
import { type Lab, reflectanceToLab, xyzToLab } from '../../src/colour/lab.js';
import { reflectanceToXyz, whiteOf, type Xyz } from '../../src/colour/xyz.js';
import { widen } from '../colour/helpers/spectra.js';
import chart from './data/colour-chart-patches.json' with { type: 'json' };
import pipeline from './data/colour-pipeline.json' with { type: 'json' };
import single from './data/colour-single-examples.json' with { type: 'json' };
import srgb from './data/colour-srgb.json' with { type: 'json' };

const xyzOf = ([x = Number.NaN, y = Number.NaN, z = Number.NaN]: readonly number[]): Xyz => ({ x, y, z });
const labList = ({ l, a, b }: Lab): number[] => [l, a, b];
const xyzList = ({ x, y, z }: Xyz): number[] => [x, y, z];

function expectNear(got: readonly number[], wanted: readonly number[], tolerance: number): void {
  for (const [i, value] of got.entries()) {
    expect(Math.abs(value - (wanted[i] ?? Number.NaN))).toBeLessThan(tolerance);
  }
}

describe.each(chart.patches)('chart patch $name', (patch) => {
  const reflectance = widen(patch.reflectance, 380);

  it('has the CIELAB for D50 that its maker published', () => {
    expectNear(labList(reflectanceToLab(reflectance, 'D50-2')), patch.labD50, 0.15);
  });

  it('has the XYZ for D65 that colour-science 0.4.6 computes', () => {
    expectNear(xyzList(reflectanceToXyz(reflectance)), patch.xyzD65, 5e-4);
  });
});

describe('single examples', () => {
  it('puts the perfect reflector of the printed D65/1964 table where Westland and Ripamonti 2004 do (p. 59)', () => {
    const { xyz, white, lab } = single.perfectReflectorD65of1964;
    expectNear(labList(xyzToLab(xyzOf(xyz), xyzOf(white))), lab, 5.1e-5);
  });

  it('gives the XYZ of the sample spectrum in the tests of python-colormath', () => {
    const { x, y, z } = reflectanceToXyz(widen(single.sampleD50.reflectance, 380), 'D50-2');
    // Printed to three decimals as a fraction. Their coarser summation gives Y 0.099 where 0.0995 is right.
    expectNear([x / 100, y / 100, z / 100], single.sampleD50.xyz, 6e-4);
  });

  it('uses the ASTM E308 white points (Westland and Ripamonti 2004, Table 4.2)', () => {
    expect(xyzList(whiteOf('D65-2'))).toEqual(single.whites.D65);
    expect(xyzList(whiteOf('D50-2'))).toEqual(single.whites.D50);
  });

  it('has a D50 white within rounding of the one of the ICC profile connection space (ICC.1)', () => {
    expectNear(
      xyzList(whiteOf('D50-2')).map((component) => component / 100),
      srgb.iccWhiteD50,
      5e-4,
    );
  });
});

describe.each(pipeline.cases)('computed film, $name', (film) => {
  const reflectance = widen(film.reflectance, 400);

  it('has the XYZ and CIELAB of the separate computation', () => {
    expectNear(xyzList(reflectanceToXyz(reflectance)), film.xyz, 5e-4);
    expectNear(labList(reflectanceToLab(reflectance)), film.lab, 2e-3);
  });
});

describe('CIELAB for D65', () => {
  it.each(srgb.computed)('of $hex is that of the sRGB standard (IEC 61966-2-1)', ({ xyz, lab }) => {
    const white = { x: 0.3127 / 0.329, y: 1, z: (1 - 0.3127 - 0.329) / 0.329 };
    expectNear(labList(xyzToLab(xyzOf(xyz), white)), lab, 2e-4);
  });
});
