/** Faults of the file system in words that say what to do, and paths as they may be shown. */
import { DataError, type MudlarkError } from '../errors.js';
import { cleanText } from '../text/sanitize.js';

/** What was being done: reading or writing a file that someone named, or keeping the program's own. */
export type Doing = 'read' | 'write' | 'keep';

const NOT_READ = 'it may not be read; check its permissions';
const NOT_WRITTEN = 'it may not be written; check the permissions of the folder';
const NOT_KEPT = 'the folder may not be written to';
const FULL_HANDS = 'too many files are open';

/** By the code of the fault; one text where it is the same whatever was being done. */
const WORDS: Readonly<Record<string, string | Readonly<Record<Doing, string>>>> = {
  ENOENT: {
    read: 'there is no such file; check the name',
    write: 'there is no such folder; make it first',
    keep: 'the folder cannot be made',
  },
  EACCES: { read: NOT_READ, write: NOT_WRITTEN, keep: NOT_KEPT },
  EPERM: { read: NOT_READ, write: NOT_WRITTEN, keep: NOT_KEPT },
  EISDIR: {
    read: 'this is a folder, not a file',
    write: 'this is a folder, not a file',
    keep: 'a folder stands where the file should be',
  },
  ENXIO: {
    read: 'this is a device or a pipe, not a plain file',
    write: 'this is not a plain file; name another',
    keep: 'a device or a pipe stands where the file should be',
  },
  EEXIST: 'something of this name is there already',
  ENOTDIR: 'a part of the path is not a folder',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EROFS: 'the disk is read-only',
  EFBIG: 'the file may not grow any more',
  EIO: 'the disk reports an error',
  EMFILE: FULL_HANDS,
  ENFILE: FULL_HANDS,
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead in a circle',
};

const CANNOT: Readonly<Record<Doing, string>> = {
  read: 'it cannot be read',
  write: 'it cannot be written',
  keep: 'it cannot be kept',
};

/** What went wrong, without the path, in a few words. */
export function faultWords(error: unknown, doing: Doing = 'keep'): string {
  const { code, message } = error as NodeJS.ErrnoException;
  if (code === undefined) return cleanText(String(message).split('\n')[0] ?? '', 200) || CANNOT[doing];
  const words = Object.hasOwn(WORDS, code) ? WORDS[code] : undefined;
  return typeof words === 'object' ? words[doing] : (words ?? `${CANNOT[doing]} (${code})`);
}

/**
 * Whether the system below refused (ENOENT, ENOSPC, ...), or the file holds what cannot be used. Whatever else was thrown is not
 * about the file but our bug; Node's own complaints about arguments (ERR_...) are that too.
 */
export function isFileFault(error: unknown): error is Error {
  if (error instanceof DataError) return true;
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  return code !== undefined && /^(E[A-Z0-9]+|UNKNOWN)$/.test(code);
}

/**
 * Does work on a file.
 * @param tell makes the fault that is thrown from a few words and the cause
 */
export function withWords<T>(
  doing: Doing,
  work: () => T,
  tell: (words: string, options: ErrorOptions) => MudlarkError,
): T {
  try {
    return work();
  } catch (error) {
    if (!isFileFault(error)) throw error;
    throw tell(faultWords(error, doing), { cause: error });
  }
}

/** A fault as the system would report it. */
export const faultOf = (code: string): Error => Object.assign(new Error(code), { code });

/** Longest path that is shown, in characters. */
const MOST_SHOWN = 160;

/** A path as it may be shown: nothing in it steers the terminal; of a long one the end. */
export function shownPath(path: string): string {
  const clean = [...cleanText(path, 5000)];
  return clean.length > MOST_SHOWN ? `...${clean.slice(3 - MOST_SHOWN).join('')}` : clean.join('');
}
