import { describe, expect, test } from 'vitest';
import { generateDrill } from '../../../src/drills/make/index.js';
import { STUDIO } from '../../studio.js';
import { boxOf, expectSound, LEVELS, OTHER_FAMILIES } from './made.js';

describe.each(OTHER_FAMILIES)('made-up drills of %s', (family) => {
  test.each(LEVELS)('level %i: two seeds are sound, varied, and written as a file would hold them', (level) =>
    expectSound(family, level, 2),
  );

  test('the same seed makes the same drill, whatever the order of the palette', () => {
    const request = { seed: 41, family, level: 3, palette: boxOf(1) };
    expect(generateDrill(STUDIO, request)).toEqual(generateDrill(STUDIO, request));
    expect(generateDrill(STUDIO, { ...request, palette: [...request.palette].reverse() })).toEqual(
      generateDrill(STUDIO, request),
    );
  });
});

test('the families of mix drills and of other kinds are all that drills are made for', () => {
  expect(OTHER_FAMILIES).toHaveLength(9);
});
