/** The report of a term as text. */
import { fitWords, padText } from '../../text/wrap.js';
import { plural } from '../report-words.js';
import { indented, NAME_COLUMNS, type TextLook } from '../text-parts.js';
import type { Term, TermQuiz } from './term.js';
import {
  type ChangeTable,
  changeTables,
  quizWords,
  rangeWords,
  remarkLists,
  signed,
  TERM_NOTES,
  verdictWords,
  wholeWords,
} from './term-words.js';

const CELL_COLUMNS = 6;
const COUNT_COLUMNS = 7;

const right = (text: string | number, columns: number): string => padText(String(text), columns, 'left');

const CHANGE_HEAD = [
  right('before', COUNT_COLUMNS),
  right('after', CELL_COLUMNS),
  right('change', COUNT_COLUMNS),
  right('rose', CELL_COLUMNS),
  right('fell', CELL_COLUMNS),
].join('');

function changeLines({ change, asked }: ChangeTable['rows'][number], look: TextLook): string[] {
  const figures = [
    right(change.before.toFixed(0), COUNT_COLUMNS),
    right(change.after.toFixed(0), CELL_COLUMNS),
    right(signed(change.difference), COUNT_COLUMNS),
    right(change.rose, CELL_COLUMNS),
    right(change.fell, CELL_COLUMNS),
  ].join('');
  return [
    `  ${padText(fitWords(change.name, NAME_COLUMNS), NAME_COLUMNS)}${figures}`,
    ...indented(
      [`${verdictWords(change)}, ${rangeWords(change)}; ${plural(change.students, 'student')}; ${asked}`],
      look,
      4,
    ),
  ];
}

/** Rows of students, a column for each quiz; of more quizzes than fit side by side in several tables. */
function studentTables({ students, quizzes }: Term, { columns }: TextLook): string[] {
  const fit = Math.max(1, Math.floor((columns - 2 - NAME_COLUMNS - COUNT_COLUMNS) / CELL_COLUMNS));
  return Array.from({ length: Math.ceil(quizzes.length / fit) }, (_, table) => {
    const from = table * fit;
    const cell = (percent: number | undefined): string => right(percent?.toFixed(0) ?? '-', CELL_COLUMNS);
    return [
      ...(table === 0 ? [] : ['']),
      `  ${padText('name', NAME_COLUMNS)}${quizzes
        .slice(from, from + fit)
        .map((_quiz, at) => right(from + at + 1, CELL_COLUMNS))
        .join('')}${right('change', COUNT_COLUMNS)}`,
      ...students.map(
        ({ name, percents, change }) =>
          `  ${padText(name, NAME_COLUMNS)}${percents
            .slice(from, from + fit)
            .map(cell)
            .join('')}${right(change === undefined ? '-' : signed(change), COUNT_COLUMNS)}`,
      ),
    ];
  }).flat();
}

/** The whole report. @param isAnonymous without names, files and a row for each student: to be shown to the class */
export function termText(
  title: string,
  quizzes: readonly TermQuiz[],
  term: Term,
  look: TextLook,
  isAnonymous = false,
): string {
  const blocks = [
    [title, ...indented([wholeWords(term)], look, 0)],
    ['Quizzes', ...term.quizzes.flatMap((quiz, at) => indented([`${at + 1}. ${quizWords(quiz)}`], look))],
    ...changeTables(term, isAnonymous).map(({ caption, first, rows }) => [
      caption,
      `  ${padText(first.toLowerCase(), NAME_COLUMNS)}${CHANGE_HEAD}`,
      ...rows.flatMap((row) => changeLines(row, look)),
    ]),
    ...(isAnonymous ? [] : [['Students, percent in each quiz', ...studentTables(term, look)]]),
    ...remarkLists(quizzes, isAnonymous).map(({ title: head, lines }) => [head, ...indented(lines, look)]),
    indented(TERM_NOTES, look),
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}
