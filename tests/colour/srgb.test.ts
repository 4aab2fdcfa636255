// IEC 61966-2-1: the code of a channel of a screen and the light that it stands for.
import { describe, expect, it } from 'vitest';
import { codeOfLight, lightOfCode } from '../../src/colour/srgb.js';

describe('the light of a channel', () => {
  it('is nothing for nothing, all for all, and a little over a fifth for the middle code', () => {
    expect([lightOfCode(0), lightOfCode(1), codeOfLight(0)]).toEqual([0, 1, 0]);
    expect(codeOfLight(1)).toBeCloseTo(1, 12);
    expect(lightOfCode(128 / 255)).toBeCloseTo(0.2159, 4);
    // A middle grey of 18 %.
    expect(codeOfLight(0.18)).toBeCloseTo(0.4614, 4);
  });

  it('is a straight line near black, 12.92 codes to the light', () => {
    expect(lightOfCode(0.01292)).toBeCloseTo(0.001, 12);
    expect(codeOfLight(0.001)).toBeCloseTo(0.01292, 12);
    expect(lightOfCode(0.04)).toBeCloseTo(0.04 / 12.92, 12);
    expect(codeOfLight(0.003)).toBeCloseTo(0.003 * 12.92, 12);
  });

  it('comes back, and has no step where the line ends', () => {
    for (let code = 0; code <= 255; code += 1)
      expect(255 * codeOfLight(lightOfCode(code / 255))).toBeCloseTo(code, 3);
    expect(lightOfCode(0.04045 + 1e-9)).toBeCloseTo(lightOfCode(0.04045), 7);
    expect(codeOfLight(0.0031308 + 1e-9)).toBeCloseTo(codeOfLight(0.0031308), 6);
  });
});
