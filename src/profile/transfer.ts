/** Bringing a record in, and beginning a new one. */
import { isUtf8 } from 'node:buffer';
import { hash } from 'node:crypto';
import { existsSync, rmSync } from 'node:fs';
import { join, parse } from 'node:path';
import { DataError, StoreError } from '../errors.js';
import { shownPath, withWords } from '../files/faults.js';
import { withLock } from '../files/lock.js';
import { readBytes, textOf } from '../files/read.js';
import { moveAside } from '../files/write.js';
import type { HistoryEntry } from '../practice/index.js';
import { isEntry, isNewer, MAX_LINE_BYTES, parseEntry } from '../practice/index.js';
import { canonicalJson } from '../text/canonical-json.js';
import { jsonOf, membersOf } from '../text/json.js';
import { KIND, MOST_CARRIED_BYTES } from './export.js';
import { type ReadStudio, readCarried } from './own-transfer.js';
import type { LearnerFiles } from './place.js';
import { makePlace } from './place.js';
import { appendAnswers, appendUnread } from './record-append.js';
import { withRecord } from './record-lines.js';
import { distinctLines, MAX_LINES } from './record-load.js';

/** Largest file that is brought in, bytes. */
export const MOST_IMPORT_BYTES = 512_000_000;
const NEWLINE = 10;
const BLANK = 32;
const BYTE_ORDER_MARK = Buffer.of(0xef, 0xbb, 0xbf);

/** What a file to be brought in holds. */
export interface ReadImport {
  readonly entries: readonly HistoryEntry[];
  /** Lines that this version cannot read and keeps as they stand: a newer version wrote them, or an export carried them. */
  readonly unread: readonly Buffer[];
  /** How many of its answers cannot be used, and where the first of them stands (from 1). */
  readonly refused: number;
  readonly firstRefused?: number;
  /** What the learner had put together, where the file tells of it. */
  readonly studio?: ReadStudio;
}

/** Lines of a text, blank ones left out. */
function linesOf(bytes: Buffer): Buffer[] {
  const lines: Buffer[] = [];
  for (let from = 0; from < bytes.length; ) {
    const found = bytes.indexOf(NEWLINE, from);
    const end = found < 0 ? bytes.length : found;
    const line = bytes.subarray(from, end);
    if (line.some((byte) => byte > BLANK)) lines.push(line);
    from = end + 1;
  }
  return lines;
}

/** An unread line as an export document carries it; undefined where it is none. */
function carried(x: unknown): Buffer | undefined {
  const base64 = membersOf(x)?.['base64'];
  const bytes =
    typeof x === 'string'
      ? Buffer.from(x, 'utf8')
      : typeof base64 === 'string'
        ? Buffer.from(base64, 'base64')
        : Buffer.alloc(0);
  const isLine = bytes.length > 0 && bytes.length <= MOST_CARRIED_BYTES && !bytes.includes(NEWLINE);
  return isLine ? bytes : undefined;
}

const fits = (x: unknown): x is HistoryEntry =>
  isEntry(x) && Buffer.byteLength(JSON.stringify(x)) < MAX_LINE_BYTES;

interface Parts {
  readonly answers: readonly unknown[];
  readonly unread: readonly (Buffer | undefined)[];
  readonly studio?: ReadStudio;
}

/** The parts of an export document; undefined where the file is none. */
function documentIn(bytes: Buffer): Parts | undefined {
  const [first = ''] = bytes.subarray(0, MAX_LINE_BYTES).toString('utf8').trimStart().split('\n', 1);
  // Where it is not one document: perhaps lines, of which the first is damaged.
  if (parseEntry(first) !== undefined || !first.startsWith('{') || !isUtf8(bytes)) return undefined;
  const { kind, schemaVersion, answers, unread = [], studio } = membersOf(jsonOf(textOf(bytes))) ?? {};
  if (kind !== KIND) return undefined;
  if (schemaVersion !== 1)
    throw new DataError('it was written by a newer version of the program; bring the program up to date');
  if (!Array.isArray(answers) || !Array.isArray(unread)) return undefined;
  return {
    answers,
    unread: unread.map(carried),
    ...(studio !== undefined && { studio: readCarried(studio) }),
  };
}

/** Lines as a record keeps them: what is no answer stays as it stands, where there is any that a record would hold. */
function partsOf(bytes: Buffer): Parts {
  const lines = linesOf(bytes);
  const answers: HistoryEntry[] = [];
  const unread: Buffer[] = [];
  let isRecord = false;
  for (const line of lines) {
    const text = line.length < MAX_LINE_BYTES ? line.toString('utf8') : '';
    const entry = parseEntry(text);
    isRecord ||= entry !== undefined || isNewer(text);
    if (entry === undefined) unread.push(line);
    else answers.push(entry);
  }
  if (!isRecord) return { answers: lines.map(() => undefined), unread: [] };
  return { answers, unread: unread.map((line) => (line.length <= MOST_CARRIED_BYTES ? line : undefined)) };
}

function checked(file: Buffer): ReadImport {
  const bytes = file.subarray(0, 3).equals(BYTE_ORDER_MARK) ? file.subarray(3) : file;
  const { answers, unread, studio } = documentIn(bytes) ?? partsOf(bytes);
  const count = answers.length + unread.length;
  if (count > MAX_LINES)
    throw new DataError(`it has more than ${MAX_LINES.toLocaleString('en')} answers; split it`);
  const entries = answers.filter(fits);
  const kept = unread.filter((line) => line !== undefined);
  const refused = count - entries.length - kept.length;
  // What an older version could not read, this one perhaps can.
  const read = kept.map((line) => parseEntry(line.toString('utf8')));
  entries.push(...read.filter((entry) => entry !== undefined));
  if (refused === count && count > 0)
    throw new DataError('there is no answer in it that can be used; give a file made by "record export"');
  const firstRefused = answers.findIndex((x) => !fits(x));
  return {
    entries,
    unread: kept.filter((_, place) => read[place] === undefined),
    refused,
    ...(studio !== undefined && { studio }),
    ...(refused > 0 && {
      firstRefused: 1 + (firstRefused >= 0 ? firstRefused : answers.length + unread.indexOf(undefined)),
    }),
  };
}

/**
 * Reads an exported record and checks every answer.
 * @param input what came in at standard input, where that is read in the place of the file
 * @throws DataError when the file cannot be read or holds no answer that can be used
 */
export function readImport(path: string, input?: Buffer): ReadImport {
  const shown = input === undefined ? shownPath(path) : 'standard input';
  return withWords(
    'read',
    () => checked(input ?? readBytes(path, MOST_IMPORT_BYTES)),
    (words, options) => new DataError(`${shown}: ${words}`, options),
  );
}

/** The same answer gives the same key, whatever the order of its members. */
const keyOf = (entry: HistoryEntry): string => hash('sha1', canonicalJson(entry), 'base64');

const lineKey = (line: Buffer): string => hash('sha1', line, 'base64');

/** What the record does not hold yet, each once, in the order of the file. */
function missingFrom(files: LearnerFiles, { entries, unread }: ReadImport) {
  const seen = new Set<string>();
  const isNew = (key: string): boolean => seen.size < seen.add(key).size;
  withRecord(files.record, (file) => {
    for (const { entry, bytes } of distinctLines(file)) seen.add(entry ? keyOf(entry) : lineKey(bytes));
  });
  return {
    entries: entries.filter((entry) => isNew(keyOf(entry))),
    unread: unread.filter((line) => isNew(lineKey(line.subarray(0, MAX_LINE_BYTES)))),
  };
}

/**
 * Adds what the record does not hold yet, while no other program brings anything in.
 * @returns how many answers, and how many lines that cannot be read, were added
 * @throws StoreError when the record cannot be read or written
 */
export function bringIn(
  files: LearnerFiles,
  learner: string,
  read: ReadImport,
): { readonly answers: number; readonly unread: number } {
  const told = (words: string, cause: ErrorOptions): StoreError =>
    new StoreError(
      `${shownPath(files.record)}: ${words}; not all answers were added, bring the file in again`,
      cause,
    );
  return withWords(
    'keep',
    () => {
      makePlace(files, learner);
      return withLock(files.lock, () => {
        const { entries, unread } = missingFrom(files, read);
        appendAnswers(files.record, entries);
        appendUnread(files.record, unread);
        return { answers: entries.length, unread: unread.length };
      });
    },
    told,
  );
}

/**
 * Begins a new record, and a studio without boxes; the old ones are kept beside them with the date in their names.
 * @returns the path of the copy of the record, or of the boxes where there was none; undefined when there was neither
 * @throws StoreError when it cannot be moved; then nothing has changed
 */
export function resetRecord(files: LearnerFiles, now: Date): string | undefined {
  const there = [files.record, files.studio].filter((path) => existsSync(path));
  if (there.length === 0) return undefined;
  const stamp = now.toISOString().slice(0, 19).replaceAll(':', '-');
  const aside = (path: string) => {
    const { name, ext } = parse(path);
    return moveAside(path, (n) =>
      join(files.folder, `${name}.until-${stamp}${n === 1 ? '' : `-${n}`}${ext}`),
    );
  };
  return withWords(
    'keep',
    () =>
      withLock(files.lock, () => {
        const [kept] = there.map(aside);
        for (const made of [files.summary, files.checked]) rmSync(made, { force: true });
        return kept;
      }),
    (words, options) => new StoreError(`${shownPath(files.record)}: ${words}; nothing was changed`, options),
  );
}
