import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HUE_NAMES, hueName, lean, leansTowards } from '../../src/colour/hue.js';

const angle = fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true });

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

describe('leaning', () => {
  it('is towards a neighbour', () => {
    fc.assert(
      fc.property(angle, (hue) => {
        const apart = Math.abs(HUE_NAMES.indexOf(hueName(hue)) - HUE_NAMES.indexOf(leansTowards(hue)));
        expect([1, HUE_NAMES.length - 1]).toContain(apart);
      }),
    );
  });

  it('is towards the name that a small step reaches', () => {
    expect(leansTowards(35)).toBe('red orange');
    expect(leansTowards(12)).toBe('magenta');
    expect(leansTowards(342)).toBe('purple');
    expect(leansTowards(8)).toBe('red');
    expect(leansTowards(355.1)).toBe('red');
  });

  // Common practice, no source.
  it.each([
    ['red', 30, 'warm'],
    ['orange', 58, 'warm'],
    ['yellow', 90, 'warm'],
    ['blue green', 190, 'cool'],
    ['blue', 260, 'cool'],
    ['violet blue', 295, 'cool'],
    ['violet', 312, 'between warm and cool'],
    ['green', 150, 'between warm and cool'],
  ])('a middling %s (%d degrees) is %s', (name, hue, word) => {
    expect(hueName(hue)).toBe(name);
    expect(lean(hue)).toBe(word);
  });
});
