import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shadingLine } from '../../src/colour/chroma.js';

const lightness = fc.double({ min: 0, max: 100, noNaN: true });
const chroma = fc.double({ min: 0, max: 120, noNaN: true });

describe('the shading line', () => {
  it('goes nowhere when lightness stays, and falls when it falls', () => {
    fc.assert(
      fc.property(chroma, lightness, lightness, (c, from, to) => {
        expect(shadingLine(c, from, from)).toBeCloseTo(c, 9);
        const line = shadingLine(c, from, to);
        expect(to <= from ? line <= c + 1e-9 : line >= c).toBe(true);
      }),
    );
  });

  it('takes the same way in one step as in two', () => {
    fc.assert(
      fc.property(chroma, lightness, lightness, lightness, (c, from, by, to) => {
        expect(shadingLine(shadingLine(c, from, by), by, to)).toBeCloseTo(shadingLine(c, from, to), 9);
      }),
    );
  });
});
