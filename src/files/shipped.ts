/** The drills that come with the program. The YAML reader is loaded only where they have not been compiled. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Drill } from '../drills/kinds/index.js';
import type { Studio } from '../paints/index.js';

const COMPILED = new URL('./exercises.json', import.meta.url);
const SOURCES = new URL('../../exercises/', import.meta.url);

/** What the build makes of the exercises. */
export interface Shipped {
  readonly drills: readonly Drill[];
  /** Chance, 0-1, that blind choices answer a drill well, by id; a drill that is not in it has not been counted. */
  readonly chances: Readonly<Record<string, number>>;
}

/** The shipped drills: compiled and checked by the build, else read from the exercises folder. */
export async function shipped(studio: Studio): Promise<Shipped> {
  if (existsSync(COMPILED)) return JSON.parse(readFileSync(COMPILED, 'utf8')) as Shipped;
  const { readDrillFolder } = await import('./exercises.js');
  return { drills: readDrillFolder(studio, fileURLToPath(SOURCES)), chances: {} };
}

/** The shipped drills alone. */
export async function shippedDrills(studio: Studio): Promise<readonly Drill[]> {
  return (await shipped(studio)).drills;
}
