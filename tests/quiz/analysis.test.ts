/** The analysis of a marked class: choices and ideas counted, students told apart, and classes too small or alike. */
import { describe, expect, it } from 'vitest';
import { analyseClass, groupSize } from '../../src/quiz/analysis.js';
import { markClass } from '../../src/quiz/class.js';
import { reportJson } from '../../src/quiz/report-data.js';
import { reportText } from '../../src/quiz/report-text.js';
import { IN_MUTANTS } from '../cases.js';
import { kindOf } from '../studio.js';
import { ACROSS, bestAnswers, sittingOf, someClass, someHandout, submit } from './fixture.js';

const handout = someHandout(4);
const best = bestAnswers(handout);

describe('analysis', () => {
  it('counts choices, answers and wrong ideas', () => {
    const result = markClass(handout, [
      submit(sittingOf(handout, 'Ann', [best[0]])),
      submit(sittingOf(handout, 'Ben', [ACROSS])),
      submit(sittingOf(handout, 'Cai', [ACROSS])),
      submit(sittingOf(handout, 'Dot', [])),
    ]);
    const [question] = analyseClass(result).questions;
    expect(question?.answered).toBe(3);
    expect(question?.difficulty).toBe(0.25);
    expect(question?.answers.map(({ answer, count }) => [answer, count])).toEqual([
      [ACROSS, 2],
      [best[0], 1],
    ]);
    expect(question?.answers.map(({ isGood }) => isGood)).toEqual([false, true]);
    const { drill } = handout.questions[0] as (typeof handout.questions)[number];
    const { idea } = kindOf(drill).grade(drill, ACROSS);
    expect(question?.ideas[0]).toMatchObject({ id: idea, count: 2, of: 3 });
    expect(question?.ideas[0]?.words).toMatch(/^2 of 3 /);
  });

  it('takes halves for a small class and 27 percent from thirty on', () => {
    expect([1, 2, 10, 29, 30, 100].map(groupSize)).toEqual([0, 1, 5, 14, 8, 27]);
  });

  it.skipIf(IN_MUTANTS)(
    'finds that a class which answers better from student to student is told apart',
    () => {
      // Eight questions: the answers are fewer now that the water is not asked for, so that more of them are right by luck.
      const longer = someHandout(8);
      const analysisOf = (size: number) =>
        analyseClass(
          markClass(
            longer,
            someClass(longer, size).map((each) => submit(each)),
          ),
        );
      // Large, so that the figures are those of the class and not of the draw.
      const analysis = analysisOf(400);
      for (const question of analysis.questions) {
        expect(question.groups?.discrimination).toBeGreaterThan(0.3);
        expect(question.pointBiserial).toBeGreaterThan(question.correctedPointBiserial ?? 1);
      }
      expect(analysis.reliability.alpha).toBeGreaterThan(0.5);
      expect(analysisOf(40).warnings[0]).toMatch(/^With 40 sittings these figures are hints/);
    },
  );

  it('copes with one sitting, with none, and with a class that is all alike', () => {
    expect(analyseClass(markClass(handout, [])).questions).toEqual([]);
    const one = analyseClass(markClass(handout, [submit(sittingOf(handout, 'Ann', best))]));
    expect(one.questions[0]?.groups).toBeUndefined();
    expect(one.reliability).toEqual({});
    const alike = analyseClass(
      markClass(
        handout,
        ['Ann', 'Ben', 'Cai'].map((name) => submit(sittingOf(handout, name, best))),
      ),
    );
    expect(alike.questions[0]?.pointBiserial).toBeUndefined();
    expect(alike.warnings.join(' ')).toMatch(/Reliability needs/);
  });

  it.skipIf(IN_MUTANTS)('is byte-equal on every run and in every order of the files', () => {
    const files = someClass(handout, 25).map((each) => submit(each));
    const look = { columns: 80, full: '#', empty: '.' };
    const outputs = [files, [...files].reverse(), [...files.slice(9), ...files.slice(0, 9)]].map((order) => {
      const result = markClass(someHandout(4), order);
      const analysis = analyseClass(result);
      return reportText(result, analysis, look) + JSON.stringify(reportJson(result, analysis));
    });
    expect(new Set(outputs).size).toBe(1);
  });
});
