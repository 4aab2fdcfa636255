import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adaptation,
  applied,
  type Matrix,
  SRGB_TO_D65,
  SRGB_TO_XYZ,
  SRGB_WHITE,
  times,
} from '../../src/colour/adapt.js';
import { whiteOf, type Xyz } from '../../src/colour/xyz.js';

const share = fc.integer({ min: -100, max: 100 }).map((hundredths) => hundredths / 100);
const vector = fc.tuple(share, share, share);
const matrix = fc.tuple(
  share,
  share,
  share,
  share,
  share,
  share,
  share,
  share,
  share,
) as fc.Arbitrary<Matrix>;
const light: fc.Arbitrary<Xyz> = fc
  .tuple(fc.integer({ min: 60, max: 130 }), fc.integer({ min: 20, max: 140 }))
  .map(([x, z]) => ({ x, y: 100, z }));
const [WHITE, WARM] = [whiteOf('D65-2'), whiteOf('D50-2')];

function expectNear(is: readonly number[], wanted: readonly number[], digits = 9): void {
  expect(is).toHaveLength(wanted.length);
  for (const [at, value] of is.entries()) expect(value).toBeCloseTo(wanted[at] as number, digits);
}

describe('matrices', () => {
  it('one after the other are their product', () => {
    fc.assert(
      fc.property(matrix, matrix, vector, (one, other, [x, y, z]) => {
        expectNear(applied(times(one, other), x, y, z), applied(one, ...applied(other, x, y, z)));
      }),
    );
  });

  it('take the first number from the first row', () => {
    expect(applied([1, 2, 3, 4, 5, 6, 7, 8, 9], 1, 10, 100)).toEqual([321, 654, 987]);
  });
});

describe('from one light to another', () => {
  it('a thing of known colour comes out as it is there', () => {
    fc.assert(
      fc.property(light, light, (from, to) => {
        expectNear(applied(adaptation(from, to), from.x, from.y, from.z), [to.x, to.y, to.z]);
      }),
    );
  });

  it('nothing changes under the same light, and there and back is where it was', () => {
    fc.assert(
      fc.property(light, light, vector, (from, to, [x, y, z]) => {
        expectNear(applied(adaptation(from, from), x, y, z), [x, y, z]);
        expectNear(applied(times(adaptation(to, from), adaptation(from, to)), x, y, z), [x, y, z]);
      }),
    );
  });

  it('is darker or lighter by the scales of both', () => {
    const { x, y, z } = WHITE;
    const half = { x: x / 2, y: y / 2, z: z / 2 };
    expectNear(applied(adaptation(half, WHITE), 10, 20, 30), [20, 40, 60]);
  });

  it('from warm light to daylight a grey gets bluer, and a red stays redder than a blue', () => {
    const toDay = adaptation(WARM, WHITE);
    const [, , blue] = applied(toDay, WARM.x / 5, WARM.y / 5, WARM.z / 5);
    expect(blue).toBeCloseTo(WHITE.z / 5, 9);
    const [red] = applied(toDay, 40, 20, 2);
    expect(red).toBeGreaterThan(30);
  });
});

describe('the light of a screen', () => {
  // IEC 61966-2-1: white of sRGB is D65, x 0.3127, y 0.3290; red, green and blue have 21, 72 and 7 % of its luminance.
  it('adds up to its white', () => {
    expectNear(applied(SRGB_TO_XYZ, 1, 1, 1), [0.3127 / 0.329, 1, 0.3583 / 0.329], 6);
    expectNear([SRGB_WHITE.x, SRGB_WHITE.y, SRGB_WHITE.z], applied(SRGB_TO_XYZ, 1, 1, 1), 6);
    expectNear(
      [0, 1, 2].map(
        (primary) =>
          applied(
            SRGB_TO_XYZ,
            ...([0, 1, 2].map((at) => Number(at === primary)) as [number, number, number]),
          )[1],
      ),
      [0.2126, 0.7152, 0.0722],
      4,
    );
  });

  it('is the white of the program where it is white', () => {
    expectNear(applied(SRGB_TO_D65, 1, 1, 1), [WHITE.x, WHITE.y, WHITE.z], 4);
  });
});
