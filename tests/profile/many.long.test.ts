/** A record of more than a million answers counts whole, and is read from its checkpoint. */
import { appendFileSync, closeSync, openSync, readFileSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { entryLine } from '../../src/practice/index.js';
import { loadRecord } from '../../src/profile/index.js';
import { answerNo, freshHome } from './helpers.js';

const home = freshHome();
const MANY = 1_050_000;
const PIECE = 10_000;

it('counts all of its answers, in order and not, and goes on from there', () => {
  const record = join(home.path, 'record.jsonl');
  const summary = join(home.path, 'summary.json');
  const fd = openSync(record, 'w');
  for (let from = 0; from < MANY; from += PIECE)
    writeSync(fd, Array.from({ length: PIECE }, (_, n) => entryLine(answerNo(from + n))).join(''));
  closeSync(fd);
  const first = loadRecord(record, summary);
  expect([first.lines, first.standing.answers, first.isCut]).toEqual([MANY, MANY, false]);
  const { bytes, lines } = JSON.parse(readFileSync(summary, 'utf8').split('\n')[0] ?? '');
  expect([bytes, lines]).toEqual([statSync(record).size, MANY]);

  // One answer of yesterday, and some that stand there already.
  appendFileSync(record, [-1000, 7, 70, MANY - 1].map((n) => entryLine(answerNo(n))).join(''));
  const again = loadRecord(record, summary);
  expect([again.lines, again.standing.answers]).toEqual([MANY + 4, MANY + 1]);
});
