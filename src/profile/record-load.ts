/** From the file to the standing: the checkpoint where it holds, and the lines after it. */
import { hash } from 'node:crypto';
import type { OpenFile } from '../files/read.js';
import type { HistoryEntry, Standing } from '../practice/index.js';
import { addAnswer, emptyStanding, isNewer, standsAt } from '../practice/index.js';
import { readCheckpoint, writeCheckpoint } from './checkpoint.js';
import type { RawLine } from './record-lines.js';
import { checksum, entryIn, linesFrom, withRecord } from './record-lines.js';
import { foldAgain } from './record-order.js';
import type { ForeignLine } from './set-aside.js';
import { foreignLine } from './set-aside.js';

/** Most lines that are counted: an answer a minute, eight hours a day, for 57 years. */
export const MAX_LINES = 10_000_000;
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
  /** Lines that a newer version of the program wrote. */
  readonly newerCount: number;
  /** Set when the file has more lines than are counted. */
  readonly isCut: boolean;
}

const NOTHING: LoadedRecord = {
  standing: emptyStanding(),
  lines: 0,
  foreignCount: 0,
  foreign: [],
  newerCount: 0,
  isCut: false,
};

/** A line of a record with the answer in it, where it can be read. */
export interface ReadLine extends RawLine {
  readonly entry: HistoryEntry | undefined;
}

/** The lines of a record, each once however often it stands there: the same answer was brought in by two programs at once. */
export function* distinctLines(file: OpenFile): Generator<ReadLine> {
  const seen = new Set<string>();
  for (const line of linesFrom(file, 0)) {
    // Of a line that is too long only the beginning is here: it cannot be told from others.
    if (!line.isTooLong && seen.size === seen.add(hash('sha1', line.bytes, 'base64')).size) continue;
    yield { ...line, entry: entryIn(line) };
  }
}

function entriesOf(file: OpenFile): HistoryEntry[] {
  const entries: HistoryEntry[] = [];
  for (const { entry } of distinctLines(file)) {
    if (entry !== undefined) entries.push(entry);
    if (entries.length >= MAX_LINES) break;
  }
  return entries;
}

/** Every readable answer of a record, in the order of the file; nothing when there is no file. */
export function readEntries(path: string): HistoryEntry[] {
  return withRecord(path, entriesOf) ?? [];
}

/** Whether an answer is later than all before it. One that stands in the record already is not. */
function isLater({ at }: HistoryEntry, { lastMs, ahead }: Standing, latestMs: number): boolean {
  const atMs = Date.parse(at);
  return atMs > (atMs > latestMs ? (ahead?.lastMs ?? 0) : lastMs);
}

function loadFrom(file: OpenFile, summaryPath: string | undefined, latestMs: number): LoadedRecord {
  const kept = summaryPath === undefined ? undefined : readCheckpoint(summaryPath);
  const holds =
    kept !== undefined &&
    standsAt(kept.standing, latestMs) &&
    kept.bytes <= file.size &&
    checksum(file, 0, kept.bytes) === kept.crc;
  let standing = holds ? kept.standing : emptyStanding();
  let lines = holds ? kept.lines : 0;
  let foreignCount = holds ? kept.foreign : 0;
  let newerCount = holds ? kept.newer : 0;
  const from = holds ? kept.bytes : 0;
  const foreign: ForeignLine[] = [];
  let parsed = 0;
  let end = from;
  let endsWhole = true;
  let mayRepeat = false;
  let previous: Buffer | undefined;
  for (const line of linesFrom(file, from)) {
    if (lines >= MAX_LINES) break;
    lines += 1;
    parsed += 1;
    endsWhole = line.isWhole;
    end = line.offset + line.size + (line.isWhole ? 1 : 0);
    // The same line twice running: a write whose flush failed was repeated.
    const isRepeated = previous?.equals(line.bytes) === true;
    previous = line.bytes;
    if (isRepeated) continue;
    const entry = entryIn(line);
    if (entry !== undefined) {
      mayRepeat ||= !isLater(entry, standing, latestMs);
      addAnswer(standing, entry, latestMs);
    } else if (!line.isTooLong && isNewer(line.bytes.toString('utf8'))) newerCount += 1;
    else {
      foreignCount += 1;
      if (foreign.length < MOST_FOREIGN) foreign.push(foreignLine(line));
    }
  }
  // Only then is each line compared with all before it, and the record read twice.
  if (mayRepeat) standing = foldAgain(file, lines, standing.isOutOfOrder, latestMs);
  const isCut = lines >= MAX_LINES && end < file.size;
  const costs = mayRepeat ? lines : parsed;
  if (summaryPath !== undefined && costs >= CHECKPOINT_EVERY && endsWhole && !isCut) {
    const crc = checksum(file, from, end, holds ? kept.crc : 0);
    writeCheckpoint(summaryPath, {
      bytes: end,
      crc,
      lines,
      foreign: foreignCount,
      newer: newerCount,
      standing,
    });
  }
  return { standing, lines, foreignCount, foreign, newerCount, isCut };
}

/**
 * Loads a record.
 * @param summaryPath where the checkpoint is kept; undefined to do without one
 * @param latestMs answers dated later set no date for review
 * @throws the fault of the file system
 */
export function loadRecord(
  path: string,
  summaryPath?: string,
  latestMs = Number.POSITIVE_INFINITY,
): LoadedRecord {
  return (
    withRecord(path, (file) => loadFrom(file, summaryPath, latestMs)) ?? {
      ...NOTHING,
      standing: emptyStanding(),
    }
  );
}
