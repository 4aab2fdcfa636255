import { describe, expect, test } from 'vitest';
import { generateDrill } from '../../../src/drills/generate/index.js';
import { expectSound, FAMILIES, LEVELS, paletteOf } from './made.js';

describe.each(FAMILIES)('made-up drills of %s', (family) => {
  test.each(LEVELS)('level %i: two seeds are sound, varied, and written as a file would hold them', (level) =>
    expectSound(family, level, 2),
  );

  test('the same seed makes the same drill, whatever the order of the palette', () => {
    const request = { seed: 41, family, level: 3, palette: paletteOf(1) };
    expect(generateDrill(STUDIO, request)).toEqual(generateDrill(STUDIO, request));
    expect(generateDrill(STUDIO, { ...request, palette: [...request.palette].reverse() })).toEqual(
      generateDrill(STUDIO, request),
    );
  });
});
