import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HUE_NAMES, hueName } from '../../src/colour/hue.js';

describe('hue names', () => {
  it('are each reached on a walk round the wheel, in order', () => {
    const walked = Array.from({ length: 360 }, (_, degree) => hueName(degree + 10));
    expect(walked.filter((name, i) => name !== walked[i - 1])).toEqual(HUE_NAMES);
  });

  // The wheel is our own, no source; the published hues that it has to suit are in tests/outside/colour-munsell.test.ts.
  it.each([
    [340, 'magenta', 10, 'red'],
    [10, 'red', 40, 'red orange'],
    [40, 'red orange', 48, 'orange'],
    [48, 'orange', 64, 'yellow orange'],
    [64, 'yellow orange', 78, 'yellow'],
    [78, 'yellow', 106, 'yellow green'],
    [106, 'yellow green', 130, 'green'],
    [130, 'green', 170, 'blue green'],
    [170, 'blue green', 213, 'blue'],
    [213, 'blue', 288, 'violet blue'],
    [288, 'violet blue', 306, 'violet'],
    [306, 'violet', 319, 'purple'],
    [319, 'purple', 340, 'magenta'],
  ])('from %d on it is %s, to the very edge at %d, where %s begins', (from, name, to, next) => {
    expect(hueName(from)).toBe(name);
    expect(hueName(to - 1e-9)).toBe(name);
    expect(hueName(to)).toBe(next);
  });

  it('stay the same across the zero of the wheel', () => {
    expect([350, 359.999, 0, 9.999].map(hueName)).toEqual(Array(4).fill('magenta'));
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
