/** Water, parts and shares as painters count them. */
import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/errors.js';
import type { Pigment } from '../../src/paints/index.js';
import {
  atStrength,
  layMixture,
  loadsGiven,
  MOST_LOAD,
  MOST_PARTS,
  madeUp,
  partsOf,
  seeAlone,
  seeLaid,
  seeWet,
  stirIn,
  strengthOf,
  strokeShares,
  thinned,
  timesLibrary,
  WATERS,
  washesOf,
  washLoads,
  washStrength,
  waterOf,
  waterStrength,
} from '../../src/washes/index.js';
import { tidyParts } from '../../src/washes/tidy.js';
import { paintOf, STUDIO } from '../studio.js';

describe('water', () => {
  test('one part of paint to three of water is masstone; strength is the share of paint against it', () => {
    expect(waterStrength('1:3')).toBe(1);
    expect(waterStrength('1:7')).toBeCloseTo(0.5, 12);
    expect(waterStrength('1:39')).toBeCloseTo(0.1, 12);
    for (const water of WATERS) expect(waterOf(waterStrength(water))).toBeCloseTo(Number(water.slice(2)), 9);
  });

  test('halves from one to the next: the wash is about half as strong with twice the water', () => {
    for (const [at, water] of WATERS.entries()) {
      const next = WATERS[at + 1];
      if (next === undefined) continue;
      const times = waterStrength(next) / waterStrength(water);
      expect(times).toBeGreaterThan(1.7);
      expect(times).toBeLessThan(2);
    }
  });

  test.each(['1:2.9', '1:1001', '1:0', '1:x', '3', ''])('%s is refused', (water) => {
    expect(() => waterStrength(water)).toThrow(RangeError);
  });

  test('to a thousand parts of it is read', () => {
    expect(waterStrength('1:1000')).toBeCloseTo(4 / 1001, 12);
  });

  test('a tube twice as strong makes a wash twice as strong, to the masstone at most', () => {
    expect(washStrength({}, '1:7')).toBeCloseTo(0.5, 12);
    expect(washStrength({ timesLibrary: 1.5 }, '1:7')).toBeCloseTo(0.75, 12);
    expect(washStrength({ timesLibrary: 4 }, '1:7')).toBe(1);
  });
});

describe('tubes of other strengths', () => {
  const [sienna, blue] = ['burnt-sienna', 'ultramarine-blue'].map(paintOf) as [Pigment, Pigment];
  const stronger = (pigment: Pigment, times: number): Pigment => ({
    ...pigment,
    fullStrength: pigment.fullStrength / times,
    timesLibrary: times,
  });

  test('a puddle is as many times as strong as its paint, and between where one of two is', () => {
    const studio = { ...STUDIO, paints: [stronger(sienna, 2), blue] };
    expect(timesLibrary(STUDIO, { 'burnt-sienna': 1, 'ultramarine-blue': 3 })).toBe(1);
    expect(timesLibrary(studio, { 'burnt-sienna': 3 })).toBeCloseTo(2, 12);
    const both = timesLibrary(studio, { 'burnt-sienna': 1, 'ultramarine-blue': 1 });
    expect(both).toBeGreaterThan(1);
    expect(both).toBeLessThan(2);
    // By what each brings: its parts at its own full strength.
    const [one, other] = [1 / sienna.fullStrength, 1 / blue.fullStrength];
    expect(both).toBeCloseTo((2 * one + other) / (one + other), 12);
  });
});

describe('parts that can be counted', () => {
  test.each([
    [1, [1, 1]],
    [2, [1, 2]],
    [0.5, [2, 1]],
    [1.5, [2, 3]],
    [0.26, [4, 1]],
    [1 / 200, [200, 1]],
    [1000, [1, 200]],
    [1e-5, [200, 1]],
  ] as const)('a ratio of %d is nearest to %j', (ratio, parts) => {
    expect(tidyParts(ratio)[0]).toEqual(parts);
  });

  test('each once, nearest first, by the factor between them', () => {
    const parts = tidyParts(0.3);
    expect(new Set(parts.map(String)).size).toBe(parts.length);
    const away = parts.map(([first, second]) => Math.abs(Math.log(second / first / 0.3)));
    expect(away).toEqual(away.toSorted((a, b) => a - b));
    expect(parts.every(([first, second]) => Number.isInteger(first) && Number.isInteger(second))).toBe(true);
  });

  test('no ratio from a two-hundredth to two hundred is further than an eighth from one of them', () => {
    for (let log = Math.log(1 / 200); log <= Math.log(200); log += 0.05) {
      const [first, second] = tidyParts(Math.exp(log))[0] as readonly [number, number];
      expect(Math.abs(Math.log(second / first) - log)).toBeLessThan(0.13);
    }
  });
});

describe('bounds', () => {
  const pigment = paintOf('sap-green');
  test('the most and the least that still mean something are taken', () => {
    expect(madeUp([{ pigment, parts: MOST_PARTS }], 1)).toHaveLength(1);
    expect(() => madeUp([{ pigment, parts: MOST_PARTS * 1.001 }], 1)).toThrow(InputError);
    expect(loadsGiven([{ pigment, load: MOST_LOAD }])).toEqual([{ pigment, load: MOST_LOAD }]);
    for (const load of [0, -1, Number.NaN])
      expect(() => loadsGiven([{ pigment, load }])).toThrow(/load of sap-green/);
    const wash = madeUp([{ pigment, parts: 1 }], 0.5);
    expect(thinned(wash, 1)).toEqual(wash);
    expect(thinned(wash, 1000)[0]?.load).toBeCloseTo((wash[0]?.load ?? 0) / 1000, 15);
    expect(stirIn(wash, [{ pigment, parts: MOST_PARTS }])).toHaveLength(1);
  });
});

describe('a wash', () => {
  const parts = partsOf(STUDIO, { 'burnt-sienna': 2, 'ultramarine-blue': 1 });
  test('at another strength keeps its ratios', () => {
    const [weak, strong] = [madeUp(parts, 0.2), madeUp(parts, 0.8)];
    expect(strengthOf(atStrength(weak, 0.8))).toBeCloseTo(0.8, 12);
    for (const [at, { load }] of atStrength(weak, 0.8).entries())
      expect(load).toBeCloseTo(strong[at]?.load ?? 0, 12);
  });

  test('is made up, then stirred into, then thinned', () => {
    const first = madeUp(partsOf(STUDIO, { 'burnt-sienna': 1 }), 0.4);
    const stirred = stirIn(first, partsOf(STUDIO, { 'ultramarine-blue': 0.5 }));
    const wash = { paints: { 'burnt-sienna': 1 }, strength: 0.4 };
    expect(washLoads(STUDIO, wash)).toEqual(first);
    expect(washLoads(STUDIO, { ...wash, add: { 'ultramarine-blue': 0.5 } })).toEqual(stirred);
    expect(washLoads(STUDIO, { ...wash, add: { 'ultramarine-blue': 0.5 }, thin: 2 })).toEqual(
      thinned(stirred, 2),
    );
    expect(() => washLoads(STUDIO, { ...wash, thin: 0.5 })).toThrow(InputError);
  });

  test('in strokes covers by what each paint brings, all of the paper together', () => {
    const shares = strokeShares(madeUp(parts, 0.6));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    const [sienna, blue] = parts.map(({ pigment, parts: amount }) => amount / pigment.fullStrength) as [
      number,
      number,
    ];
    expect((shares[0] ?? 0) / (shares[1] ?? 1)).toBeCloseTo(sienna / blue, 9);
  });
});

describe('what is laid', () => {
  const FIRST = { paints: { 'burnt-sienna': 1 }, strength: 0.4 };
  const added = [
    { id: 'ultramarine-blue', amount: 0.25 },
    { id: 'alizarin-crimson', amount: 0.3 },
  ];
  const blue = { 'ultramarine-blue': 1 };
  const red = { 'alizarin-crimson': 1 };

  test('a puddle: all stirred in, twice the same paint once, thinned where there is water', () => {
    const mixture = { way: 'puddle', added, strength: 0, thin: 1 } as const;
    const add = { 'ultramarine-blue': 0.25, 'alizarin-crimson': 0.3 };
    expect(layMixture(FIRST, mixture)).toEqual({ ...FIRST, add });
    expect(layMixture(FIRST, { ...mixture, thin: 2 })).toEqual({ ...FIRST, add, thin: 2 });
    const twice = [...added, { id: 'ultramarine-blue', amount: 0.5 }];
    expect(layMixture(FIRST, { ...mixture, added: twice })).toMatchObject({
      add: { 'ultramarine-blue': 0.75 },
    });
  });

  test('a glaze: over the first, one after the other', () => {
    expect(layMixture(FIRST, { way: 'glaze', added, strength: 0.9, thin: 5 })).toEqual({
      layers: [FIRST, { paints: blue, strength: 0.25 }, { paints: red, strength: 0.3 }],
    });
  });

  test('strokes: of one strength, and the first has the rest of the paper', () => {
    const laid = layMixture(FIRST, { way: 'strokes', added, strength: 0.6, thin: 1 });
    expect(laid).toEqual({
      strokes: [
        { ...FIRST, share: expect.closeTo(0.45, 12) },
        { paints: blue, strength: 0.6, share: 0.25 },
        { paints: red, strength: 0.6, share: 0.3 },
      ],
    });
  });

  test('a paint alone is seen as its wash, and worked out once', () => {
    const alone = seeAlone(STUDIO, 'ultramarine-blue', 0.4);
    expect(alone.colour).toEqual(seeLaid(STUDIO, { paints: blue, strength: 0.4 }).colour);
    expect(seeAlone(STUDIO, 'ultramarine-blue', 0.4)).toBe(alone);
    expect(seeAlone(STUDIO, 'ultramarine-blue', 0.5)).not.toBe(alone);
    expect(seeAlone(STUDIO, 'alizarin-crimson', 0.4)).not.toBe(alone);
  });

  test('its washes are those that lie there, in order', () => {
    const [one, other] = [FIRST, { paints: blue, strength: 0.2 }];
    expect(washesOf(one)).toEqual([one]);
    expect(washesOf({ layers: [one, other] })).toEqual([one, other]);
    const strokes = [
      { ...one, share: 0.5 },
      { ...other, share: 0.5 },
    ];
    expect(washesOf({ strokes })).toEqual(strokes);
  });

  test('wet it is darker than dry, strokes by their shares, and of glazes only the last is wet', () => {
    const [one, other] = [FIRST, { paints: blue, strength: 0.6 }];
    const y = (of: 'wet' | 'dry', laid: Parameters<typeof seeLaid>[1]): number =>
      (of === 'wet' ? seeWet : seeLaid)(STUDIO, laid).colour.xyz.y;
    for (const laid of [one, other, { layers: [one, other] }])
      expect(y('wet', laid)).toBeLessThan(y('dry', laid));
    const strokes = [
      { ...one, share: 0.3 },
      { ...other, share: 0.7 },
    ];
    expect(y('wet', { strokes })).toBeCloseTo(0.3 * y('wet', one) + 0.7 * y('wet', other), 9);
    expect(y('dry', { strokes })).toBeCloseTo(0.3 * y('dry', one) + 0.7 * y('dry', other), 9);
    // As light as if only the upper film were wet: lighter than one puddle of both that is wet through.
    expect(y('wet', { layers: [one, one] })).toBeGreaterThan(y('wet', { ...one, strength: 0.8 }));
    expect(y('wet', { layers: [one, other] })).not.toBeCloseTo(y('wet', { layers: [other, one] }), 1);
  });
});
