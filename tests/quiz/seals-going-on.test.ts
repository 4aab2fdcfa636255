/** Going on with a file that was edited, renamed or cut: a break stays on record. */
import { mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { markClass } from '../../src/quiz/class.js';
import { readAnswers } from '../../src/quiz/files/read-files.js';
import { openSitting } from '../../src/quiz/files/sitting-file.js';
import { confirmAnswer, finishSitting, showQuestion } from '../../src/quiz/sitting.js';
import { NINE } from './fixture.js';
import { handout, type RawEvent, type RawFile, rawOf, saidOf } from './sealed.js';

describe('going on with a file', () => {
  let folder = '';
  let path = '';
  let file = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'mudlark-seals-'));
    path = join(folder, 'week3.quiz.yaml');
    file = join(folder, 'week3.ann.answers.json');
    const opened = openSitting(path, handout, 'Ann', NINE);
    let { sitting } = opened;
    for (const [index, { drill }] of handout.questions.slice(0, 3).entries()) {
      sitting = showQuestion(sitting, drill.id, NINE + index * 5000);
      sitting = confirmAnswer(
        sitting,
        drill.id,
        { second: 'ivory-black', amount: '1:4' },
        NINE + index * 5000 + 2000,
      );
      opened.save(sitting);
    }
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  const change = (edit: (raw: RawFile) => void): void => {
    const raw = rawOf(readFileSync(file, 'utf8'));
    edit(raw);
    writeFileSync(file, JSON.stringify(raw));
  };
  /** Goes on, answers the fourth question and hands in. */
  const goOn = (): void => {
    const opened = openSitting(path, handout, 'Ann', NINE + 60_000);
    const id = handout.questions[3]?.drill.id ?? '';
    let sitting = showQuestion(opened.sitting, id, NINE + 61_000);
    sitting = confirmAnswer(sitting, id, { second: 'ivory-black', amount: '1:4' }, NINE + 62_000);
    opened.save(finishSitting(sitting, NINE + 63_000));
  };
  const said = (): string => saidOf(readFileSync(file, 'utf8'));

  it('is sound over any number of openings, and whatever the file is called', () => {
    goOn();
    expect(said()).toBe('');
    const other = join(folder, 'renamed by mail (2).json');
    renameSync(file, other);
    const { submitted } = readAnswers([other]);
    expect(markClass(handout, submitted).students.map(({ name, doubts }) => [name, doubts])).toEqual([
      ['Ann', []],
    ]);
  });

  it('keeps a break: the new events are sealed and the old place is still named', () => {
    change(({ events }) => {
      (events[2] as RawEvent).answer = { second: 'prussian-blue', amount: '1:1' };
    });
    const before = said();
    expect(before).toBe('the file was changed after it was written: answer 1');
    goOn();
    expect(said()).toBe(before);
    goneOnAgain();
    expect(said()).toBe(before);
  });

  /** Reopens a sitting that was handed in by taking out its last line. */
  const goneOnAgain = (): void => {
    const opened = (): unknown => openSitting(path, handout, 'Ann', NINE + 70_000);
    expect(opened).toThrow(/finished/);
  };

  it('keeps in the file that its end was cut to reopen it', () => {
    goOn();
    change(({ events }) => {
      expect(events.pop()?.event).toBe('handed-in');
    });
    expect(said()).toMatch(/its end: lines were taken out/);
    goOn();
    expect(said()).toMatch(
      /changed after it was written: its end, before the sitting went on at 2026-03-01T09:01/,
    );
    // Taking that note out as well is seen too.
    change((raw) => {
      raw.events = raw.events.filter(({ event }) => event !== 'gap');
    });
    expect(said()).not.toBe('');
  });

  it('never seals what came without a seal', () => {
    change(({ events }) => {
      (events[2] as RawEvent).answer = { second: 'prussian-blue', amount: '1:1' };
      for (const event of events) delete event.seal;
    });
    goOn();
    expect(said()).toMatch(/changed after.*\(without a seal\)/);
  });
});
