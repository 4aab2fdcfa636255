/** Words and figures that the reports share. */
import { FAIR_MARK, GOOD_MARK } from '../judgement/index.js';
import type { QuestionAnalysis } from './analysis.js';
import type { CalledOver } from './calling-over.js';
import type { ClassResult, SetAside, Student } from './class.js';
import type { Enrolled } from './class-list.js';
import { elsewhereWords } from './elsewhere.js';
import type { Interval } from './intervals.js';
import type { Misconception } from './misconceptions.js';
import type { RoomQuestionResult, RoomResult, Vote, VotedAnswer } from './room-result.js';

/** A share or a correlation with two decimals; a dash where it cannot be computed. */
export function twoDecimals(value: number | undefined): string {
  if (value === undefined) return '-';
  const text = value.toFixed(2);
  return text === '-0.00' ? '0.00' : text;
}

/** Points without needless decimals. */
export function shownPoints(points: number): string {
  return String(Math.round(points * 100) / 100);
}

/** How well a question tells strong from weak, by D. Limits: Ebel's bands as item-analysis guides quote them. */
export function discriminationWords(discrimination: number): string {
  if (discrimination < 0) return 'backwards: the weaker did better; look at the question again';
  if (discrimination < 0.2) return 'hardly tells strong from weak';
  if (discrimination < 0.3) return 'tells strong from weak a little';
  if (discrimination < 0.4) return 'tells strong from weak fairly well';
  return 'tells strong from weak well';
}

/** Figures of one question, a line each. */
export function figureLines(question: QuestionAnalysis, sittings: number): string[] {
  const { difficulty, meanMark, groups, answered } = question;
  const right = Math.round(difficulty * sittings);
  return [
    `right ${right} of ${sittings} (difficulty index ${twoDecimals(difficulty)}), mean mark ${meanMark.toFixed(0)}, answered by ${answered}`,
    groups === undefined
      ? 'discrimination: needs two sittings'
      : `discrimination ${twoDecimals(groups.discrimination)}: ${discriminationWords(groups.discrimination)}`,
    `point-biserial ${twoDecimals(question.pointBiserial)}, corrected for the question itself ${twoDecimals(question.correctedPointBiserial)}`,
  ];
}

function duration(seconds: number): string {
  if (seconds < 120) return `${seconds} s`;
  if (seconds < 7200) return `${Math.round(seconds / 60)} min`;
  return seconds < 172_800 ? `${Math.round(seconds / 3600)} h` : `${Math.round(seconds / 86_400)} days`;
}

/** What is to be said of one sitting, to the student too; nothing for most. */
export function ownRemarks({ isPartial, sitting, lateSeconds, overTime, oddities }: Student): string[] {
  return [
    ...(sitting.source === 'paper' ? ['entered from paper'] : []),
    ...(isPartial
      ? [sitting.finished === undefined ? 'partial: not finished' : 'partial: questions open']
      : []),
    ...(lateSeconds === undefined ? [] : [`late by ${duration(lateSeconds)}`]),
    ...(overTime.length === 0 ? [] : [`over time on ${overTime.length}: ${overTime.join(', ')}`]),
    ...oddities,
  ];
}

/** What a teacher should know of one sitting. */
export const remarks = (student: Student): string[] => [...ownRemarks(student), ...student.doubts];

/** "1 sitting", "24 sittings". */
export const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** "24 sittings counted, 2 set aside; mean 61.3 %". */
export function countWords(
  { students, setAside, rooms }: ClassResult,
  meanPercent: number | undefined,
): string {
  const mean = meanPercent === undefined ? '' : `; mean ${meanPercent.toFixed(1)} %`;
  const held = rooms.length === 0 ? '' : `, held in ${plural(rooms.length, 'room')}`;
  return `${plural(students.length, 'sitting')} counted, ${setAside.length} set aside${held}${mean}`;
}

/** "Ann Lee (7, evening)". */
export function enrolledWords({ name, number, group }: Enrolled): string {
  const more = [number, group].filter((each) => each !== undefined);
  return more.length === 0 ? name : `${name} (${more.join(', ')})`;
}

/** Who is missing and who is not on the list, a line each; with `isAnonymous` how many. */
export function calledOverLines({ missing, unmatched }: CalledOver, isAnonymous: boolean): string[] {
  const list = (words: string, names: readonly string[]): string[] => {
    if (names.length === 0) return [];
    return [isAnonymous ? `${words}: ${names.length}` : `${words} (${names.length}): ${names.join('; ')}`];
  };
  return [
    ...list('Missing', missing.map(enrolledWords)),
    ...list(
      'Not matched to the class',
      unmatched.map(({ name, file, why }) => `${name} (${file}): ${why}`),
    ),
    ...(missing.length + unmatched.length === 0 ? ['Everybody in the class is here.'] : []),
  ];
}

/** A file that was set aside, and why. */
export const asideWords = ({ name, file, why }: SetAside): string =>
  `${name === '' ? file : `${name} (${file})`}: ${why}`;

/** Files that do not count, for commands that say a line a student. */
export const leftOutLines = ({ setAside, elsewhere }: ClassResult): string[] => [
  ...(setAside.length === 0 ? [] : ['Set aside', ...setAside.map((each) => `  ${asideWords(each)}`)]),
  ...elsewhere.map((each) => elsewhereWords(each)),
];

/** Most mistaken ideas that are listed one by one. */
const MOST_IDEAS = 6;

/** The ideas that cost most marks, a line each. */
export function ideaLines(misconceptions: readonly Misconception[]): string[] {
  const left = misconceptions.length - MOST_IDEAS;
  return [
    ...misconceptions.slice(0, MOST_IDEAS).map(({ words }) => `${words}.`),
    ...(left > 0 ? [`${plural(left, 'other idea')} cost fewer marks than these.`] : []),
  ];
}

/** A mark in the grid: a dash where nothing was answered, an exclamation mark below 55. */
export function gridMark(mark: number | undefined): string {
  if (mark === undefined) return '-';
  return `${mark.toFixed(0)}${mark < FAIR_MARK ? '!' : ''}`;
}

export const GRID_NOTE = `Mean mark of 100 in each skill, the weakest skill first; ${GOOD_MARK}+ and <${FAIR_MARK} count students. ! is under ${FAIR_MARK}, - is nothing answered; an open question counts 0.`;

const percentWords = (share: number): string => `${Math.round(share * 100)} %`;

function voteFigures({ right, hands, interval }: Vote): string {
  const between = ([low, high]: Interval): string => `, ${percentWords(low)} to ${percentWords(high)}`;
  const share =
    hands === 0 ? '' : ` (${percentWords(right / hands)}${interval === undefined ? '' : between(interval)})`;
  return `${right} of ${hands}${share}`;
}

/** "right 7 of 24 (29 %, 15 % to 49 %); after talking 15 of 24 (63 %, 43 % to 79 %)". */
export function voteWords({ first, second }: RoomQuestionResult): string {
  return `right ${voteFigures(first)}${second === undefined ? '' : `; after talking ${voteFigures(second)}`}`;
}

/** Hands for one answer, "7" or "7, then 3". */
export const handsWords = ({ first, second }: Pick<VotedAnswer, 'first' | 'second'>): string =>
  second === undefined ? String(first) : `${first}, then ${second}`;

/** Fewer students than this are known by their figures, names or not. */
export const FEWEST_ANONYMOUS = 5;

/** What a list of voted answers is headed with. */
export const roomTitle = ({ held, file }: RoomResult): string =>
  `Held in a room on ${held.slice(0, 10)} (${file})`;

export const ROOM_NOTE =
  'Hands are of nobody in particular. The range after a share is its 95 % interval by the score method (Wilson 1927).';

/** Most whole answers of a question that are listed one by one. */
export const MOST_LISTED = 5;

/** "and 5 other answers, given by 6". */
export function otherAnswers({ answers }: QuestionAnalysis, listed: number): string | undefined {
  const left = answers.slice(listed);
  if (left.length === 0) return undefined;
  const given = left.reduce((sum, { count }) => sum + count, 0);
  return `and ${plural(left.length, 'other answer')}, given by ${given}`;
}

/** Said where nobody is to be known, of a class so small that a figure may still give somebody away; see {@link FEWEST_ANONYMOUS}. */
export const smallClassNote = (students: number, isAnonymous: boolean): string[] =>
  isAnonymous && students < FEWEST_ANONYMOUS
    ? ['So few students sat it that a figure may give one of them away: look before you show it.']
    : [];
