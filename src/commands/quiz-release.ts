/** `mudlark quiz release`: a result file for each student. */

import { MOST_TEXT } from '../drills/yaml-source.js';
import { makeNamedFolder, requireOutputs, writeNamed } from '../files/named.js';
import { readText } from '../files/read.js';
import { studentFile } from '../quiz/files/sitting-file.js';
import { toInstant } from '../quiz/instant.js';
import { leftOutLines, shownPoints } from '../quiz/report-words.js';
import { resultsText } from '../quiz/results.js';
import { sealWords } from '../quiz/seal-words.js';
import { type MarkOutput, markFiles, refusedIn } from './quiz-mark.js';
import { document } from './run.js';

/** Options as typed. */
export interface ReleaseOptions {
  readonly class?: string;
  readonly out?: string;
  /** Also for sittings that were not handed in. */
  readonly unfinished?: boolean;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** Writes the result file of every student whose sitting counts. @throws DataError before the first is written */
export function releaseCommand(
  handoutPath: string,
  answerPaths: readonly string[],
  options: ReleaseOptions,
  made: { readonly version: string; readonly nowMs: number },
): MarkOutput {
  const { out, unfinished = false, force = false, json } = options;
  const { result, inputs } = markFiles(
    handoutPath,
    answerPaths,
    options.class === undefined ? {} : { class: options.class },
  );
  const handoutText = readText(handoutPath, MOST_TEXT);
  const isOpen = ({ sitting }: (typeof result.students)[number]): boolean => sitting.finished === undefined;
  const files = result.students
    .filter((student) => unfinished || !isOpen(student))
    .map((student) => ({ student, path: studentFile(handoutPath, student.name, 'results.json', out) }));
  requireOutputs(
    files.map(({ path }) => path),
    inputs,
    force,
  );
  if (out !== undefined) makeNamedFolder(out);
  const stamp = { engine: made.version, released: toInstant(made.nowMs) };
  const written = files.map(({ student, path }) => ({
    name: student.name,
    points: student.points,
    possible: student.possible,
    done: writeNamed(path, resultsText(result, student, handoutText, stamp), force),
  }));
  const held = unfinished ? [] : result.students.filter(isOpen).map(({ name }) => name);
  if (json === true)
    return {
      text: document({ written, notHandedIn: held, setAside: result.setAside, elsewhere: result.elsewhere }),
      refused: refusedIn(result),
    };
  const lines = [
    ...written.map(
      ({ name, points, possible, done }) =>
        `${name}: ${shownPoints(points)} of ${shownPoints(possible)} points, ${done}`,
    ),
    ...files.flatMap(({ student: { name, sitting } }) =>
      sealWords(result.handout, sitting).map((words) => `${name}: ${words}`),
    ),
    ...held.map((name) => `${name}: not handed in, nothing written; --unfinished writes it all the same`),
    ...leftOutLines(result),
    ...(written.length === 0 ? [] : ['Each student reads theirs with: mudlark quiz sit THAT-FILE']),
  ];
  return { text: `${lines.join('\n')}\n`, refused: refusedIn(result) };
}
