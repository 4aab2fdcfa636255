import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/drills/types.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { type ClassResult, markClass } from '../../src/quiz/class.js';
import { parseClassList } from '../../src/quiz/class-list.js';
import { REPORT_STYLE } from '../../src/quiz/report-style.js';
import { changeOf, type TermQuiz, termFrom } from '../../src/quiz/term/term.js';
import { termCsv, termJson } from '../../src/quiz/term/term-data.js';
import { isTermFile, parseTermFile } from '../../src/quiz/term/term-file.js';
import { termHtml } from '../../src/quiz/term/term-html.js';
import { termText } from '../../src/quiz/term/term-text.js';
import published from '../outside/data/quiz-intervals.json' with { type: 'json' };
import { ACROSS, bestAnswers, SECRET, sittingOf, someHandout, someHandoutText } from './fixture.js';

const handout = someHandout(4);
const best = bestAnswers(handout);
const list = parseClassList(
  'format: 1\nstudents:\n  - { name: Ann Marlow, number: 7, group: aurora }\n  - { name: Ben Quill, group: zephyr }\n  - { name: Cai Thorne }\n',
  'class.yaml',
);
const quiz = (title: string, sat: Readonly<Record<string, readonly (Answer | undefined)[]>>): TermQuiz => ({
  title,
  result: markClass(
    handout,
    Object.entries(sat).map(([name, answers]) => ({
      file: `${name}.json`,
      sitting: sittingOf(handout, name, answers),
    })),
    { list },
  ),
});
const poor = [ACROSS, ACROSS, ACROSS, ACROSS];
const half = [best[0], ACROSS, best[2], ACROSS];
const quizzes = [
  quiz('Before', { 'Ann Marlow': poor, 'Ben Quill': half, Zed: best }),
  quiz('Between', { 'Cai Thorne': best }),
  quiz('After', { '7': best, 'ben  QUILL': half, 'Cai Thorne': best, ZED: [best[0]] }),
];
const term = termFrom(quizzes);

describe('a term', () => {
  it('knows students by number, else by name key, and pairs each with themselves', () => {
    expect(
      term.students.map(({ name, percents }) => [name, percents.map((percent) => percent !== undefined)]),
    ).toEqual([
      ['Ann Marlow', [true, false, true]],
      ['Ben Quill', [true, false, true]],
      ['Cai Thorne', [false, true, true]],
      ['Zed', [true, false, true]],
    ]);
    expect(term.compared).toEqual([1, 3]);
    expect(term.whole).toMatchObject({ students: 3, rose: 1, fell: 1 });
    const [ann] = term.students;
    expect(ann?.change).toBeCloseTo(100 - (ann?.percents[0] ?? 0), 10);
    expect(term.groups.map(({ name, students }) => [name, students])).toEqual([
      ['aurora', 1],
      ['zephyr', 1],
    ]);
    expect(term.groups[0]?.interval).toBeUndefined();
  });

  it('compares each skill where it was answered both times', () => {
    const dull = term.skills.find(({ family }) => family === 'dull-on-purpose');
    const bright = term.skills.find(({ family }) => family === 'darken-bright');
    // Zed answered no question of the one skill the second time, one of two of the other.
    expect([dull?.students, bright?.students]).toEqual([2, 3]);
    expect(dull).toMatchObject({ quizzes: [1, 3], isSame: true, rose: 1, fell: 0 });
    expect(bright).toMatchObject({ rose: 1, fell: 1 });
    expect(termFrom(quizzes, { compare: [1, 2] }).whole).toMatchObject({ students: 1, rose: 0, fell: 0 });
  });

  it('has the means and the interval of scipy.stats.ttest_rel for the same marks', () => {
    for (const { before, after, interval } of published.made.cases) {
      const change = changeOf(before.map((mark, at) => [mark, after[at] ?? 0] as const));
      // Of two students the interval is wider than all marks: none is given.
      expect(change?.interval === undefined).toBe(before.length < 5);
      for (const [at, end] of (change?.interval ?? []).entries())
        expect(end).toBeCloseTo(interval[at] ?? 0, 8);
      expect(change?.rose).toBe(before.filter((mark, at) => (after[at] ?? 0) > mark).length);
      expect((change?.after ?? 0) - (change?.before ?? 0)).toBeCloseTo(change?.difference ?? Number.NaN, 10);
    }
    expect(changeOf([])).toBeUndefined();
  });

  it('copes with one quiz, and with nobody who sat two', () => {
    for (const few of [quizzes.slice(0, 1), quizzes.slice(0, 2)]) {
      const alone = termFrom(few);
      expect(alone.whole).toBeUndefined();
      expect(alone.skills).toEqual([]);
      expect(termText('T', few, alone, { columns: 80, full: '#', empty: '.' })).toMatch(/nothing to compare/);
    }
  });
});

describe('reports of a term', () => {
  const look = { columns: 80, full: '#', empty: '.' };

  it('say before, after, rose, fell and the interval, and who was missing', () => {
    for (const output of [termText('Autumn', quizzes, term, look), termHtml('Autumn', quizzes, term)]) {
      const plain = output.replace(/\s+/g, ' ');
      expect(plain).toMatch(/From quiz 1 to quiz 3, 3 students who sat both:/);
      expect(plain).toMatch(/1 rose, 1 fell, 1 stayed; mean change [+-]?\d+: too few to say\./);
      expect(plain).toContain('Quiz 1. Missing (1): Cai Thorne');
      expect(plain).toContain('Not matched to the class (1): Zed (Zed.json): not in the class');
      expect(output).not.toMatch(/undefined|NaN/);
    }
    const rows = termCsv(term).slice(1).split('\r\n');
    expect(rows[0]).toMatch(/^Name,Number,Group,1\. Before,2\. Between,3\. After,Change,Change: /);
    expect(rows[1]).toMatch(/^Ann Marlow,7,aurora,\d+(\.\d)?,,100,/);
  });

  it('name a file that was changed after it was written, as the report of one quiz does, and not to the class', () => {
    const sealed = someHandout(2, {}, SECRET);
    const written = sittingText(sittingOf(sealed, 'Ann Marlow', bestAnswers(sealed)), SECRET);
    const forged = written.replace(/"amount":"[^"]*"/, '"amount":"1:3"');
    expect(forged).not.toBe(written);
    const term2 = [written, forged].map((text, at): TermQuiz => {
      const sitting = parseSitting(text, 'ann.json');
      return { title: `Week ${at + 1}`, result: markClass(sealed, [{ file: 'ann.json', sitting }]) };
    });
    const compared = termFrom(term2);
    const said = 'the file was changed after it was written: answer 1';
    for (const output of [termText('T', term2, compared, look), termHtml('T', term2, compared)]) {
      const plain = output.replace(/\s+/g, ' ');
      expect(plain).toContain(`Quiz 2. Ann Marlow (ann.json): ${said}`);
      expect(plain).not.toContain('Quiz 1. Ann');
    }
    expect(termJson('T', term2, compared)).toMatchObject({
      quizzes: [{ doubts: [] }, { doubts: [{ name: 'Ann Marlow', file: 'ann.json', why: said }] }],
    });
    for (const output of [
      termText('T', term2, compared, look, true),
      termHtml('T', term2, compared, { isAnonymous: true }),
      JSON.stringify(termJson('T', term2, compared, true)),
    ])
      expect(output).not.toMatch(/changed after|doubt/);
  });

  it('show before and after on a narrow screen too', () => {
    const hidden = /@media \(max-width[^@]*?\.(\w+) \{ display: none; \} \}/.exec(REPORT_STYLE.markup)?.[1];
    expect(hidden).toBe('optional');
    const page = termHtml('Autumn', quizzes, term);
    expect(page).toMatch(/<th[^>]*>Before<\/th><th[^>]*>After<\/th>/);
    expect(page).not.toContain(`class="n ${hidden}"`);
  });

  it('keep to their columns', () => {
    for (const columns of [60, 80]) {
      const many = termFrom(Array.from({ length: 14 }, () => quizzes).flat());
      for (const line of termText('T', quizzes, many, { ...look, columns }).split('\n'))
        expect(line.length).toBeLessThanOrEqual(columns);
    }
  });

  it('name nobody where nobody is to be known', () => {
    const outputs = [
      termText('Autumn', quizzes, term, look, true),
      termHtml('Autumn', quizzes, term, { isAnonymous: true }),
      JSON.stringify(termJson('Autumn', quizzes, term, true)),
    ];
    for (const output of outputs)
      expect(output).not.toMatch(/Ann|Marlow|Ben|Quill|Cai|Thorne|Zed|aurora|zephyr/);
    expect(JSON.stringify(termJson('Autumn', quizzes, term))).toContain('Marlow');
  });

  it('let no name or title become markup', () => {
    const nasty = '<script>alert(1)</script>';
    const hostile = quizzes.map(
      ({ result }): TermQuiz => ({
        title: nasty,
        result: {
          ...result,
          students: result.students.map((student) => ({ ...student, name: nasty })),
        } as ClassResult,
      }),
    );
    const page = termHtml(nasty, hostile, termFrom(hostile));
    expect(page).not.toMatch(/<script/);
    expect(page).toContain('&lt;script&gt;');
  });
});

describe('a term file', () => {
  const text = `format: 1\ntitle: Autumn\nquizzes:\n  - { handout: week1.quiz.yaml, answers: [before] }\n`;

  it('is told from a handout, and refused in one line', () => {
    expect(parseTermFile(text, 't.yaml').quizzes).toEqual([
      { handout: 'week1.quiz.yaml', answers: ['before'] },
    ]);
    expect([isTermFile(text), isTermFile(someHandoutText(1))]).toEqual([true, false]);
    expect(() => parseTermFile(text.replace('answers', 'answer'), 't.yaml')).toThrow(
      /^t\.yaml:4: "answer" is not a known key here\. Did you mean answers\?/,
    );
    expect(() => parseTermFile(text.replace('format: 1', 'format: 2'), 't.yaml')).toThrow(/format must be 1/);
    expect(() => parseTermFile(text.replace('[before]', '[]'), 't.yaml')).toThrow(/must name a file/);
    expect(() => parseTermFile(`${text}#${' '.repeat(60_000)}`, 't.yaml')).toThrow(/larger than the 50 kB/);
  });
});
