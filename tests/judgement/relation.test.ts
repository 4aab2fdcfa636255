/**
 * Around, between, across: the rule of src/judgement/README.md on pairs that stand well inside it. All pairs and their sources are in
 * tests/outside/judgement-relation.test.ts.
 */
import { describe, expect, test } from 'vitest';
import { hueDifference } from '../../src/colour/lab.js';
import { relationBetween, relationOf } from '../../src/judgement/index.js';
import { seeLaid } from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';

const of = (one: string, other: string) => relationOf(STUDIO, { [one]: 1 }, other);

// B. MacEvoy, guide to watercolor pigments (handprint.com), for the complement; the rest common practice, no source.
test.each([
  ['burnt-sienna', 'ultramarine-blue', 'across'],
  ['cadmium-red', 'cerulean-blue', 'across'],
  ['ultramarine-blue', 'cobalt-blue', 'around'],
  ['burnt-sienna', 'cadmium-red', 'around'],
  ['lemon-yellow', 'cerulean-blue', 'between'],
  ['sap-green', 'alizarin-crimson', 'between'],
  ['burnt-sienna', 'ivory-black', 'neutral'],
  ['chinese-white', 'burnt-sienna', 'neutral'],
])('%s and %s lie %s, from either side', (one, other, kind) => {
  expect(of(one, other).kind).toBe(kind);
  expect(of(other, one).kind).toBe(kind);
});

describe('the figures', () => {
  test('are those of both paints alone, at one strength', () => {
    const { ends } = of('burnt-sienna', 'ultramarine-blue');
    for (const [at, id] of ['burnt-sienna', 'ultramarine-blue'].entries()) {
      const alone = seeLaid(STUDIO, { paints: { [id]: 1 }, strength: 0.3 }).colour;
      expect(ends[at]?.chroma).toBeCloseTo(alone.chroma, 9);
      expect(ends[at]?.step).toBeCloseTo(alone.step, 9);
    }
  });

  test('of a pair across: the greyest point is far below both, and little of a straight way is kept', () => {
    const { ends, least, kept } = of('burnt-sienna', 'ultramarine-blue');
    expect(least).toBeLessThan(0.4 * Math.min(ends[0].chroma, ends[1].chroma));
    expect(kept).toBeLessThanOrEqual(0.4);
    // At the greyest point a straight way would have something between both ends.
    expect(kept).toBeGreaterThanOrEqual(least / Math.max(ends[0].chroma, ends[1].chroma) - 1e-12);
    expect(kept).toBeLessThanOrEqual(least / Math.min(ends[0].chroma, ends[1].chroma) + 1e-12);
  });

  test('of a paint with itself: all is kept, and no third colour appears', () => {
    const { kind, kept, least, thirdDeg, ends } = of('cadmium-red', 'cadmium-red');
    expect(kind).toBe('around');
    expect(kept).toBeCloseTo(1, 9);
    expect(least).toBeCloseTo(ends[0].chroma, 9);
    expect(thirdDeg).toBeCloseTo(0, 9);
  });

  test('of a yellow and a red: the orange lies between them, no farther from the nearer than half way', () => {
    const { thirdDeg, ends } = of('cadmium-yellow', 'cadmium-red');
    const apart = Math.abs(hueDifference(ends[0].hue, ends[1].hue));
    expect(thirdDeg).toBeGreaterThan(apart / 8);
    expect(thirdDeg).toBeLessThanOrEqual(apart / 2);
  });

  test('of a yellow and a blue: the green lies away from both', () => {
    const { thirdDeg, ends } = of('lemon-yellow', 'cerulean-blue');
    const apart = Math.abs(hueDifference(ends[0].hue, ends[1].hue));
    expect(thirdDeg).toBeGreaterThan(45);
    // What is farthest from the nearer of two ends lies half way at the most, on the short way or on the long one.
    expect(thirdDeg).toBeLessThanOrEqual((360 - apart) / 2);
  });

  test('do not hang on how much of either lies there', () => {
    const [one, other] = [paintOf('burnt-sienna'), paintOf('ultramarine-blue')];
    const wanted = of('burnt-sienna', 'ultramarine-blue');
    const found = relationBetween(STUDIO, [{ pigment: one, load: 0.01 }], [{ pigment: other, load: 3 }]);
    expect(found.kind).toBe(wanted.kind);
    expect(found.kept).toBeCloseTo(wanted.kept, 9);
    expect(found.least).toBeCloseTo(wanted.least, 9);
    expect(found.thirdDeg).toBeCloseTo(wanted.thirdDeg, 9);
  });

  test('are worked out once for a pair, and not taken for those of another', () => {
    expect(of('burnt-sienna', 'cobalt-blue')).toBe(of('burnt-sienna', 'cobalt-blue'));
    expect(of('burnt-sienna', 'cobalt-blue')).not.toBe(of('burnt-sienna', 'cadmium-red'));
    const twoParts = relationOf(STUDIO, { 'burnt-sienna': 1, 'cadmium-red': 1 }, 'cobalt-blue');
    expect(twoParts.ends[0].chroma).not.toBeCloseTo(of('burnt-sienna', 'cobalt-blue').ends[0].chroma, 1);
  });

  test('of a paint that is not there are none', () => {
    expect(() => of('burnt-sienna', 'mud')).toThrow();
    expect(() => of('mud', 'burnt-sienna')).toThrow();
  });
});

// src/judgement/README.md, "Around, between, across": pairs that one bound alone keeps from being across, or around.
test.each([
  [
    'cadmium-yellow',
    'ultramarine-blue',
    'its greyest point is too strong',
    { kept: [0, 0.4], least: [16, 40] },
  ],
  [
    'cadmium-red',
    'perylene-green',
    'too much of a straight way is kept',
    { kept: [0.4, 0.8], least: [0, 16] },
  ],
  ['lemon-yellow', 'naphthol-red', 'too little of it is kept', { kept: [0.4, 0.8], third: [0, 45] }],
  ['lemon-yellow', 'cerulean-blue', 'a green appears', { kept: [0.8, 1.1], third: [45, 180] }],
] as const)('%s and %s lie between: %s', (one, other, _, figures) => {
  const { kind, kept, least, thirdDeg } = of(one, other);
  const {
    kept: k,
    least: l = [0, 200],
    third: t = [0, 180],
  } = figures as Record<string, readonly [number, number]>;
  for (const [is, [low, high]] of [
    [kept, k as readonly [number, number]],
    [least, l],
    [thirdDeg, t],
  ] as const) {
    expect(is).toBeGreaterThan(low - 1e-9);
    expect(is).toBeLessThan(high);
  }
  expect(kind).toBe('between');
});
