/** Reading a folder of drill files. */
import { readdirSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { joinDrills, parseDrillFile } from '../drills/format.js';
import type { Drill } from '../drills/kinds/index.js';
import { MOST_TEXT } from '../drills/yaml-source.js';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { faultWords } from './faults.js';
import { readText } from './read.js';

/** Most drill files that one folder may hold. */
const MOST_FILES = 500;

/** The drill files below a folder, in order. @throws DataError when it is none or cannot be read */
export function drillFiles(folder: string): string[] {
  try {
    if (!statSync(folder).isDirectory()) throw new DataError(`${folder}: this is not a folder`);
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.ya?ml$/.test(name))
      .sort()
      .map((name) => join(folder, name));
  } catch (error) {
    if (error instanceof DataError) throw error;
    throw new DataError(`${folder}: ${faultWords(error, 'read')}`, { cause: error });
  }
}

/**
 * Reads every drill file below a folder.
 * @throws DataError for the first file that does not hold drills, or when an id occurs twice
 */
export function readDrillFolder(studio: Studio, folder: string): Drill[] {
  const paths = drillFiles(folder);
  if (paths.length === 0) throw new DataError(`${folder}: no .yaml files in this folder`);
  if (paths.length > MOST_FILES) throw new DataError(`${folder}: more than ${MOST_FILES} drill files`);
  const files = paths.map((path) => {
    const name = relative(folder, path);
    return { name, drills: parseDrillFile(studio, readText(path, MOST_TEXT), name) };
  });
  return joinDrills(files);
}
