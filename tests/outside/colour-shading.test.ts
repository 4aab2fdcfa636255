// D. Briggs, The Dimensions of Colour (huevaluechroma.com), section 10.1, citing R. Evans 1974 and P. Centore 2011;
// B. MacEvoy, handprint.com HP/WCL/color11.html, for the lightness of the grey.
import { describe, expect, it } from 'vitest';
import { shadingLine } from '../../src/colour/chroma.js';
import { chromaOf, labToXyz, lightnessFromY, xyzToLab } from '../../src/colour/lab.js';
import { whiteOf } from '../../src/colour/xyz.js';

const WHITE = whiteOf('D65-2');

describe('the shading line (Briggs, section 10.1)', () => {
  const lit = { l: 60, a: 40, b: 30 };
  const { x, y, z } = labToXyz(lit, WHITE);

  it('takes L* 60 a* 40 b* 30 at 40 percent of the light to L* 40 a* 29.47 b* 22.10', () => {
    const shaded = xyzToLab({ x: 0.4 * x, y: 0.4 * y, z: 0.4 * z }, WHITE);
    expect(shaded.l).toBeCloseTo(40, 1);
    expect(shaded.a).toBeCloseTo(29.47, 2);
    expect(shaded.b).toBeCloseTo(22.1, 2);
    expect(shadingLine(50, 60, shaded.l)).toBeCloseTo(chromaOf(shaded), 9);
    expect(shadingLine(50, 60, 40)).toBeCloseTo(Math.hypot(29.47, 22.1), 1);
  });
});

describe('lightness', () => {
  it('of a grey that reflects 40 percent is L* 69.5 (CIE 1976)', () => {
    expect(lightnessFromY(40)).toBeCloseTo(69.5, 1);
  });
});
