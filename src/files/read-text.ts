/** Reading a file that someone names, with a bound on its size and one clear line for every fault. */
import { readFileSync, statSync } from 'node:fs';
import { DataError } from '../errors.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file; check the name',
  EISDIR: 'this is a folder, not a file',
  EACCES: 'it may not be read; check its permissions',
  EPERM: 'it may not be read; check its permissions',
  ELOOP: 'its links lead in a circle',
  ENAMETOOLONG: 'the name is too long',
};

/** The reason of a file-system fault in words. */
export function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  return REASONS[code] ?? `it cannot be read (${code || String((error as Error).message).split('\n')[0]})`;
}

/** A name as it may be shown: no control characters, not endless. */
function shown(path: string): string {
  const clean = path.replace(/[\p{Cc}\p{Cf}]/gu, '?');
  return clean.length > 120 ? `…${clean.slice(-119)}` : clean;
}

/**
 * Reads a text file.
 * @param most largest size in bytes
 * @throws DataError when it is missing, unreadable, too large, not a plain file or not UTF-8
 */
export function readText(path: string, most: number): string {
  try {
    const stats = statSync(path);
    if (stats.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
    if (!stats.isFile()) throw new DataError(`${shown(path)}: this is not a plain file`);
    if (stats.size > most) {
      throw new DataError(
        `${shown(path)}: ${(stats.size / 1e6).toFixed(1)} MB is more than the ${(most / 1e6).toFixed(1)} MB that is read; check that it is the right file`,
      );
    }
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path));
  } catch (error) {
    if (error instanceof DataError) throw error;
    const reason = error instanceof TypeError ? 'it is not a UTF-8 text' : reasonOf(error);
    throw new DataError(`${shown(path)}: ${reason}`, { cause: error });
  }
}
