/** The picture file: YAML with a format version. See README.md beside it. */
import { requirePaints } from '../drills/format.js';
import { parseYaml } from '../drills/yaml-source.js';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { BARE, raster } from './raster.js';
import { pictureSchema } from './schema.js';
import { GRID, type Picture } from './types.js';

/**
 * Reads a picture.
 * @param id what the picture has to be called: the name of its file
 * @param name what to call the file in a message
 * @throws DataError `name:line: what is wrong`
 */
export function parsePictureFile(studio: Studio, text: string, id: string, name: string): Picture {
  const source = parseYaml(text, pictureSchema, name);
  requirePaints(studio, source, name);
  const { value, lineOf } = source;
  if (value.id !== id)
    throw new DataError(`${name}:${lineOf(['id'])}: the id must be that of the file, ${id}, not ${value.id}`);
  if (raster(value, 2 * GRID.columns, 2 * GRID.rows).area.includes(BARE))
    throw new DataError(`${name}:${lineOf(['shapes'])}: a part of the sheet is covered by no shape`);
  return value;
}
