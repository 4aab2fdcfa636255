/** `mudlark quiz mark` and `mudlark quiz plan`. */
import { findFamily } from '../drills/families.js';
import { DataError } from '../errors.js';
import { makeNamedFolder, requireOutputs, writeNamed } from '../files/named.js';
import { libraryStudio } from '../paints/index.js';
import { analyseClass } from '../quiz/analysis.js';
import { type ClassResult, markClass } from '../quiz/class.js';
import { readHandout, readSittings } from '../quiz/files/read-files.js';
import { studentFile } from '../quiz/files/sitting-file.js';
import type { Handout } from '../quiz/handout.js';
import { fromInstant } from '../quiz/instant.js';
import { planText } from '../quiz/plan.js';
import { planFor } from '../quiz/plan-from-results.js';
import { reportCsv, reportJson } from '../quiz/report-data.js';
import { reportText, type TextLook } from '../quiz/report-text.js';
import { dueWords, readDue } from './quiz-due.js';
import { document } from './run.js';

/** Options as typed. */
export interface MarkCommandOptions {
  readonly csv?: string;
  readonly html?: string;
  readonly json?: boolean;
  readonly due?: string;
  readonly force?: boolean;
}

/** What a command printed and whether files had to be refused. */
export interface MarkOutput {
  readonly text: string;
  readonly refused: number;
}

/** Reads and marks a class. @param due ISO 8601 with a zone, instead of the handout's own */
export function markFiles(handoutPath: string, answerPaths: readonly string[], due?: string): ClassResult {
  const handout: Handout = readHandout(libraryStudio(), handoutPath);
  const { submitted, unreadable } = readSittings(answerPaths);
  return markClass(handout, submitted, {
    unreadable,
    ...(due === undefined ? {} : { due: fromInstant(due) }),
  });
}

export const refusedIn = ({ setAside }: ClassResult): number =>
  setAside.filter(({ isRefused }) => isRefused).length;

/** Marks a class. @throws UsageError, DataError */
export async function markCommand(
  handoutPath: string,
  answerPaths: readonly string[],
  options: MarkCommandOptions,
  { version, look }: { readonly version: string; readonly look: TextLook },
): Promise<MarkOutput> {
  const replace = options.force === true;
  const outputs = [options.csv, options.html].filter((path) => path !== undefined);
  requireOutputs(outputs, [handoutPath, ...answerPaths], replace);
  const due = options.due === undefined ? undefined : readDue(options.due);
  const result = markFiles(handoutPath, answerPaths, due);
  const analysis = analyseClass(result);
  const written: string[] = [];
  if (options.csv !== undefined) written.push(writeNamed(options.csv, reportCsv(result), replace));
  if (options.html !== undefined) {
    const { reportHtml } = await import('../quiz/report-html.js');
    written.push(writeNamed(options.html, reportHtml(result, analysis), replace));
  }
  const { engine, rules, secret } = result.handout;
  const late = due ?? rules.due;
  const notes = [
    ...(engine === version
      ? []
      : [`The handout was written by version ${engine}; these marks are by version ${version}.`]),
    ...(late === undefined ? [] : [`Late is what was done after ${dueWords(late)}.`]),
    ...(secret === undefined
      ? ['The handout is of the format without seals: whether answers were changed later cannot be seen.']
      : []),
  ];
  if (options.json === true)
    return {
      text: document({ ...reportJson(result, analysis), notes, written }),
      refused: refusedIn(result),
    };
  const tail = [...notes, ...written];
  const text = `${reportText(result, analysis, look)}${tail.length > 0 ? `\n${tail.join('\n')}\n` : ''}`;
  return { text, refused: refusedIn(result) };
}

/** The fault that makes the exit code 1 after the report. */
export function refusedFault(refused: number): DataError {
  return new DataError(
    `${refused} answers file${refused === 1 ? ' was' : 's were'} refused; the report names ${refused === 1 ? 'it' : 'them'} under "Set aside"`,
  );
}

/** Writes a practice plan for every student whose sitting counts. @throws UsageError, DataError */
export function planCommand(
  handoutPath: string,
  answerPaths: readonly string[],
  options: { readonly folder?: string; readonly force?: boolean; readonly json?: boolean },
): MarkOutput {
  const result = markFiles(handoutPath, answerPaths);
  const { folder } = options;
  if (folder !== undefined) makeNamedFolder(folder);
  const plans = result.students.map((student) => {
    const plan = planFor(result.handout, student);
    const path = studentFile(handoutPath, student.name, 'plan.yaml', folder);
    return { plan, done: writeNamed(path, planText(plan), options.force === true) };
  });
  const aside = result.setAside.map(
    ({ name, file, why }) => `${name === '' ? file : `${name} (${file})`}: ${why}`,
  );
  if (options.json === true) {
    return { text: document({ plans, setAside: result.setAside }), refused: refusedIn(result) };
  }
  const lines = plans.flatMap(({ plan, done }) => [
    `${plan.name}: ${done}`,
    ...plan.families.map(
      ({ family, drills, level }) =>
        `  ${findFamily(family)?.name ?? family}: ${drills} drills${level === undefined ? '' : ` at level ${level}`}`,
    ),
  ]);
  const text = [...lines, ...(aside.length > 0 ? ['Set aside', ...aside.map((line) => `  ${line}`)] : [])];
  return { text: `${text.join('\n')}\n`, refused: refusedIn(result) };
}
