import { describe, expect, it, test } from 'vitest';
import { colourInWords } from '../../src/colour/index.js';
import { cautionOf, metalName } from '../../src/paints/index.js';
import { seeAlone } from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';

const wordsAt = (id: string, strength: number): string =>
  colourInWords(seeAlone(STUDIO, id, strength).colour.lab);

describe('a paint in words', () => {
  // Common practice, no source: painters call it a red at any strength.
  it.each([0.3, 0.6, 1])('cadmium red is a red at strength %d, not an orange', (strength) => {
    expect(wordsAt('cadmium-red', strength)).toMatch(/red$/);
  });

  // Common practice, no source.
  it.each([0.3, 0.6, 1])('cadmium orange is an orange at strength %d, not a pink', (strength) => {
    expect(wordsAt('cadmium-orange', strength)).toMatch(/orange$/);
  });
});

describe('cautions', () => {
  test('name the metals in full, as a label does', () => {
    expect(cautionOf(paintOf('cadmium-red'))).toMatch(/^cadmium red \(PR108\) holds cadmium: /);
    expect(metalName('Cr(III)')).toBe('chromium(III)');
    expect(metalName('(As)')).toBe('perhaps arsenic');
    for (const { hazard } of STUDIO.paints)
      for (const metal of hazard?.metals ?? []) expect(metalName(metal)).toMatch(/^(perhaps )?[a-z]{3,}/);
  });
});
