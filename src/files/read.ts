/** Reading files: plain ones only, never more than a bound, with one clear line for every fault. */
import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';
import { DataError, faultOf, isFileFault } from '../errors.js';
import { shownPath, withWords } from './faults.js';

/** A plain file, open for reading. */
export interface OpenFile {
  readonly fd: number;
  /** Bytes, when it was opened. */
  readonly size: number;
}

/**
 * Opens a plain file and hands it to `work`.
 * @param flags how it is opened (O_RDONLY, O_APPEND ...), and the mode if it is made
 * @throws the fault of the file system; EISDIR for a folder, ENXIO for a device or a pipe
 */
export function withFile<T>(
  path: string,
  work: (file: OpenFile) => T,
  flags: number = constants.O_RDONLY,
  mode?: number,
): T {
  // Without O_NONBLOCK the opening of a pipe waits for somebody at its other end. Windows does not know it.
  const fd = openSync(path, flags | (constants.O_NONBLOCK ?? 0), mode);
  try {
    const stats = fstatSync(fd);
    if (stats.isDirectory()) throw faultOf('EISDIR');
    if (!stats.isFile()) throw faultOf('ENXIO');
    return work({ fd, size: stats.size });
  } finally {
    closeSync(fd);
  }
}

const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(1);

const tooLarge = (size: number, most: number): DataError =>
  new DataError(
    `${megabytes(size)} MB is more than the ${megabytes(most)} MB that is read; check that it is the right file`,
  );

/** The bytes of an open file from a place on; fewer where it ends before. */
export function bytesAt({ fd }: OpenFile, from: number, size: number): Buffer {
  const bytes = Buffer.allocUnsafe(size);
  let at = 0;
  for (let got = -1; got !== 0 && at < size; at += got) got = readSync(fd, bytes, at, size - at, from + at);
  return bytes.subarray(0, at);
}

/** Bytes as a text, without a byte-order mark. @throws DataError, without a name, when they are no UTF-8 */
export function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (cause) {
    // What a fatal decoder throws (WHATWG Encoding Standard, TextDecoder, decode).
    if (!(cause instanceof TypeError)) throw cause;
    throw new DataError('it is not a UTF-8 text', { cause });
  }
}

/**
 * Reads a file whole.
 * @param most largest size in bytes
 * @throws the fault of the file system, as {@link withFile}; DataError, without the path, when it is too large
 */
export function readBytes(path: string, most: number): Buffer {
  return withFile(path, (file) => {
    if (file.size > most) throw tooLarge(file.size, most);
    return bytesAt(file, 0, file.size);
  });
}

/** Reads what comes in at standard input, to its end. @throws as {@link readBytes} */
export async function readInput(most: number): Promise<Buffer> {
  const pieces: Buffer[] = [];
  let size = 0;
  for await (const piece of process.stdin as AsyncIterable<Buffer>) {
    size += piece.length;
    if (size > most) throw tooLarge(size, most);
    pieces.push(piece);
  }
  return Buffer.concat(pieces);
}

/** Reads a text whole. @throws as {@link readBytes} and {@link textOf} */
export const readWhole = (path: string, most: number): string => textOf(readBytes(path, most));

/** A text whole, as {@link readWhole}; undefined where there is none that can be used. */
export function readUsable(path: string, most: number): string | undefined {
  try {
    return readWhole(path, most);
  } catch (error) {
    if (isFileFault(error)) return undefined;
    throw error;
  }
}

/**
 * Reads a text file that someone named.
 * @param most largest size in bytes
 * @throws DataError when it is missing, unreadable, too large, not a plain file or not UTF-8
 */
export function readText(path: string, most: number): string {
  return withWords(
    'read',
    () => readWhole(path, most),
    (words, options) => new DataError(`${shownPath(path)}: ${words}`, options),
  );
}
