/** Bringing a record out, whole: answers as the record has them, whatever this version cannot read, and the learner's boxes. */
import { StoreError } from '../errors.js';
import { shownPath, withWords } from '../files/faults.js';
import { bytesAt } from '../files/read.js';
import { escapeInvisible } from '../text/sanitize.js';
import { type CarriedStudio, carriedStudio } from './own-transfer.js';
import type { LearnerFiles } from './place.js';
import { withRecord } from './record-lines.js';
import { distinctLines, MAX_LINES } from './record-load.js';

/** What an export document calls itself. */
export const KIND = 'mudlark-record';
/** Longest line that is carried unread, bytes. */
export const MOST_CARRIED_BYTES = 1_000_000;

export type ExportFormat = 'json' | 'jsonl';

interface ExportLine {
  readonly bytes: Buffer;
  readonly isAnswer: boolean;
}

/** A record as it is to be brought out. */
export interface RecordContent {
  readonly lines: readonly ExportLine[];
  /** Lines in it that this version cannot read; and those too long to be carried, which are not in it. */
  readonly unread: number;
  readonly leftOut: number;
  /** What the learner has put together. */
  readonly studio: CarriedStudio;
}

/**
 * Reads a record for an export: every line once, in the order of the file.
 * @throws StoreError when it cannot be read
 */
export function readContent(files: LearnerFiles | undefined): RecordContent {
  const lines: ExportLine[] = [];
  let leftOut = 0;
  const studio = carriedStudio(files);
  if (files === undefined) return { lines, unread: 0, leftOut, studio };
  withWords(
    'read',
    () =>
      withRecord(files.record, (file) => {
        for (const { bytes, entry, isTooLong, offset, size } of distinctLines(file)) {
          if (lines.length >= MAX_LINES) break;
          if (size > MOST_CARRIED_BYTES) leftOut += 1;
          else
            lines.push({
              bytes: isTooLong ? bytesAt(file, offset, size) : bytes,
              isAnswer: entry !== undefined,
            });
        }
      }),
    (words, cause) => new StoreError(`${shownPath(files.record)}: ${words}`, cause),
  );
  return { lines, unread: lines.filter(({ isAnswer }) => !isAnswer).length, leftOut, studio };
}

/** A line that cannot be read, as a member of the document: its text, or its bytes where they are no text. */
function unreadMember(bytes: Buffer): string {
  const text = bytes.toString('utf8');
  const isText = Buffer.from(text, 'utf8').equals(bytes);
  return escapeInvisible(JSON.stringify(isText ? text : { base64: bytes.toString('base64') }));
}

function* list(members: Iterable<string>): Generator<string> {
  let isFirst = true;
  yield '[';
  for (const member of members) {
    yield `${isFirst ? '' : ','}\n${member}`;
    isFirst = false;
  }
  yield isFirst ? ']' : '\n]';
}

/** A record as text, piece by piece: one JSON document, or the lines as they are kept. */
export function* exportPieces(
  { lines, unread, studio }: RecordContent,
  learner: string,
  format: ExportFormat,
  now: Date,
): Generator<string | Uint8Array> {
  if (format === 'jsonl') {
    for (const { bytes } of lines) {
      yield bytes;
      yield '\n';
    }
    return;
  }
  const head = escapeInvisible(
    JSON.stringify({ schemaVersion: 1, kind: KIND, learner, exported: now.toISOString() }),
  );
  const those = (isAnswer: boolean) => lines.filter((line) => line.isAnswer === isAnswer);
  yield `${head.slice(0, -1)},"answers":`;
  yield* list(those(true).map(({ bytes }) => escapeInvisible(bytes.toString('utf8'))));
  if (unread > 0) {
    yield ',"unread":';
    yield* list(those(false).map(({ bytes }) => unreadMember(bytes)));
  }
  if (studio.json !== undefined) yield `,"studio":${escapeInvisible(studio.json)}`;
  yield '}\n';
}
