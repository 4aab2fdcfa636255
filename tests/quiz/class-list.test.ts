import { describe, expect, it } from 'vitest';
import { markClass } from '../../src/quiz/class.js';
import { classListText, createRoll, parseClassList } from '../../src/quiz/class-list.js';
import { inNameOrder } from '../../src/quiz/names.js';
import { bestAnswers, sittingOf, someHandout } from './fixture.js';

const TEXT = `format: 1
title: Evening class
students:
  - { name: Ann Lee, number: 7, group: morning }
  - { name: ann  lee, number: 007b }
  - { name: Ben Ito, number: 012 }
  - { name: Ольга Иванова }
`;
const list = parseClassList(TEXT, 'class.yaml');

describe('a class file', () => {
  it('reads back as written', () => {
    expect(list.students.map(({ number }) => number)).toEqual(['7', '7b', '12', undefined]);
    expect(parseClassList(classListText(list), 'class.yaml')).toEqual(list);
  });

  it.each([
    ['number: 7', 'number: 12', /^class\.yaml:6: the number 12 stands here twice/],
    ['number: 007b', 'group: x', /^class\.yaml:5: "ann lee" stands here twice; give each of them a number/],
    ['group: morning', 'groop: morning', /"groop" is not a known key here\. Did you mean group\?/],
    ['format: 1', 'format: 2', /format must be 1/],
    ['Ann Lee', '"123"', /must hold a letter/],
    ['number: 7,', 'number: 7.5,', /number must be a whole number/],
    ['name: Ben Ito', 'name: "a\\u202eb"', /control or direction-changing/],
  ])('%s for %s is refused in one line', (was, is, message) => {
    expect(() => parseClassList(TEXT.replace(was, is), 'class.yaml')).toThrow(message);
  });

  it('holds no more than two thousand', () => {
    const many = `format: 1\nstudents:\n${Array.from({ length: 2001 }, (_, at) => `  - { name: A${at} }\n`).join('')}`;
    expect(() => parseClassList(many, 'class.yaml')).toThrow(/more than 2000 students/);
  });
});

describe('finding a student', () => {
  const find = createRoll(list);
  const who = (typed: string): string => {
    const found = find(typed);
    return 'why' in found ? `? ${found.why}` : `${found.calledAs} #${found.enrolled.number ?? ''}`;
  };

  it('goes by number, else by name key', () => {
    expect(
      ['7', '007', ' #7 ', '7B', '12', 'BEN  ito', '12 Ben Ito', 'Ben Ito (12)', 'ольга иванова'].map(who),
    ).toEqual([
      'Ann Lee 7 #7',
      'Ann Lee 7 #7',
      'Ann Lee 7 #7',
      'ann lee 7b #7b',
      'Ben Ito #12',
      'Ben Ito #12',
      'Ben Ito #12',
      'Ben Ito #12',
      'Ольга Иванова #',
    ]);
  });

  it('never guesses', () => {
    expect(['Ann Lee', 'Ben Itto', '13', '7 Ben Ito', 'Ito Ben', 'constructor', ''].map(who)).toEqual([
      '? fits 2 students of the class; one of the numbers is needed as the name',
      '? not in the class',
      '? not in the class',
      '? number 7 is Ann Lee in the class',
      '? not in the class',
      '? not in the class',
      '? not in the class',
    ]);
  });
});

describe('a class called over', () => {
  const handout = someHandout(2);
  const sat = (name: string, seconds = 20) => ({
    file: `${name}.json`,
    sitting: sittingOf(handout, name, bestAnswers(handout), seconds),
  });

  it('names who is missing and who fits nobody, and marks those too', () => {
    const { students, calledOver, setAside } = markClass(
      handout,
      [sat('Ann Lee'), sat('12'), sat('Zed'), sat('7')],
      {
        list,
      },
    );
    expect(students.map(({ name, enrolled }) => [name, enrolled?.number])).toEqual([
      ['Ann Lee', undefined],
      ['Ann Lee 7', '7'],
      ['Ben Ito', '12'],
      ['Zed', undefined],
    ]);
    expect(calledOver?.missing.map(({ name }) => name)).toEqual(['ann lee', 'Ольга Иванова']);
    expect(calledOver?.unmatched.map(({ name }) => name)).toEqual(['Ann Lee', 'Zed']);
    expect(setAside).toEqual([]);
  });

  it('counts one sitting of a student, under number or name, whatever the order of the files', () => {
    const files = [sat('Ben Ito', 30), sat('12', 10)];
    for (const order of [files, [...files].reverse()]) {
      const { students, setAside } = markClass(handout, order, { list });
      expect(students.map(({ name, file }) => [name, file])).toEqual([['Ben Ito', '12.json']]);
      expect(setAside.map(({ file }) => file)).toEqual(['Ben Ito.json']);
    }
  });
});

describe('the order of names', () => {
  it('is that of the place (Unicode CLDR collation charts: å after z in Swedish, with a in English)', () => {
    const names = ['Zoe', 'Åsa', 'Ben', 'Sam 10', 'Sam 2'];
    expect([...names].sort(inNameOrder('en'))).toEqual(['Åsa', 'Ben', 'Sam 2', 'Sam 10', 'Zoe']);
    expect([...names].sort(inNameOrder('sv'))).toEqual(['Ben', 'Sam 2', 'Sam 10', 'Zoe', 'Åsa']);
  });
});
