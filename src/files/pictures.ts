/** Reading the picture files of a folder of drills: one picture each, in a folder of their own. */
import { existsSync } from 'node:fs';
import { basename, extname, join, relative } from 'node:path';
import { MOST_TEXT } from '../drills/yaml-source.js';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { parsePictureFile } from '../pictures/format.js';
import type { Picture } from '../pictures/index.js';
import { readText } from './read.js';
import { yamlFiles } from './yaml-files.js';

/** Folder of pictures beside the drills. */
export const PICTURE_FOLDER = 'pictures';

/** Most pictures that one folder may hold. */
const MOST_PICTURES = 200;

/** The picture files beside the drills of a folder, in order; none where there is no such folder. @throws DataError when it cannot be read */
export function pictureFiles(drillFolder: string): string[] {
  const folder = join(drillFolder, PICTURE_FOLDER);
  return existsSync(folder) ? yamlFiles(folder) : [];
}

/**
 * Reads every picture beside the drills of a folder.
 * @throws DataError for the first file that does not hold a picture, or when an id occurs twice
 */
export function readPictures(studio: Studio, drillFolder: string): Picture[] {
  const paths = pictureFiles(drillFolder);
  if (paths.length > MOST_PICTURES)
    throw new DataError(`${join(drillFolder, PICTURE_FOLDER)}: more than ${MOST_PICTURES} pictures`);
  const taken = new Set<string>();
  return paths.map((path) => {
    const id = basename(path, extname(path));
    const name = relative(drillFolder, path);
    if (taken.has(id)) throw new DataError(`${name}: another file holds a picture called ${id} already`);
    taken.add(id);
    return parsePictureFile(studio, readText(path, MOST_TEXT), id, name);
  });
}
