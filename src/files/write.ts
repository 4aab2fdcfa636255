/**
 * Writing files so that a crash or a full disk leaves the old or the new one, never half of one, and so that what was
 * written is on disk when the call returns. All throw the fault of the file system as it is.
 */
import { randomBytes } from 'node:crypto';
import {
  closeSync,
  constants,
  existsSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  readlinkSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { codeOf, faultOf, isFileFault } from '../errors.js';
import { type OpenFile, withFile } from './read.js';

/** Who may read a file: its owner alone, or as the system's own mask has it. */
export const PRIVATE = 0o600;
export const SHARED = 0o644;

/** Some network and virtual file systems know no flush; there the write itself is all that can be had. */
const NO_FLUSH = ['EINVAL', 'ENOTSUP', 'ENOSYS'];
/** Windows opens no folders, and a folder may be one to write to but not to read. */
const NO_FOLDER = [...NO_FLUSH, 'EISDIR', 'EPERM', 'EACCES'];

/** Does what some file systems cannot, unless it fails for another reason than those. */
function where(excused: readonly string[], work: () => void): void {
  try {
    work();
  } catch (error) {
    if (!excused.includes(codeOf(error) ?? '')) throw error;
  }
}

const flush = (fd: number): void => where(NO_FLUSH, () => fsyncSync(fd));

/** A new name is only safe once its folder is on disk too. */
function flushFolder(path: string): void {
  where(NO_FOLDER, () => {
    const fd = openSync(dirname(path), 'r');
    try {
      fsyncSync(fd);
    } finally {
      closeSync(fd);
    }
  });
}

/** What a file is to hold: whole, or piece by piece. */
export type Content = string | Uint8Array | Iterable<string | Uint8Array>;

/** Writes a file beside the path, through to the disk, and hands its name on to be put in place. */
function beside(path: string, content: Content, mode: number, put: (fresh: string) => void): void {
  // A short name of its own: the file's name may be as long as the system allows.
  const fresh = join(dirname(path), `.mudlark-${randomBytes(6).toString('hex')}.tmp`);
  try {
    const fd = openSync(fresh, 'wx', mode);
    try {
      const pieces = typeof content === 'string' || content instanceof Uint8Array ? [content] : content;
      for (const piece of pieces) writeFileSync(fd, piece);
      flush(fd);
    } finally {
      closeSync(fd);
    }
    put(fresh);
    flushFolder(path);
  } finally {
    rmSync(fresh, { force: true });
  }
}

/** Where a link points that leads to no file; undefined where there is no link. Its name must be known to lead nowhere. */
export function emptyLink(path: string): string | undefined {
  const isLink = lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink() === true;
  return isLink ? resolve(realpathSync(dirname(path)), readlinkSync(path)) : undefined;
}

/**
 * Puts a text or bytes in the place of a file, or where there is none. A link stays, and the file it leads to is replaced or made.
 * @throws EISDIR or ENXIO when something else than a plain file stands there; the old file is then as it was
 */
export function replaceWhole(path: string, content: Content, mode: number): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isDirectory()) throw faultOf('EISDIR');
  if (there !== undefined && !there.isFile()) throw faultOf('ENXIO');
  const target = there === undefined ? emptyLink(path) : undefined;
  if (target !== undefined) {
    replaceWhole(target, content, mode);
    return;
  }
  const real = there === undefined ? path : realpathSync(path);
  beside(real, content, mode, (fresh) => renameSync(fresh, real));
}

/**
 * Writes a file where there is none.
 * @throws EEXIST when something stands there, also when it came between
 */
export function writeNew(path: string, content: Content, mode: number): void {
  if (existsSync(path)) throw faultOf('EEXIST');
  beside(path, content, mode, (fresh) => {
    try {
      linkSync(fresh, path);
    } catch (error) {
      if (codeOf(error) === 'EEXIST' || !isFileFault(error)) throw error;
      // Memory sticks and some shared folders know no second name for a file.
      renameSync(fresh, path);
    }
  });
}

const NEWLINE = 10;

/** Whether the file ends in the middle of a line: a program was killed, or the disk was full, while it wrote. */
function endsTorn({ fd, size }: OpenFile): boolean {
  if (size === 0) return false;
  const last = Buffer.alloc(1);
  return readSync(fd, last, 0, 1, size - 1) === 1 && last[0] !== NEWLINE;
}

const APPENDING = constants.O_RDWR | constants.O_APPEND | constants.O_CREAT;

/**
 * Appends whole lines in one write, so that two programs at once lose nothing.
 * @param lines one or more lines, each ending in a newline
 * @throws as the others, and what {@link withFile} throws where something else than a plain file stands; a part that was
 * written stays as a torn line, which the next append closes
 */
export function appendLines(path: string, lines: string | Uint8Array, mode: number): void {
  const isNew = !existsSync(path);
  const append = (file: OpenFile): void => {
    const given = typeof lines === 'string' ? Buffer.from(lines, 'utf8') : lines;
    const bytes = endsTorn(file) ? Buffer.concat([Buffer.of(NEWLINE), given]) : given;
    if (writeSync(file.fd, bytes) < bytes.length) throw faultOf('ENOSPC');
    flush(file.fd);
  };
  withFile(path, append, APPENDING, mode);
  if (isNew) flushFolder(path);
}

/**
 * Gives a file the first name that is free.
 * @param nameOf the n-th name to try, from 1
 * @returns its new path
 */
export function moveAside(path: string, nameOf: (n: number) => string): string {
  for (let n = 1; ; n += 1) {
    const aside = nameOf(n);
    if (existsSync(aside)) continue;
    renameSync(path, aside);
    return aside;
  }
}

/**
 * Makes a folder and those above it, one by one: Node's own way never ends where making a folder is answered with
 * "no such file", as under /proc.
 */
export function makeFolder(path: string, mode: number): void {
  if (existsSync(path)) return;
  if (dirname(path) !== path) makeFolder(dirname(path), mode);
  // Another program may have made it in between.
  where(['EEXIST'], () => mkdirSync(path, { mode }));
}
