/** Marking a class against grading its answers alone: 200 sittings of 20 questions. */
import { kindOf } from '../../src/drills/kinds/index.js';
import { analyseClass } from '../../src/quiz/analysis.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { parseHandout } from '../../src/quiz/handout.js';
import { reportCsv } from '../../src/quiz/report-csv.js';
import { reportJson } from '../../src/quiz/report-data.js';
import { reportText } from '../../src/quiz/report-text.js';
import { someClass, someHandout, someHandoutText } from '../quiz/fixture.js';
import { against, type BenchRow } from './base.js';

const SITTINGS = 200;
const QUESTIONS = 20;

/** Rows for the report. */
export function benchQuiz(): BenchRow[] {
  const handout = someHandout(QUESTIONS);
  const handoutText = someHandoutText(QUESTIONS);
  const sittings = someClass(handout, SITTINGS);
  const files = sittings.map((sitting, index) => ({ file: `${index}.json`, text: sittingText(sitting) }));
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
  return [
    {
      name: `mark ${SITTINGS} sittings of ${QUESTIONS} questions, files and reports included`,
      ratio,
      base: 'grading the 4,000 answers alone',
      atMost: 3,
    },
  ];
}
