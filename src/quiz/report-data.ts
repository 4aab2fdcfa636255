/** The report of a class for other programs, as the body of a JSON document. */
import type { ClassAnalysis } from './analysis.js';
import type { ClassResult } from './class.js';

/** Rounds what is computed, so that the document is the same on every machine. */
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 || 0;

/** As {@link rounded}, for every number in a document. */
export function roundedDeep(value: unknown): unknown {
  if (typeof value === 'number') return rounded(value);
  if (Array.isArray(value)) return value.map(roundedDeep);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, roundedDeep(inner)]));
}

function studentsJson({ students, handout }: ClassResult): object[] {
  return students.map((student) => ({
    name: student.name,
    ...(student.enrolled?.number === undefined ? {} : { number: student.enrolled.number }),
    ...(student.enrolled?.group === undefined ? {} : { group: student.enrolled.group }),
    file: student.file,
    source: student.sitting.source ?? 'screen',
    answered: student.answered,
    right: student.right,
    points: student.points,
    possible: student.possible,
    percent: student.percent,
    partial: student.isPartial,
    lateSeconds: student.lateSeconds ?? 0,
    overTime: student.overTime,
    oddities: [...student.doubts, ...student.oddities],
    marks: student.marks.map(({ state, answer, mark, points, idea }, index) => ({
      drill: handout.questions[index]?.drill.id,
      state,
      ...(answer === undefined ? {} : { answer }),
      mark,
      points,
      ...(idea === undefined ? {} : { idea }),
    })),
  }));
}

/** How many files belong to other quizzes. */
const countElsewhere = ({ elsewhere }: ClassResult): number =>
  elsewhere.reduce((sum, { files }) => sum + files.length, 0);

/** Body of the JSON document. @param isAnonymous without names, files and what is a single student's */
export function reportJson(result: ClassResult, analysis: ClassAnalysis, isAnonymous = false): object {
  const { handout, students, setAside, calledOver, rooms } = result;
  const { rows, ...lesson } = analysis.lesson;
  return roundedDeep({
    quiz: handout.title,
    handoutDigest: handout.digest,
    lesson: isAnonymous ? lesson : { ...lesson, rows },
    ...(isAnonymous
      ? {
          students: students.length,
          setAside: setAside.length,
          elsewhere: countElsewhere(result),
          missing: calledOver?.missing.length,
        }
      : { students: studentsJson(result), setAside, elsewhere: result.elsewhere, ...calledOver }),
    questions: analysis.questions,
    rooms: isAnonymous ? rooms.map(({ file: _file, ...room }) => room) : rooms,
    reliability: analysis.reliability,
    warnings: analysis.warnings,
    ...(analysis.meanPercent === undefined ? {} : { meanPercent: analysis.meanPercent }),
  }) as object;
}
