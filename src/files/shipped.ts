/** The drills and pictures that come with the program. The YAML reader is loaded only where they have not been compiled. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Drill } from '../drills/kinds/index.js';
import type { Studio } from '../paints/index.js';
import type { Picture } from '../pictures/types.js';

const COMPILED_DRILLS = new URL('./exercises.json', import.meta.url);
const COMPILED_PICTURES = new URL('./pictures.json', import.meta.url);
const SOURCES = new URL('../../exercises/', import.meta.url);

/** What the build makes of the exercises. */
export interface Shipped {
  readonly drills: readonly Drill[];
  /** Chance, 0-1, that blind choices answer a drill well, by id; a drill that is not in it has not been counted. */
  readonly chances: Readonly<Record<string, number>>;
}

/** What was read from the exercises folder, which takes long: once for a studio. */
const readBefore = new WeakMap<Studio, Shipped>();

/** The shipped drills: compiled and checked by the build, else read from the exercises folder. */
export async function shipped(studio: Studio): Promise<Shipped> {
  if (existsSync(COMPILED_DRILLS)) return JSON.parse(readFileSync(COMPILED_DRILLS, 'utf8')) as Shipped;
  const { readDrillFolder } = await import('./exercises.js');
  const read = readBefore.get(studio) ?? {
    drills: readDrillFolder(studio, fileURLToPath(SOURCES)),
    chances: {},
  };
  readBefore.set(studio, read);
  return read;
}

/** The shipped drills alone. */
export async function shippedDrills(studio: Studio): Promise<readonly Drill[]> {
  return (await shipped(studio)).drills;
}

/** The shipped pictures, from the same two places. */
export async function shippedPictures(studio: Studio): Promise<Picture[]> {
  if (existsSync(COMPILED_PICTURES)) return JSON.parse(readFileSync(COMPILED_PICTURES, 'utf8')) as Picture[];
  const { readPictures } = await import('./pictures.js');
  return readPictures(studio, fileURLToPath(SOURCES));
}
