import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reflectanceToXyz, whiteOf } from '../../src/colour/xyz.js';
import { anyReflectance, flat, OBSERVER_IDS } from './helpers/spectra.js';

describe.each(OBSERVER_IDS)('observer %s', (observer) => {
  const white = whiteOf(observer);

  it('gives the perfect reflector its white', () => {
    const xyz = reflectanceToXyz(flat(1), observer);
    expect(xyz.x).toBeCloseTo(white.x, 3);
    expect(xyz.y).toBeCloseTo(100, 3);
    expect(xyz.z).toBeCloseTo(white.z, 3);
  });

  it('gives the perfect absorber nothing', () => {
    expect(reflectanceToXyz(flat(0), observer)).toEqual({ x: 0, y: 0, z: 0 });
  });

  it('keeps every surface between black and white', () => {
    fc.assert(
      fc.property(anyReflectance, (reflectance) => {
        const { x, y, z } = reflectanceToXyz(reflectance, observer);
        // The weights at the ends of the spectrum run a hair below zero, as those of ASTM E308 do.
        for (const [got, most] of [[x, white.x] as const, [y, 100] as const, [z, white.z] as const]) {
          expect(got).toBeGreaterThan(-0.01);
          expect(got).toBeLessThan(most + 0.01);
        }
      }),
    );
  });

  it('adds light as light adds: the mean of two surfaces lies half way', () => {
    fc.assert(
      fc.property(anyReflectance, anyReflectance, (one, other) => {
        const mean = one.map((reflectance, band) => (reflectance + (other[band] ?? 0)) / 2);
        const [a, b, m] = [one, other, mean].map((r) => reflectanceToXyz(r, observer));
        expect(m?.y).toBeCloseTo(((a?.y ?? 0) + (b?.y ?? 0)) / 2, 9);
        expect(m?.z).toBeCloseTo(((a?.z ?? 0) + (b?.z ?? 0)) / 2, 9);
      }),
    );
  });
});

it('reads under D65 with the 2-degree observer unless told otherwise', () => {
  const slope = flat(0).map((_, band) => band / 40);
  expect(reflectanceToXyz(slope)).toEqual(reflectanceToXyz(slope, 'D65-2'));
  expect(reflectanceToXyz(slope).z).toBeGreaterThan(reflectanceToXyz(slope, 'D50-2').z);
});
