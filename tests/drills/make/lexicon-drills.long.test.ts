/** Three thousand made drills over all families, levels, boxes and seeds. */
import { expect, test } from 'vitest';
import { madeFaults, someDrills } from './lexicon-drills.js';

test('three thousand made drills are sound, and colours of what they show', () => {
  const faults: string[] = [];
  for (const drill of someDrills(3000)) faults.push(...madeFaults(drill));
  expect(faults).toEqual([]);
}, 1_800_000);
