/** Bringing a record out and in, and beginning a new one. */
import { createHash } from 'node:crypto';
import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { DataError, StoreError } from '../errors.js';
import { shownPath, withWords } from '../files/faults.js';
import { readText } from '../files/read.js';
import { moveAside } from '../files/write.js';
import type { HistoryEntry } from '../practice/index.js';
import { isEntry, MAX_LINE_BYTES, parseEntry } from '../practice/index.js';
import { jsonOf, membersOf } from '../text/json.js';
import { escapeInvisible } from '../text/sanitize.js';
import type { LearnerFiles } from './place.js';
import { MAX_LINES, readEntries } from './record-load.js';

/** Largest file that is brought in, bytes. */
const MOST_IMPORT_BYTES = 256_000_000;
const KIND = 'mudlark-record';
const DAY_MS = 86_400_000;

export type ExportFormat = 'json' | 'jsonl';

/**
 * The record as text, piece by piece: one JSON document, or the lines as they are kept.
 * @throws the fault of the file system when the record cannot be read
 */
export function* exportPieces(
  files: LearnerFiles | undefined,
  learner: string,
  format: ExportFormat,
  now: Date,
): Generator<string> {
  const entries = files === undefined ? [] : readEntries(files.record);
  if (format === 'jsonl') {
    for (const entry of entries) yield `${JSON.stringify(entry)}\n`;
    return;
  }
  const head = escapeInvisible(
    JSON.stringify({ schemaVersion: 1, kind: KIND, learner, exported: now.toISOString() }),
  );
  yield `${head.slice(0, -1)},"answers":[`;
  for (const [place, entry] of entries.entries()) yield `${place === 0 ? '' : ','}\n${JSON.stringify(entry)}`;
  yield `${entries.length > 0 ? '\n' : ''}]}\n`;
}

/** What a file to be brought in holds. */
export interface ReadImport {
  readonly entries: readonly HistoryEntry[];
  /** How many of its answers cannot be used, and where the first of them stands (from 1). */
  readonly refused: number;
  readonly firstRefused?: number;
}

/** The candidates of a file: members of the document, or lines. */
function candidates(text: string, shown: string): unknown[] {
  const first = text.slice(0, MAX_LINE_BYTES).split('\n', 1)[0] ?? '';
  if (parseEntry(first) === undefined && text.trimStart().startsWith('{')) {
    // Where it is not one document: perhaps lines, of which the first is damaged.
    const { kind, schemaVersion, answers } = membersOf(jsonOf(text)) ?? {};
    if (kind === KIND && schemaVersion !== 1)
      throw new DataError(
        `${shown}: it was written by a newer version of the program; bring the program up to date`,
      );
    if (kind === KIND && Array.isArray(answers)) return answers;
  }
  return text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => parseEntry(line));
}

/**
 * Reads an exported record and checks every answer.
 * @throws DataError when the file cannot be read or holds no answer that can be used
 */
export function readImport(path: string, now: Date): ReadImport {
  const shown = shownPath(path);
  const found = candidates(readText(path, MOST_IMPORT_BYTES), shown);
  if (found.length > MAX_LINES)
    throw new DataError(`${shown}: it has more than ${MAX_LINES.toLocaleString('en')} answers; split it`);
  const latest = now.getTime() + DAY_MS;
  // An answer from the future would keep everything from falling due.
  const fits = (x: unknown): x is HistoryEntry =>
    isEntry(x) && Date.parse(x.at) <= latest && Buffer.byteLength(JSON.stringify(x)) < MAX_LINE_BYTES;
  const entries = found.filter(fits);
  if (entries.length === 0 && found.length > 0)
    throw new DataError(
      `${shown}: there is no answer in it that can be used; give a file made by "record export"`,
    );
  const firstRefused = found.findIndex((x) => !fits(x));
  return {
    entries,
    refused: found.length - entries.length,
    ...(firstRefused >= 0 && { firstRefused: firstRefused + 1 }),
  };
}

/** The same answer gives the same key, whatever the order of its members. */
function keyOf(entry: HistoryEntry): string {
  const sorted = (x: unknown): unknown =>
    Array.isArray(x)
      ? x.map(sorted)
      : typeof x === 'object' && x !== null
        ? Object.entries(x)
            .sort(([a], [b]) => (a < b ? -1 : 1))
            .map(([key, value]) => [key, sorted(value)])
        : x;
  return createHash('sha1')
    .update(JSON.stringify(sorted(entry)))
    .digest('base64');
}

/** Those of `incoming` that the record does not hold yet, each once, in order of time. */
export function notYetIn(files: LearnerFiles, incoming: readonly HistoryEntry[]): HistoryEntry[] {
  const seen = new Set(readEntries(files.record).map(keyOf));
  const fresh = incoming.filter((entry) => {
    const key = keyOf(entry);
    return seen.has(key) ? false : seen.add(key);
  });
  return fresh.sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
}

/**
 * Begins a new record; the old one is kept beside it with the date in its name.
 * @returns the path of the copy, or undefined when there was no record
 * @throws StoreError when it cannot be moved; then nothing has changed
 */
export function resetRecord(files: LearnerFiles, now: Date): string | undefined {
  if (!existsSync(files.record)) return undefined;
  const stamp = now.toISOString().slice(0, 19).replaceAll(':', '-');
  const name = (n: number): string =>
    join(files.folder, `record.until-${stamp}${n === 1 ? '' : `-${n}`}.jsonl`);
  return withWords(
    'keep',
    () => {
      const kept = moveAside(files.record, name);
      rmSync(files.summary, { force: true });
      return kept;
    },
    (words, options) => new StoreError(`${shownPath(files.record)}: ${words}; nothing was changed`, options),
  );
}
