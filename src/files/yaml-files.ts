/** The YAML files below a folder. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { DataError } from '../errors.js';
import { faultWords } from './faults.js';

/** Their paths, in order. @throws DataError when the folder is none or cannot be read */
export function yamlFiles(folder: string): string[] {
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
