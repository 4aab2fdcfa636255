/**
 * Faults that a person can mend, and those of the file system in words that say what to do. Each is shown as one line on stderr,
 * without a stack; anything else is our bug.
 */
import { cleanText } from './text/sanitize.js';

/** Base of the three: what happened, where, and what to do, in one line. */
export class MudlarkError extends Error {
  readonly exitCode: number;
  constructor(message: string, exitCode = 1, options?: ErrorOptions) {
    super(message, options);
    this.name = new.target.name;
    this.exitCode = exitCode;
  }
}

/** The command line was wrong: exit code 2. */
export class UsageError extends MudlarkError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, 2, options);
  }
}

/** A file that someone wrote holds something that cannot be used: exit code 1. */
export class DataError extends MudlarkError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, 1, options);
  }
}

/** Settings or the record cannot be read or written: exit code 1. */
export class StoreError extends MudlarkError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, 1, options);
  }
}

/**
 * An argument that a person's word may have been handed on as is out of range, or names nothing. The core throws it; the command
 * that handed the word on makes it a `UsageError` (`usage` in commands/run.ts). Anywhere else it is our bug, as any RangeError.
 */
export class InputError extends RangeError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = new.target.name;
  }
}

/** Whether a fault is one that a person can mend; everything else is our bug and must not be told as theirs. */
export function isOurs(error: unknown): error is MudlarkError {
  return error instanceof MudlarkError;
}

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

/** The code of a fault of the system ("ENOENT"); undefined where it has none. */
export const codeOf = (error: unknown): string | undefined => (error as NodeJS.ErrnoException).code;

/** What went wrong, without the path, in a few words. */
export function faultWords(error: unknown, doing: Doing = 'keep'): string {
  const code = codeOf(error);
  if (code === undefined)
    return cleanText(String((error as Error).message).split('\n')[0] ?? '', 200) || CANNOT[doing];
  const words = Object.hasOwn(WORDS, code) ? WORDS[code] : undefined;
  return typeof words === 'object' ? words[doing] : (words ?? `${CANNOT[doing]} (${code})`);
}

/**
 * Whether the system below refused (ENOENT, ENOSPC, ...), or the file holds what cannot be used. Whatever else was thrown is not
 * about the file but our bug; Node's own complaints about arguments (ERR_...) are that too.
 */
export function isFileFault(error: unknown): error is Error {
  if (error instanceof DataError) return true;
  return error instanceof Error && /^(E[A-Z0-9]+|UNKNOWN)$/.test(codeOf(error) ?? '');
}

/** A fault of the system, as it would report it. */
export const faultOf = (code: string): Error => Object.assign(new Error(code), { code });
