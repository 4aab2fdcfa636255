import { describe, expect, test } from 'vitest';
import { laidParts } from '../../src/drills/laid-parts.js';
import type { LaidPart } from '../../src/drills/types.js';
import { type Laid, seeLaid } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const first = { paints: { 'burnt-sienna': 3, 'alizarin-crimson': 1 }, strength: 0.4 };
const partsOf = (laid: Laid): LaidPart[] => laidParts(seeLaid(STUDIO, laid));
const named = (laid: Laid) => partsOf(laid).map(({ pigment, parts }) => [pigment, parts]);

describe('what is laid', () => {
  test('what is stirred in counts from all the paint of the wash, in the parts that the recipe uses', () => {
    // The parts stay those of the recipe: 4 in the wash, so half as much again is 2.
    expect(named({ ...first, add: { 'ultramarine-blue': 0.5 } })).toEqual([
      ['burnt-sienna', 3],
      ['alizarin-crimson', 1],
      ['ultramarine-blue', 2],
    ]);
  });

  test('a second paint that is in the wash already is one entry of the puddle, its parts added', () => {
    expect(named({ ...first, add: { 'alizarin-crimson': 0.5 } })).toEqual([
      ['burnt-sienna', 3],
      ['alizarin-crimson', 3],
    ]);
  });

  test('a glaze leaves the first wash as it was', () => {
    const glaze = { paints: { 'alizarin-crimson': 1 }, strength: 0.9 };
    const alone = partsOf(first);
    expect(partsOf({ layers: [first, glaze] })).toEqual([...alone, ...partsOf(glaze)]);
  });

  test('loads are in the ratio of the parts, whatever the water', () => {
    const stirred = partsOf({ ...first, add: { 'ultramarine-blue': 0.5 }, thin: 3 });
    const [one] = stirred;
    for (const { parts, load } of stirred) expect(load / parts).toBeCloseTo((one?.load ?? 0) / 3, 12);
  });
});
