import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HUE_NAMES, hueName } from '../../src/colour/hue.js';

describe('hue names', () => {
  it('are each reached on a walk round the wheel, in order', () => {
    const walked = Array.from({ length: 360 }, (_, degree) => hueName(degree + 10));
    expect(walked.filter((name, i) => name !== walked[i - 1])).toEqual(HUE_NAMES);
  });

  it('wrap round', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), (degree) => {
        expect(hueName(degree - 360)).toBe(hueName(degree));
        expect(hueName(degree + 720)).toBe(hueName(degree));
      }),
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuse %d', (hue) => {
    expect(() => hueName(hue)).toThrow(RangeError);
  });
});
