/** What stands beside what in a painting, and how strong the contrast is there. */
import { deltaE00 } from '../../colour/difference.js';
import type { Border, Mass } from '../types.js';
import type { Masses } from './masses.js';

/** Share of all borders from which two masses touch: less is a corner. */
const LEAST = 0.01;

interface Run {
  length: number;
  x: number;
  y: number;
}

/** The borders between masses, the strongest contrast (CIEDE2000) first. */
export function bordersOf({ masses, cells: { width, height, massAt } }: Masses): Border[] {
  const count = masses.length;
  const runs = Array.from({ length: count * count }, (): Run => ({ length: 0, x: 0, y: 0 }));
  /** Calls back for every pair of neighbours of two masses, with the place between them. */
  const walk = (met: (pair: number, x: number, y: number) => void): void => {
    for (let y = 0, at = 0; y < height; y++)
      for (let x = 0; x < width; x++, at++) {
        const here = massAt[at] as number;
        const right = x < width - 1 ? (massAt[at + 1] as number) : here;
        const below = y < height - 1 ? (massAt[at + width] as number) : here;
        if (right !== here) met(Math.min(here, right) * count + Math.max(here, right), x + 1, y + 0.5);
        if (below !== here) met(Math.min(here, below) * count + Math.max(here, below), x + 0.5, y + 1);
      }
  };
  let total = 0;
  walk((pair, x, y) => {
    const run = runs[pair] as Run;
    run.length++;
    run.x += x;
    run.y += y;
    total++;
  });
  // The middle of a curve need not lie on it: the place on the border that is nearest to it does.
  const nearest = runs.map(() => ({ gap: Number.POSITIVE_INFINITY, x: 0, y: 0 }));
  walk((pair, x, y) => {
    const { length, x: sx, y: sy } = runs[pair] as Run;
    const gap = (x - sx / length) ** 2 + (y - sy / length) ** 2;
    if (gap < (nearest[pair]?.gap as number)) nearest[pair] = { gap, x, y };
  });
  return runs
    .flatMap(({ length }, pair): Border[] => {
      if (length === 0 || length < LEAST * total) return [];
      const sides = [Math.floor(pair / count), pair % count] as const;
      const [lighter, darker] = [...sides].sort(
        (one, other) => (masses[one] as Mass).colour.step - (masses[other] as Mass).colour.step,
      ) as [number, number];
      const [light, dark] = [(masses[lighter] as Mass).colour, (masses[darker] as Mass).colour];
      const { x, y } = nearest[pair] as { x: number; y: number };
      return [
        {
          between: [lighter, darker],
          at: { x: x / width, y: y / height },
          share: length / total,
          steps: dark.step - light.step,
          deltaE00: deltaE00(light.lab, dark.lab),
        },
      ];
    })
    .sort((one, other) => other.deltaE00 - one.deltaE00);
}
