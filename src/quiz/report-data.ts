/** The report of a class for other programs: a JSON body, and CSV for a spreadsheet. */
import { stringify } from 'csv-stringify/sync';
import { cleanText } from '../text/sanitize.js';
import type { ClassAnalysis } from './analysis.js';
import type { ClassResult } from './class.js';
import { remarks } from './report-words.js';

/** Rounds what is computed, so that the document is the same on every machine. */
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 || 0;

function roundedDeep(value: unknown): unknown {
  if (typeof value === 'number') return rounded(value);
  if (Array.isArray(value)) return value.map(roundedDeep);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, roundedDeep(inner)]));
}

/** Body of the JSON document. */
export function reportJson({ handout, students, setAside }: ClassResult, analysis: ClassAnalysis): object {
  return roundedDeep({
    quiz: handout.title,
    handoutDigest: handout.digest,
    students: students.map((student) => ({
      name: student.name,
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
      oddities: student.oddities,
      marks: student.marks.map(({ state, answer, mark, points, idea }, index) => ({
        drill: handout.questions[index]?.drill.id,
        state,
        ...(answer === undefined ? {} : { answer }),
        mark,
        points,
        ...(idea === undefined ? {} : { idea }),
      })),
    })),
    setAside,
    questions: analysis.questions,
    reliability: analysis.reliability,
    ideas: analysis.ideas,
    warnings: analysis.warnings,
    ...(analysis.meanPercent === undefined ? {} : { meanPercent: analysis.meanPercent }),
  }) as object;
}

/**
 * One row a student, one column a question with its mark (empty where nothing was answered). RFC 4180; cells that a spreadsheet
 * would take for a formula get an apostrophe in front.
 */
export function reportCsv({ handout, students }: ClassResult): string {
  const questions = handout.questions.map(({ drill }) => drill.id);
  const head = ['name', 'answered', 'right', 'points', 'possible', 'percent', 'remarks', ...questions];
  const rows = students.map((student) => [
    cleanText(student.name),
    student.answered,
    student.right,
    student.points,
    student.possible,
    student.percent,
    cleanText(remarks(student).join('; ')),
    ...student.marks.map(({ state, mark }) => (state === 'answered' ? mark : '')),
  ]);
  return stringify([head, ...rows], { escape_formulas: true, record_delimiter: '\r\n' });
}
