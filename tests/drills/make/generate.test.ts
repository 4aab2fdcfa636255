import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Drill } from '../../../src/drills/kinds/index.js';
import { generateDrill } from '../../../src/drills/make/index.js';
import { some } from '../../cases.js';
import { kindOf, STUDIO } from '../../studio.js';
import { ALL, BOXES, faultsOf, MIX_FAMILIES, made, oddWords } from './made.js';

describe('made-up drills', () => {
  describe.each(some(MIX_FAMILIES, 2))('%s', (family) => {
    let drills: Drill[];
    // One seed at each level, the boxes of paints in turn; the long run takes ten.
    beforeAll(() => {
      drills = made(family, (level) => [level - 1]);
    });

    test('a seed at each level passes the checker and the file format', () => {
      expect(faultsOf(drills, 2)).toEqual([]);
    });

    test('scenes read well', () => {
      expect(drills.flatMap(oddWords)).toEqual([]);
    });
  });

  test('the same seed makes the same drill, another seed another', () => {
    for (const family of some(MIX_FAMILIES, 2)) {
      const request = { seed: 77, family, level: 3, palette: BOXES[1] as readonly string[] };
      const drill = generateDrill(STUDIO, request);
      expect(generateDrill(STUDIO, request)).toEqual(drill);
      expect(generateDrill(STUDIO, { ...request, palette: [...request.palette].reverse() })).toEqual(drill);
      expect(generateDrill(STUDIO, { ...request, seed: 78 }).id).not.toBe(drill.id);
    }
  });

  test('the drills of these seeds are those of every other machine', () => {
    // Made once and written down. They change with the generator and with the paints, and then on purpose.
    const hashes = MIX_FAMILIES.map((family) => {
      const drill = generateDrill(STUDIO, {
        seed: 2024,
        family,
        level: 4,
        palette: BOXES[0] as readonly string[],
      });
      return createHash('sha256').update(JSON.stringify(drill)).digest('hex').slice(0, 12);
    });
    expect(hashes).toMatchInlineSnapshot(`
      [
        "241c0598f1f8",
        "d22412697ae7",
        "cb104be88a0a",
        "c74a350ea0d9",
        "c078cc49c7ff",
        "0a54cc4fbfd1",
      ]
    `);
  });

  test('levels open more: one choice of two at first, all four at the last', () => {
    const fields = (family: string, level: number): string[] => {
      const drill = generateDrill(STUDIO, { seed: 5, family, level, palette: ALL });
      return kindOf(drill)
        .fields(drill)
        .map(({ id }) => id);
    };
    expect(fields('dull-on-purpose', 2)).toEqual(['second']);
    expect(fields('dull-on-purpose', 3)).toEqual(['second', 'amount']);
    expect(fields('dull-on-purpose', 4)).toEqual(['second', 'amount', 'thin']);
    // At the last level either the water is open, or a glaze stands among the amounts.
    expect(fields('dull-on-purpose', 5).slice(0, 2)).toEqual(['second', 'amount']);
    expect(fields('tinting-strength', 2)).toEqual(['amount']);
  });

  test('no hint at the last level', () => {
    expect(
      generateDrill(STUDIO, { seed: 5, family: 'neutraliser', level: 5, palette: ALL }).hint,
    ).toBeUndefined();
    expect(
      generateDrill(STUDIO, { seed: 5, family: 'neutraliser', level: 4, palette: ALL }).hint,
    ).toBeDefined();
  });

  test('paints seen just before are left alone while there are others', () => {
    for (let seed = 0; seed < 10; seed++) {
      const drill = generateDrill(STUDIO, {
        seed,
        family: 'dull-on-purpose',
        level: 3,
        palette: ALL,
        avoid: ['cadmium-red', 'burnt-sienna'],
      });
      const start = drill.kind === 'mix' ? Object.keys(drill.start.paints) : [];
      expect(start.every((id) => id === 'cadmium-red' || id === 'burnt-sienna')).toBe(false);
    }
  });

  test.each([
    [{ family: 'no-such' }, /no drills can be made/],
    [{ family: '__proto__' }, /no drills can be made/],
    [{ level: 0 }, /level is 1 to 5/],
    [{ level: 2.5 }, /level is 1 to 5/],
    [{ seed: Number.NaN }, /whole number/],
    [{ seed: 1e300 }, /whole number/],
    [{ palette: ['ivory-black', 'chinese-white'] }, /no drill found/],
    [{ palette: ['no-such-paint', 'ivory-black'] }, /no-such-paint/],
    [{ palette: [] }, /palette/],
  ])('refuses %j', (change, message) => {
    const request = { seed: 1, family: 'darken-bright', level: 3, palette: ALL, ...change };
    expect(() => generateDrill(STUDIO, request)).toThrow(message);
  });
});
