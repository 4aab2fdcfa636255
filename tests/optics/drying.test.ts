import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Coefficients,
  DRY_WATERCOLOUR,
  GRID,
  ground,
  LEVEL,
  lastFilmWet,
  layers,
  throughSurface,
} from '../../src/optics/index.js';

const flat = (value: number): Float64Array => new Float64Array(GRID.count).fill(value);
const paint = (k: number, s: number): Coefficients => ({ K: flat(k), S: flat(s) });
const film = (k: number, s: number) => [{ paint: paint(k, s), load: 1 }];
const level = (reflectance: number) => ground(flat(reflectance), DRY_WATERCOLOUR, LEVEL);
const at = (reflectance: ArrayLike<number>): number => reflectance[11] as number;

describe('a wet film', () => {
  test('is no lighter than the same film dry', () => {
    const some = fc.integer({ min: 0, max: 600 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(some, some, (k, s) => {
        const [wet, dry] = [lastFilmWet([film(k, s)], level(0.4)), layers([film(k, s)], level(0.4))];
        expect(at(wet)).toBeLessThanOrEqual(at(dry) + 1e-12);
      }),
      { seed: 1 },
    );
  });

  test('of water alone takes the gleam off the paper: nothing comes from the surface', () => {
    const [wet, dry] = [at(lastFilmWet([film(0, 0)], level(0.86))), at(layers([film(0, 0)], level(0.86)))];
    const { k1, k2 } = DRY_WATERCOLOUR;
    const inside = (dry - k1) / ((1 - k1) * (1 - k2) + k2 * (dry - k1));
    expect(wet).toBeCloseTo(throughSurface(inside, { k1: 0, k2 }), 12);
  });

  test('of a dye that does not scatter is the dry one without its gleam', () => {
    const wet = at(lastFilmWet([film(0.7, 0)], level(0.86)));
    const dry = at(layers([film(0.7, 0)], level(0.86)));
    expect((dry - DRY_WATERCOLOUR.k1) / (1 - DRY_WATERCOLOUR.k1)).toBeCloseTo(wet, 12);
  });

  test('of a body colour on black covers as well as seven tenths of it dry', () => {
    const black = ground(flat(0), { k1: 0, k2: 0 }, LEVEL);
    // Kubelka 1948: a film that only scatters sends back S / (1 + S) over black.
    expect(at(lastFilmWet([film(0, 2)], black))).toBeCloseTo(1.4 / 2.4, 12);
    expect(at(layers([film(0, 2)], black))).toBeCloseTo(2 / 3, 12);
  });

  test('lies over films that are dry', () => {
    const bare = ground(flat(0), { k1: 0, k2: 0 }, LEVEL);
    const water = film(0, 0);
    expect(at(lastFilmWet([film(0, 2), water], bare))).toBeCloseTo(2 / 3, 12);
    expect(at(lastFilmWet([film(0, 2), water, water], bare))).toBeCloseTo(2 / 3, 12);
    expect(at(lastFilmWet([water, film(0, 2)], bare))).toBeCloseTo(1.4 / 2.4, 12);
  });

  test('has to be there', () => {
    expect(() => lastFilmWet([], level(0.86))).toThrow(RangeError);
  });
});
