/** Lines of the record that are torn, foreign, empty or too long: passed over, named, and kept. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { entryLine } from '../../src/practice/index.js';
import { appendAnswer, learnerFiles, loadRecord, readEntries } from '../../src/profile/index.js';
import { appendUnread } from '../../src/profile/record-append.js';
import { setAside } from '../../src/profile/set-aside.js';
import { callsOf } from '../files/calls.js';
import { answerNo, freshHome, many } from './helpers.js';

const home = freshHome();
let record = '';
let aside = '';
beforeEach(() => {
  const files = learnerFiles(home.path, 'Ada');
  mkdirSync(files.folder, { recursive: true });
  record = files.record;
  aside = files.setAside;
});

describe('the record', () => {
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

  it('counts a foreign line once that stands there twice running, and gives the answers without it', () => {
    writeFileSync(record, `what\nwhat\n${entryLine(answerNo(0))}`);
    expect(loadRecord(record)).toMatchObject({ lines: 3, foreignCount: 1 });
    expect(readEntries(record)).toEqual(many(1));
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
});
