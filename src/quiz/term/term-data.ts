/** The report of a term for other programs: the body of a JSON document, and CSV for a spreadsheet. */
import { cleanText } from '../../text/sanitize.js';
import { spreadsheet } from '../report-csv.js';
import { roundedDeep } from '../report-data.js';
import type { Term, TermQuiz } from './term.js';
import { shownChanges } from './term-words.js';

/** Body of the JSON document. @param isAnonymous without names, files and what is a single student's */
export function termJson(
  title: string,
  quizzes: readonly TermQuiz[],
  term: Term,
  isAnonymous = false,
): object {
  const { students, ...rest } = term;
  return roundedDeep({
    term: title,
    ...rest,
    skills: shownChanges(term.skills, isAnonymous),
    groups: shownChanges(term.groups, isAnonymous),
    quizzes: term.quizzes.map((quiz, at) => {
      const result = quizzes[at]?.result;
      const { calledOver, setAside = [], students: sat = [] } = result ?? {};
      return {
        ...quiz,
        handoutDigest: result?.handout.digest,
        ...(isAnonymous
          ? { missing: calledOver?.missing.length, setAside: setAside.length }
          : {
              ...calledOver,
              setAside,
              doubts: sat.flatMap(({ name, file, doubts }) => doubts.map((why) => ({ name, file, why }))),
            }),
      };
    }),
    ...(isAnonymous
      ? {}
      : {
          students: students.map(({ enrolled, ...student }) => ({
            ...student,
            ...enrolled,
            name: student.name,
          })),
        }),
  }) as object;
}

/** A row for each student, a column for each quiz in percent, and the change; see {@link spreadsheet}. */
export function termCsv({ students, quizzes, skills }: Term): string {
  const tenth = (value: number | undefined): number | '' =>
    value === undefined ? '' : Math.round(value * 10) / 10;
  return spreadsheet([
    [
      'Name',
      'Number',
      'Group',
      ...quizzes.map(({ title }, at) => cleanText(`${at + 1}. ${title}`)),
      'Change',
      ...skills.map(({ name }) => `Change: ${name}`),
    ],
    ...students.map(({ name, enrolled, percents, change, skills: own }) => [
      cleanText(name),
      enrolled?.number ?? '',
      enrolled?.group ?? '',
      ...percents.map(tenth),
      tenth(change),
      ...own.map(tenth),
    ]),
  ]);
}
