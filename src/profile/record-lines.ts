/** Reading the lines of a record piece by piece, so that its length does not matter. */
import { readSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import { codeOf } from '../errors.js';
import { type OpenFile, withFile } from '../files/read.js';
import { type HistoryEntry, MAX_LINE_BYTES, parseEntry } from '../practice/index.js';

const CHUNK_BYTES = 1 << 20;
const NEWLINE = 10;

/** One line as it stands in the file. */
export interface RawLine {
  /** Without its newline; of a line that is too long only the beginning. */
  readonly bytes: Buffer;
  /** Where it begins, and how long it is whole, bytes. */
  readonly offset: number;
  readonly size: number;
  readonly isTooLong: boolean;
  /** False for a last line without a newline. */
  readonly isWhole: boolean;
}

/** The entry in a line, or undefined. */
export const entryIn = ({ isTooLong, bytes }: RawLine): HistoryEntry | undefined =>
  isTooLong ? undefined : parseEntry(bytes.toString('utf8'));

/**
 * Opens a record for reading and hands it to `work`.
 * @returns undefined when there is no file yet
 * @throws the fault of the file system
 */
export function withRecord<T>(path: string, work: (file: OpenFile) => T): T | undefined {
  try {
    return withFile(path, work);
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return undefined;
    throw error;
  }
}

/** CRC-32 (ITU-T V.42, as in zlib) of the bytes from `from` to `to`, continuing `start`. */
export function checksum({ fd }: OpenFile, from: number, to: number, start = 0): number {
  const chunk = Buffer.allocUnsafe(Math.min(CHUNK_BYTES, Math.max(1, to - from)));
  let sum = start;
  for (let at = from; at < to; ) {
    const got = readSync(fd, chunk, 0, Math.min(chunk.length, to - at), at);
    if (got === 0) return Number.NaN;
    sum = crc32(chunk.subarray(0, got), sum);
    at += got;
  }
  return sum;
}

/** The lines from a place on, up to the size that the file had when it was opened. Empty lines are passed over. */
export function* linesFrom({ fd, size }: OpenFile, from: number): Generator<RawLine> {
  let carry = Buffer.alloc(0);
  let lineStart = from;
  let isTooLong = false;
  for (let at = from; at < size; ) {
    const chunk = Buffer.allocUnsafe(Math.min(CHUNK_BYTES, size - at));
    const got = readSync(fd, chunk, 0, chunk.length, at);
    if (got === 0) break;
    let begin = 0;
    for (let end = chunk.indexOf(NEWLINE); end >= 0 && end < got; end = chunk.indexOf(NEWLINE, begin)) {
      const piece = chunk.subarray(begin, end);
      const bytes = carry.length > 0 ? Buffer.concat([carry, piece]) : piece;
      const long = isTooLong || bytes.length >= MAX_LINE_BYTES;
      if (bytes.length > 0)
        yield {
          bytes: bytes.subarray(0, MAX_LINE_BYTES),
          offset: lineStart,
          size: at + end - lineStart,
          isTooLong: long,
          isWhole: true,
        };
      carry = Buffer.alloc(0);
      isTooLong = false;
      begin = end + 1;
      lineStart = at + begin;
    }
    const tail = Buffer.concat([carry, chunk.subarray(begin, got)]);
    // An endless line is not gathered: its beginning is enough to report it.
    isTooLong ||= tail.length >= MAX_LINE_BYTES;
    carry = Buffer.from(tail.subarray(0, MAX_LINE_BYTES));
    at += got;
  }
  if (carry.length > 0)
    yield { bytes: carry, offset: lineStart, size: size - lineStart, isTooLong, isWhole: false };
}
