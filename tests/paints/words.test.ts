import { describe, expect, it, test } from 'vitest';
import { colourInWords, readColour } from '../../src/colour/index.js';
import {
  cautionOf,
  findPigment,
  LIBRARY,
  loadsFromParts,
  metalName,
  predict,
} from '../../src/paints/index.js';

function paint(id: string) {
  const pigment = findPigment(id);
  if (pigment === undefined) throw new Error(`no ${id} in the library`);
  return pigment;
}

const wordsAt = (id: string, strength: number): string =>
  colourInWords(
    readColour(predict(loadsFromParts([{ pigment: paint(id), parts: 1 }], strength), 'puddle')).lab,
  );

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
    expect(cautionOf(paint('cadmium-red'))).toMatch(/^cadmium red \(PR108\) holds cadmium: /);
    expect(metalName('Cr(III)')).toBe('chromium(III)');
    expect(metalName('(As)')).toBe('perhaps arsenic');
    for (const { hazard } of LIBRARY)
      for (const metal of hazard?.metals ?? []) expect(metalName(metal)).toMatch(/^(perhaps )?[a-z]{3,}/);
  });
});
