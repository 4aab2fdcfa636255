/**
 * What a painter knows of stirring a second and a third paint into a wash, held against the prediction. Common practice, no
 * source: the figures are our own reading of what the hand sees (a step is a tenth of the way from paper to black).
 */
import { describe, expect, test } from 'vitest';
import { hueDifference } from '../../src/colour/lab.js';
import { type ColourReading, readColour } from '../../src/colour/reading.js';
import { puddleReflectance, seeLaid, type Wash, washLoads } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const read = (wash: Wash): ColourReading => seeLaid(STUDIO, wash).colour;

/** Burnt sienna as a milky wash with so much of another paint stirred in. */
const sienna = (add: Readonly<Record<string, number>> = {}): ColourReading =>
  read({ paints: { 'burnt-sienna': 1 }, strength: 0.3, add });

describe('a wash of burnt sienna (common practice, no source)', () => {
  const start = sienna();
  const kept = (colour: ColourReading): number => colour.chroma / start.chroma;

  test('is a strong orange brown of middle value', () => {
    expect(start.chroma).toBeGreaterThanOrEqual(45);
    expect(start.chroma).toBeLessThanOrEqual(60);
    expect(start.step).toBeGreaterThanOrEqual(3.9);
    expect(start.step).toBeLessThanOrEqual(4.6);
  });

  test('goes a step darker with as much alizarin and stays as strong', () => {
    const mixed = sienna({ 'alizarin-crimson': 1 });
    expect(mixed.step - start.step).toBeGreaterThanOrEqual(1);
    expect(kept(mixed)).toBeGreaterThanOrEqual(0.9);
  });

  test('loses a third of its chroma to a touch of ultramarine and nearly all of it to half as much', () => {
    expect(kept(sienna({ 'ultramarine-blue': 1 / 8 }))).toBeGreaterThanOrEqual(0.5);
    expect(kept(sienna({ 'ultramarine-blue': 1 / 8 }))).toBeLessThanOrEqual(0.75);
    expect(kept(sienna({ 'ultramarine-blue': 1 / 2 }))).toBeLessThan(0.25);
  });

  test('goes darker by a clear step each time the black is doubled, and duller', () => {
    const ladder = [0, 1 / 16, 1 / 8, 1 / 4, 1 / 2].map((black) =>
      black === 0 ? start : sienna({ 'ivory-black': black }),
    );
    for (const [at, { step, chroma }] of ladder.slice(1).entries()) {
      const before = ladder[at] as ColourReading;
      expect(step - before.step).toBeGreaterThanOrEqual(0.4);
      expect(chroma).toBeLessThan(before.chroma);
    }
  });
});

describe('quinacridone gold with ultramarine (common practice, no source)', () => {
  const gold = (strength: number, blue?: number): ColourReading =>
    read({
      paints: { 'quinacridone-gold': 1 },
      strength,
      ...(blue === undefined ? {} : { add: { 'ultramarine-blue': blue } }),
    });

  test('a touch makes a darker gold, not another hue', () => {
    const start = gold(0.4);
    for (const blue of [1 / 32, 1 / 16]) {
      expect(gold(0.4, blue).step).toBeGreaterThan(start.step + 0.1);
      expect(Math.abs(hueDifference(start.hue, gold(0.4, blue).hue))).toBeLessThan(20);
    }
  });

  test('stirred in thickly it gives a deep dark that is nearly neutral', () => {
    // The strength of the gold is assumed: 3:2 comes to L* 31, C* 7; 2:1 to L* 29, C* 8. Equal parts stop at L* 34.
    for (const blue of [3 / 2, 2]) {
      expect(gold(0.8, blue).lab.l).toBeLessThanOrEqual(32);
      expect(gold(0.8, blue).chroma).toBeLessThanOrEqual(15);
    }
  });
});

describe('ultramarine, alizarin crimson and Naples yellow (common practice, no source)', () => {
  test('as one puddle of 3:3:8 they are a light grey', () => {
    const grey = read({
      paints: { 'ultramarine-blue': 3, 'alizarin-crimson': 3, 'naples-yellow': 8 },
      strength: 0.2,
    });
    expect(grey.chroma).toBeLessThan(6);
    expect(grey.step).toBeLessThanOrEqual(5);
  });

  test.each([0.1, 0.15, 0.2])('3:8 of both stirred into a Naples wash at %d make one, too', (strength) => {
    const grey = read({
      paints: { 'naples-yellow': 1 },
      strength,
      add: { 'ultramarine-blue': 3 / 8, 'alizarin-crimson': 3 / 8 },
    });
    expect(grey.chroma).toBeLessThan(6);
    expect(grey.step).toBeLessThanOrEqual(5);
  });
});

// Optical mixing keeps more of the colour than stirring: D. Briggs, The Dimensions of Colour, section 4.4, after O. Rood, 1879.
// How much more, 15 C* or better, is common practice, no source.
describe('three washes side by side and the same paint in one puddle', () => {
  const IDS = ['ultramarine-blue', 'alizarin-crimson', 'burnt-sienna'];

  test.each([0.3, 0.4, 0.5, 0.65, 0.8, 1])(
    'at strength %d the washes are stronger by 15 C* and no darker',
    (strength) => {
      const strokes = IDS.map((id) => ({ paints: { [id]: 1 }, strength, share: 1 / 3 }));
      const apart = seeLaid(STUDIO, { strokes }).colour;
      const loads = strokes.flatMap((stroke) =>
        washLoads(STUDIO, stroke).map(({ pigment, load }) => ({ pigment, load: load / 3 })),
      );
      const stirred = readColour(puddleReflectance(loads, STUDIO.paper));
      expect(apart.chroma).toBeGreaterThanOrEqual(stirred.chroma + 15);
      expect(apart.step).toBeLessThanOrEqual(stirred.step);
    },
  );
});
