/** The report of a class as CSV for a spreadsheet: a row for each student, the columns that were chosen. */
import { stringify } from 'csv-stringify/sync';
import { kindOf } from '../drills/kinds/index.js';
import { UsageError } from '../errors.js';
import { didYouMean } from '../text/nearest.js';
import { cleanText } from '../text/sanitize.js';
import type { ClassResult, Student } from './class.js';
import { remarks } from './report-words.js';
import { bySkill, familiesOf, skillName } from './skills.js';

type Cell = string | number;

/** What one chosen column puts into the table: one column, or one for each question or skill. */
interface Column {
  heads(result: ClassResult): readonly string[];
  cells(student: Student, result: ClassResult): readonly Cell[];
}

const one = (head: string, cell: (student: Student) => Cell | undefined): Column => ({
  heads: () => [head],
  cells: (student) => [cell(student) ?? ''],
});

/** Titles may be alike; with their numbers they are not. */
const titles = ({ handout }: ClassResult): string[] =>
  handout.questions.map(({ drill }, index) => cleanText(`${index + 1}. ${drill.title}`));

const COLUMNS = {
  name: one('Name', ({ name }) => cleanText(name)),
  number: one('Number', ({ enrolled }) => enrolled?.number),
  group: one('Group', ({ enrolled }) => enrolled?.group),
  file: one('File', ({ file }) => file),
  answered: one('Answered', ({ answered }) => answered),
  right: one('Right', ({ right }) => right),
  points: one('Points', ({ points }) => points),
  possible: one('Possible points', ({ possible }) => possible),
  percent: one('Percent', ({ percent }) => percent),
  remarks: one('Remarks', (student) => cleanText(remarks(student).join('; '))),
  skills: {
    heads: ({ handout }) => familiesOf(handout).map(skillName),
    cells: (student, { handout }) => bySkill(handout, student).map(({ mean }) => Math.round(mean * 10) / 10),
  },
  questions: {
    heads: titles,
    cells: ({ marks }) => marks.map(({ state, mark }) => (state === 'answered' ? mark : '')),
  },
  answers: {
    heads: (result) => titles(result).map((title) => `${title}: answer`),
    cells: ({ marks }, { handout: { questions, studio } }) =>
      marks.map(({ state, answer }, index) => {
        const drill = questions[index]?.drill;
        if (state !== 'answered' || answer === undefined || drill === undefined) return '';
        return cleanText(kindOf(studio, drill).label(drill, answer));
      }),
  },
} satisfies Record<string, Column>;

/** What a column may be called. */
export type ColumnName = keyof typeof COLUMNS;

export const COLUMN_NAMES = Object.keys(COLUMNS) as readonly ColumnName[];

const USUAL: readonly ColumnName[] = [
  'name',
  'answered',
  'right',
  'points',
  'possible',
  'percent',
  'remarks',
  'questions',
];
const USUAL_IN_CLASS: readonly ColumnName[] = ['name', 'number', 'group', ...USUAL.slice(1)];

/** The columns named in a list with commas. @throws UsageError for one that is not known, or named twice */
export function readColumns(text: string): ColumnName[] {
  const names = text.split(',').map((name) => name.trim().toLowerCase());
  for (const [at, name] of names.entries()) {
    if (!Object.hasOwn(COLUMNS, name))
      throw new UsageError(
        `--columns has no "${cleanText(name, 40)}"; there are: ${COLUMN_NAMES.join(', ')}.${didYouMean(name, COLUMN_NAMES)}`,
      );
    if (names.indexOf(name) < at) throw new UsageError(`--columns names "${name}" twice`);
  }
  return names as ColumnName[];
}

/**
 * Rows as CSV: RFC 4180 with a byte-order mark, by which spreadsheets know that the names are in UTF-8; cells that one would take for a
 * formula get an apostrophe in front.
 */
export function spreadsheet(rows: readonly (readonly Cell[])[]): string {
  return stringify(
    rows.map((row) => [...row]),
    { bom: true, escape_formulas: true, record_delimiter: '\r\n' },
  );
}

/** A row for each student; see {@link spreadsheet}. A mark is empty where nothing was answered. */
export function reportCsv(result: ClassResult, columns?: readonly ColumnName[]): string {
  const names = columns ?? (result.calledOver === undefined ? USUAL : USUAL_IN_CLASS);
  const chosen = names.map((name): Column => COLUMNS[name]);
  return spreadsheet([
    chosen.flatMap((column) => column.heads(result)),
    ...result.students.map((student) => chosen.flatMap((column) => column.cells(student, result))),
  ]);
}
