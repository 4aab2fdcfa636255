/**
 * The fold of a record, kept beside it so that a long record costs one read and no parsing. Safe to delete. It holds
 * for a beginning of the record, known by its length and its checksum; if that beginning was changed, it is not used.
 */
import { crc32 } from 'node:zlib';
import { isFileFault } from '../errors.js';
import { readUsable } from '../files/read.js';
import { PRIVATE, replaceWhole } from '../files/write.js';
import type { Standing } from '../practice/index.js';
import { standingFromJson, standingToJson } from '../practice/index.js';
import { jsonOf } from '../text/json.js';

/** Raise it when the fold changes: older checkpoints are then made anew. */
const FOLD_VERSION = 6;
const MOST_BYTES = 4_000_000;

export interface Checkpoint {
  /** Length of the beginning that it sums up, bytes; ends after a newline. */
  readonly bytes: number;
  /** CRC-32 of that beginning. */
  readonly crc: number;
  /** Lines in it, and how many of them could not be read. */
  readonly lines: number;
  readonly foreign: number;
  /** And how many a newer version of the program wrote. */
  readonly newer: number;
  readonly standing: Standing;
}

interface Head {
  readonly v: number;
  readonly bytes: number;
  readonly crc: number;
  readonly lines: number;
  readonly foreign: number;
  readonly newer: number;
  readonly body: number;
}

/** Reads a checkpoint. @returns undefined when there is none, or it is damaged or of another version */
export function readCheckpoint(path: string): Checkpoint | undefined {
  const text = readUsable(path, MOST_BYTES) ?? '';
  const cut = text.indexOf('\n');
  const head = jsonOf(text.slice(0, Math.max(0, cut))) as Head | null | undefined;
  const body = text.slice(cut + 1);
  if (head?.v !== FOLD_VERSION || head.body !== crc32(body)) return undefined;
  const { bytes, crc, lines, foreign, newer } = head;
  const standing = standingFromJson(body);
  if (standing === undefined || ![bytes, crc, lines, foreign, newer].every(Number.isSafeInteger))
    return undefined;
  return { bytes, crc, lines, foreign, newer, standing };
}

/** Writes a checkpoint. A fault is not worth a word: the record is read without one. */
export function writeCheckpoint(path: string, checkpoint: Checkpoint): void {
  const { bytes, crc, lines, foreign, newer, standing } = checkpoint;
  const body = standingToJson(standing);
  const head: Head = { v: FOLD_VERSION, bytes, crc, lines, foreign, newer, body: crc32(body) };
  try {
    replaceWhole(path, `${JSON.stringify(head)}\n${body}`, PRIVATE);
  } catch (error) {
    // The next start counts the lines again.
    if (!isFileFault(error)) throw error;
  }
}
