/** From the file to the standing: the checkpoint where it holds, and the lines after it. */
import type { OpenFile } from '../files/read.js';
import type { HistoryEntry, Standing } from '../practice/index.js';
import { addAnswer, emptyStanding, foldSorted, parseEntry } from '../practice/index.js';
import { readCheckpoint, writeCheckpoint } from './checkpoint.js';
import type { RawLine } from './record-lines.js';
import { checksum, linesFrom, withRecord } from './record-lines.js';
import type { ForeignLine } from './set-aside.js';
import { foreignLine } from './set-aside.js';

/** Most lines that are counted. */
export const MAX_LINES = 1_000_000;
/** A new checkpoint is written when this many lines had to be parsed. */
const CHECKPOINT_EVERY = 500;
/** Most unreadable lines handed on in one go. */
const MOST_FOREIGN = 1000;

/** What a record came to. */
export interface LoadedRecord {
  readonly standing: Standing;
  /** Lines in the file, readable or not. */
  readonly lines: number;
  /** Lines that could not be read: all of them, and those met this time. */
  readonly foreignCount: number;
  readonly foreign: readonly ForeignLine[];
  /** Set when the file has more lines than are counted. */
  readonly isCut: boolean;
}

const NOTHING: LoadedRecord = {
  standing: emptyStanding(),
  lines: 0,
  foreignCount: 0,
  foreign: [],
  isCut: false,
};

/** The entry in a line, or undefined. */
function entryIn(line: RawLine): HistoryEntry | undefined {
  return line.isTooLong ? undefined : parseEntry(line.bytes.toString('utf8'));
}

function entriesOf(file: OpenFile): HistoryEntry[] {
  const entries: HistoryEntry[] = [];
  let previous: Buffer | undefined;
  for (const line of linesFrom(file, 0)) {
    const entry = previous?.equals(line.bytes) ? undefined : entryIn(line);
    previous = line.bytes;
    if (entry !== undefined) entries.push(entry);
    if (entries.length >= MAX_LINES) break;
  }
  return entries;
}

/** Every readable answer of a record, in the order of the file; nothing when there is no file. */
export function readEntries(path: string): HistoryEntry[] {
  return withRecord(path, entriesOf) ?? [];
}

function loadFrom(file: OpenFile, summaryPath: string | undefined): LoadedRecord {
  const kept = summaryPath === undefined ? undefined : readCheckpoint(summaryPath);
  const holds = kept !== undefined && kept.bytes <= file.size && checksum(file, 0, kept.bytes) === kept.crc;
  let standing = holds ? kept.standing : emptyStanding();
  let lines = holds ? kept.lines : 0;
  let foreignCount = holds ? kept.foreign : 0;
  const from = holds ? kept.bytes : 0;
  const foreign: ForeignLine[] = [];
  let parsed = 0;
  let end = from;
  let endsWhole = true;
  let previous: Buffer | undefined;
  for (const line of linesFrom(file, from)) {
    if (lines >= MAX_LINES) break;
    lines += 1;
    parsed += 1;
    endsWhole = line.isWhole;
    end = line.offset + line.bytes.length + (line.isWhole ? 1 : 0);
    // The same line twice running: a write whose flush failed was repeated.
    const isRepeated = previous?.equals(line.bytes) === true;
    previous = line.bytes;
    if (isRepeated) continue;
    const entry = entryIn(line);
    if (entry !== undefined) addAnswer(standing, entry);
    else {
      foreignCount += 1;
      if (foreign.length < MOST_FOREIGN) foreign.push(foreignLine(line));
      if (line.isTooLong) endsWhole = false;
    }
  }
  if (standing.isOutOfOrder) standing = foldSorted(entriesOf(file));
  const isCut = lines >= MAX_LINES && end < file.size;
  if (summaryPath !== undefined && parsed >= CHECKPOINT_EVERY && endsWhole && !isCut) {
    const crc = checksum(file, from, end, holds ? kept.crc : 0);
    writeCheckpoint(summaryPath, { bytes: end, crc, lines, foreign: foreignCount, standing });
  }
  return { standing, lines, foreignCount, foreign, isCut };
}

/**
 * Loads a record.
 * @param summaryPath where the checkpoint is kept; undefined to do without one
 * @throws the fault of the file system
 */
export function loadRecord(path: string, summaryPath?: string): LoadedRecord {
  return withRecord(path, (file) => loadFrom(file, summaryPath)) ?? { ...NOTHING, standing: emptyStanding() };
}
