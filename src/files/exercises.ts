/** Reading a folder of drill files. */
import { join, relative, sep } from 'node:path';
import { joinDrills, parseDrillFile } from '../drills/format.js';
import type { Drill } from '../drills/kinds/index.js';
import { MOST_TEXT } from '../drills/yaml-source.js';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import type { Picture } from '../pictures/types.js';
import { placeFault } from '../pictures/where.js';
import { PICTURE_FOLDER, pictureFiles, readPictures } from './pictures.js';
import { readText } from './read.js';
import { yamlFiles } from './yaml-files.js';

/** Most drill files that one folder may hold. */
const MOST_FILES = 500;

/** The drill files below a folder, in order. @throws DataError when it is none or cannot be read */
function drillFiles(folder: string): string[] {
  const pictures = join(folder, PICTURE_FOLDER) + sep;
  return yamlFiles(folder).filter((path) => !path.startsWith(pictures));
}

/** Every file that is read with a folder of drills: theirs and those of the pictures beside them. @throws as {@link drillFiles} */
export const filesOfFolder = (folder: string): string[] => [...drillFiles(folder), ...pictureFiles(folder)];

/**
 * Reads every drill file below a folder, and the pictures that lie beside them.
 * @param pictures that the drills may be set in too
 * @throws DataError for the first file that does not hold drills, when an id occurs twice, and for a drill set where there is no picture
 */
export function readDrillFolder(studio: Studio, folder: string, pictures: readonly Picture[] = []): Drill[] {
  const paths = drillFiles(folder);
  if (paths.length === 0) throw new DataError(`${folder}: no .yaml files in this folder`);
  if (paths.length > MOST_FILES) throw new DataError(`${folder}: more than ${MOST_FILES} drill files`);
  const known = [...readPictures(studio, folder), ...pictures];
  const files = paths.map((path) => {
    const name = relative(folder, path);
    const text = readText(path, MOST_TEXT);
    return { name, drills: parseDrillFile(studio, text, name, (drill) => placeFault(known, drill)) };
  });
  return joinDrills(files);
}
