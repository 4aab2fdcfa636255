/**
 * Writing the record: one file a learner, one JSON line an answer, only ever appended to. Each answer is one write, so
 * that two programs at once lose nothing, and is on disk when the call returns.
 */
import { appendLines, PRIVATE } from '../files/write.js';
import type { HistoryEntry } from '../practice/index.js';
import { entryLine } from '../practice/index.js';

/** Most bytes given to one write when many answers are brought in. */
const BATCH_BYTES = 1 << 20;
const NEWLINE = 10;

/**
 * Appends one answer; it is on disk when this returns.
 * @throws StoreError when the line is too long; else the fault of the file system
 */
export function appendAnswer(path: string, entry: HistoryEntry): void {
  appendLines(path, entryLine(entry), PRIVATE);
}

/** Appends lines, each ending in a newline, about a megabyte a write. */
function appendMany(path: string, lines: Iterable<Buffer>): void {
  let batch: Buffer[] = [];
  let bytes = 0;
  const write = (): void => {
    if (batch.length > 0) appendLines(path, Buffer.concat(batch), PRIVATE);
    batch = [];
    bytes = 0;
  };
  for (const line of lines) {
    batch.push(line);
    bytes += line.length;
    if (bytes >= BATCH_BYTES) write();
  }
  write();
}

function* linesFor(entries: Iterable<HistoryEntry>): Generator<Buffer> {
  for (const entry of entries) yield Buffer.from(entryLine(entry), 'utf8');
}

/** Appends many answers. @throws as {@link appendAnswer} */
export function appendAnswers(path: string, entries: Iterable<HistoryEntry>): void {
  appendMany(path, linesFor(entries));
}

/** Appends lines that this version cannot read, as they stand. */
export function appendUnread(path: string, lines: readonly Buffer[]): void {
  appendMany(
    path,
    lines.map((line) => Buffer.concat([line, Buffer.of(NEWLINE)])),
  );
}
