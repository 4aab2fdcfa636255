/** Writing files so that a crash or a full disk leaves either the old or the new file, never half of one. */
import { randomBytes } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { DataError } from '../../errors.js';
import { cleanText } from '../../text/sanitize.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder; make it first',
  ENOTDIR: 'its folder is not a folder',
  EACCES: 'it may not be written; check the permissions of the folder',
  EPERM: 'it may not be written; check the permissions of the folder',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EISDIR: 'this is a folder, not a file',
  ENAMETOOLONG: 'the name is too long',
};

function fault(path: string, error: unknown): DataError {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  const reason = REASONS[code] ?? `it cannot be written (${code || 'unknown fault'})`;
  return new DataError(`${cleanText(path, 160)}: ${reason}`, { cause: error });
}

/** Makes a rename last through a power cut; some systems do not let a folder be opened for it. */
function syncFolder(folder: string): void {
  let descriptor: number | undefined;
  try {
    descriptor = openSync(folder, 'r');
    fsyncSync(descriptor);
  } catch {
    // The file itself is safe; only the moment of the rename is not.
  } finally {
    if (descriptor !== undefined) closeSync(descriptor);
  }
}

/**
 * A rename puts a new file in the place of whatever stood there, a device or a pipe too.
 * @throws an error with code EISDIR, or DataError, unless a plain file or nothing stands at the path
 */
export function requireReplaceable(path: string): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined || there.isFile()) return;
  if (there.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
  throw new DataError(`${cleanText(path, 160)}: this is not a plain file; name another`);
}

/**
 * Replaces a file in one step: a new file beside it, written through to the disk, then renamed.
 * @throws DataError when it cannot be written; the old file is then as it was
 */
export function replaceFile(path: string, text: string): void {
  const folder = dirname(path);
  // A short name of its own: the file's name may be as long as the system allows.
  const fresh = join(folder, `.mudlark-${randomBytes(6).toString('hex')}.tmp`);
  try {
    requireReplaceable(path);
    const descriptor = openSync(fresh, 'wx', 0o644);
    try {
      writeFileSync(descriptor, text);
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
    renameSync(fresh, path);
    syncFolder(folder);
  } catch (error) {
    rmSync(fresh, { force: true });
    throw error instanceof DataError ? error : fault(path, error);
  }
}

/** Where a path leads, links followed as far as they go. */
function realPath(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
}

function requireFree(path: string, replace: boolean): void {
  if (existsSync(path) && !replace)
    throw new DataError(
      `${cleanText(path, 160)}: this file is there already; choose another name, or add --force to replace it`,
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
      throw new DataError(`${cleanText(path, 160)}: this file is read here and is never written over`);
    if (seen.has(real)) throw new DataError(`${cleanText(path, 160)}: named for two outputs; name two files`);
    seen.add(real);
    requireFree(path, replace);
  }
}

/**
 * Writes a file for a person who named it; one that is there already is only replaced when asked to.
 * @returns one line that says what was done
 * @throws DataError when the file is there already, or cannot be written
 */
export function writeNamedFile(path: string, text: string, replace: boolean): string {
  const there = existsSync(path);
  requireFree(path, replace);
  replaceFile(path, text);
  return `${there ? 'replaced' : 'written'}: ${cleanText(basename(path), 160)}`;
}
