import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { munsellNotation } from '../../src/colour/munsell-notation.js';
import { munsellValueFromY } from '../../src/colour/value.js';
import { reflectanceToXyz } from '../../src/colour/xyz.js';
import { parseMunsell } from './helpers/munsell.js';
import { anyReflectance, flat } from './helpers/spectra.js';

describe('Munsell notation', () => {
  it('reads like a notation and carries the value, for any surface', () => {
    fc.assert(
      fc.property(anyReflectance, (reflectance) => {
        const xyz = reflectanceToXyz(reflectance);
        const notation = munsellNotation(xyz);
        expect(notation).toMatch(/^(N \d+\.\d|\d+\.\d(R|YR|Y|GY|G|BG|B|PB|P|RP) \d+\.\d\/\d+\.\d)$/);
        // D65 to illuminant C moves luminance by a few hundredths of a value step.
        expect(Math.abs(parseMunsell(notation).value - munsellValueFromY(xyz.y))).toBeLessThan(0.35);
      }),
      { numRuns: 300 },
    );
  });

  it('calls an even reflectance N', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (reflectance) => {
        expect(munsellNotation(reflectanceToXyz(flat(reflectance)))).toMatch(/^N \d+\.\d$/);
      }),
    );
    expect(munsellNotation(reflectanceToXyz(flat(0.192718)))).toBe('N 5.0');
  });

  it('answers for colours that no surface has instead of giving up', () => {
    fc.assert(
      fc.property(
        fc.record({
          x: fc.double({ min: -5, max: 150, noNaN: true }),
          y: fc.double({ min: -5, max: 150, noNaN: true }),
          z: fc.double({ min: -5, max: 150, noNaN: true }),
        }),
        (xyz) => {
          expect(munsellNotation(xyz)).toMatch(/^(N|\d+\.\d[A-Z]+) \d+\.\d/);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('refuses what is not a number', () => {
    expect(() => munsellNotation({ x: Number.NaN, y: 20, z: 20 })).toThrow(RangeError);
  });
});
