import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chromaOf,
  hueDifference,
  hueOf,
  type Lab,
  labToXyz,
  lightnessFromY,
  reflectanceToLab,
  xyzToLab,
} from '../../src/colour/lab.js';
import { whiteOf } from '../../src/colour/xyz.js';
import { anyReflectance, flat, OBSERVER_IDS } from './helpers/spectra.js';

const WHITE = whiteOf('D65-2');
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyLab: fc.Arbitrary<Lab> = fc.record({
  l: number(0, 100),
  a: number(-120, 120),
  b: number(-120, 120),
});
const angle = number(0, 360);

describe('CIELAB', () => {
  it('comes back from XYZ unchanged', () => {
    fc.assert(
      fc.property(anyLab, (lab) => {
        const back = xyzToLab(labToXyz(lab, WHITE), WHITE);
        expect(back.l).toBeCloseTo(lab.l, 9);
        expect(back.a).toBeCloseTo(lab.a, 8);
        expect(back.b).toBeCloseTo(lab.b, 8);
      }),
    );
  });

  it('puts white at 100, 0, 0 and black at 0, 0, 0', () => {
    for (const white of OBSERVER_IDS.map(whiteOf)) {
      expect(xyzToLab(white, white)).toEqual({ l: 100, a: 0, b: 0 });
      expect(xyzToLab({ x: 0, y: 0, z: 0 }, white).l).toBeCloseTo(0, 12);
    }
  });

  it('has no step where the cube root gives way to the straight line', () => {
    const y = (100 * 216) / 24389;
    expect(lightnessFromY(y * (1 + 1e-12))).toBeCloseTo(lightnessFromY(y * (1 - 1e-12)), 8);
    // Slopes on both sides, (29/3)³/100 by the definition.
    expect((lightnessFromY(y + 1e-5) - lightnessFromY(y - 1e-5)) / 2e-5).toBeCloseTo(9.033, 3);
  });

  it('leaves an even reflectance grey', () => {
    fc.assert(
      fc.property(number(0, 1), (reflectance) => {
        for (const observer of OBSERVER_IDS) {
          const lab = reflectanceToLab(flat(reflectance), observer);
          expect(chromaOf(lab)).toBeLessThan(0.005);
          expect(lab.l).toBeCloseTo(lightnessFromY(100 * reflectance), 2);
        }
      }),
    );
  });

  it('keeps L* of every surface within 0-100', () => {
    fc.assert(
      fc.property(anyReflectance, (reflectance) => {
        const { l } = reflectanceToLab(reflectance);
        expect(l).toBeGreaterThanOrEqual(0);
        expect(l).toBeLessThanOrEqual(100.001);
      }),
    );
  });
});

describe('hue and chroma', () => {
  it('give a* and b* back', () => {
    fc.assert(
      fc.property(anyLab, (lab) => {
        const hue = hueOf(lab);
        expect(hue).toBeGreaterThanOrEqual(0);
        expect(hue).toBeLessThan(360);
        const radians = (hue * Math.PI) / 180;
        expect(chromaOf(lab) * Math.cos(radians)).toBeCloseTo(lab.a, 9);
        expect(chromaOf(lab) * Math.sin(radians)).toBeCloseTo(lab.b, 9);
      }),
    );
  });

  it('never reach 360, nor hide something that is not a number', () => {
    expect(hueOf({ l: 50, a: 1, b: -1e-300 })).toBe(0);
    expect(hueOf({ l: 50, a: 0, b: 0 })).toBe(0);
    expect(hueOf({ l: 50, a: Number.NaN, b: 1 })).toBeNaN();
  });
});

describe('hue difference', () => {
  it('changes sign with its arguments and stays within half a turn', () => {
    fc.assert(
      fc.property(angle, angle, (from, to) => {
        const difference = hueDifference(from, to);
        expect(Math.abs(difference)).toBeLessThanOrEqual(180);
        expect(hueDifference(to, from) + difference).toBe(0);
      }),
    );
  });

  it('leads from the first hue to the second', () => {
    fc.assert(
      fc.property(angle, angle, (from, to) => {
        const landed = from + hueDifference(from, to);
        const missed = Math.abs(landed - to) % 360;
        expect(Math.min(missed, 360 - missed)).toBeLessThan(1e-9);
      }),
    );
  });

  it.each([
    [350, 10, 20],
    [10, 350, -20],
    [0, 180, 180],
    [180, 0, -180],
    [30, 30, 0],
  ])('from %d to %d is %d', (from, to, difference) => {
    expect(hueDifference(from, to)).toBe(difference);
  });
});
