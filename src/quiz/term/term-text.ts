/** The report of a term as text. */
import { fitWords, padText } from '../../text/wrap.js';
import { plural } from '../report-words.js';
import { indented, NAME_COLUMNS, type TextLook } from '../text-parts.js';
import type { Change, Term, TermQuiz } from './term.js';
import {
  absenceLines,
  askedWords,
  quizWords,
  rangeWords,
  shownChanges,
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

function changeLines(name: string, change: Change, asked: string, look: TextLook): string[] {
  const figures = [
    right(change.before.toFixed(0), COUNT_COLUMNS),
    right(change.after.toFixed(0), CELL_COLUMNS),
    right(signed(change.difference), COUNT_COLUMNS),
    right(change.rose, CELL_COLUMNS),
    right(change.fell, CELL_COLUMNS),
  ].join('');
  return [
    `  ${padText(fitWords(name, NAME_COLUMNS), NAME_COLUMNS)}${figures}`,
    ...indented(
      [`${verdictWords(change)}, ${rangeWords(change)}; ${plural(change.students, 'student')}${asked}`],
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
  const groups = shownChanges(term.groups, isAnonymous);
  const skills = shownChanges(term.skills, isAnonymous);
  const absent = absenceLines(quizzes, isAnonymous);
  const blocks = [
    [title, ...indented([wholeWords(term)], look, 0)],
    ['Quizzes', ...term.quizzes.flatMap((quiz, at) => indented([`${at + 1}. ${quizWords(quiz)}`], look))],
    ...(skills.length === 0
      ? []
      : [
          [
            'Skills, the least change first',
            `  ${padText('skill', NAME_COLUMNS)}${CHANGE_HEAD}`,
            ...skills.flatMap((skill) => changeLines(skill.name, skill, `; ${askedWords(skill)}`, look)),
          ],
        ]),
    ...(groups.length === 0
      ? []
      : [
          [
            'Groups, in percent of the points',
            `  ${padText('group', NAME_COLUMNS)}${CHANGE_HEAD}`,
            ...groups.flatMap((group) => changeLines(group.name, group, '', look)),
          ],
        ]),
    ...(isAnonymous ? [] : [['Students, percent in each quiz', ...studentTables(term, look)]]),
    ...(absent.length === 0 ? [] : [['Not there', ...indented(absent, look)]]),
    indented(TERM_NOTES, look),
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}
