/** The report of a class as text. */
import { padText, widthOf, wrapText } from '../text/wrap.js';
import type { ClassAnalysis, QuestionAnalysis } from './analysis.js';
import type { ClassResult, Student } from './class.js';
import { elsewhereWords } from './elsewhere.js';
import { firstPage } from './report-first-text.js';
import {
  asideWords,
  calledOverLines,
  countWords,
  figureLines,
  MOST_LISTED,
  otherAnswers,
  remarks,
  shownPoints,
  smallClassNote,
  twoDecimals,
} from './report-words.js';
import { skillName } from './skills.js';
import { bar, indented, NAME_COLUMNS, type TextLook } from './text-parts.js';

const BAR_COLUMNS = 12;

function studentRow(student: Student, questions: number, columns: number): string[] {
  const { name, answered, right, points, possible, percent } = student;
  const row = [
    padText(name, NAME_COLUMNS),
    padText(`${answered}/${questions}`, 8, 'left'),
    padText(String(right), 6, 'left'),
    padText(`${shownPoints(points)}/${shownPoints(possible)}`, 13, 'left'),
    padText(percent.toFixed(1), 7, 'left'),
  ].join(' ');
  const said = remarks(student).flatMap((remark) => wrapText(remark, columns - 4));
  return [row, ...said.map((line) => `    ${line}`)];
}

/** One row per student, remarks under it. */
function classTable({ students, handout }: ClassResult, columns: number): string[] {
  const head = [
    padText('name', NAME_COLUMNS),
    padText('answered', 8, 'left'),
    padText('right', 6, 'left'),
    padText('points', 13, 'left'),
    padText('percent', 7, 'left'),
  ].join(' ');
  return [head, ...students.flatMap((student) => studentRow(student, handout.questions.length, columns))];
}

/** Whole answers, most given first; every good one is starred. */
function answerLines(question: QuestionAnalysis, look: TextLook): string[] {
  const listed = question.answers.slice(0, MOST_LISTED);
  const other = otherAnswers(question, listed.length);
  return [
    ...listed.flatMap(({ label, count, mark, isGood }) => {
      const share = bar(count / Math.max(1, question.answered), BAR_COLUMNS, look);
      const head = `${padText(String(count), 3, 'left')} ${share} ${isGood ? '*' : ' '}${padText(String(mark), 4, 'left')}  `;
      const [first = '', ...rest] = wrapText(label, look.columns - 3 - widthOf(head));
      return [`   ${head}${first}`, ...rest.map((line) => `   ${' '.repeat(widthOf(head))}${line}`)];
    }),
    ...(other === undefined ? [] : [`       ${other}`]),
  ];
}

function questionBlock(
  question: QuestionAnalysis,
  index: number,
  { handout }: ClassResult,
  analysis: ClassAnalysis,
  look: TextLook,
): string[] {
  const { drill, points } = handout.questions[index] as ClassResult['handout']['questions'][number];
  const worth = points === 1 ? '' : `, ${shownPoints(points)} points`;
  const wrapped = (lines: readonly string[]): string[] => indented(lines, look, 3);
  return [
    `${index + 1}. ${drill.title} (${skillName(drill.family)}, ${drill.id}${worth})`,
    ...wrapped([drill.ask, ...figureLines(question, analysis.sittings)]),
    ...answerLines(question, look),
    ...wrapped([`best: ${question.bestLabel}`, ...question.ideas.slice(0, 2).map(({ words }) => words)]),
  ];
}

/** Reliability and what to make of it. */
export function reliabilityLines({ reliability, groupWords, warnings, sittings }: ClassAnalysis): string[] {
  const { kr20, alpha, standardError } = reliability;
  return [
    `KR-20 ${twoDecimals(kr20)} (right or wrong), Cronbach's alpha ${twoDecimals(alpha)} (points)`,
    ...(standardError === undefined
      ? []
      : [`standard error of measurement ${twoDecimals(standardError)} points`]),
    ...(sittings < 2
      ? []
      : [`Discrimination compares ${groupWords}, by points, the question itself included.`]),
    'Right means a mark of 85 or more. All variances are population variances.',
    ...warnings,
  ];
}

/** The whole report. @param isAnonymous without names, files and a row for each student: to be shown to the class */
export function reportText(
  result: ClassResult,
  analysis: ClassAnalysis,
  look: TextLook,
  isAnonymous = false,
): string {
  const { handout, students, setAside, elsewhere, calledOver } = result;
  const blocks = [
    [
      handout.title,
      countWords(result, analysis.meanPercent),
      ...elsewhere.flatMap((each) => indented([elsewhereWords(each, { isAnonymous })], look, 0)),
      ...smallClassNote(students.length, isAnonymous),
      ...(calledOver === undefined
        ? []
        : calledOverLines(calledOver, isAnonymous).flatMap((line) => indented([line], look, 0))),
    ],
    ...firstPage(result, analysis.lesson, look, isAnonymous),
    ...(setAside.length === 0 || isAnonymous
      ? []
      : [['Set aside', ...indented(setAside.map(asideWords), look)]]),
    ...(students.length === 0 || isAnonymous ? [] : [classTable(result, look.columns)]),
    ...(students.length === 0 ? [] : [['Each question. * is an answer of 85 marks and more.']]),
    ...analysis.questions.map((question, index) => questionBlock(question, index, result, analysis, look)),
    ...(students.length === 0 ? [] : [['Reliability', ...indented(reliabilityLines(analysis), look)]]),
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}
