/**
 * Writing the record: one file a learner, one JSON line an answer, only ever appended to. Each answer is one write, so
 * that two programs at once lose nothing, and is on disk when the call returns.
 */
import { appendLines, PRIVATE } from '../files/write.js';
import type { HistoryEntry } from '../practice/index.js';
import { entryLine } from '../practice/index.js';

/** Most bytes given to one write when many answers are brought in. */
const BATCH_BYTES = 1 << 20;

/**
 * Appends one answer; it is on disk when this returns.
 * @throws StoreError when the line is too long; else the fault of the file system
 */
export function appendAnswer(path: string, entry: HistoryEntry): void {
  appendLines(path, entryLine(entry), PRIVATE);
}

/** Appends many answers, about a megabyte a write. */
export function appendAnswers(path: string, entries: Iterable<HistoryEntry>): void {
  let batch: string[] = [];
  let bytes = 0;
  const write = (): void => {
    if (batch.length > 0) appendLines(path, batch.join(''), PRIVATE);
    batch = [];
    bytes = 0;
  };
  for (const entry of entries) {
    const line = entryLine(entry);
    batch.push(line);
    bytes += line.length;
    if (bytes >= BATCH_BYTES) write();
  }
  write();
}
