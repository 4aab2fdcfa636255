import { createHash } from 'node:crypto';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { checkDrill } from '../../../src/drills/check.js';
import { drillWithFamilySchema } from '../../../src/drills/format.js';
import type { Drill } from '../../../src/drills/kinds/index.js';
import { generateDrill } from '../../../src/drills/make/index.js';
import { SCENES } from '../../../src/drills/make/scene.js';
import { kindOf, STUDIO } from '../../studio.js';

/** The families whose generators are made of mix drills. */
const MIX_FAMILIES = Object.keys(SCENES);
const LEVELS = [1, 2, 3, 4, 5] as const;
const ALL = STUDIO.paints.filter(({ evidence }) => evidence === 'measured').map(({ id }) => id);
const BOXES = [...STUDIO.palettes.map(({ pigments }) => pigments), ALL];

/** Ten seeds for each family and level, the boxes of paints in turn. */
function made(family: string, seeds: number): Drill[] {
  return LEVELS.flatMap((level) =>
    Array.from({ length: seeds }, (_, seed) =>
      generateDrill(STUDIO, {
        seed,
        family,
        level,
        palette: BOXES[seed % BOXES.length] as readonly string[],
      }),
    ),
  );
}

describe('made-up drills', () => {
  test.each(MIX_FAMILIES)(
    '%s: ten seeds at each level pass the checker and the file format',
    (family) => {
      const faults = made(family, 10).flatMap((drill) => {
        const { family: _family, ask, ...rest } = drill as Drill & { readonly hint?: string };
        const read = v.safeParse(drillWithFamilySchema, { family, drill: { ...rest, ask } });
        return [
          ...checkDrill(STUDIO, drill, 2).faults.map((fault) => `${drill.id}: ${fault}`),
          ...(read.success ? [] : [`${drill.id}: ${read.issues[0].message}`]),
        ];
      });
      expect(faults).toEqual([]);
    },
    120_000,
  );

  test('the same seed makes the same drill, another seed another', () => {
    for (const family of MIX_FAMILIES) {
      const request = { seed: 77, family, level: 3, palette: BOXES[1] as readonly string[] };
      expect(generateDrill(STUDIO, request)).toEqual(generateDrill(STUDIO, request));
      expect(generateDrill(STUDIO, { ...request, palette: [...request.palette].reverse() })).toEqual(
        generateDrill(STUDIO, request),
      );
      expect(generateDrill(STUDIO, { ...request, seed: 78 }).id).not.toBe(generateDrill(STUDIO, request).id);
    }
  }, 30_000);

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
        "1bb79270316d",
        "76b96a9f5810",
        "9cf16c132207",
        "fa8fd7cca055",
        "a6814aa12c59",
        "ec3e3489cce7",
      ]
    `);
  }, 30_000);

  test('levels open more: one choice of two at first, then the amount, then the water or another way', () => {
    const fields = (family: string, level: number): string[] => {
      const drill = generateDrill(STUDIO, { seed: 5, family, level, palette: ALL });
      return kindOf(drill)
        .fields(drill)
        .map(({ id }) => id);
    };
    expect(fields('dull-on-purpose', 2)).toEqual(['second']);
    expect(fields('dull-on-purpose', 3)).toEqual(['second', 'amount']);
    expect(fields('dull-on-purpose', 4)).toEqual(['second', 'amount', 'thin']);
    for (const seed of [5, 6, 7, 8]) {
      const drill = generateDrill(STUDIO, { seed, family: 'dull-on-purpose', level: 5, palette: ALL });
      const { amounts = [], glazes = [], thins = [] } = drill.kind === 'mix' ? drill : {};
      expect(thins.length > 1 || (amounts.length > 1 && glazes.length > 1)).toBe(true);
    }
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
  }, 30_000);

  test('scenes read well: sentences, no doubled blanks, no blanks before a stop', () => {
    for (const { title, scene, hint } of MIX_FAMILIES.flatMap((family) => made(family, 2))) {
      expect(scene).toMatch(/^[A-Z].*\.$/);
      expect(title).toMatch(/^[A-Z][^.]*$/);
      expect(title.length).toBeLessThanOrEqual(60);
      for (const text of [title, scene, hint ?? ''])
        expect(text).not.toMatch(/\s{2}|\s[.,;:]|undefined|\b(\w+) \1\b/);
    }
  }, 60_000);

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
