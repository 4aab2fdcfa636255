/** `mudlark quiz mark` and `mudlark quiz plan`. */
import { join } from 'node:path';
import { findFamily } from '../drills/families.js';
import { DataError, UsageError } from '../errors.js';
import { shownPath } from '../files/faults.js';
import { makeNamedFolder, requireOutputs, writeNamed } from '../files/named.js';
import { libraryStudio } from '../paints/index.js';
import { analyseClass } from '../quiz/analysis.js';
import { type ClassResult, markClass } from '../quiz/class.js';
import { quizzesAbout } from '../quiz/files/other-quizzes.js';
import { readAnswers, readClassList, readHandout, shownFile } from '../quiz/files/read-files.js';
import { handoutStem, studentFile } from '../quiz/files/sitting-file.js';
import type { Handout } from '../quiz/handout.js';
import { fromInstant } from '../quiz/instant.js';
import { planText } from '../quiz/plan.js';
import { planFor } from '../quiz/plan-from-results.js';
import { readColumns, reportCsv } from '../quiz/report-csv.js';
import { reportJson } from '../quiz/report-data.js';
import { reportText } from '../quiz/report-text.js';
import { leftOutLines } from '../quiz/report-words.js';
import type { TextLook } from '../quiz/text-parts.js';
import { dueWords, readDue } from './quiz-due.js';
import { document, localeHere } from './run.js';

/** Options as typed. */
export interface MarkCommandOptions {
  readonly csv?: string;
  readonly html?: string;
  readonly json?: boolean;
  readonly due?: string;
  readonly class?: string;
  readonly columns?: string;
  readonly slips?: string;
  readonly anonymous?: boolean;
  readonly force?: boolean;
}

/** What a command printed and whether files had to be refused. */
export interface MarkOutput {
  readonly text: string;
  readonly refused: number;
}

/**
 * Reads and marks a class.
 * @param due ISO 8601 with a zone, instead of the handout's own
 * @returns also every file that was read for it
 */
export function markFiles(
  handoutPath: string,
  answerPaths: readonly string[],
  { due, class: classPath }: Pick<MarkCommandOptions, 'due' | 'class'> = {},
): { readonly result: ClassResult; readonly inputs: readonly string[] } {
  const studio = libraryStudio();
  const handout: Handout = readHandout(studio, handoutPath);
  const list = classPath === undefined ? undefined : readClassList(classPath);
  const { paths, submitted, rooms, unreadable } = readAnswers(answerPaths);
  const result = markClass(handout, submitted, {
    unreadable,
    rooms,
    otherQuizzes: () => quizzesAbout(studio, [handoutPath, ...paths]),
    locale: localeHere(),
    ...(list === undefined ? {} : { list }),
    ...(due === undefined ? {} : { due: fromInstant(due) }),
  });
  return { result, inputs: [handoutPath, ...paths, ...(classPath === undefined ? [] : [classPath])] };
}

/** Files of a class that have to be mended. */
export const refusedIn = ({ setAside }: ClassResult): number =>
  setAside.filter(({ isRefused }) => isRefused).length;

function requireMatching({ anonymous, csv, slips, columns }: MarkCommandOptions): void {
  if (anonymous === true && (csv !== undefined || slips !== undefined))
    throw new UsageError(
      `--anonymous leaves every student out, so there is nothing for ${csv === undefined ? '--slips' : '--csv'}; leave one of the two away`,
    );
  if (columns !== undefined && csv === undefined)
    throw new UsageError('--columns is for the table; add --csv FILE');
}

/** Where the slips of a class go: a page for each student, and one to print them all from. */
function slipPaths({ students }: ClassResult, handoutPath: string, folder: string) {
  return {
    all: join(folder, `${handoutStem(handoutPath)}.slips.html`),
    each: students.map((student) => ({
      student,
      path: studentFile(handoutPath, student.name, 'slip.html', folder),
    })),
  };
}

async function writeSlips(
  result: ClassResult,
  folder: string,
  { all, each }: ReturnType<typeof slipPaths>,
  replace: boolean,
): Promise<string> {
  const { slipPage, slipPages } = await import('../quiz/slips.js');
  makeNamedFolder(folder);
  for (const { path, student } of each) writeNamed(path, slipPage(result, student), replace);
  writeNamed(all, slipPages(result), replace);
  return `written: ${each.length} slips in ${shownPath(folder)}, all of them in ${shownFile(all)}`;
}

/** Marks a class. @throws UsageError, DataError */
export async function markCommand(
  handoutPath: string,
  answerPaths: readonly string[],
  options: MarkCommandOptions,
  { version, look }: { readonly version: string; readonly look: TextLook },
): Promise<MarkOutput> {
  const replace = options.force === true;
  const isAnonymous = options.anonymous === true;
  requireMatching(options);
  const columns = options.columns === undefined ? undefined : readColumns(options.columns);
  const due = options.due === undefined ? undefined : readDue(options.due);
  const { result, inputs } = markFiles(handoutPath, answerPaths, {
    ...options,
    ...(due === undefined ? {} : { due }),
  });
  const slips = options.slips === undefined ? undefined : slipPaths(result, handoutPath, options.slips);
  const outputs = [options.csv, options.html, slips?.all, ...(slips?.each ?? []).map(({ path }) => path)];
  requireOutputs(
    outputs.filter((path) => path !== undefined),
    inputs,
    replace,
  );
  const analysis = analyseClass(result);
  const written: string[] = [];
  if (options.csv !== undefined) written.push(writeNamed(options.csv, reportCsv(result, columns), replace));
  if (options.html !== undefined) {
    const { reportHtml } = await import('../quiz/report-html.js');
    written.push(writeNamed(options.html, reportHtml(result, analysis, { isAnonymous }), replace));
  }
  if (options.slips !== undefined && slips !== undefined)
    written.push(await writeSlips(result, options.slips, slips, replace));
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
      text: document({ ...reportJson(result, analysis, isAnonymous), notes, written }),
      refused: refusedIn(result),
    };
  const tail = [...notes, ...written];
  const text = `${reportText(result, analysis, look, isAnonymous)}${tail.length > 0 ? `\n${tail.join('\n')}\n` : ''}`;
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
  options: Pick<MarkCommandOptions, 'class' | 'force' | 'json'> & { readonly folder?: string },
): MarkOutput {
  const { result } = markFiles(handoutPath, answerPaths, options);
  const { folder } = options;
  if (folder !== undefined) makeNamedFolder(folder);
  const plans = result.students.map((student) => {
    const plan = planFor(result.handout, student);
    const path = studentFile(handoutPath, student.name, 'plan.yaml', folder);
    return { plan, done: writeNamed(path, planText(plan), options.force === true) };
  });
  if (options.json === true) {
    return {
      text: document({ plans, setAside: result.setAside, elsewhere: result.elsewhere }),
      refused: refusedIn(result),
    };
  }
  const lines = plans.flatMap(({ plan, done }) => [
    `${plan.name}: ${done}`,
    ...plan.families.map(
      ({ family, drills, level }) =>
        `  ${findFamily(family)?.name ?? family}: ${drills} drills${level === undefined ? '' : ` at level ${level}`}`,
    ),
  ]);
  return { text: `${[...lines, ...leftOutLines(result)].join('\n')}\n`, refused: refusedIn(result) };
}
