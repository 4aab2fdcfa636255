import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readColour } from '../../src/colour/reading.js';
import type { Pigment } from '../../src/paints/index.js';
import {
  glazeReflectance,
  type Load,
  leftOfFirst,
  loadsGiven,
  MOST_LOAD,
  MOST_PARTS,
  madeUp,
  type Part,
  paintIn,
  partsToFirst,
  puddleReflectance,
  stirIn,
  strengthOf,
  strokesReflectance,
  thinned,
} from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';

const paint = fc.constantFrom(...STUDIO.paints);
const strength = fc.double({ min: 0.01, max: 1, noNaN: true });
const parts = fc.double({ min: 1 / 64, max: 8, noNaN: true });
const part: fc.Arbitrary<Part> = fc.record({ pigment: paint, parts });
const someParts = (most: number): fc.Arbitrary<Part[]> =>
  fc.uniqueArray(part, { minLength: 1, maxLength: most, selector: ({ pigment }) => pigment.id });
const wash = fc.tuple(someParts(3), strength).map(([made, at]) => madeUp(made, at));

const byId = (loads: readonly Load[]): Record<string, number> =>
  Object.fromEntries(loads.map(({ pigment, load }) => [pigment.id, load]));

/** The same loads to rounding, in whatever order. */
function expectSame(one: readonly Load[], other: readonly Load[]): void {
  const [a, b] = [byId(one), byId(other)];
  expect(Object.keys(a).sort()).toEqual(Object.keys(b).sort());
  for (const [id, load] of Object.entries(a)) expect(load / (b[id] ?? 0)).toBeCloseTo(1, 12);
}

function expectSameLight(one: Float64Array, other: Float64Array): void {
  for (const [band, value] of one.entries()) {
    expect(Math.abs(value - (other[band] as number))).toBeLessThan(1e-12);
  }
}

describe('a puddle made up', () => {
  test('a paint alone at strength 1 lies at its masstone, whatever its parts', () => {
    fc.assert(
      fc.property(paint, parts, (pigment, amount) => {
        expect(madeUp([{ pigment, parts: amount }], 1)[0]?.load).toBeCloseTo(pigment.fullStrength, 12);
      }),
    );
  });

  test('has the strength that was asked and the parts in their ratio', () => {
    fc.assert(
      fc.property(someParts(4), strength, (made, at) => {
        const loads = madeUp(made, at);
        expect(strengthOf(loads)).toBeCloseTo(at, 12);
        const [first] = loads;
        for (const [index, { load }] of loads.entries()) {
          const ratio = (made[index]?.parts ?? 0) / (made[0]?.parts ?? 1);
          expect(load / (first?.load ?? 1) / ratio).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1.01])('refuses strength %d', (at) => {
    expect(() => madeUp([{ pigment: paintOf('sap-green'), parts: 1 }], at)).toThrow(
      /strength must be above 0/,
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, MOST_PARTS * 2])('refuses %d parts', (amount) => {
    const pigment = paintOf('sap-green');
    expect(() => madeUp([{ pigment, parts: amount }], 0.5)).toThrow(/parts of sap-green must be above 0/);
    const first = madeUp([{ pigment, parts: 1 }], 0.5);
    expect(() => stirIn(first, [{ pigment, parts: amount }])).toThrow(/parts of sap-green must be above 0/);
  });

  test('refuses an empty list and loads beyond any stroke', () => {
    expect(() => madeUp([], 0.5)).toThrow(RangeError);
    expect(() => loadsGiven([])).toThrow(RangeError);
    expect(() => loadsGiven([{ pigment: paintOf('sap-green'), load: MOST_LOAD * 2 }])).toThrow(RangeError);
  });
});

describe('stirring in', () => {
  // Paint at its masstone is one part to three of water: as much again from the tube adds a quarter to the puddle.
  test('adds no water: the first paint gives way to the volume of the new one alone', () => {
    expect(leftOfFirst(1, 1)).toBeCloseTo(1 / 1.25, 12);
    expect(leftOfFirst(0.5, 1)).toBeCloseTo(1 / 1.125, 12);
    expect(leftOfFirst(0.3, 0)).toBe(1);
  });

  test('parts to the first paint: two parts and one, and a quarter of all three, are a half and three eighths of the first', () => {
    expect(partsToFirst({ paints: { a: 2, b: 1 }, add: { c: 1 / 4, a: 1 / 8 } })).toEqual([
      { id: 'b', parts: 0.5 },
      { id: 'c', parts: 0.375 },
      { id: 'a', parts: 0.1875 },
    ]);
    expect(partsToFirst({ paints: { a: 3 } })).toEqual([]);
  });

  test('parts count from all the paint of the wash as it was', () => {
    fc.assert(
      fc.property(wash, part, (first, added) => {
        const ratio = added.parts;
        const left = leftOfFirst(strengthOf(first), ratio);
        const mixed = byId(stirIn(first, [added]));
        const held = byId(first)[added.pigment.id] ?? 0;
        const expected = left * (held + ratio * paintIn(first));
        expect((mixed[added.pigment.id] ?? 0) / expected).toBeCloseTo(1, 12);
      }),
    );
  });

  test('the order of additions cannot matter', () => {
    fc.assert(
      fc.property(wash, someParts(4), (first, added) => {
        expectSame(stirIn(first, added), stirIn(first, [...added].reverse()));
        const light = (parts: readonly Part[]) => puddleReflectance(stirIn(first, parts), STUDIO.paper);
        expectSameLight(light(added), light([...added].reverse()));
      }),
    );
  });

  test('twice the same paint is once as much of it', () => {
    fc.assert(
      fc.property(wash, paint, parts, parts, (first, pigment, one, two) => {
        const twice = [
          { pigment, parts: one },
          { pigment, parts: two },
        ];
        expectSame(stirIn(first, twice), stirIn(first, [{ pigment, parts: one + two }]));
      }),
    );
  });

  test('nothing stirred in changes nothing; more never leaves less of it', () => {
    fc.assert(
      fc.property(wash, paint, parts, (first, pigment, amount) => {
        expectSame(stirIn(first, []), first);
        const some = byId(stirIn(first, [{ pigment, parts: amount }]))[pigment.id] ?? 0;
        const more = byId(stirIn(first, [{ pigment, parts: 1.1 * amount }]))[pigment.id] ?? 0;
        expect(more).toBeGreaterThan(some);
      }),
    );
  });

  test('then water: every load in the same share, so that the ratios stay', () => {
    fc.assert(
      fc.property(wash, someParts(2), fc.double({ min: 1, max: 16, noNaN: true }), (first, added, times) => {
        const stirred = stirIn(first, added);
        const pale = thinned(stirred, times);
        expect(strengthOf(pale) * times).toBeCloseTo(strengthOf(stirred), 9);
        expectSame(
          pale.map(({ pigment, load }) => ({ pigment, load: load * times })),
          stirred,
        );
      }),
    );
    const first = madeUp([{ pigment: paintOf('sap-green'), parts: 1 }], 0.5);
    for (const times of [0.99, 0, -2, Number.NaN, 1001])
      expect(() => thinned(first, times)).toThrow(/thin must be/);
  });
});

describe('glazes', () => {
  test('every layer shares the tooth: a paint over itself is one film of both loads', () => {
    fc.assert(
      fc.property(paint, strength, strength, (pigment, one, two) => {
        const [below, above] = [one * pigment.fullStrength, two * pigment.fullStrength];
        const layered = glazeReflectance(
          [[{ pigment, load: below }], [{ pigment, load: above }]],
          STUDIO.paper,
        );
        expectSameLight(layered, puddleReflectance([{ pigment, load: below + above }], STUDIO.paper));
      }),
    );
  });

  test('a whole puddle over itself is that puddle twice as thick', () => {
    fc.assert(
      fc.property(wash, (film) => {
        const thick = film.map(({ pigment, load }) => ({ pigment, load: 2 * load }));
        expectSameLight(glazeReflectance([film, film], STUDIO.paper), puddleReflectance(thick, STUDIO.paper));
      }),
    );
  });

  test('a paint that scatters nothing never lightens, in any band', () => {
    const clear = (pigment: Pigment, share: number): Pigment => ({
      ...pigment,
      S: pigment.S.map((s) => share * s),
    });
    fc.assert(
      fc.property(wash, paint, strength, fc.constantFrom(0, 1e-9), (below, pigment, at, share) => {
        const glaze = [{ pigment: clear(pigment, share), load: at * pigment.fullStrength }];
        const before = puddleReflectance(below, STUDIO.paper);
        const after = glazeReflectance([below, glaze], STUDIO.paper);
        for (const [band, value] of after.entries()) {
          expect(value).toBeLessThanOrEqual((before[band] as number) + 1e-8);
        }
      }),
    );
  });
});

describe('strokes', () => {
  // D. Briggs, The Dimensions of Colour, 4.4. To a tenth of Y of 100: films that scatter are not quite convex in their load.
  test('are never darker than the puddle of the same amounts, two and three of them', () => {
    fc.assert(
      fc.property(someParts(3), strength, (made, at) => {
        const loads = madeUp(made, at);
        const luminance = (light: Float64Array): number => readColour(light).xyz.y;
        expect(luminance(strokesReflectance(loads, STUDIO.paper))).toBeGreaterThanOrEqual(
          luminance(puddleReflectance(loads, STUDIO.paper)) - 0.1,
        );
      }),
      { numRuns: 1000, seed: 4 },
    );
  });
});
