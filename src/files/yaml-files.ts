/** The YAML files below a folder. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { DataError } from '../errors.js';
import { withWords } from './faults.js';

/** Their paths, in order. @throws DataError when the folder is none or cannot be read */
export function yamlFiles(folder: string): string[] {
  const names = withWords(
    'read',
    () => {
      if (!statSync(folder).isDirectory()) throw new DataError('this is not a folder');
      return readdirSync(folder, { recursive: true, encoding: 'utf8' });
    },
    (words, options) => new DataError(`${folder}: ${words}`, options),
  );
  return names
    .filter((name) => /\.ya?ml$/.test(name))
    .sort()
    .map((name) => join(folder, name));
}
