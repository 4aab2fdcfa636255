import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { entryLine, foldSorted, standingToJson } from '../../src/practice/index.js';
import {
  appendAnswer,
  appendAnswers,
  learnerFiles,
  loadRecord,
  readEntries,
} from '../../src/profile/index.js';
import { setAside } from '../../src/profile/set-aside.js';
import { callsOf } from '../files/calls.js';
import { IN_MUTANTS } from '../mutants.js';
import { answerNo, DAY, freshHome, START } from './helpers.js';

const home = freshHome();
let record = '';
let summary = '';
let aside = '';
beforeEach(() => {
  const files = learnerFiles(home.path, 'Ada');
  mkdirSync(files.folder, { recursive: true });
  record = files.record;
  summary = files.summary;
  aside = files.setAside;
});

const many = (count: number, from = 0) => Array.from({ length: count }, (_, i) => answerNo(from + i));

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

  it('closes a torn last line before it writes the next, wherever it was cut', () => {
    const whole = entryLine(answerNo(1));
    for (let cut = 1; cut < whole.length - 1; cut += 7) {
      writeFileSync(record, entryLine(answerNo(0)) + whole.slice(0, cut));
      const before = loadRecord(record);
      expect([before.standing.answers, before.foreignCount]).toEqual([1, 1]);
      expect(before.foreign[0]?.why).toBe('torn');
      appendAnswer(record, answerNo(2));
      const after = loadRecord(record);
      expect([after.standing.answers, after.foreignCount]).toEqual([2, 1]);
    }
  });

  it('counts a last line that lacks only its newline', () => {
    writeFileSync(record, entryLine(answerNo(0)).trimEnd());
    expect(loadRecord(record)).toMatchObject({ lines: 1, foreignCount: 0 });
    appendAnswer(record, answerNo(1));
    expect(readEntries(record)).toEqual(many(2));
  });

  it('passes over foreign lines of every kind and names them', () => {
    const endless = `{"v":1,"x":"${'y'.repeat(3_000_000)}`;
    const bytes = Buffer.concat([
      Buffer.from(entryLine(answerNo(0))),
      Buffer.from('not json\n\n{"v":2}\n[]\n'),
      Buffer.from([0xff, 0xfe, 0x00, 0x0a]),
      Buffer.from(`${endless}\n`),
      Buffer.from(entryLine(answerNo(1))),
    ]);
    writeFileSync(record, bytes);
    const { standing, foreign, foreignCount, newerCount, lines } = loadRecord(record);
    expect([standing.answers, foreignCount, newerCount, lines]).toEqual([2, 4, 1, 7]);
    expect(foreign.map(({ why }) => why)).toEqual(['foreign', 'foreign', 'foreign', 'too-long']);
    expect(foreign[2]?.base64).toBe(Buffer.from([0xff, 0xfe, 0x00]).toString('base64'));
    expect(foreign[3]?.text.length).toBeLessThanOrEqual(16_384);
    expect(readFileSync(record).equals(bytes)).toBe(true);
  });

  it('says of a foreign line where it begins, and whether it was cut off', () => {
    const whole = entryLine(answerNo(0));
    writeFileSync(record, `${whole}${whole.slice(0, 40)}\n\ngibberish\n{"v":1,"x":2}\nhalf`);
    const { foreign, foreignCount, lines } = loadRecord(record);
    expect(foreign).toEqual([
      { offset: whole.length, why: 'torn', text: whole.slice(0, 40) },
      { offset: whole.length + 42, why: 'foreign', text: 'gibberish' },
      { offset: whole.length + 52, why: 'foreign', text: '{"v":1,"x":2}' },
      { offset: whole.length + 66, why: 'torn', text: 'half' },
    ]);
    expect([foreignCount, lines]).toEqual([4, 5]);
  });

  it('reads a line of 16,384 bytes with its newline, and calls a longer one too long', () => {
    const bare = entryLine(answerNo(0)).slice(0, -2);
    const long = (bytes: number): string => `${bare},"x":"`.padEnd(bytes - 3, 'y').concat('"}\n');
    writeFileSync(record, long(16_384) + long(16_385) + long(16_384).slice(0, -1));
    const loaded = loadRecord(record);
    expect(loaded.lines).toBe(3);
    // The last lacks its newline only.
    expect([loaded.standing.answers, loaded.foreignCount]).toEqual([1, 1]);
    expect(loaded.foreign).toMatchObject([{ offset: 16_384, why: 'too-long' }]);
    expect(loaded.foreign[0]?.text).toHaveLength(16_384);
  });

  it('hands on a thousand foreign lines in one go, and counts them all', () => {
    writeFileSync(record, Array.from({ length: 1002 }, (_, n) => `foreign ${n}\n`).join(''));
    const { foreign, foreignCount } = loadRecord(record);
    expect([foreign.length, foreignCount, foreign.at(-1)?.text]).toEqual([1000, 1002, 'foreign 999']);
  });

  it('sets foreign lines aside once', () => {
    writeFileSync(record, `gibberish\n${entryLine(answerNo(0))}gibberish\nmore\n`);
    const { foreign } = loadRecord(record);
    expect(setAside(aside, foreign)).toBe(2);
    expect(setAside(aside, foreign)).toBe(0);
    const copies = readFileSync(aside, 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line).text);
    expect(copies).toEqual(['gibberish', 'more']);
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

describe('the checkpoint', () => {
  const fold = (count: number): string => standingToJson(foldSorted(many(count)));

  beforeEach(() => {
    appendAnswers(record, many(1200));
    loadRecord(record, summary);
    expect(existsSync(summary)).toBe(true);
  });

  it('gives the same standing as the record itself, also with answers added since', () => {
    expect(standingToJson(loadRecord(record, summary).standing)).toBe(fold(1200));
    appendAnswers(record, many(30, 1200));
    const loaded = loadRecord(record, summary);
    expect(standingToJson(loaded.standing)).toBe(fold(1230));
    expect(loaded.lines).toBe(1230);
  });

  it('is made anew when many answers were added', () => {
    appendAnswers(record, many(700, 1200));
    loadRecord(record, summary);
    const head = JSON.parse(readFileSync(summary, 'utf8').split('\n')[0] as string);
    expect(head).toMatchObject({ lines: 1900, bytes: statSync(record).size });
    expect(standingToJson(loadRecord(record, summary).standing)).toBe(fold(1900));
  });

  it('is not used when the record was changed in the middle, cut short, or replaced', () => {
    const bytes = readFileSync(record);
    const changed = Buffer.from(bytes);
    const at = changed.indexOf('"verdict":"good"', 100_000) + '"verdict":"'.length;
    changed.write('xxxx', at);
    writeFileSync(record, changed);
    expect(loadRecord(record, summary)).toMatchObject({ foreignCount: 1, lines: 1200 });

    writeFileSync(record, bytes);
    const lines = bytes.toString('utf8').split('\n');
    truncateSync(record, `${lines.slice(0, 600).join('\n')}\n`.length);
    expect(standingToJson(loadRecord(record, summary).standing)).toBe(fold(600));

    writeFileSync(record, many(5).map(entryLine).join(''));
    expect(loadRecord(record, summary).standing.answers).toBe(5);
  });

  it('is not used when it is damaged itself, and can be deleted', () => {
    const text = readFileSync(summary, 'utf8');
    for (const wrong of [
      '',
      '{',
      'null\n',
      text.slice(0, -20),
      text.replace('"answers":1200', '"answers":9999'),
    ]) {
      writeFileSync(summary, wrong);
      expect(standingToJson(loadRecord(record, summary).standing)).toBe(fold(1200));
    }
    rmSync(summary);
    expect(loadRecord(record, summary).standing.answers).toBe(1200);
  });

  it('remembers how many lines could not be read', () => {
    appendFileSync(record, 'what is this\n');
    appendAnswers(record, many(600, 1200));
    expect(loadRecord(record, summary)).toMatchObject({ foreignCount: 1, lines: 1801 });
    expect(loadRecord(record, summary)).toMatchObject({ foreignCount: 1, lines: 1801, foreign: [] });
  });

  it('is written from 500 lines on, for its owner alone, and never for a record that ends in a torn line', () => {
    rmSync(summary);
    writeFileSync(record, many(499).map(entryLine).join(''));
    loadRecord(record, summary);
    expect(existsSync(summary)).toBe(false);
    writeFileSync(record, many(500).map(entryLine).join('').slice(0, -1));
    loadRecord(record, summary);
    expect(existsSync(summary)).toBe(false);
    appendFileSync(record, '\n');
    loadRecord(record, summary);
    expect(JSON.parse(readFileSync(summary, 'utf8').split('\n')[0] as string)).toMatchObject({ lines: 500 });
    expect(statSync(summary).mode & 0o777).toBe(0o600);
  });

  it('holds for answers under one clock: where that goes back over them, they are counted anew', () => {
    const lastMs = START + 1199 * 60_000;
    const ahead = loadRecord(record, summary, lastMs - 60_000).standing.ahead;
    expect(ahead).toEqual({ count: 1, firstMs: lastMs, lastMs });
    expect(loadRecord(record, summary, lastMs).standing.ahead).toBeUndefined();
  });

  it('remembers what a newer version of the program wrote', () => {
    appendFileSync(record, '{"v":2}\n');
    appendAnswers(record, many(600, 1200));
    for (let time = 0; time < 2; time += 1)
      expect(loadRecord(record, summary)).toMatchObject({
        newerCount: 1,
        foreignCount: 0,
        lines: 1801,
        isCut: false,
      });
  });

  it('is not needed: a folder that cannot take it changes nothing', () => {
    const nowhere = join(dirname(record), 'missing', 'summary.json');
    expect(loadRecord(record, nowhere).standing.answers).toBe(1200);
  });
});
