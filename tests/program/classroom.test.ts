/** The classroom's files on the built program: folders, patterns, lists, terms, and nothing replaced unasked. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sittingText } from '../../src/quiz/answers.js';
import { COLUMN_NAMES } from '../../src/quiz/report-csv.js';
import { bestAnswers, sittingOf, someHandout, someHandoutText } from '../quiz/fixture.js';
import { mudlark, mudlarkJson } from './run-cli.js';

const handout = someHandout(2);
const best = bestAnswers(handout);

/** A folder with a quiz, answers of two students and those of another week. */
function classroom() {
  const at = mkdtempSync(join(tmpdir(), 'mudlark-class-'));
  const path = (name: string): string => join(at, name);
  writeFileSync(path('week1.quiz.yaml'), someHandoutText(2));
  writeFileSync(path('week2.quiz.yaml'), someHandoutText(3, {}, 'Week 4'));
  mkdirSync(path('answers/ann'), { recursive: true });
  writeFileSync(
    path('answers/ann/week1.ann.answers.json'),
    sittingText(sittingOf(handout, 'Ann Marlow', best)),
  );
  writeFileSync(path('answers/week1.ben.answers.json'), sittingText(sittingOf(handout, '12', [best[0]])));
  const other = someHandout(3);
  writeFileSync(
    path('answers/week2.ann.answers.json'),
    sittingText(sittingOf(other, 'ann  marlow', bestAnswers(other))),
  );
  writeFileSync(
    path('class.yaml'),
    'format: 1\nstudents:\n  - { name: Ann Marlow }\n  - { name: Ben Quill, number: 12 }\n  - { name: Cai Thorne }\n',
  );
  return path;
}

/** Marking the first week with all answers of the classroom. */
const marking = (path: ReturnType<typeof classroom>): string[] => [
  'quiz',
  'mark',
  path('week1.quiz.yaml'),
  path('answers'),
];

describe('quiz mark', () => {
  it('takes a folder, says who is missing, and passes over other weeks in it without refusing them', () => {
    const path = classroom();
    const run = mudlark([...marking(path), '--class', path('class.yaml')]);
    expect([run.code, run.err]).toEqual([0, '']);
    expect(run.out).toMatch(/2 sittings counted, 0 set aside/);
    expect(run.out.match(/week2.*/g)).toEqual(['week2.quiz.yaml).']);
    expect(run.out).toContain('1 file belongs to another quiz (Week 4, week2.quiz.yaml).');
    rmSync(path('week2.quiz.yaml'));
    const unknown = mudlark(marking(path));
    expect([unknown.code, unknown.out.replace(/\s+/g, ' ')]).toEqual([
      0,
      expect.stringContaining('or to this one before it was changed: week2.ann.answers.json.'),
    ]);
    expect(run.out).toContain('Missing (1): Cai Thorne');
    expect(run.out).toMatch(/Ben Quill +1\/2/);
    const pattern = mudlark(['quiz', 'mark', path('week1.quiz.yaml'), path('answers/week1.*.json')]);
    expect([pattern.code, pattern.out.includes('1 sitting counted, 0 set aside')]).toEqual([0, true]);
    const named = mudlark(['quiz', 'mark', path('week1.quiz.yaml'), path('answers/week2.ann.answers.json')]);
    expect(named.code).toBe(1);
    const none = mudlark(['quiz', 'mark', path('week1.quiz.yaml'), path('none*')]);
    expect([none.code, none.err]).toEqual([1, expect.stringMatching(/no file fits this pattern\n$/)]);
  });

  it('writes a slip for each student, and none where one is there already', () => {
    const path = classroom();
    const args = [...marking(path), '--class', path('class.yaml'), '--slips', path('slips')];
    expect(mudlark(args).code).toBe(0);
    expect(readdirSync(path('slips')).sort()).toEqual([
      'week1.ann-marlow.slip.html',
      'week1.ben-quill.slip.html',
      'week1.slips.html',
    ]);
    writeFileSync(path('slips/week1.ben-quill.slip.html'), 'mine');
    const again = mudlark([...args, '--csv', path('a.csv')]);
    expect([again.code, again.err]).toEqual([1, expect.stringMatching(/there already.*--force/)]);
    expect(readFileSync(path('slips/week1.ben-quill.slip.html'), 'utf8')).toBe('mine');
    expect(existsSync(path('a.csv'))).toBe(false);
    const answers = path('answers/week1.ben.answers.json');
    const over = mudlark([...marking(path), '--csv', answers, '--force']);
    expect([over.code, over.err]).toEqual([1, expect.stringMatching(/never written over/)]);
  });

  it('names in its help every column that a table can have', () => {
    const help = mudlark(['quiz', 'mark', '--help']).out.replace(/\s+/g, ' ');
    expect(help).toContain(`columns of the table: ${COLUMN_NAMES.join(', ')}`);
  });

  it('says what does not go together', () => {
    const path = classroom();
    const mark = (...more: string[]) => mudlark([...marking(path), ...more]);
    expect(mark('--anonymous', '--csv', path('a.csv'))).toMatchObject({
      code: 2,
      err: expect.stringMatching(/nothing for --csv/),
    });
    expect(mark('--columns', 'name')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/add --csv FILE/),
    });
    expect(mark('--csv', path('a.csv'), '--columns', 'nmae')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/Did you mean name/),
    });
    expect(mark('--anonymous').out).not.toMatch(/Ann|Marlow|Ben|answers\.json/);
  });
});

describe('quiz class and quiz term', () => {
  it('begin a list from answers, and replace none', () => {
    const path = classroom();
    const args = ['quiz', 'class', path('new.yaml'), path('answers'), '--new'];
    expect(mudlark(args)).toMatchObject({ code: 0, out: expect.stringMatching(/written: new\.yaml/) });
    expect(mudlark(args)).toMatchObject({ code: 1, err: expect.stringMatching(/--force/) });
    expect(mudlark(['quiz', 'class', path('new.yaml')]).out).toContain('Ann Marlow');
  });

  it('put quizzes against each other, from files or from a term file', () => {
    const path = classroom();
    const files = ['quiz', 'term', path('week*.quiz.yaml'), path('answers'), '--class', path('class.yaml')];
    const { whole, students } = mudlarkJson<{ whole: { students: number }; students: { name: string }[] }>(
      files,
    );
    expect(whole.students).toBe(1);
    expect(students.map(({ name }) => name)).toEqual(['Ann Marlow', 'Ben Quill']);
    const alone = mudlark(['quiz', 'term', path('week1.quiz.yaml'), path('answers')]);
    expect([alone.code, alone.out]).toEqual([
      0,
      expect.stringContaining('1 file belongs to another quiz (Week 4, week2.quiz.yaml).'),
    ]);
    const twice = mudlark([
      'quiz',
      'term',
      path('week1.quiz.yaml'),
      path('week1.quiz.yaml'),
      path('answers'),
    ]);
    expect(twice).toMatchObject({ code: 2, err: expect.stringMatching(/a term file says/) });
    writeFileSync(
      path('autumn.yaml'),
      'format: 1\ntitle: Autumn\nclass: class.yaml\nquizzes:\n  - { handout: week1.quiz.yaml, answers: [answers/ann], title: One }\n  - { handout: week1.quiz.yaml, answers: ["answers/week1.*"], title: Two }\n',
    );
    const term = mudlark(['quiz', 'term', path('autumn.yaml'), '--html', path('autumn.html')]);
    expect([term.code, term.err]).toEqual([0, '']);
    expect(term.out).toMatch(/^Autumn\n/);
    expect(term.out).toMatch(/1\. One: 1 sitting,/);
    expect(mudlark(['quiz', 'term', path('autumn.yaml'), '--before', '3'])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/the number of a quiz, 1 to 2/),
    });
  });
});
