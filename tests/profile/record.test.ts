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
import { crc32 } from 'node:zlib';
import { beforeEach, describe, expect, it } from 'vitest';
import { entryLine, foldSorted, standingToJson } from '../../src/practice/index.js';
import {
  appendAnswer,
  appendAnswers,
  learnerFiles,
  loadRecord,
  readEntries,
} from '../../src/profile/index.js';
import { appendUnread } from '../../src/profile/record-append.js';
import { setAside } from '../../src/profile/set-aside.js';
import { IN_MUTANTS } from '../cases.js';
import { callsOf, whileCalling } from '../files/calls.js';
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

  it('passes over empty lines, the first one too', () => {
    writeFileSync(record, `\n${entryLine(answerNo(0))}\n\n${entryLine(answerNo(1))}`);
    expect(loadRecord(record)).toMatchObject({ lines: 2, foreignCount: 0 });
    expect(readEntries(record)).toEqual(many(2));
  });

  it('calls a last line without a newline too long where it is', () => {
    for (const length of [16_384, 20_000, 1_100_000]) {
      writeFileSync(record, `${entryLine(answerNo(0))}${'y'.repeat(length)}`);
      expect(loadRecord(record).foreign).toMatchObject([{ why: 'too-long' }]);
    }
    writeFileSync(record, `${entryLine(answerNo(0))}${'y'.repeat(16_383)}`);
    expect(loadRecord(record).foreign).toMatchObject([{ why: 'torn' }]);
  });

  it('is a fault where it cannot be read, not an empty record', () => {
    mkdirSync(record);
    expect(() => loadRecord(record)).toThrow('EISDIR');
    expect(() => readEntries(record)).toThrow('EISDIR');
  });

  it('counts a foreign line once that stands there twice running, and gives the answers without it', () => {
    writeFileSync(record, `what\nwhat\n${entryLine(answerNo(0))}`);
    expect(loadRecord(record)).toMatchObject({ lines: 3, foreignCount: 1 });
    expect(readEntries(record)).toEqual(many(1));
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

  it('takes lines of another program as they stand', () => {
    appendUnread(record, [Buffer.from('{"v":2}'), Buffer.from([0xff, 0xfe])]);
    expect(readFileSync(record)).toEqual(
      Buffer.concat([Buffer.from('{"v":2}\n'), Buffer.from([0xff, 0xfe, 0x0a])]),
    );
  });

  it('sets foreign lines aside once', () => {
    writeFileSync(record, `gibberish\n${entryLine(answerNo(0))}gibberish\nmore\n`);
    const { foreign } = loadRecord(record);
    expect(setAside(aside, foreign)).toBe(2);
    expect(callsOf(() => expect(setAside(aside, foreign)).toBe(0))).toEqual([]);
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

  it('stays as it is while few answers were added', () => {
    const before = readFileSync(summary, 'utf8');
    appendAnswers(record, many(30, 1200));
    expect(loadRecord(record, summary).standing.answers).toBe(1230);
    expect(readFileSync(summary, 'utf8')).toBe(before);
  });

  it('holds for more than a megabyte, to the byte where it ends', () => {
    rmSync(record);
    const long = (count: number, from: number) =>
      many(count, from).map((entry) => ({ ...entry, more: 'x'.repeat(2500) }));
    writeFileSync(record, 'what is this\n');
    appendAnswers(record, long(520, 0));
    expect(loadRecord(record, summary).foreign).toHaveLength(1);
    appendAnswers(record, long(5, 520));
    const loaded = loadRecord(record, summary);
    expect(loaded).toMatchObject({ lines: 526, foreignCount: 1, foreign: [] });
    expect(standingToJson(loaded.standing)).toBe(fold(525));
  });

  it('is not used where a figure in it is none', () => {
    const [head = '', body = ''] = readFileSync(summary, 'utf8').split('\n');
    const written = JSON.parse(head) as Record<string, unknown>;
    for (const name of ['bytes', 'crc', 'lines', 'foreign', 'newer']) {
      for (const wrong of [0.5, null, '1200', 1e300]) {
        writeFileSync(summary, `${JSON.stringify({ ...written, [name]: wrong })}\n${body}`);
        expect(loadRecord(record, summary)).toMatchObject({ lines: 1200, foreignCount: 0, newerCount: 0 });
      }
    }
    writeFileSync(summary, `${JSON.stringify({ ...written, body: crc32('null') })}\nnull`);
    expect(loadRecord(record, summary).standing.answers).toBe(1200);
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
