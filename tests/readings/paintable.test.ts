/** What a drill lays, as it is measured out of tubes of other strengths, and how it is said. */
import { describe, expect, it } from 'vitest';
import { boxStudio, type Studio } from '../../src/paints/index.js';
import { paintable, paintingTold, patchColour } from '../../src/readings/index.js';
import { seeLaid, type Wash, waterOf } from '../../src/washes/index.js';
import { sayAll } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';

const WASH: Wash & { readonly add: Record<string, number> } = {
  paints: { 'burnt-sienna': 1 },
  strength: 0.16,
  add: { 'ultramarine-blue': 0.5 },
};
const tubes = (strengths: Readonly<Record<string, number>>): Studio =>
  boxStudio(STUDIO, { id: 'x', name: 'x', note: '', pigments: [], strengths });

describe('a mixture as it is measured out', () => {
  it('is what the drill lays where the tubes are the library’s', () => {
    expect(paintable(STUDIO, WASH)).toEqual(WASH);
  });

  // K and S add up by amount (Duncan 1940): half as much of a tube twice as strong makes the same film.
  it('takes half as much of a tube twice as strong', () => {
    const own = tubes({ 'burnt-sienna': 2 });
    const measured = paintable(own, WASH);
    expect(measured?.strength).toBeCloseTo(0.08, 12);
    expect(waterOf(measured?.strength ?? 0)).toBeCloseTo(2 * waterOf(0.16) + 1, 12);
    const { add: _, ...alone } = WASH;
    const { lab } = patchColour(STUDIO, measured as Wash, 'alone', {
      strengths: new Map([['burnt-sienna', Math.log(2)]]),
      wash: 0,
    });
    const seen = seeLaid(own, alone).colour.lab;
    for (const axis of ['l', 'a', 'b'] as const) expect(lab[axis]).toBeCloseTo(seen[axis], 9);
  });

  it('takes of two tubes as much as both need, and minds not how strong the one is that is stirred in', () => {
    const two: Wash = { ...WASH, paints: { 'burnt-sienna': 1, 'raw-sienna': 1 } };
    const both = paintable(tubes({ 'burnt-sienna': 2, 'raw-sienna': 2 }), two);
    expect(both?.strength).toBeCloseTo(0.08, 12);
    const one = paintable(tubes({ 'burnt-sienna': 2 }), two)?.strength ?? 0;
    expect(one).toBeGreaterThan(0.08);
    expect(one).toBeLessThan(0.16);
    expect(paintable(tubes({ 'ultramarine-blue': 3 }), WASH)?.strength).toBe(0.16);
  });

  it('is one puddle with something stirred in, no thicker than the tube', () => {
    expect(paintable(STUDIO, { layers: [WASH, WASH] })).toBeUndefined();
    expect(paintable(STUDIO, { strokes: [{ ...WASH, share: 1 }] })).toBeUndefined();
    const { add: _, ...alone } = WASH;
    expect(paintable(STUDIO, alone)).toBeUndefined();
    expect(paintable(tubes({ 'burnt-sienna': 0.25 }), { ...WASH, strength: 0.3 })).toBeUndefined();
  });
});

describe('what to do', () => {
  const said = (wash: Wash): string => sayAll(paintingTold(STUDIO, wash), WRITTEN).join(' ');

  it('names the touches that painters count in, and the water', () => {
    expect(said(WASH)).toBe(
      'Make a wash of 1 part burnt sienna to 24 of water, and paint a patch. Stir in half a part ultramarine blue to each part of the paint in the wash, no water, and paint another.',
    );
    const touch = (parts: number): string => said({ ...WASH, add: { viridian: parts } });
    expect(touch(1 / 8)).toContain('an eighth of a part viridian');
    expect(touch(1 / 32)).toContain('a thirty-second of a part viridian');
    expect(touch(1 / 3)).toContain('0.33 parts viridian');
    expect(touch(0.0312)).toContain('0.031 parts viridian');
  });

  it('says how much water comes last', () => {
    expect(said({ ...WASH, thin: 2 })).toContain(
      'no water; then add 1 measure of water to each of the puddle, and paint another.',
    );
    expect(said({ ...WASH, thin: 4 })).toContain('add 3 measures of water');
  });
});
