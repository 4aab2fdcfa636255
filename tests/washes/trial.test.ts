import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../../src/drills/mix/candidates.js';
import { trialOf } from '../../../src/drills/mix/trial.js';
import { LIBRARY, WAYS } from '../../../src/paints/index.js';

const paint = fc.constantFrom(...LIBRARY.map(({ id }) => id));
const strength = fc.double({ min: 0.01, max: 1, noNaN: true });
const ratio = fc.double({ min: 1 / 32, max: 1, noNaN: true });

describe('the quick trial', () => {
  test('gives the colour of the full prediction, to rounding', () => {
    fc.assert(
      fc.property(
        paint,
        paint,
        paint,
        fc.constantFrom(...WAYS),
        strength,
        strength,
        ratio,
        (one, two, second, way, at, startAt, amount) => {
          const start = { paints: { [one]: 2, [two]: 1 }, strength: startAt };
          const line = { second, way, strength: at };
          const quick = trialOf(start, line)(amount);
          const full = outcomeOf(start, { ...line, ratio: amount }).colour;
          expect(quick.step).toBeCloseTo(full.step, 8);
          expect(quick.lab.a).toBeCloseTo(full.lab.a, 8);
          expect(quick.lab.b).toBeCloseTo(full.lab.b, 8);
        },
      ),
      { numRuns: 300, seed: 7 },
    );
  });
});

describe('what is laid', () => {
  const start = { paints: { 'burnt-sienna': 3, 'alizarin-crimson': 1 }, strength: 0.4 };

  test('parts are to one of the first colour, whatever numbers the recipe uses', () => {
    const { laid } = outcomeOf(start, {
      second: 'ultramarine-blue',
      ratio: 0.5,
      way: 'puddle',
      strength: 0.4,
    });
    expect(laid.map(({ pigment, parts }) => [pigment, parts])).toEqual([
      ['burnt-sienna', 0.75],
      ['alizarin-crimson', 0.25],
      ['ultramarine-blue', 0.5],
    ]);
  });

  test('a second paint that is in the wash already is one entry of the puddle, its parts added', () => {
    const { laid } = outcomeOf(start, {
      second: 'alizarin-crimson',
      ratio: 0.5,
      way: 'puddle',
      strength: 0.4,
    });
    expect(laid.map(({ pigment, parts }) => [pigment, parts])).toEqual([
      ['burnt-sienna', 0.75],
      ['alizarin-crimson', 0.75],
    ]);
  });

  test('a glaze leaves the first wash as it was', () => {
    const glazed = outcomeOf(start, {
      second: 'alizarin-crimson',
      ratio: 0.5,
      way: 'glaze',
      strength: 0.9,
    }).laid;
    const dry = outcomeOf(start, {
      second: 'ivory-black',
      ratio: 1 / 32,
      way: 'glaze',
      strength: 0.2,
    }).laid;
    expect(glazed).toHaveLength(3);
    expect(glazed.slice(0, 2)).toEqual(dry.slice(0, 2));
    expect(glazed[2]?.parts).toBe(0.5);
  });

  test('strokes hold the same paint as the puddle', () => {
    const choice = { second: 'ultramarine-blue', ratio: 0.5, strength: 0.4 };
    const stirred = outcomeOf(start, { ...choice, way: 'puddle' }).laid;
    const apart = outcomeOf(start, { ...choice, way: 'strokes' }).laid;
    for (const [index, { load }] of stirred.entries()) expect(apart[index]?.load).toBeCloseTo(load, 12);
  });
});
