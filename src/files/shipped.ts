/** The drills that come with the program. The YAML reader is loaded only where they have not been compiled. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Drill } from '../drills/kinds/index.js';
import type { Studio } from '../paints/index.js';

const COMPILED = new URL('./exercises.json', import.meta.url);
const SOURCES = new URL('../../exercises/', import.meta.url);

/** The shipped drills: compiled and checked by the build, else read from the exercises folder. */
export async function shippedDrills(studio: Studio): Promise<Drill[]> {
  if (existsSync(COMPILED)) return JSON.parse(readFileSync(COMPILED, 'utf8')) as Drill[];
  const { readDrillFolder } = await import('./exercises.js');
  return readDrillFolder(studio, fileURLToPath(SOURCES));
}
