/**
 * What painters know of mixing, held against the prediction. Where a printed source exists it is named; statements
 * that every workshop repeats are marked "common practice, no source".
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shadingLine } from '../../src/colour/chroma.js';
import { hueDifference } from '../../src/colour/lab.js';
import { type ColourReading, readColour } from '../../src/colour/reading.js';
import {
  glazeReflectance,
  type Load,
  puddleReflectance,
  strokesReflectance,
  washLoads,
} from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const { paints: LIBRARY, paper: PAPER } = STUDIO;

const loads = (paints: Readonly<Record<string, number>>, strength: number): Load[] =>
  washLoads(STUDIO, { paints, strength });

const mix = (
  parts: Readonly<Record<string, number>>,
  strength: number,
  reflectance = puddleReflectance,
): ColourReading => readColour(reflectance(loads(parts, strength), PAPER));

const layered = (...washes: readonly Load[][]): ColourReading => readColour(glazeReflectance(washes, PAPER));

const TRANSPARENT = LIBRARY.filter(({ handling }) => (handling.transparency?.value ?? 0) >= 3);
const MEASURED = LIBRARY.filter(({ evidence }) => evidence === 'measured');

describe('around and across the wheel (common practice, no source)', () => {
  const start = mix({ 'burnt-sienna': 1 }, 0.3);

  test('burnt sienna with half as much alizarin crimson keeps most of its chroma', () => {
    expect(mix({ 'burnt-sienna': 4, 'alizarin-crimson': 2 }, 0.3).chroma / start.chroma).toBeGreaterThan(0.8);
  });
  test('with half as much ultramarine it loses about half or more', () => {
    expect(mix({ 'burnt-sienna': 4, 'ultramarine-blue': 2 }, 0.3).chroma / start.chroma).toBeLessThan(0.55);
  });
  test('in equal parts with ultramarine at full strength it is near neutral and dark', () => {
    const dark = mix({ 'burnt-sienna': 1, 'ultramarine-blue': 1 }, 1);
    expect(dark.chroma).toBeLessThan(12);
    expect(dark.lab.l).toBeLessThan(30);
  });
  test('black takes chroma faster than the shading line does', () => {
    for (const id of ['cadmium-red', 'burnt-sienna', 'sap-green', 'ultramarine-blue']) {
      const lit = mix({ [id]: 1 }, 0.3);
      const blackened = mix({ [id]: 2, 'ivory-black': 1 }, 0.3);
      expect(blackened.chroma).toBeLessThan(0.75 * shadingLine(lit.chroma, lit.lab.l, blackened.lab.l));
    }
  });
});

describe('chroma by distance round the wheel (B. MacEvoy, handprint.com, color18b.html, rev. 2015)', () => {
  test('neighbours lose little, a quarter turn more, opposites most, over all measured pairs', () => {
    const kept: [number[], number[], number[]] = [[], [], []];
    const bright = MEASURED.map((pigment) => ({ pigment, alone: mix({ [pigment.id]: 1 }, 0.4) })).filter(
      ({ alone }) => alone.chroma > 25,
    );
    for (const [index, one] of bright.entries()) {
      for (const other of bright.slice(index + 1)) {
        const both = puddleReflectance(
          [...loads({ [one.pigment.id]: 1 }, 0.2), ...loads({ [other.pigment.id]: 1 }, 0.2)],
          PAPER,
        );
        const away = Math.abs(hueDifference(one.alone.hue, other.alone.hue));
        const share = readColour(both).chroma / ((one.alone.chroma + other.alone.chroma) / 2);
        kept[away <= 45 ? 0 : away <= 135 ? 1 : 2].push(share);
      }
    }
    const [near, quarter, far] = kept.map(
      (shares) => shares.reduce((sum, share) => sum + share, 0) / shares.length,
    );
    expect(near).toBeGreaterThan(0.9);
    expect(quarter).toBeLessThan((near ?? 0) - 0.15);
    expect(far).toBeLessThan((quarter ?? 0) - 0.05);
  });
});

describe('strokes, puddle, glaze (D. Briggs, The Dimensions of Colour, 4.4 and 6.1, citing O. Rood 1879)', () => {
  const any = fc.constantFrom(...LIBRARY.map(({ id }) => id));

  test('fused strokes are never darker than the puddle of the same paints, nor brighter than the better of them', () => {
    fc.assert(
      fc.property(
        any,
        any,
        fc.constantFrom(0.1, 0.25, 0.5, 1, 2, 4),
        fc.constantFrom(0.1, 0.2, 0.4, 0.7, 1),
        (one, other, parts, strength) => {
          fc.pre(one !== other);
          const mixture = { [one]: parts, [other]: 1 };
          const apart = mix(mixture, strength, strokesReflectance);
          // Two nearly equal paints, one stronger: the puddle may come out lighter by less than a tenth in Y of 100.
          expect(apart.xyz.y).toBeGreaterThanOrEqual(mix(mixture, strength).xyz.y - 0.1);
          const best = Math.max(mix({ [one]: 1 }, strength).chroma, mix({ [other]: 1 }, strength).chroma);
          expect(apart.chroma).toBeLessThanOrEqual(best + 0.5);
        },
      ),
      { numRuns: 1500, seed: 12 },
    );
  });

  test('yellow and ultramarine as strokes can fuse to a grey; in a puddle they make a green', () => {
    // Of what the strokes hold; films fitted over the tooth of paper make the puddle of 1:2 a blue green (217, before 195).
    const parts = { 'lemon-yellow': 1, 'ultramarine-blue': 2 };
    expect(mix(parts, 0.5, strokesReflectance).chroma).toBeLessThan(8);
    expect(mix(parts, 0.5).chroma).toBeGreaterThan(25);
    const equal = mix({ 'lemon-yellow': 1, 'ultramarine-blue': 1 }, 0.5);
    expect(equal.chroma).toBeGreaterThan(25);
    expect(Math.abs(hueDifference(180, equal.hue))).toBeLessThan(30);
  });

  test('a glaze of a transparent paint does not lighten a wash that is not far darker than itself', () => {
    // Kubelka-Munk gives every film some scattering; over a wash 15 L* darker than the glaze it begins to show.
    const lifted: string[] = [];
    for (const top of TRANSPARENT) {
      for (const under of LIBRARY) {
        for (const strength of [0.1, 0.3, 0.6]) {
          const below = loads({ [under.id]: 1 }, 0.4);
          const above = loads({ [top.id]: 1 }, strength);
          const before = layered(below).lab.l;
          if (layered(above).lab.l > before + 15) continue;
          if (layered(below, above).lab.l > before + 0.5)
            lifted.push(`${top.id} over ${under.id} at ${strength}`);
        }
      }
    }
    expect(TRANSPARENT.length).toBeGreaterThan(10);
    expect(lifted).toEqual([]);
  });
});

describe('the order of glazes (B. MacEvoy, handprint.com, color18a.html)', () => {
  test('cadmium yellow over phthalo green is lighter and less saturated than the reverse', () => {
    for (const strength of [0.6, 1]) {
      const yellow = loads({ 'cadmium-yellow': 1 }, strength);
      const green = loads({ 'phthalo-green-blue-shade': 1 }, strength);
      const [over, under] = [layered(green, yellow), layered(yellow, green)];
      expect(over.lab.l).toBeGreaterThan(under.lab.l + 2);
      expect(over.chroma / over.lab.l).toBeLessThan(under.chroma / under.lab.l);
    }
  });
  test('the same with the measured Prussian blue: lighter with the opaque yellow on top', () => {
    const yellow = loads({ 'cadmium-yellow': 1 }, 0.6);
    const blue = loads({ 'prussian-blue': 1 }, 0.6);
    expect(layered(blue, yellow).lab.l).toBeGreaterThan(layered(yellow, blue).lab.l + 5);
  });
});

describe('a second layer of the same thin paint (B. MacEvoy, handprint.com, intstud.html)', () => {
  test.each([0.1, 0.2])('is darker and stronger, at strength %d, for every transparent paint', (strength) => {
    for (const { id } of TRANSPARENT) {
      const wash = loads({ [id]: 1 }, strength);
      const [once, twice] = [layered(wash), layered(wash, wash)];
      expect(twice.lab.l, id).toBeLessThan(once.lab.l);
      expect(twice.chroma, id).toBeGreaterThan(once.chroma);
    }
  });
});

describe('the shading line (D. Briggs, The Dimensions of Colour, section 10.1)', () => {
  test('L* 60, a* 40, b* 30 under two fifths of the light is L* 40, C* 36.8', () => {
    expect(shadingLine(50, 60, 40)).toBeCloseTo(36.84, 2);
  });
});
