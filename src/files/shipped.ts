/** The drills and pictures that come with the program. The YAML reader is loaded only where they have not been compiled. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Drill } from '../drills/kinds/index.js';
import type { Studio } from '../paints/index.js';
import type { Picture } from '../pictures/types.js';

const COMPILED_DRILLS = new URL('./exercises.json', import.meta.url);
const COMPILED_PICTURES = new URL('./pictures.json', import.meta.url);
const SOURCES = new URL('../../exercises/', import.meta.url);

/** The shipped drills: compiled and checked by the build, else read from the exercises folder. */
export async function shippedDrills(studio: Studio): Promise<Drill[]> {
  if (existsSync(COMPILED_DRILLS)) return JSON.parse(readFileSync(COMPILED_DRILLS, 'utf8')) as Drill[];
  const { readDrillFolder } = await import('./exercises.js');
  return readDrillFolder(studio, fileURLToPath(SOURCES));
}

/** The shipped pictures, from the same two places. */
export async function shippedPictures(studio: Studio): Promise<Picture[]> {
  if (existsSync(COMPILED_PICTURES)) return JSON.parse(readFileSync(COMPILED_PICTURES, 'utf8')) as Picture[];
  const { readPictures } = await import('./pictures.js');
  return readPictures(studio, fileURLToPath(SOURCES));
}
