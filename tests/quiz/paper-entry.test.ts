import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
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
import { letteredHandout } from '../../src/quiz/lettered.js';
import { createGrader, markSitting } from '../../src/quiz/marking.js';
import { nameKey } from '../../src/quiz/names.js';
import { BLANK, type Entry, lettersIn, paperSitting } from '../../src/quiz/paper-entry.js';
import { remarks } from '../../src/quiz/report-words.js';
import { everyKindHandout, NINE, SECRET, sittingOf, someHandout } from './fixture.js';

const handout = someHandout(6);
const letters = letteredHandout(handout);

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
