import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { letteredHandout } from '../../src/quiz/lettered.js';
import {
  BLANK,
  type Entry,
  paperSitting,
  readLetters,
  readLine,
  readLines,
} from '../../src/quiz/paper-entry.js';
import { NINE, someHandout } from './fixture.js';

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
