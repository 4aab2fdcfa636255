/** The record of answers: written, read, and counted once each in order of time. */
import { appendFileSync, existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { entryLine, foldSorted, standingToJson } from '../../src/practice/index.js';
import {
  appendAnswer,
  appendAnswers,
  learnerFiles,
  loadRecord,
  readEntries,
} from '../../src/profile/index.js';
import { IN_MUTANTS } from '../cases.js';
import { callsOf, whileCalling } from '../files/calls.js';
import { answerNo, DAY, freshHome, many, START } from './helpers.js';

const home = freshHome();
let record = '';
let summary = '';
beforeEach(() => {
  const files = learnerFiles(home.path, 'Ada');
  mkdirSync(files.folder, { recursive: true });
  record = files.record;
  summary = files.summary;
});

describe('the record', () => {
  it('holds one line an answer, each ending in a newline, for its owner alone', () => {
    for (const entry of many(3)) appendAnswer(record, entry);
    expect(readFileSync(record, 'utf8')).toBe(many(3).map(entryLine).join(''));
    expect(statSync(record).mode & 0o777).toBe(0o600);
    expect(readEntries(record)).toEqual(many(3));
  });

  it('has an answer on disk when the call returns, and many with one flush', () => {
    appendAnswer(record, answerNo(0));
    expect(callsOf(() => appendAnswer(record, answerNo(1)))).toEqual(['writeSync', 'fsyncSync file']);
    expect(callsOf(() => appendAnswers(record, many(50, 2)))).toEqual(['writeSync', 'fsyncSync file']);
    expect(callsOf(() => appendAnswers(record, []))).toEqual([]);
  });

  it('is empty where there is no file', () => {
    expect(loadRecord(record).standing.answers).toBe(0);
    expect(readEntries(record)).toEqual([]);
  });

  it('reads long lines across the pieces in which the file is read, and writes them in pieces of a megabyte', () => {
    const long = many(180).map((entry) => ({ ...entry, more: 'x'.repeat(12_000) }));
    const calls = callsOf(() => appendAnswers(record, long));
    expect(calls.filter((call) => call === 'writeSync')).toHaveLength(3);
    expect(statSync(record).size).toBeGreaterThan(2 << 20);
    expect(readEntries(record)).toEqual(long);
    expect(standingToJson(loadRecord(record).standing)).toBe(standingToJson(foldSorted(many(180))));
  });

  it('reads on where the system gives less than was asked for, and ends where the file ends sooner', () => {
    appendAnswers(record, many(8));
    type Read = (fd: number, bytes: Buffer, offset: number, length: number, at: number) => number;
    const reading = (read: (sound: Read) => Read, work: () => void) =>
      whileCalling('readSync', read as never, work);
    let told = loadRecord(record);
    const inPieces =
      (sound: Read): Read =>
      (fd, bytes, offset, length, at) => {
        bytes.fill('\n');
        return sound(fd, bytes, offset, Math.min(100, length), at);
      };
    reading(inPieces, () => {
      told = loadRecord(record);
    });
    expect([told.lines, told.foreignCount, standingToJson(told.standing)]).toEqual([
      8,
      0,
      standingToJson(foldSorted(many(8))),
    ]);
    reading(
      () => () => 0,
      () => {
        told = loadRecord(record);
      },
    );
    expect(told.lines).toBe(0);
  });

  it('is a fault where it cannot be read, not an empty record', () => {
    mkdirSync(record);
    expect(() => loadRecord(record)).toThrow('EISDIR');
    expect(() => readEntries(record)).toThrow('EISDIR');
  });

  it('counts an answer ahead of the clock once, wherever it stands again', () => {
    appendAnswers(record, [answerNo(5), answerNo(6), answerNo(5)]);
    expect(loadRecord(record, undefined, START).standing.ahead?.count).toBe(2);
    expect(loadRecord(record, undefined, START).standing.answers).toBe(2);
  });

  it('takes an earlier last line without its newline in its place', () => {
    writeFileSync(
      record,
      entryLine(answerNo(30)) + entryLine(answerNo(40)) + entryLine(answerNo(0)).trimEnd(),
    );
    const wanted = standingToJson(foldSorted([answerNo(0), answerNo(30), answerNo(40)]));
    expect(standingToJson(loadRecord(record).standing)).toBe(wanted);
  });

  it('counts a line once that was written twice running after a failed flush', () => {
    const line = entryLine(answerNo(0));
    writeFileSync(record, line + line + entryLine(answerNo(1)));
    expect(loadRecord(record).standing.answers).toBe(2);
    expect(readEntries(record)).toHaveLength(2);
  });

  it('counts a line once, wherever it stands again, before a checkpoint and after it', () => {
    const lines = many(700).map(entryLine);
    writeFileSync(record, [...lines, ...lines, ...lines].join(''));
    const once = standingToJson(foldSorted(many(700)));
    expect(standingToJson(loadRecord(record, summary).standing)).toBe(once);
    expect(readEntries(record)).toEqual(many(700));
    appendFileSync(record, lines.slice(300, 320).join(''));
    expect(existsSync(summary)).toBe(true);
    expect(standingToJson(loadRecord(record, summary).standing)).toBe(once);
    appendAnswers(record, many(3, 700));
    expect(loadRecord(record, summary).standing.answers).toBe(703);
  });

  it('tells answers apart that two programs gave at the same moment', () => {
    const { at } = answerNo(1);
    appendAnswers(record, [answerNo(0), answerNo(1), answerNo(2, { at }), answerNo(3, { at })]);
    expect(loadRecord(record).standing.answers).toBe(4);
  });

  it.skipIf(IN_MUTANTS)('reads lines that lie across the pieces in which the file is read', () => {
    appendAnswers(record, many(9000));
    expect(statSync(record).size).toBeGreaterThan(2 << 20);
    expect(readEntries(record)).toEqual(many(9000));
  });

  it('folds answers in order of time when some were brought in later', () => {
    const late = many(20);
    const early = many(20).map((entry, i) => ({
      ...entry,
      at: new Date(START - 9 * DAY + i * 60_000).toISOString(),
    }));
    appendAnswers(record, [...late, ...early]);
    expect(standingToJson(loadRecord(record).standing)).toBe(standingToJson(foldSorted([...early, ...late])));
  });
});
