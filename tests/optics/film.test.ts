import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { absorptionOverScattering, filmReflectance } from '../../src/optics/index.js';
import { filmTransmittance, masstoneReflectance } from './films.js';

/** From nothing over the smallest number to far beyond any paint. */
const amount = fc.oneof(
  fc.constantFrom(0, Number.MIN_VALUE, 1e-300, 1e-12, 1e-6, 1e6, 1e100, 1e308, Number.MAX_VALUE),
  fc.double({ min: 0, max: 20, noNaN: true }),
);
const share = fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true }));

/** Far beyond any film that could be measured. */
const anyLoad = fc.double({ min: 0, max: 1e9, noNaN: true });

describe('the reflectance of a film', () => {
  test('is a number from 0 to 1, whatever the paint', () => {
    fc.assert(
      fc.property(amount, amount, share, (k, s, ground) => {
        const r = filmReflectance(k, s, ground);
        expect(r).toBeGreaterThanOrEqual(0);
        expect(r).toBeLessThanOrEqual(1);
      }),
      { numRuns: 2000, seed: 1 },
    );
  });

  test('falls with absorption and rises with the ground', () => {
    const usual = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(usual, usual, usual, share, share, (k, more, s, one, two) => {
        expect(filmReflectance(k + more, s, one)).toBeLessThanOrEqual(filmReflectance(k, s, one) + 1e-12);
        const [dark, light] = [Math.min(one, two), Math.max(one, two)];
        expect(filmReflectance(k, s, light)).toBeGreaterThanOrEqual(filmReflectance(k, s, dark) - 1e-12);
      }),
      { numRuns: 1000, seed: 2 },
    );
  });

  test('goes without a step to the film that only absorbs, only scatters, or is not there', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5, noNaN: true }), share, (x, ground) => {
        const small = 1e-9;
        expect(filmReflectance(x, small, ground)).toBeCloseTo(ground * Math.exp(-2 * x), 7);
        const scattering = (ground + x * (1 - ground)) / (1 + x * (1 - ground));
        expect(filmReflectance(small, x, ground)).toBeCloseTo(scattering, 7);
        expect(filmReflectance(small * x, small, ground)).toBeCloseTo(ground, 7);
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  test('has no step where the series takes over from the closed form', () => {
    // Optical depth g = sqrt(k (k + 2 s)) crosses 0.01 here; the film hardly changes, whatever it is worked out by.
    for (const s of [0, 0.1, 1, 10]) {
      const k = Math.sqrt(s * s + 1e-4) - s;
      for (const ground of [0, 0.8]) {
        const [before, after] = [
          filmReflectance(k * (1 - 1e-11), s, ground),
          filmReflectance(k * (1 + 1e-11), s, ground),
        ];
        expect(Math.abs(after - before)).toBeLessThan(2e-12);
      }
    }
  });

  test('of a thick film is that of the masstone, on any ground', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        share,
        (k, s, ground) => {
          expect(filmReflectance(1e4 * k, 1e4 * s, ground)).toBeCloseTo(masstoneReflectance(k / s), 9);
        },
      ),
      { seed: 4 },
    );
  });

  test('two half films are one whole film', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        share,
        (k, s, ground) => {
          const half = filmReflectance(k / 2, s / 2, ground);
          expect(filmReflectance(k / 2, s / 2, half)).toBeCloseTo(filmReflectance(k, s, ground), 9);
        },
      ),
      { seed: 5 },
    );
  });

  test('keeps what light there is: reflected and let through never exceed what came', () => {
    fc.assert(
      fc.property(anyLoad, anyLoad, (k, s) => {
        const [r, t] = [filmReflectance(k, s, 0), filmTransmittance(k, s)];
        expect(t).toBeGreaterThanOrEqual(0);
        expect(r + t).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { numRuns: 1000, seed: 6 },
    );
  });

  test('over a ground is what Kubelka 1954 builds from the film’s own R and T', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        share,
        (k, s, ground) => {
          const [r, t] = [filmReflectance(k, s, 0), filmTransmittance(k, s)];
          expect(filmReflectance(k, s, ground)).toBeCloseTo(r + (t * t * ground) / (1 - r * ground), 7);
        },
      ),
      { seed: 7 },
    );
  });
});

describe('a film beyond any paint', () => {
  test('is the masstone as well, up to the largest numbers there are', () => {
    for (const size of [1e119, 1e121, 1e140, 1e300]) {
      expect(filmReflectance(size, size, 0.9)).toBeCloseTo(masstoneReflectance(1), 9);
      expect(filmReflectance(size, 0, 0.9)).toBeCloseTo(0, 9);
      expect(filmReflectance(0, size, 0.1)).toBeCloseTo(1, 9);
      expect(filmReflectance(size / 4, size, 0.9)).toBeCloseTo(masstoneReflectance(0.25), 9);
    }
  });

  test('sends back no less than nothing where its scattering is lost in the rounding of its absorption', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        (k, hundredths) => {
          const s = k * 2 ** -53 * (hundredths / 50);
          expect(filmReflectance(k, s, 1)).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 2000, seed: 9 },
    );
  });
});

describe('K/S and reflectance', () => {
  test('are each other’s inverse', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1, noNaN: true }), (r) => {
        expect(masstoneReflectance(absorptionOverScattering(r))).toBeCloseTo(r, 9);
      }),
      { seed: 8 },
    );
  });
  test.each([0, -0.1, 1.0001, Number.NaN, Number.POSITIVE_INFINITY])('refuses the reflectance %d', (r) => {
    expect(() => absorptionOverScattering(r)).toThrow(RangeError);
  });
  test('of a perfect white is nothing: it only scatters', () => {
    expect(absorptionOverScattering(1)).toBe(0);
  });
  test('no scattering at all is black', () => {
    expect(masstoneReflectance(Number.POSITIVE_INFINITY)).toBe(0);
  });
});
