/** Seeded photographs of the shipped pictures, read and held against what was painted. */
import { expect } from 'vitest';
import { readPainting } from '../../src/painting/index.js';
import { STUDIO } from '../studio.js';
import { against } from './against.js';
import { PICTURES, paintedPicture } from './scenes.js';
import { photographed, shotOf } from './simulate.js';

/** What is allowed, in steps and C*. */
const MOST = { range: 0.4, steps: 0.5, chroma: 6 } as const;

/**
 * Photographs one picture after the other, as many as there are seeds.
 * @returns how many readings were not to be trusted: their figures are not held against anything
 */
export async function holdPhotographs(seeds: readonly number[]): Promise<number> {
  let distrusted = 0;
  for (const seed of seeds) {
    const picture = PICTURES[seed % PICTURES.length] as (typeof PICTURES)[number];
    const painting = paintedPicture(picture);
    const shot = shotOf(seed, painting);
    const reading = readPainting(STUDIO, await photographed(painting, shot), {});
    if (reading.trust === 'low') {
      distrusted++;
      continue;
    }
    const name = `${picture.id}, seed ${seed}`;
    const off = against(reading, painting, shot.margin);
    expect(reading.white.found, name).toBe(true);
    expect(Math.abs(off.light), `${name}: light end`).toBeLessThanOrEqual(MOST.range);
    expect(Math.abs(off.dark), `${name}: dark end`).toBeLessThanOrEqual(MOST.range);
    expect(off.areas.length, `${name}: masses that are one area`).toBeGreaterThan(1);
    for (const { steps, chroma } of [...off.masses, ...off.areas]) {
      expect(Math.abs(steps), name).toBeLessThanOrEqual(MOST.steps);
      expect(Math.abs(chroma), name).toBeLessThanOrEqual(MOST.chroma);
    }
    for (const [at, { x, y }] of reading.corners.entries()) {
      const corner = shot.corners[at] as { x: number; y: number };
      expect(Math.hypot((x - corner.x) * shot.width, (y - corner.y) * shot.height), name).toBeLessThan(2);
    }
  }
  return distrusted;
}
