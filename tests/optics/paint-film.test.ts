import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  belowSurface,
  type Coefficients,
  fuseAreas,
  GRID,
  ground,
  layers,
  puddle,
  spectrum,
  throughSurface,
  WAVELENGTHS_NM,
} from '../../src/optics/index.js';

const flat = (value: number): Float64Array => new Float64Array(GRID.count).fill(value);
const paint = (k: number, s: number): Coefficients => ({ K: flat(k), S: flat(s) });
const PAPER = ground(flat(0.86));
const some = fc.double({ min: 0, max: 6, noNaN: true });
const load = fc.double({ min: 0, max: 4, noNaN: true });

describe('the surface', () => {
  test('there and back is the same reflectance, from its own gleam to white', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        fc.double({ min: 0, max: 0.7, noNaN: true }),
        (inside, k1, k2) => {
          expect(belowSurface(throughSurface(inside, { k1, k2 }), { k1, k2 })).toBeCloseTo(inside, 9);
        },
      ),
      { seed: 1 },
    );
  });
  test('what is measured below the gleam came from nowhere inside', () => {
    expect(belowSurface(0.005)).toBe(0);
    expect(belowSurface(1.2)).toBe(1);
  });
});

describe('a puddle', () => {
  test('of nothing is the paper', () => {
    expect(puddle([], PAPER)[0]).toBeCloseTo(0.86, 12);
    expect(puddle([{ paint: paint(1, 1), load: 0 }], PAPER)[5]).toBeCloseTo(0.86, 12);
  });
  test('does not care in what order paints go in, nor whether one paint goes in twice', () => {
    fc.assert(
      fc.property(some, some, some, some, load, load, (k1, s1, k2, s2, l1, l2) => {
        const [one, two] = [paint(k1, s1), paint(k2, s2)];
        const stirred = puddle(
          [
            { paint: one, load: l1 },
            { paint: two, load: l2 },
          ],
          PAPER,
        )[3] as number;
        const other = puddle(
          [
            { paint: two, load: l2 },
            { paint: one, load: l1 },
          ],
          PAPER,
        )[3] as number;
        const split = puddle(
          [
            { paint: one, load: l1 / 2 },
            { paint: two, load: l2 },
            { paint: one, load: l1 / 2 },
          ],
          PAPER,
        )[3] as number;
        expect(other).toBeCloseTo(stirred, 12);
        expect(split).toBeCloseTo(stirred, 12);
      }),
      { seed: 2 },
    );
  });
});

describe('films over films', () => {
  test('two layers of one paint are one layer of their sum', () => {
    fc.assert(
      fc.property(some, some, load, load, (k, s, l1, l2) => {
        const one = paint(k, s);
        const twice = layers([[{ paint: one, load: l1 }], [{ paint: one, load: l2 }]], PAPER)[7] as number;
        expect(twice).toBeCloseTo(puddle([{ paint: one, load: l1 + l2 }], PAPER)[7] as number, 9);
      }),
      { seed: 3 },
    );
  });
  test('clear paints may go down in any order; those that scatter may not', () => {
    const [clear, filter] = [
      { paint: paint(0.5, 0), load: 1 },
      { paint: paint(2, 0), load: 1 },
    ];
    expect(layers([[clear], [filter]], PAPER)[0]).toBeCloseTo(
      layers([[filter], [clear]], PAPER)[0] as number,
      12,
    );
    const [body, dark] = [
      { paint: paint(0.05, 2), load: 1 },
      { paint: paint(1.5, 0.02), load: 1 },
    ];
    expect(layers([[dark], [body]], PAPER)[0]).toBeGreaterThan(
      (layers([[body], [dark]], PAPER)[0] as number) + 0.05,
    );
  });
});

describe('strokes', () => {
  test('fuse to the mean of what they send back', () => {
    expect(fuseAreas([flat(0.2), flat(0.8)], [0.25, 0.75])[9]).toBeCloseTo(0.65, 12);
  });
});

describe('a spectrum', () => {
  test('is the 38 numbers that were given, 380 to 750 nm', () => {
    const given = Array.from({ length: 38 }, (_, band) => band / 100);
    expect([...spectrum(given)]).toEqual(given);
    expect([WAVELENGTHS_NM[0], WAVELENGTHS_NM[17], WAVELENGTHS_NM.at(-1)]).toEqual([380, 550, 750]);
  });
  test.each([
    [[]],
    [Array(37).fill(0.5)],
    [Array(39).fill(0.5)],
    [[Number.NaN, ...Array(37).fill(0)]],
    [[Number.POSITIVE_INFINITY, ...Array(37).fill(0)]],
  ])('is refused when it has not 38 finite bands', (values) => {
    expect(() => spectrum(values as number[])).toThrow(RangeError);
  });
});
