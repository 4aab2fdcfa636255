/** Answers on paper as they are typed: letters for whole answers, a dash for a blank one, a line a student. */
import { InputError } from '../errors.js';
import { canonicalJson } from '../text/canonical-json.js';
import { cleanText } from '../text/sanitize.js';
import type { Sitting } from './answers.js';
import type { Handout } from './handout.js';
import type { LetteredAnswer } from './lettered.js';
import { nameKey, shownName } from './names.js';
import { confirmAnswer, finishSitting, showQuestion, startSitting } from './sitting.js';

/** Stands for a question that was left blank. */
export const BLANK = '-';

/** The lettered answers of each question, in the order of the sheet. */
export type Letters = readonly (readonly LetteredAnswer[])[];

/** What a student wrote: a letter or {@link BLANK} for each question, in the order of the sheet. */
export interface Entry {
  readonly name: string;
  readonly letters: readonly string[];
}

/** Something read, or why it could not be. */
export type Read<T> = { readonly value: T } | { readonly fault: string };

const BLANKS = /[\s,;.|/]+/gu;

/** "A to D" of a question. */
const lettersOf = (row: readonly LetteredAnswer[]): string => `A to ${row.at(-1)?.letter ?? 'A'}`;

/** One letter as it is kept: a capital of the question, or a blank; undefined where the question has no such letter. */
function letterIn(row: readonly LetteredAnswer[], typed: string): string | undefined {
  if (typed === BLANK || typed === '') return BLANK;
  const letter = typed.toUpperCase();
  return row.some((each) => each.letter === letter) ? letter : undefined;
}

function letterFault(at: number, row: readonly LetteredAnswer[], typed: string): string {
  const shown = cleanText(typed, 12);
  const isForeign = /^[^\x00-\x7f]$/u.test(typed);
  const hint = isForeign ? '; is the keyboard set to another alphabet?' : '';
  return `question ${at + 1} has ${lettersOf(row)}, or ${BLANK} for a blank one, not "${shown}"${hint}`;
}

function readEach(signs: readonly string[], letters: Letters, from: number): Read<string[]> {
  const value: string[] = [];
  for (const [at, sign] of signs.entries()) {
    const row = letters[from + at];
    if (row === undefined)
      return {
        fault: `${from + signs.length} letters are more than the ${letters.length} questions of the sheet`,
      };
    const letter = letterIn(row, sign);
    if (letter === undefined) return { fault: letterFault(from + at, row, sign) };
    value.push(letter);
  }
  return { value };
}

/**
 * Letters in a row: "ACB-D", "a c b - d".
 * @param from how many questions have their letter already
 */
export function readLetters(typed: string, letters: Letters, from = 0): Read<string[]> {
  return readEach([...typed.replace(BLANKS, '')], letters, from);
}

/** Cells of a table, where an empty one is a blank; empty ones past the last question are left out. */
function readCells(cells: readonly string[], letters: Letters): Read<string[]> {
  const own = [...cells];
  while (own.length > letters.length && own.at(-1) === '') own.pop();
  return readEach(own, letters, 0);
}

/** A name as it is kept. */
export function readName(typed: string): Read<string> {
  const value = shownName(typed);
  return /[\p{L}\p{N}]/u.test(value) ? { value } : { fault: 'a name needs a letter or a figure' };
}

/** Between the name and the letters, and between the cells of a table. */
const CELLS = /[;\t]/u;

/** Whether a typed line holds a name and letters. */
export const isWholeLine = (line: string): boolean => CELLS.test(line);

const unquoted = (cell: string): string => cell.trim().replace(/^"(.*)"$/su, '$1');

/**
 * Name and cells of a line. Commas part cells too: the name, which may hold commas itself, ends where nothing but single signs and
 * empty cells is left, or where as many cells as questions are. Empty cells past the last question are no cells.
 */
function cellsOf(line: string, questions: number): readonly string[] | undefined {
  if (CELLS.test(line)) return line.split(CELLS).map(unquoted);
  const parts = line.split(',');
  const isSign = (part: string): boolean => [...unquoted(part)].length <= 1;
  const start = Math.max(1, parts.findLastIndex((part) => !isSign(part)) + 1);
  while (parts.length - start > questions && unquoted(parts.at(-1) ?? '') === '') parts.pop();
  const isShort = parts.length - start < questions;
  const from = isShort && parts.length > questions ? parts.length - questions : start;
  return from === parts.length
    ? undefined
    : [parts.slice(0, from).join(','), ...parts.slice(from)].map(unquoted);
}

/** "Ann Lee; A C B D", or a row of a table with a letter in each cell. All questions have to be there. */
export function readLine(line: string, letters: Letters): Read<Entry> {
  const cells = cellsOf(line, letters.length);
  if (cells === undefined)
    return { fault: 'write the name, a semicolon, then the letters: Ann Lee; A C B D' };
  const [typedName = '', ...rest] = cells;
  const name = readName(typedName);
  if ('fault' in name) return name;
  const read = rest.length === 1 ? readLetters(rest[0] ?? '', letters) : readCells(rest, letters);
  if ('fault' in read) return read;
  const { length } = read.value;
  if (length < letters.length)
    return {
      fault: `${length} letter${length === 1 ? '' : 's'} for ${letters.length} questions; write ${BLANK} for each blank one`,
    };
  return { value: { name: name.value, letters: read.value } };
}

/** A fault in a file of entries. */
export interface LineFault {
  /** 1 for the first. */
  readonly line: number;
  readonly why: string;
}

/** Most lines of one class. */
const MOST_LINES = 2000;

/** The row over a table: "Name; 1; 2; 3". */
const isHeading = (line: string, letters: Letters): boolean =>
  cellsOf(line, letters.length)?.slice(1).join(' ') === letters.map((_, at) => at + 1).join(' ');

/**
 * A class, one line a student. Empty lines and a heading are passed over; a line that cannot be read does not stop the others.
 * @throws InputError for more lines than any class has
 */
export function readLines(
  text: string,
  letters: Letters,
): {
  readonly entries: readonly (Entry & { readonly line: number })[];
  readonly faults: readonly LineFault[];
} {
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.length > MOST_LINES)
    throw new InputError(`${lines.length} lines are more than the ${MOST_LINES} that are read at once`);
  const entries: (Entry & { line: number })[] = [];
  const faults: LineFault[] = [];
  const seen = new Map<string, number>();
  for (const [at, each] of lines.entries()) {
    const line = at + 1;
    if (each.trim() === '' || (entries.length === 0 && isHeading(each, letters))) continue;
    const read = readLine(each, letters);
    if ('fault' in read) {
      faults.push({ line, why: read.fault });
      continue;
    }
    const key = nameKey(read.value.name);
    const before = seen.get(key);
    if (before === undefined) {
      seen.set(key, line);
      entries.push({ ...read.value, line });
    } else
      faults.push({
        line,
        why: `"${read.value.name}" stands on line ${before} too; give one of them another name`,
      });
  }
  return { entries, faults };
}

/**
 * The sitting of a paper sheet. Its times are the moment of typing; with fewer letters than questions it is not finished.
 * @throws RangeError for a letter that a question does not have
 */
export function paperSitting(handout: Handout, letters: Letters, entry: Entry, nowMs: number): Sitting {
  let sitting = startSitting(handout, entry.name, nowMs, 'paper');
  for (const [at, letter] of entry.letters.entries()) {
    const drill = handout.questions[at]?.drill.id;
    const answer = letters[at]?.find((each) => each.letter === letter)?.answer;
    if (drill === undefined || (answer === undefined && letter !== BLANK))
      throw new RangeError(`question ${at + 1} has no answer ${letter}`);
    sitting = showQuestion(sitting, drill, nowMs);
    if (answer !== undefined) sitting = confirmAnswer(sitting, drill, answer, nowMs);
  }
  return entry.letters.length < handout.questions.length ? sitting : finishSitting(sitting, nowMs);
}

/** The letters of a sitting that was typed in; undefined where an answer has no letter on these sheets. */
export function lettersIn(handout: Handout, letters: Letters, sitting: Sitting): string[] | undefined {
  const given = new Map(sitting.answers.map(({ drill, answer }) => [drill, answer]));
  const typed = handout.questions.flatMap(({ drill }, at) => {
    const answer = given.get(drill.id);
    if (answer === undefined) return [];
    if (Object.keys(answer).length === 0) return [BLANK];
    const key = canonicalJson(answer);
    return [letters[at]?.find((each) => canonicalJson(each.answer) === key)?.letter];
  });
  return typed.every((letter) => letter !== undefined) ? typed : undefined;
}

/** Letters in groups of five, to be compared with a sheet: "ACB-D AB". */
export function grouped(letters: readonly string[]): string {
  return letters.map((letter, at) => (at > 0 && at % 5 === 0 ? ` ${letter}` : letter)).join('');
}

/** How many were answered. */
export const answeredIn = ({ letters }: Entry): number => letters.filter((letter) => letter !== BLANK).length;
