/** Three thousand made drills over all families, levels, boxes and seeds; rows of eight; a hundred seeds beside each other. */
import { expect, test } from 'vitest';
import { generateDrill } from '../../../src/drills/make/index.js';
import { STUDIO } from '../../studio.js';
import { BOXES, MIX_FAMILIES, madeFaults, someDrills } from './lexicon-drills.js';
import { madeInRow, repeated } from './row.js';

test('three thousand made drills are sound, and colours of what they show', () => {
  const faults: string[] = [];
  for (const drill of someDrills(3000)) faults.push(...madeFaults(drill));
  expect(faults).toEqual([]);
}, 1_800_000);

test.each(MIX_FAMILIES)('eight of %s made in a row share nothing, from another box', (family) => {
  expect(repeated(madeInRow(2, [family], 2, 3))).toEqual([]);
});

test('eight made in a row are the same again', () => {
  expect(madeInRow(4, MIX_FAMILIES, 2, 1)).toEqual(madeInRow(4, MIX_FAMILIES, 2, 1));
});

test('of a hundred neighbouring seeds no subject opens more often than chance would have it', () => {
  const subjectOf = (seed: number): string => {
    const drill = generateDrill(STUDIO, {
      seed,
      family: 'neutraliser',
      level: 2,
      palette: BOXES[1] as readonly string[],
    });
    return drill.kind === 'mix' ? (drill.subject ?? '') : '';
  };
  const counts = new Map<string, number>();
  for (let seed = 0; seed < 100; seed++) {
    const id = subjectOf(seed);
    counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  // Fourteen greys, about seven in a hundred each; twenty-one or more come once in a hundred thousand such hundreds (binomial).
  for (const count of counts.values()) expect(count).toBeLessThan(21);
  expect(counts.size).toBeGreaterThan(8);
});
