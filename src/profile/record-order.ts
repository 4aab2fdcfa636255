/** Folding a record again whose answers are not in order of time, or may stand there twice: some numbers a line are held, no line. */
import { hash } from 'node:crypto';
import { bytesAt, type OpenFile } from '../files/read.js';
import type { HistoryEntry, Standing } from '../practice/index.js';
import { addAnswer, emptyStanding, parseEntry, placesByTime } from '../practice/index.js';
import { entryIn, linesFrom } from './record-lines.js';

/** What is read at once, bytes: a line at the least. Small, since lines in order of time may lie far apart. */
const PIECE_BYTES = 32_768;
/** Pieces that are kept: answers that were brought in lie among others by time, in a few rows. */
const PIECES = 4;

type Lines = (place: number) => Buffer;

/** Reads lines of a file in any order, those near each other together. */
function linesAt(file: OpenFile, offsets: Float64Array, sizes: Uint16Array): Lines {
  const pieces: { readonly from: number; readonly bytes: Buffer }[] = [];
  return (place) => {
    const [offset = 0, size = 0] = [offsets[place], sizes[place]];
    const holds = ({ from, bytes }: (typeof pieces)[number]): boolean =>
      from <= offset && offset + size <= from + bytes.length;
    let piece = pieces.find(holds);
    if (piece === undefined) {
      piece = { from: offset, bytes: bytesAt(file, offset, Math.min(PIECE_BYTES, file.size - offset)) };
      if (pieces.unshift(piece) > PIECES) pieces.pop();
    }
    return piece.bytes.subarray(offset - piece.from, offset - piece.from + size);
  };
}

/** Which lines stand in the file before: the same line has the same time, so only those of one time are compared. */
function repeated(atMs: Float64Array, lines: Lines): Uint8Array {
  const isAgain = new Uint8Array(atMs.length);
  const seen = new Set<string>();
  let before = -1;
  for (const place of placesByTime(atMs, Number.POSITIVE_INFINITY)) {
    if (before < 0 || atMs[place] !== atMs[before]) seen.clear();
    else {
      if (seen.size === 0) seen.add(hash('sha1', lines(before), 'base64'));
      isAgain[place] = seen.size === seen.add(hash('sha1', lines(place), 'base64')).size ? 1 : 0;
    }
    before = place;
  }
  return isAgain;
}

/**
 * The standing after each answer of a record once.
 * @param most lines that are looked at
 * @param isOutOfOrder whether they have to be put in order of time
 */
export function foldAgain(file: OpenFile, most: number, isOutOfOrder: boolean, latestMs: number): Standing {
  const times = new Float64Array(most);
  const offsets = new Float64Array(most);
  // No line that is an answer is longer than 16,384 bytes.
  const sizes = new Uint16Array(most);
  let looked = 0;
  let count = 0;
  for (const line of linesFrom(file, 0)) {
    if (looked === most) break;
    looked += 1;
    const entry = entryIn(line);
    if (entry === undefined) continue;
    times[count] = Date.parse(entry.at);
    offsets[count] = line.offset;
    sizes[count] = line.size;
    count += 1;
  }
  const atMs = times.subarray(0, count);
  const lines = linesAt(file, offsets, sizes);
  const isAgain = repeated(atMs, lines);
  const inOrder = isOutOfOrder ? placesByTime(atMs, latestMs) : undefined;
  const standing = emptyStanding();
  for (let n = 0; n < count; n += 1) {
    const place = inOrder?.[n] ?? n;
    if (isAgain[place] === 1) continue;
    addAnswer(standing, parseEntry(lines(place).toString('utf8')) as HistoryEntry, latestMs);
  }
  return standing;
}
