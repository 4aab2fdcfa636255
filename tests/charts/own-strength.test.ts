/** Charts of tubes that tint more strongly than the library's: the same paint and water on paper, a darker patch. */
import { describe, expect, it } from 'vitest';
import { madeLines } from '../../src/charts/pages/cell.js';
import { seePair } from '../../src/charts/two-paints.js';
import { boxStudio, type Palette, paintOf } from '../../src/paints/index.js';
import { seeAlone, timesLibrary, washesOf, washStrength } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const BOX: Palette = {
  id: 'own',
  name: 'own box',
  note: '',
  pigments: ['burnt-sienna', 'ultramarine-blue'],
  isOwn: true,
  names: {},
  strengths: { 'ultramarine-blue': 1.5 },
};
const own = boxStudio(STUDIO, BOX);

describe('a tube half as strong again', () => {
  // Source: tinting strength counts by the amount of pigment, ISO 787-24 (cited from memory); a wash of twice the pigment is darker, common practice.
  it('is darker with the same water, and as the library’s with half as much water again', () => {
    const step = (studio: typeof own, water: string): number =>
      seeAlone(studio, 'ultramarine-blue', washStrength(paintOf(studio, 'ultramarine-blue'), water)).colour
        .step;
    expect(step(own, '1:12')).toBeGreaterThan(step(STUDIO, '1:12') + 0.3);
    // 1 part in 13 of the stronger tube holds as much pigment as 1.5 in 13: 1 in 8.67 of the library's, 1:7.67.
    expect(step(own, '1:12')).toBeCloseTo(step(STUDIO, '1:7.666666666667'), 6);
    expect(step(own, '1:3')).toBeCloseTo(step(STUDIO, '1:3'), 6);
  });

  it('stands on a chart with the water that is in it', () => {
    const seen = seePair(own, ['burnt-sienna', 'ultramarine-blue'], [1, 1]);
    const [wash] = washesOf(seen.laid);
    if (wash === undefined) throw new Error('nothing laid');
    expect(madeLines(own, wash).at(-1)).toBe('water 1:12');
    const library = seePair(STUDIO, ['burnt-sienna', 'ultramarine-blue'], [1, 1]);
    expect(seen.colour.step).toBeGreaterThan(library.colour.step);
    expect(timesLibrary(STUDIO, { 'burnt-sienna': 1, 'ultramarine-blue': 3 })).toBeCloseTo(1, 12);
  });
});
