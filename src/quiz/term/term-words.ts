/** Words and figures that the reports of a term share. */
import type { ClassResult } from '../class.js';
import { elsewhereWords } from '../elsewhere.js';
import { asideWords, calledOverLines, FEWEST_ANONYMOUS, plural } from '../report-words.js';
import type { Change, SkillChange, Term, TermQuiz } from './term.js';

/** A difference with its sign: "+12", "-3", "0". */
export function signed(difference: number): string {
  const text = difference.toFixed(0).replace(/^-0$/, '0');
  return difference > 0 && text !== '0' ? `+${text}` : text;
}

/** "+5 to +19"; a dash where there is none. */
export const rangeWords = ({ interval }: Change): string =>
  interval === undefined ? '-' : `${signed(interval[0])} to ${signed(interval[1])}`;

/** What may be said of a change. */
export function verdictWords({ interval }: Change): string {
  if (interval === undefined) return 'too few to say';
  if (interval[0] > 0) return 'higher';
  return interval[1] < 0 ? 'lower' : 'not clear';
}

/** "quiz 1 to 3, level 2 to 3"; of the same questions that they are. */
function askedWords({ quizzes, levels, isSame }: SkillChange): string {
  const [before, after] = levels.map((level) => level.toFixed(1).replace(/\.0$/, ''));
  return `quiz ${quizzes[0]} to ${quizzes[1]}, ${isSame ? 'the same questions' : `level ${before} to ${after}`}`;
}

/** One line over the whole. */
export function wholeWords({ whole, compared: [from, to] }: Term): string {
  if (whole === undefined) return 'Nobody sat two of these quizzes, so there is nothing to compare.';
  const { students, before, after, rose, fell } = whole;
  const same = students - rose - fell;
  return `From quiz ${from} to quiz ${to}, ${plural(students, 'student')} who sat both: ${before.toFixed(0)} % before, ${after.toFixed(0)} % after; ${rose} rose, ${fell} fell, ${same} stayed; mean change ${signed(whole.difference)}${whole.interval === undefined ? '' : `, 95 % interval ${rangeWords(whole)}`}: ${verdictWords(whole)}.`;
}

/** "Week 3: 24 sittings, mean 61.3 %". */
export function quizWords({ title, students, meanPercent }: Term['quizzes'][number]): string {
  const mean = meanPercent === undefined ? '' : `, mean ${meanPercent.toFixed(1)} %`;
  return `${title}: ${plural(students, 'sitting')}${mean}`;
}

/** What the figures mean. */
export const TERM_NOTES: readonly string[] = [
  'Marks are means of 100 of the students who answered both times. The interval is of the mean change of each student, 95 %, paired, by Student’s t (1908). Higher or lower: it leaves out 0. One in twenty such intervals misses by chance.',
  'Unlike questions are not equally hard: a rise may be of the questions. Sitting the same quiz twice is the fair comparison; the levels are there to judge by.',
];

/** The changes of skills or groups that may be shown. */
export const shownChanges = <T extends Change>(changes: readonly T[], isAnonymous: boolean): readonly T[] =>
  isAnonymous ? changes.filter(({ students }) => students >= FEWEST_ANONYMOUS) : changes;

/** Changes under one heading. */
export interface ChangeTable {
  readonly caption: string;
  /** What its rows are. */
  readonly first: string;
  readonly rows: readonly { readonly change: Change & { readonly name: string }; readonly asked: string }[];
}

/** The tables of changes that have something to show. */
export function changeTables({ skills, groups, compared }: Term, isAnonymous: boolean): ChangeTable[] {
  const tables: ChangeTable[] = [
    {
      caption: 'Skills, the least change first',
      first: 'Skill',
      rows: shownChanges(skills, isAnonymous).map((change) => ({ change, asked: askedWords(change) })),
    },
    {
      caption: 'Groups, in percent of the points',
      first: 'Group',
      rows: shownChanges(groups, isAnonymous).map((change) => ({
        change,
        asked: `quiz ${compared[0]} to ${compared[1]}`,
      })),
    },
  ];
  return tables.filter(({ rows }) => rows.length > 0);
}

/** Lines about each quiz, with its number in front. */
const ofEach = (
  quizzes: readonly TermQuiz[],
  linesOf: (result: ClassResult) => readonly string[],
): string[] => quizzes.flatMap(({ result }, at) => linesOf(result).map((line) => `Quiz ${at + 1}. ${line}`));

/** Lines under headings, without those that have none: who was missing, not matched or set aside, and whose file is in doubt. */
export function remarkLists(
  quizzes: readonly TermQuiz[],
  isAnonymous: boolean,
): { readonly title: string; readonly lines: readonly string[] }[] {
  const absent = ofEach(quizzes, ({ calledOver, setAside, elsewhere }) => [
    ...(calledOver === undefined || calledOver.missing.length + calledOver.unmatched.length === 0
      ? []
      : calledOverLines(calledOver, isAnonymous)),
    ...elsewhere.map((each) => elsewhereWords(each, { isAnonymous })),
    ...(isAnonymous ? [] : setAside.map((each) => `Set aside: ${asideWords(each)}`)),
  ]);
  const doubtful = ofEach(isAnonymous ? [] : quizzes, ({ students }) =>
    students.flatMap(({ name, file, doubts }) => doubts.map((doubt) => `${name} (${file}): ${doubt}`)),
  );
  return [
    { title: 'Not there', lines: absent },
    { title: 'In doubt, and counted all the same', lines: doubtful },
  ].filter(({ lines }) => lines.length > 0);
}
