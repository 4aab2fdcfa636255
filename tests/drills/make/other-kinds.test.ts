import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { checkDrill } from '../../../src/drills/check.js';
import { type Drill, drillSchema } from '../../../src/drills/kinds/index.js';
import { generateDrill } from '../../../src/drills/make/index.js';
import { STUDIO } from '../../studio.js';

const FAMILIES = [
  'one-paint-ladder',
  'three-values',
  'light-and-shadow',
  'shade-chroma',
  'around-across',
  'ways-of-applying',
  'layer-order',
  'wet-and-dry',
  'diagnosis',
];
const LEVELS = [1, 2, 3, 4, 5];
const paletteOf = (seed: number): readonly string[] =>
  STUDIO.palettes[seed % STUDIO.palettes.length]?.pigments ?? [];

/** What identifies a drill beside the seed in its id. */
function bodyOf({ id: _id, ...body }: Drill): string {
  return JSON.stringify(body);
}

describe.each(FAMILIES)('made-up drills of %s', (family) => {
  test.each(LEVELS)(
    'level %i: sound, varied, and written as a file would hold them',
    (level) => {
      const made = Array.from({ length: 6 }, (_, seed) =>
        generateDrill(STUDIO, { seed, family, level, palette: paletteOf(seed) }),
      );
      for (const drill of made) {
        expect(checkDrill(STUDIO, drill, 5).faults, drill.id).toEqual([]);
        const { family: _family, ...rest } = JSON.parse(JSON.stringify(drill)) as Drill;
        const read = v.safeParse(drillSchema, rest);
        expect(read.issues?.[0]?.message, drill.id).toBeUndefined();
        expect(drill.level).toBe(level);
        expect(drill.hint === undefined, drill.id).toBe(level === 5);
      }
      expect(new Set(made.map(bodyOf)).size).toBe(made.length);
    },
    60_000,
  );

  test('the same seed makes the same drill, whatever the order of the palette', () => {
    const request = { seed: 41, family, level: 3, palette: paletteOf(1) };
    expect(generateDrill(STUDIO, request)).toEqual(generateDrill(STUDIO, request));
    expect(generateDrill(STUDIO, { ...request, palette: [...request.palette].reverse() })).toEqual(
      generateDrill(STUDIO, request),
    );
  }, 60_000);
});
