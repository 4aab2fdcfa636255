/** Made-up drills of the kinds beside `mix`: a few in the quick run, more in the long one. */
import * as v from 'valibot';
import { expect } from 'vitest';
import { checkDrill } from '../../../src/drills/check.js';
import { generateDrill } from '../../../src/drills/generate/index.js';
import { type Drill, drillSchema } from '../../../src/drills/kinds.js';
import { PALETTES } from '../../../src/paints/index.js';

export const FAMILIES = [
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
export const LEVELS = [1, 2, 3, 4, 5];
export const paletteOf = (seed: number): readonly string[] =>
  PALETTES[seed % PALETTES.length]?.pigments ?? [];

/** What identifies a drill beside the seed in its id. */
function bodyOf({ id: _id, ...body }: Drill): string {
  return JSON.stringify(body);
}

/** Makes drills of one level and looks at them: sound, varied, and written as a file would hold them. */
export function expectSound(family: string, level: number, seeds: number): void {
  const made = Array.from({ length: seeds }, (_, seed) =>
    generateDrill({ seed, family, level, palette: paletteOf(seed) }),
  );
  for (const drill of made) {
    expect(checkDrill(drill, 5).faults, drill.id).toEqual([]);
    const { family: _family, ...rest } = JSON.parse(JSON.stringify(drill)) as Drill;
    const read = v.safeParse(drillSchema, rest);
    expect(read.issues?.[0]?.message, drill.id).toBeUndefined();
    expect(drill.level).toBe(level);
    expect(drill.hint === undefined, drill.id).toBe(level === 5);
  }
  expect(new Set(made.map(bodyOf)).size).toBe(made.length);
}
