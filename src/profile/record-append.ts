/**
 * Writing the record: one file a learner, one JSON line an answer, only ever appended to. Each answer is one write to
 * a file opened for appending, so that two programs at once lose nothing, and is on disk when the call returns.
 */
import { closeSync, existsSync, fstatSync, fsyncSync, openSync, readSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import type { HistoryEntry } from '../practice/index.js';
import { entryLine } from '../practice/index.js';

const NEWLINE = 10;
/** Most bytes given to one write when many answers are brought in. */
const BATCH_BYTES = 1 << 20;

/** Some network and virtual file systems know no flush; there the write itself is all that can be had. */
function flush(fd: number): void {
  try {
    fsyncSync(fd);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== 'EINVAL' && code !== 'ENOTSUP' && code !== 'ENOSYS') throw error;
  }
}

/** Whether the file ends in the middle of a line: a program was killed, or the disk was full, while it wrote. */
function endsTorn(fd: number): boolean {
  const { size } = fstatSync(fd);
  if (size === 0) return false;
  const last = Buffer.alloc(1);
  return readSync(fd, last, 0, 1, size - 1) === 1 && last[0] !== NEWLINE;
}

/** A new file is only safe once its folder is on disk too. */
function flushFolder(path: string): void {
  try {
    const fd = openSync(dirname(path), 'r');
    try {
      fsyncSync(fd);
    } finally {
      closeSync(fd);
    }
  } catch {
    // Windows opens no folders; the file itself has been flushed.
  }
}

/**
 * Appends whole lines in one write and flushes them.
 * @param text one or more lines, each ending in a newline
 * @throws the fault of the file system (ENOSPC, EACCES, ...); a part that was written stays as a torn line, which the
 * next append closes and the reader sets aside
 */
export function appendText(path: string, text: string): void {
  const isNew = !existsSync(path);
  const fd = openSync(path, 'a+', 0o600);
  try {
    const bytes = Buffer.from(endsTorn(fd) ? `\n${text}` : text, 'utf8');
    const written = writeSync(fd, bytes);
    if (written < bytes.length) throw Object.assign(new Error('the write was cut short'), { code: 'ENOSPC' });
    flush(fd);
  } finally {
    closeSync(fd);
  }
  if (isNew) flushFolder(path);
}

/**
 * Appends one answer; it is on disk when this returns.
 * @throws RangeError when the line is too long; else as {@link appendText}
 */
export function appendAnswer(path: string, entry: HistoryEntry): void {
  appendText(path, entryLine(entry));
}

/** Appends many answers, about a megabyte a write. */
export function appendAnswers(path: string, entries: Iterable<HistoryEntry>): void {
  let batch: string[] = [];
  let bytes = 0;
  const write = (): void => {
    if (batch.length > 0) appendText(path, batch.join(''));
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
