import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { type EnterOptions, enterCommand } from '../../src/commands/quiz-enter.js';
import { DataError, InputError, MudlarkError, UsageError } from '../../src/errors.js';
import { parseSitting, type Sitting, sittingText } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import {
  EMPTY_ENTERING,
  type EnterState,
  type EnterWorld,
  enterLine,
  type Known,
  promptOf,
} from '../../src/quiz/enter-update.js';
import { openSitting } from '../../src/quiz/files/sitting-file.js';
import { letteredHandout } from '../../src/quiz/lettered.js';
import { createGrader, markSitting } from '../../src/quiz/marking.js';
import { nameKey } from '../../src/quiz/names.js';
import { sheetCode } from '../../src/quiz/paper/index.js';
import {
  BLANK,
  type Entry,
  lettersIn,
  paperSitting,
  readLetters,
  readLine,
  readLines,
} from '../../src/quiz/paper-entry.js';
import { remarks } from '../../src/quiz/report-words.js';
import { everyKindHandout, NINE, SECRET, sittingOf, someHandout, someHandoutText } from './fixture.js';

const handout = someHandout(6);
const letters = letteredHandout(handout);

/** A value, or a failed test. */
function taken<T>(read: { readonly value: T } | { readonly fault: string }): T {
  if ('fault' in read) throw new Error(read.fault);
  return read.value;
}

describe('letters as they are typed', () => {
  it('are taken in any case, with or without blanks between them', () => {
    for (const typed of ['abc-ab', 'A B C - A B', 'a,b,c,-,a,b', 'A. B. C. -. A. B.'])
      expect(taken(readLetters(typed, letters))).toEqual(['A', 'B', 'C', BLANK, 'A', 'B']);
  });

  it('are refused whole where one is not of its question, or one too many', () => {
    expect(readLetters('ABG', letters)).toEqual({
      fault: expect.stringMatching(/^question 3 has A to [C-F].*not "G"$/),
    });
    expect(readLetters('ABZ', letters, 3)).toEqual({ fault: expect.stringMatching(/^question 6 /) });
    expect(readLetters('ABABABA', letters)).toEqual({
      fault: '7 letters are more than the 6 questions of the sheet',
    });
    expect(readLetters('\u0410', letters)).toEqual({ fault: expect.stringContaining('another alphabet') });
  });

  it('stand behind a name, or in the cells of a table where an empty one is blank', () => {
    const ann: Entry = { name: 'Ann Lee', letters: ['A', 'B', 'C', '-', 'A', 'B'] };
    expect(taken(readLine('Ann Lee; ABC-AB', letters))).toEqual(ann);
    expect(taken(readLine('Ann  Lee\tA\tB\tC\t\tA\tB\t\t', letters))).toEqual(ann);
    expect(taken(readLine('Lee, Ann;A;B;C;;A;B', letters))).toEqual({ ...ann, name: 'Lee, Ann' });
    expect(taken(readLine('"Lee, Ann",A,B,"C",,A,B', letters))).toEqual({ ...ann, name: 'Lee, Ann' });
    expect(readLine('Ann Lee; ABC', letters)).toEqual({
      fault: '3 letters for 6 questions; write - for each blank one',
    });
    expect(readLine('ABCABC', letters)).toEqual({ fault: expect.stringContaining('semicolon') });
    expect(readLine(' ; ABCABC', letters)).toEqual({ fault: 'a name needs a letter or a figure' });
  });

  it('in cells parted by commas are counted: too few and too many are said so, and none moves to another question', () => {
    const fault = (line: string) => readLine(line, letters);
    const few = { fault: '3 letters for 6 questions; write - for each blank one' };
    for (const line of ['Ann Lee,A,B,C', '"Lee, Ann",A,B,C', 'Lee, Ann, a, b, -'])
      expect(fault(line)).toEqual(few);
    expect(fault('Ann,A')).toEqual({ fault: expect.stringMatching(/^1 letter for 6 questions/) });
    expect(fault('Ann,A,B,C,D,A,B,C')).toEqual({
      fault: '7 letters are more than the 6 questions of the sheet',
    });
    expect(fault('Ann,A,BB,C,A,A,A')).toEqual({ fault: expect.stringMatching(/^question 2 .*not "BB"$/) });
    expect(taken(readLine('Ann,A,B,C,,A,B,,', letters)).letters.join('')).toBe('ABC-AB');
    for (const line of ['Lee, Ann', 'Ann Lee,ABCABC'])
      expect(fault(line)).toEqual({ fault: expect.stringContaining('semicolon') });
  });

  it('of a class come line by line; a bad line does not stop the others', () => {
    const text = 'Name;1;2;3;4;5;6\r\nAnn;A;A;A;A;A;A\r\n\r\nBo;A;A\r\nANN;B;B;B;B;B;B\r\nCy; ------';
    const { entries, faults } = readLines(text, letters);
    expect(entries.map(({ name, line }) => [name, line])).toEqual([
      ['Ann', 2],
      ['Cy', 6],
    ]);
    expect(faults).toEqual([
      { line: 4, why: '2 letters for 6 questions; write - for each blank one' },
      { line: 5, why: '"ANN" stands on line 2 too; give one of them another name' },
    ]);
    expect(() => readLines('\n'.repeat(3000), letters)).toThrow(InputError);
  });
});

describe('a sitting from paper', () => {
  it('gets the marks of the same answers on the screen, for every kind of drill', () => {
    const { handout: kinds } = everyKindHandout();
    const rows = letteredHandout(kinds);
    const grader = createGrader(kinds);
    const draw = seededDraw(11);
    for (let student = 0; student < 12; student++) {
      const typed = rows.map((row) => (draw(9) === 0 ? BLANK : (row[draw(row.length - 1)]?.letter ?? BLANK)));
      const paper = paperSitting(kinds, rows, { name: 'Ann', letters: typed }, NINE);
      const answers = typed.map((letter, at) => rows[at]?.find((each) => each.letter === letter)?.answer);
      const screen = sittingOf(kinds, 'Ann', answers);
      expect(markSitting(kinds, grader, paper)).toEqual(markSitting(kinds, grader, screen));
      // The letters come back out of the file.
      const { seals, ...file } = parseSitting(sittingText(paper, SECRET), 'file');
      expect(file).toEqual(paper);
      expect(seals?.end).toBeUndefined();
      expect(lettersIn(kinds, rows, file)).toEqual(typed);
    }
  });

  it('says that it is from paper, and is never late: when it was typed in is not when it was handed in', () => {
    const typed = letters.map(() => 'A');
    const [student] = markClass(
      handout,
      [{ file: 'a.json', sitting: paperSitting(handout, letters, { name: 'Ann', letters: typed }, NINE) }],
      { due: NINE - 3_600_000 },
    ).students;
    expect(student?.lateSeconds).toBeUndefined();
    expect(student === undefined ? [] : remarks(student)).toEqual(['entered from paper']);
    const screen = sittingOf(
      handout,
      'Bo',
      letters.map((row) => row[0]?.answer),
    );
    const [late] = markClass(handout, [{ file: 'b.json', sitting: screen }], {
      due: NINE - 3_600_000,
    }).students;
    expect(late?.lateSeconds).toBeGreaterThan(3600);
  });

  it('has no seals and is not held against the times of the others; who adds the word to a sealed file is named', () => {
    const sealed = someHandout(6, {}, SECRET);
    const fileOf = (sitting: Sitting) => ({
      file: `${sitting.name}.json`,
      sitting: parseSitting(sittingText(sitting, SECRET), 'x'),
    });
    const typed = (name: string, letter: string) =>
      fileOf(paperSitting(sealed, letters, { name, letters: letters.map(() => letter) }, NINE));
    const { students } = markClass(sealed, [typed('Ann', 'A'), typed('Bo', 'B'), typed('Cy', BLANK)]);
    expect(students.map((student) => remarks(student))).toEqual([
      ['entered from paper'],
      ['entered from paper'],
      ['entered from paper', 'partial: questions open'],
    ]);
    const text = sittingText(sittingOf(sealed, 'Di', []), SECRET);
    const forged = parseSitting(text.replace('"name":"Di"', '"name":"Di","source":"paper"'), 'x');
    const [di] = markClass(sealed, [{ file: 'di.json', sitting: forged }]).students;
    expect(di?.doubts).toEqual([expect.stringContaining('changed after it was written')]);
  });

  it('has no other source in its file than paper', () => {
    const text = sittingText(paperSitting(handout, letters, { name: 'Ann', letters: ['A'] }, NINE));
    expect(parseSitting(text, 'file').finished).toBeUndefined();
    expect(() => parseSitting(text.replace('"paper"', '"screen"'), 'file')).toThrow(
      /^file: events\.0\.source: must be paper/,
    );
  });
});

/** Types lines and keeps what is saved. */
function typeIn(lines: readonly string[], kept = new Map<string, Known>()) {
  const saved: Entry[] = [];
  const world: EnterWorld = { letters, known: (name) => kept.get(nameKey(name)) };
  const said: string[] = [];
  let state: EnterState = EMPTY_ENTERING;
  for (const line of lines) {
    const step = enterLine(state, world, line);
    state = step.state;
    said.push(...step.lines);
    if (step.save !== undefined) {
      if (step.save.before !== undefined) kept.delete(nameKey(step.save.before.name));
      kept.set(nameKey(step.save.entry.name), step.save.entry);
      saved.push(step.save.entry);
    }
  }
  return { state, saved, said, kept, prompt: promptOf(state, world) };
}

const named = (entries: readonly Entry[]): string[] =>
  entries.map(({ name, letters: typed }) => `${name} ${typed.join('')}`);

describe('typing a class in', () => {
  it('takes a name, then letters one a line or all at once, and saves each student', () => {
    const { saved, state } = typeIn(['Ann', 'a', 'b', 'a', '-', 'A', 'B', 'Bo', 'AAAAAA', 'Cy; BB--BB', '']);
    expect(named(saved)).toEqual(['Ann ABA-AB', 'Bo AAAAAA', 'Cy BB--BB']);
    expect(state.isOver).toBe(true);
  });

  it('takes letters back, then the name, and corrects any of them', () => {
    expect(named(typeIn(['Ann', 'AAAA', '<', '<', '2=b', 'BBBB']).saved)).toEqual(['Ann ABBBBB']);
    expect(named(typeIn(['Anb', '<', 'Ann', 'AAAAAA']).saved)).toEqual(['Ann AAAAAA']);
    expect(named(typeIn(['Anb', 'AA', '=Ann', 'AAAA']).saved)).toEqual(['Ann AAAAAA']);
  });

  it('opens the last student again, or one by name, and puts the correction in its place', () => {
    const again = typeIn(['Ann', 'AAAAAA', '<', '3=B', '']);
    expect(named(again.saved)).toEqual(['Ann AAAAAA', 'Ann AABAAA']);
    expect(named(again.state.done)).toEqual(['Ann AABAAA']);
    // A name typed again in another case keeps the spelling that it had.
    expect(named(typeIn(['Ann', 'AAAAAA', 'ANN', '3=B', '']).state.done)).toEqual(['Ann AABAAA']);
    const renamed = typeIn(['Anb', 'AAAAAA', 'Bo', 'BBBBBB', 'anb', '=Ann', '']);
    expect(named(renamed.state.done)).toEqual(['Ann AAAAAA', 'Bo BBBBBB']);
    expect([...renamed.kept.keys()].sort()).toEqual(['ann', 'bo']);
    // Left without Enter it stays as it was.
    expect(
      named(typeIn(['Ann', 'AAAAAA', '<', '<', '<', '<', '<', '<', '<', '<', 'Bo', 'BBBBBB']).state.done),
    ).toEqual(['Ann AAAAAA', 'Bo BBBBBB']);
  });

  it('leaves the rest blank only when asked twice', () => {
    const once = typeIn(['Ann', 'AB', '']);
    expect(once.saved).toEqual([]);
    expect(once.said.at(-1)).toContain('3 to 6 are open');
    expect(typeIn(['Ann', 'AB', '', 'A', '']).saved).toEqual([]);
    expect(named(typeIn(['Ann', 'AB', '', '']).saved)).toEqual(['Ann AB----']);
  });

  it('takes nothing of a line with a fault, and keeps what was there', () => {
    const { saved, said, prompt } = typeIn(['Ann', 'AB', 'AZ', '9=A', '5=A', 'AAAAA', '--']);
    expect(saved).toEqual([]);
    expect(said.filter((line) => line.startsWith('  '))).toHaveLength(4);
    expect(prompt).toBe('  AB--  5 of 6: ');
  });

  it('leaves sittings from a screen alone', () => {
    const kept = new Map<string, Known>([['ann', { why: 'Ann has sat on a screen' }]]);
    const { saved, said, state } = typeIn(['ANN', 'Bo', 'AAAAAA', '<', '=Ann', ''], kept);
    expect(named(saved)).toEqual(['Bo AAAAAA', 'Bo AAAAAA']);
    expect(said[0]).toContain('has sat on a screen');
    expect(state.done).toHaveLength(1);
  });

  it('holds its shape whatever is typed', () => {
    const line = fc.oneof(
      fc.constantFrom(
        '',
        '<',
        '*',
        '?',
        'Ann',
        'Bo',
        'ABAB',
        '-',
        'A',
        '3=B',
        '=Cy',
        '=',
        'Ann; AAAAAA',
        '99=Z',
        '\u202e',
        '__proto__',
      ),
      fc.string({ unit: 'binary', maxLength: 40 }),
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 60 }), (lines) => {
        const { state, saved, said } = typeIn(lines);
        for (const entry of saved) {
          expect(entry.letters).toHaveLength(letters.length);
          expect(
            entry.letters.every(
              (letter, at) => letter === BLANK || letters[at]?.some((each) => each.letter === letter),
            ),
          ).toBe(true);
          expect(paperSitting(handout, letters, entry, NINE).name).toBe(entry.name);
        }
        expect(new Set(state.done.map(({ name }) => nameKey(name))).size).toBe(state.done.length);
        for (const each of said) expect(each).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      }),
      { numRuns: 300 },
    );
  });
});

describe('the reader of a table against noise', () => {
  it('gives entries that can be marked, or faults of one line', () => {
    const noise = fc.array(
      fc.oneof(
        fc.constantFrom(
          'Ann',
          ';',
          '\t',
          'A',
          'B',
          '-',
          ' ',
          '\n',
          '\r\n',
          '__proto__',
          '\u0000',
          '\u202e',
          '\ud800',
          '🙂',
          'A;B;C;D;E;F',
          '1;2;3',
          ',',
        ),
        fc.string({ unit: 'binary', maxLength: 12 }),
      ),
      { maxLength: 60 },
    );
    fc.assert(
      fc.property(noise, (parts) => {
        const { entries, faults } = readLines(parts.join(''), letters);
        for (const entry of entries) {
          const sitting = paperSitting(handout, letters, entry, NINE);
          expect(parseSitting(sittingText(sitting), 'file')).toMatchObject(sitting);
        }
        for (const { why } of faults) {
          expect(why).not.toMatch(/[\p{Cc}\p{Cf}]/u);
          expect(why.length).toBeLessThan(700);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('quiz enter', () => {
  const room = () => {
    const folder = mkdtempSync(join(tmpdir(), 'mudlark-paper-'));
    const path = join(folder, 'week3.quiz.yaml');
    writeFileSync(path, someHandoutText(6));
    const run = (text: string, options: EnterOptions = {}) =>
      enterCommand(path, options, {
        input: Readable.from([Buffer.from(text)]),
        output: new PassThrough(),
        now: () => NINE,
      });
    const files = () =>
      readdirSync(folder)
        .filter((file) => file.endsWith('.answers.json'))
        .sort();
    return { folder, path, run, files };
  };

  it('writes a file for each student, says what it did not take, and does it twice without harm', async () => {
    const { run, files, folder } = room();
    const first = await run('Ann Lee; AAAAAA\nBo; AB\n../../evil; AAAAAA\n');
    expect(first.refused).toBe(1);
    expect(first.text).toContain('input, line 2: 2 letters for 6 questions');
    expect(files()).toHaveLength(2);
    expect(files()[0]).toBe('week3.ann-lee.answers.json');
    expect(files()[1]).toMatch(/^week3\.evil_[0-9a-f]{8}\.answers\.json$/);
    const before = readFileSync(join(folder, 'week3.ann-lee.answers.json'), 'utf8');
    expect((await run('ann lee; AAAAAA')).text).toContain('as before');
    expect((await run('Ann Lee; ABAAAA')).text).toContain('add --force');
    expect(readFileSync(join(folder, 'week3.ann-lee.answers.json'), 'utf8')).toBe(before);
    expect((await run('Ann Lee; ABAAAA', { force: true })).text).toContain('replaced');
  });

  it('leaves a sheet typed in alone when its student comes to sit on a screen', async () => {
    const { run, path } = room();
    await run('Ann; AAAAA-');
    expect(() => openSitting(path, handout, 'Ann', NINE)).toThrow(/typed in from paper/);
  });

  it('never writes over a sitting from a screen, nor over anything else', async () => {
    const { run, folder } = room();
    const path = join(folder, 'week3.ann.answers.json');
    for (const text of [sittingText(sittingOf(handout, 'Ann', [])), 'not a sitting']) {
      writeFileSync(path, text);
      const { refused } = await run('Ann; AAAAAA', { force: true });
      expect(refused).toBe(1);
      expect(readFileSync(path, 'utf8')).toBe(text);
    }
  });

  it('refuses the letters of other sheets, an empty table and what is no text', async () => {
    const { run } = room();
    await expect(run('Ann; AAAAAA', { sheet: 'ZZZZ' })).rejects.toThrow(/those of sheets that bear/);
    expect((await run('Ann; AAAAAA', { sheet: sheetCode(letters).toLowerCase() })).refused).toBe(0);
    await expect(run('\n\n')).rejects.toThrow(DataError);
    const bytes = (chunk: Buffer) => ({
      input: Readable.from([chunk]),
      output: new PassThrough(),
      now: () => NINE,
    });
    const { path } = room();
    await expect(enterCommand(path, {}, bytes(Buffer.from([0xff, 0xfe, 0x41])))).rejects.toThrow(/UTF-8/);
    await expect(enterCommand(path, {}, bytes(Buffer.alloc(600_000, 'A')))).rejects.toThrow(/larger/);
    const terminal = Object.assign(Readable.from([]), { isTTY: true });
    await expect(enterCommand(path, {}, { ...bytes(Buffer.alloc(0)), input: terminal })).rejects.toThrow(
      UsageError,
    );
    await expect(enterCommand(path, { from: join(path, 'none') }, bytes(Buffer.alloc(0)))).rejects.toThrow(
      MudlarkError,
    );
  });

  it('is typed by hand, and keeps half a sheet when it is left', async () => {
    const { path, files, folder } = room();
    const input = Object.assign(new PassThrough(), { isTTY: true });
    const output = Object.assign(new PassThrough(), { isTTY: true, columns: 60 });
    let shown = '';
    output.on('data', (chunk) => {
      shown += String(chunk);
    });
    const done = enterCommand(path, {}, { input, output, now: () => NINE });
    const type = async (line: string, until: string) => {
      input.write(`${line}\r`);
      await expect.poll(() => shown).toContain(until);
    };
    await expect.poll(() => shown).toContain('Name 1: ');
    await type('Ann Lee', '1 of 6: ');
    await type('AB-AAA', '5 of 6 answered');
    expect(files()).toEqual(['week3.ann-lee.answers.json']);
    await type('Bo', 'Name 2: ');
    await type('AA', '3 of 6: ');
    input.end();
    const { text, isLeft } = await done;
    expect(isLeft).toBe(true);
    expect(text).toContain('Bo is kept with AA');
    const kept = parseSitting(readFileSync(join(folder, 'week3.bo.answers.json'), 'utf8'), 'file');
    expect(kept.finished).toBeUndefined();
    expect(lettersIn(handout, letters, kept)).toEqual(['A', 'A']);
  });
});
