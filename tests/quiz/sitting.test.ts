import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { replaceNamed, writeNamed } from '../../src/files/named.js';
import { parseSitting, type Sitting, sittingText } from '../../src/quiz/answers.js';
import { readAnswers } from '../../src/quiz/files/read-files.js';
import { handoutStem, openSitting, studentFile } from '../../src/quiz/files/sitting-file.js';

import { questionOrder } from '../../src/quiz/order.js';
import {
  closeQuestion,
  confirmAnswer,
  finishSitting,
  givenFor,
  isCovered,
  isOpen,
  readyQuestion,
  resumePlace,
  secondsLeft,
  showQuestion,
  startSitting,
  takeChoices,
} from '../../src/quiz/sitting.js';
import { bestAnswers, NINE, SECRET, sittingOf, someHandout } from './fixture.js';

const handout = someHandout(3);
const order = questionOrder(handout, 'Ann');

/** A sitting without what its file adds. */
function bare({ seals: _seals, ...rest }: Sitting): Sitting {
  return rest;
}
const idAt = (place: number): string => handout.questions[order[place] ?? 0]?.drill.id ?? '';

describe('a sitting under way', () => {
  it('goes on at the question last shown, else at the first never shown, else past the end', () => {
    let sitting = startSitting(handout, 'Ann', NINE);
    expect(resumePlace(handout, order, sitting, NINE)).toBe(0);
    sitting = showQuestion(sitting, idAt(0), NINE);
    expect(resumePlace(handout, order, sitting, NINE)).toBe(0);
    sitting = takeChoices(sitting, idAt(0), { amount: '1:4' }, NINE + 1000);
    sitting = showQuestion(sitting, idAt(1), NINE + 2000);
    expect(resumePlace(handout, order, sitting, NINE)).toBe(1);
    sitting = closeQuestion(sitting, idAt(1), NINE);
    expect(resumePlace(handout, order, sitting, NINE)).toBe(2);
    sitting = closeQuestion(showQuestion(sitting, idAt(2), NINE), idAt(2), NINE);
    expect(resumePlace(handout, order, sitting, NINE)).toBe(3);
  });

  it('keeps the moment at which a question was first shown', () => {
    let sitting = showQuestion(startSitting(handout, 'Ann', NINE), idAt(0), NINE);
    sitting = showQuestion(sitting, idAt(0), NINE + 60_000);
    expect(givenFor(sitting, idAt(0))?.shown).toBe(new Date(NINE).toISOString());
  });

  it('runs the clock from then on, through breaks, and never gives more than there is', () => {
    const rules = { ...handout.rules, timePerQuestionSeconds: 30 };
    const given = givenFor(showQuestion(startSitting(handout, 'Ann', NINE), 'x', NINE), 'x');
    expect(secondsLeft(handout.rules, given, NINE)).toBeUndefined();
    expect(secondsLeft(rules, undefined, NINE)).toBe(30);
    expect([0, 1, 29_001, 30_000, 90_000, -60_000].map((ms) => secondsLeft(rules, given, NINE + ms))).toEqual(
      [30, 30, 1, 0, 0, 30],
    );
  });

  it('lets the clock wait for a key: a question is covered until it is shown', () => {
    const rules = { ...handout.rules, timePerQuestionSeconds: 30 };
    const waiting = readyQuestion(startSitting(handout, 'Ann', NINE), idAt(0), NINE);
    const given = givenFor(waiting, idAt(0));
    expect(given).toEqual({ drill: idAt(0), ready: new Date(NINE).toISOString(), answer: {} });
    expect([isCovered(rules, given), isCovered(handout.rules, given), isCovered(rules, undefined)]).toEqual([
      true,
      false,
      true,
    ]);
    expect(secondsLeft(rules, given, NINE + 500_000)).toBe(30);
    expect(resumePlace(handout, order, waiting, NINE + 500_000)).toBe(0);
    const shown = showQuestion(waiting, idAt(0), NINE + 500_000);
    expect(secondsLeft(rules, givenFor(shown, idAt(0)), NINE + 510_000)).toBe(20);
    expect(isCovered(rules, givenFor(shown, idAt(0)))).toBe(false);
    expect(readyQuestion(shown, idAt(0), NINE)).toBe(shown);
  });

  it('counts what was confirmed; choices on the way are kept apart, as one event', () => {
    let sitting = showQuestion(startSitting(handout, 'Ann', NINE), idAt(0), NINE);
    sitting = takeChoices(sitting, idAt(0), { second: 'a' }, NINE + 1);
    sitting = takeChoices(sitting, idAt(0), { second: 'b' }, NINE + 2);
    expect(givenFor(sitting, idAt(0))).toMatchObject({ answer: {}, choices: { second: 'b' } });
    expect(sitting.events.map(({ event }) => event)).toEqual(['begin', 'shown', 'chosen']);
    sitting = confirmAnswer(sitting, idAt(0), { second: 'b' }, NINE + 3);
    expect(sitting.events.map(({ event }) => event)).toEqual(['begin', 'shown', 'taken']);
    expect(givenFor(sitting, idAt(0))?.choices).toBeUndefined();
    expect(confirmAnswer(sitting, idAt(0), { second: 'b' }, NINE + 4)).toBe(sitting);
    sitting = takeChoices(sitting, idAt(0), { second: 'c' }, NINE + 5);
    expect(givenFor(sitting, idAt(0))).toMatchObject({ answer: { second: 'b' }, choices: { second: 'c' } });
    // Back to what counts: nothing is pending.
    expect(
      givenFor(takeChoices(sitting, idAt(0), { second: 'b' }, NINE + 6), idAt(0))?.choices,
    ).toBeUndefined();
  });

  it('stops taking changes before its file could grow past what is read, and can still be handed in', () => {
    let sitting = showQuestion(startSitting(handout, 'Ann', NINE), idAt(0), NINE);
    for (let time = 1; time < 5000; time++)
      sitting = confirmAnswer(sitting, idAt(0), { second: `paint-${time % 7}` }, NINE + time);
    expect(isOpen(handout.rules, sitting, idAt(0), NINE)).toBe(false);
    for (const { drill } of handout.questions)
      sitting = closeQuestion(showQuestion(sitting, drill.id, NINE), drill.id, NINE);
    sitting = finishSitting(sitting, NINE);
    expect(parseSitting(sittingText(sitting, SECRET), 'a.json').finished).toBeDefined();
  });

  it('changes nothing in a closed question or a finished sitting', () => {
    const shown = showQuestion(startSitting(handout, 'Ann', NINE), idAt(0), NINE);
    const closed = closeQuestion(shown, idAt(0), NINE);
    expect(takeChoices(closed, idAt(0), { amount: '1:1' }, NINE)).toBe(closed);
    const finished = finishSitting(shown, NINE + 5);
    expect(takeChoices(finished, idAt(0), { amount: '1:1' }, NINE + 9)).toBe(finished);
    expect(finishSitting(finished, NINE + 99)).toBe(finished);
    expect([shown, closed, finished].map((each) => isOpen(handout.rules, each, idAt(0), NINE))).toEqual([
      true,
      false,
      false,
    ]);
  });

  it('reads back as written', () => {
    const sitting = sittingOf(handout, 'Ann Lee', bestAnswers(handout));
    expect(bare(parseSitting(sittingText(sitting), 'a.json'))).toEqual(sitting);
  });
});

describe('the files of a sitting', () => {
  let folder = '';
  let path = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'mudlark-quiz-'));
    path = join(folder, 'week3.quiz.yaml');
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('lie beside the handout under safe names', () => {
    expect(studentFile(path, 'Ann Lee', 'answers.json')).toBe(join(folder, 'week3.ann-lee.answers.json'));
    for (const name of ['../../up', 'a/b/c', '🙂', 'x'.repeat(300), '..'])
      expect(studentFile(path, name, 'answers.json').startsWith(join(folder, 'week3.'))).toBe(true);
    expect(handoutStem('/a/b/test.yml')).toBe('test');
    expect(Buffer.byteLength(handoutStem(`${'é'.repeat(120)}.quiz.yaml`))).toBeLessThanOrEqual(120);
  });

  it('are saved whole and go on where they were', () => {
    const opened = openSitting(path, handout, 'Ann Lee', NINE);
    expect(opened.isResumed).toBe(false);
    const changed = confirmAnswer(
      showQuestion(opened.sitting, idAt(0), NINE),
      idAt(0),
      { amount: '1:4' },
      NINE,
    );
    opened.save(changed);
    expect(readdirSync(folder)).toEqual(['week3.ann-lee.answers.json']);
    const again = openSitting(path, handout, 'ann lee', NINE + 5);
    expect(again.isResumed).toBe(true);
    expect(bare(again.sitting)).toEqual(changed);
  });

  it('refuse to go on with another handout, another student or a finished sitting, and change nothing', () => {
    openSitting(path, handout, 'Ann', NINE).save(sittingOf(handout, 'Ann', []));
    const file = join(folder, 'week3.ann.answers.json');
    const before = readFileSync(file, 'utf8');
    expect(() => openSitting(path, handout, 'Ann', NINE)).toThrow(/finished.*"Ann B"/);
    writeFileSync(file, before.replace(/,\n[^\n]*"handed-in"[^\n]*/, ''));
    expect(() => openSitting(path, someHandout(2), 'Ann', NINE)).toThrow(/another handout/);
    expect(openSitting(path, handout, 'Ann', NINE).isResumed).toBe(true);
    writeFileSync(file, readFileSync(file, 'utf8').replace('"Ann"', '"Ben"'));
    expect(() => openSitting(path, handout, 'Ann', NINE)).toThrow(/another student/);
    expect(() => openSitting(path, handout, ' \u200b ', NINE)).toThrow(/--name/);
  });

  it('do not overwrite what another window has saved', () => {
    const one = openSitting(path, handout, 'Ann', NINE);
    const other = openSitting(path, handout, 'Ann', NINE);
    one.save(showQuestion(one.sitting, idAt(0), NINE));
    expect(() => other.save(showQuestion(other.sitting, idAt(1), NINE))).toThrow(/another window/);
  });

  it('are replaced in one step; a file is never replaced unasked', () => {
    const file = join(folder, 'out.csv');
    expect(writeNamed(file, 'one', false)).toBe('written: out.csv');
    expect(() => writeNamed(file, 'two', false)).toThrow(/there already.*--force/);
    expect(readFileSync(file, 'utf8')).toBe('one');
    expect(writeNamed(file, 'two', true)).toBe('replaced: out.csv');
    expect(readdirSync(folder)).toEqual(['out.csv']);
    expect(() => replaceNamed(join(folder, 'none', 'x'), 'x')).toThrow(/no such folder/);
    mkdirSync(join(folder, 'dir'));
    expect(() => replaceNamed(join(folder, 'dir'), 'x')).toThrow(/this is a folder/);
  });

  it('are read each once, and one that cannot be read does not stop the others', () => {
    const good = join(folder, 'a.json');
    writeFileSync(good, sittingText(sittingOf(handout, 'Ann', [])));
    writeFileSync(join(folder, 'b.json'), '{');
    writeFileSync(join(folder, 'c.json'), Buffer.from([0xff, 0xfe, 0x00]));
    const paths = [good, good, join(folder, 'b.json'), join(folder, 'c.json'), join(folder, 'none')];
    const { submitted, unreadable } = readAnswers(paths);
    expect(submitted.map(({ file }) => file)).toEqual(['a.json']);
    expect(unreadable.map(({ why }) => why)).toEqual([
      'this is not JSON; check that it is the right file and is whole',
      'it is not a UTF-8 text',
      'there is no such file; check the name',
    ]);
  });
});
