/** Output files that a person names: nothing is replaced unasked, and every fault is one line. */
import { existsSync, realpathSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { codeOf, DataError, isFileFault } from '../errors.js';
import { shownPath, withWords } from './faults.js';
import { type Content, emptyLink, makeFolder, replaceWhole, SHARED, writeNew } from './write.js';

/** Where a path leads, links followed as far as they go. */
export function realPath(path: string): string {
  try {
    return realpathSync(path);
  } catch (error) {
    if (!isFileFault(error)) throw error;
    const whole = resolve(path);
    const target = codeOf(error) === 'ENOENT' ? emptyLink(whole) : undefined;
    if (target !== undefined) return realPath(target);
    return dirname(whole) === whole ? whole : join(realPath(dirname(whole)), basename(whole));
  }
}

/**
 * Checks that a file to be written lies outside a folder of the program's own.
 * @throws DataError when it lies in it, by its name or through a link
 */
export function requireOutside(path: string, folder: string): void {
  const way = relative(realPath(folder), realPath(path));
  if (way !== '' && (way.split(/[\\/]/)[0] === '..' || resolve(way) === way)) return;
  throw new DataError(`${shownPath(path)}: records are kept there; name a file in another folder`);
}

function requireFree(path: string, replace: boolean): void {
  if (existsSync(path) && !replace)
    throw new DataError(
      `${shownPath(path)}: this file is there already; choose another name, or add --force to replace it`,
    );
}

/**
 * Checks the names of all output files before the first is written.
 * @param inputs files that are read and must stay, whatever is asked for
 * @throws DataError when one is an input, is named twice, or is there and not to be replaced
 */
export function requireOutputs(paths: readonly string[], inputs: readonly string[], replace: boolean): void {
  const read = new Set(inputs.map(realPath));
  const seen = new Set<string>();
  for (const path of paths) {
    const real = realPath(path);
    if (read.has(real))
      throw new DataError(`${shownPath(path)}: this file is read here and is never written over`);
    if (seen.has(real)) throw new DataError(`${shownPath(path)}: named for two outputs; name two files`);
    seen.add(real);
    requireFree(path, replace);
  }
}

function told(path: string, write: () => void): void {
  withWords('write', write, (words, options) => new DataError(`${shownPath(path)}: ${words}`, options));
}

/** Makes the folder that a person named for outputs, where it is not there yet. @throws DataError when it cannot be made */
export function makeNamedFolder(path: string): void {
  told(path, () => makeFolder(path, 0o777));
}

/**
 * Replaces a file in one step.
 * @throws DataError when it cannot be written; the old file is then as it was
 */
export function replaceNamed(path: string, text: string): void {
  told(path, () => replaceWhole(path, text, SHARED));
}

/**
 * Writes a file for a person who named it; one that is there already is only replaced when asked to.
 * @returns one line that says what was done
 * @throws DataError when the file is there already, or cannot be written
 */
export function writeNamed(path: string, content: Content, replace: boolean, mode = SHARED): string {
  requireFree(path, replace);
  const isThere = existsSync(path);
  told(path, () => (replace ? replaceWhole : writeNew)(path, content, mode));
  return `${isThere ? 'replaced' : 'written'}: ${shownPath(basename(path))}`;
}
