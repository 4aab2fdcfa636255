/** Marking a class against grading its answers alone, and a term against one of its quizzes: 200 sittings of 20 questions. */
import { kindOf } from '../../src/drills/kinds/index.js';
import { analyseClass } from '../../src/quiz/analysis.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { parseHandout } from '../../src/quiz/handout.js';
import { reportCsv } from '../../src/quiz/report-csv.js';
import { reportJson } from '../../src/quiz/report-data.js';
import { reportText } from '../../src/quiz/report-text.js';
import { type TermQuiz, termFrom } from '../../src/quiz/term/term.js';
import { termCsv, termJson } from '../../src/quiz/term/term-data.js';
import { termText } from '../../src/quiz/term/term-text.js';
import { SECRET, someClass, someHandout, someHandoutText } from '../quiz/fixture.js';
import { against, type BenchRow } from './base.js';

const SITTINGS = 200;
const QUESTIONS = 20;
const QUIZZES = 10;

/** Rows for the report. */
export function benchQuiz(): BenchRow[] {
  const handout = someHandout(QUESTIONS, {}, SECRET);
  const handoutText = someHandoutText(QUESTIONS, {}, 'Week 3', SECRET);
  const sittings = someClass(handout, SITTINGS);
  const files = sittings.map((sitting, index) => ({
    file: `${index}.json`,
    text: sittingText(sitting, SECRET),
  }));
  const gradeAll = (): number => {
    let sum = 0;
    for (const { answers } of sittings) {
      for (const [index, { answer }] of answers.entries()) {
        const drill = handout.questions[index]?.drill;
        if (drill !== undefined) sum += kindOf(handout.studio, drill).grade(drill, answer).mark;
      }
    }
    return sum;
  };
  const markAll = (): number => {
    const read = parseHandout(handout.studio, handoutText, 'bench.quiz.yaml');
    const result = markClass(
      read,
      files.map(({ file, text }) => ({ file, sitting: parseSitting(text, file) })),
    );
    const analysis = analyseClass(result);
    const look = { columns: 80, full: '#', empty: '.' };
    return (
      reportText(result, analysis, look).length +
      reportCsv(result).length +
      JSON.stringify(reportJson(result, analysis)).length
    );
  };
  const { ratio } = against(markAll, 1, gradeAll, 1);
  // Of each quiz of a term its own: what is worked out once a drill is kept for as long as the drill is.
  const quizText = (week: number): string => someHandoutText(QUESTIONS, {}, `Week ${week}`);
  const markQuiz = (week: number): TermQuiz => {
    const read = parseHandout(handout.studio, quizText(week), 'bench.quiz.yaml');
    const submitted = files.map(({ file, text }) => ({ file, sitting: parseSitting(text, file) }));
    return { title: read.title, result: markClass(read, submitted) };
  };
  const markTerm = (): number => {
    const quizzes = Array.from({ length: QUIZZES }, (_, week) => markQuiz(week));
    const term = termFrom(quizzes);
    const look = { columns: 80, full: '#', empty: '.' };
    return (
      termText('Term', quizzes, term, look).length +
      termCsv(term).length +
      JSON.stringify(termJson('Term', quizzes, term)).length
    );
  };
  const ofTerm = against(markTerm, 1, () => markQuiz(0).result.students.length, 1, 5);
  return [
    {
      name: `mark ${SITTINGS} sittings of ${QUESTIONS} questions, files, seals and reports included`,
      ratio,
      base: 'grading the 4,000 answers alone',
      atMost: 3,
    },
    {
      name: `a term of ${QUIZZES} such quizzes, reports included`,
      ratio: ofTerm.ratio,
      base: 'reading and marking one of them',
      atMost: 12,
    },
  ];
}
