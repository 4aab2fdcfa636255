/** The checkpoint of a record: the same standing as the record itself, and never needed. */
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
import { appendAnswers, learnerFiles, loadRecord } from '../../src/profile/index.js';
import { freshHome, many, START } from './helpers.js';

const home = freshHome();
let record = '';
let summary = '';
beforeEach(() => {
  const files = learnerFiles(home.path, 'Ada');
  mkdirSync(files.folder, { recursive: true });
  record = files.record;
  summary = files.summary;
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
