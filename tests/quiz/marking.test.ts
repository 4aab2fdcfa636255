/** Marking sittings: marks and points, what is refused or set aside, and what is remarked. */
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/drills/types.js';
import { parseSitting, type Sitting, sittingText } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { createGrader, markSitting } from '../../src/quiz/marking.js';
import { remarks } from '../../src/quiz/report-words.js';
import { kindOf } from '../studio.js';
import { ACROSS, bestAnswers, NINE, sittingOf, someHandout, submit } from './fixture.js';

const handout = someHandout(4);
const best = bestAnswers(handout);

describe('marking', () => {
  it('gives full marks for the best answers and nothing for open questions', () => {
    const { students } = markClass(handout, [
      submit(sittingOf(handout, 'Ann', best)),
      submit(sittingOf(handout, 'Ben', [best[0]])),
    ]);
    expect(
      students.map(({ name, answered, points, possible }) => [name, answered, points, possible]),
    ).toEqual([
      ['Ann', 4, 6, 6],
      ['Ben', 1, 1, 6],
    ]);
    expect(students[0]?.percent).toBe(100);
    expect(students[1]?.percent).toBe(16.7);
    expect(students.map(remarks)).toEqual([[], ['partial: questions open']]);
  });

  it('takes an answer only when every choice is made, and no other for one', () => {
    const grader = createGrader(handout);
    const [full, second] = [best[0] as Answer, { second: (best[0] as Answer)['second'] as string }];
    expect(grader.stateOf(0, undefined)).toBe('open');
    expect(grader.stateOf(0, {})).toBe('open');
    expect(grader.stateOf(0, full)).toBe('answered');
    for (const { id } of grader.fields[0] ?? []) {
      const { [id]: _left, ...half } = full;
      expect(grader.stateOf(0, half), `without ${id}`).toBe('unfinished');
      expect(grader.stateOf(0, { ...full, [id]: 'mud' }), `a foreign ${id}`).toBe('unfit');
    }
    // A choice of another row is none of this one.
    expect(grader.stateOf(0, { ...full, second: full['amount'] as string })).toBe('unfit');
    expect(grader.stateOf(0, { ...full, water: 'much' })).toBe('unfit');
    expect(grader.stateOf(0, { ...second, amount: '' })).toBe('unfit');
  });

  it('gives nothing for an answer that is half filled, and does not count it as answered', () => {
    const half = { second: (best[0] as Answer)['second'] as string };
    const { students } = markClass(handout, [submit(sittingOf(handout, 'Ann', [half, best[1]]))]);
    const [ann] = students;
    expect(ann?.marks[0]).toEqual({ state: 'unfinished', answer: half, mark: 0, points: 0, right: false });
    expect(ann?.marks.map(({ state }) => state)).toEqual(['unfinished', 'answered', 'open', 'open']);
    expect([ann?.answered, ann?.right, ann?.points, ann?.possible]).toEqual([1, 1, 2, 6]);
    expect(ann?.percent).toBe(33.3);
  });

  it('holds a question left open without an answer, and a good one without an idea', () => {
    const sitting = sittingOf(handout, 'Ann', [best[0]]);
    const unmet = { ...sitting, answers: sitting.answers.slice(0, 1) };
    const { students } = markClass(handout, [submit(unmet)]);
    expect(students[0]?.marks[1]).toStrictEqual({ state: 'open', mark: 0, points: 0, right: false });
    expect(students[0]?.marks[0]).toStrictEqual({
      state: 'answered',
      answer: best[0],
      mark: 100,
      points: 1,
      right: true,
    });
  });

  it('grades the same answer once', () => {
    const grader = createGrader(handout);
    expect(grader.grade(0, ACROSS)).toBe(grader.grade(0, { amount: '1:1', second: 'prussian-blue' }));
    expect(grader.grade(0, ACROSS)).not.toBe(grader.grade(2, ACROSS));
  });

  it('is right from 85 on, and points go with the mark to a thousandth', () => {
    const marked = (mark: number) => {
      const grader = {
        ...createGrader(handout),
        grade: () => ({ ...createGrader(handout).grade(0, ACROSS), mark }),
      };
      return markSitting(handout, grader, sittingOf(handout, 'Ann', [undefined, best[1]])).marks[1];
    };
    expect([marked(84)?.right, marked(85)?.right]).toEqual([false, true]);
    expect([marked(84)?.points, marked(33.33)?.points]).toEqual([1.68, 0.667]);
  });

  it('computes each mark as grading alone does', () => {
    const { students } = markClass(handout, [
      submit(sittingOf(handout, 'Ann', [ACROSS, ACROSS, ACROSS, ACROSS])),
    ]);
    const marks = handout.questions.map(({ drill }) => kindOf(drill).grade(drill, ACROSS).mark);
    expect(students[0]?.marks.map(({ mark }) => mark)).toEqual(marks);
    expect(students[0]?.points).toBeCloseTo(
      marks.reduce((sum, mark, index) => sum + (mark / 100) * (handout.questions[index]?.points ?? 0), 0),
      2,
    );
  });

  it('believes no mark in a student’s file: a file with one is refused', () => {
    const text = sittingText(sittingOf(handout, 'Ann', best));
    const data = JSON.parse(text) as { events: object[] };
    expect(() => parseSitting(JSON.stringify({ ...data, mark: 100 }), 'a.json')).toThrow(
      /"mark" is not a known key/,
    );
    data.events[1] = { ...data.events[1], mark: 100 };
    expect(() => parseSitting(JSON.stringify(data), 'a.json')).toThrow(/"mark" is not a known key/);
  });

  it('refuses answers to another handout by name', () => {
    const other = someHandout(4, { backAllowed: false });
    const result = markClass(handout, [
      submit(sittingOf(other, 'Ann', best)),
      submit(sittingOf(handout, 'Ben', best)),
    ]);
    expect(result.students.map(({ name }) => name)).toEqual(['Ben']);
    expect(result.setAside).toEqual([
      {
        name: 'Ann',
        file: 'Ann.json',
        why: 'answers to another handout, or to one changed since',
        isRefused: true,
      },
    ]);
  });

  it('counts one sitting of a name, the one finished first, whatever the order of the files', () => {
    const early = submit(sittingOf(handout, 'Sam', best, 10), 'early.json');
    const late = submit(sittingOf(handout, ' sam ', [ACROSS], 30), 'late.json');
    const { finished: _finished, ...open } = sittingOf(handout, 'SAM', best, 5);
    const unfinished = submit(open, 'open.json');
    const orders = [
      [early, late, unfinished],
      [unfinished, late, early],
      [late, early, unfinished],
    ].map((files) => markClass(handout, files));
    for (const result of orders) {
      expect(result.students.map(({ file }) => file)).toEqual(['early.json']);
      expect(result.setAside.map(({ file }) => file)).toEqual(['late.json', 'open.json']);
      expect(result.setAside[0]?.why).toMatch(/finished first counts, early\.json/);
    }
    const copies = markClass(handout, [early, { ...early, file: 'copy.json' }]);
    expect(copies.setAside[0]?.why).toBe('the same answers as copy.json');
  });

  it('reports late, over-time, partial and odd sittings', () => {
    const timed = someHandout(3, { timePerQuestionSeconds: 30, due: '2026-03-01T09:01:00Z' });
    const slow = sittingOf(timed, 'Slow', bestAnswers(timed), 40);
    const quick = sittingOf(timed, 'Quick', bestAnswers(timed), 10);
    const { finished: _finished, ...open } = sittingOf(timed, 'Open', bestAnswers(timed), 10);
    const odd: Sitting = {
      ...quick,
      name: 'Odd',
      finished: quick.started,
      answers: [
        ...quick.answers.slice(1),
        { drill: 'question-0', shown: quick.started, answer: { second: 'mud' }, at: quick.started },
        { drill: 'question-99', shown: quick.started, answer: {} },
      ],
    };
    const { students } = markClass(
      timed,
      [slow, quick, open, odd].map((each) => submit(each)),
    );
    const said = Object.fromEntries(students.map((each) => [each.name, remarks(each)]));
    expect(said).toEqual({
      Odd: [
        'partial: questions open',
        'choices that the question does not have: question-0',
        '1 answers to questions that the handout does not have',
        'times that run backwards',
      ],
      Open: ['partial: not finished'],
      Quick: [],
      Slow: ['late by 60 s', 'over time on 3: question-0, question-1, question-2'],
    });
    expect(
      markClass(timed, [submit(slow)], { due: NINE + 3_600_000 }).students[0]?.lateSeconds,
    ).toBeUndefined();
  });
});
