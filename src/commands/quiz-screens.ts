/** `mudlark quiz sit` and `mudlark quiz room`: the ports of their screens. */
import { DataError } from '../errors.js';
import { readText } from '../files/read.js';
import { libraryStudio } from '../paints/index.js';
import { readHandout, shownFile } from '../quiz/files/read-files.js';
import { openRoom } from '../quiz/files/room-file.js';
import { openSitting } from '../quiz/files/sitting-file.js';
import { createGrader, markSitting } from '../quiz/marking.js';
import { shownPoints } from '../quiz/report-words.js';
import { jsonKind, MOST_RESULTS, parseResults } from '../quiz/results.js';
import { resultsCaution, resultsWords } from '../quiz/results-text.js';
import { mayShow } from '../quiz/sitting.js';
import { screensFault, terminalFacts } from '../tui/kit/terminal-check.js';
import type { QuizDeps } from '../tui/quiz/classroom.js';

/** Options as typed. */
export interface ScreenOptions {
  readonly name?: string;
  readonly color?: boolean;
  readonly screenReader?: boolean;
}

/** Why the screens cannot be drawn here, in the words of the quiz. */
function terminalFault(what: string): string | undefined {
  const fault = screensFault(terminalFacts());
  return fault && `mudlark: the screens of ${what} ${fault}; run it in a terminal of its own`;
}

async function depsFor(options: ScreenOptions): Promise<QuizDeps> {
  const { findPaths, resolveSettings } = await import('../profile/index.js');
  const { config } = await findPaths();
  const flags = options.screenReader === true ? { screenReader: 'yes' } : {};
  const { values } = await resolveSettings(config, flags);
  const { valueScale, palette, screenReader, colour } = values;
  const { shippedPictures } = await import('../files/shipped.js');
  return {
    pictures: await shippedPictures(libraryStudio()),
    settings: { valueScale, palette, screenReader, colour },
    env: process.env,
    noColourFlag: options.color === false,
    now: () => Date.now(),
  };
}

/** Opens a result file: the list of results on the screen, or the same in words where there is no terminal. */
async function readResults(source: string, path: string, options: ScreenOptions): Promise<number> {
  const released = parseResults(libraryStudio(), source, shownFile(path));
  const { handout, sitting, points } = released;
  // The screens grade anew: where this version would mark otherwise, the words of the one that marked are shown.
  const isAsMarked = markSitting(handout, createGrader(handout), sitting).points === points;
  if (!isAsMarked || terminalFault('') !== undefined) {
    process.stdout.write(resultsWords(released, Math.min(100, process.stdout.columns ?? 80)));
    return 0;
  }
  const caution = resultsCaution(released);
  const { runSit } = await import('../tui/quiz/sit/program.js');
  const { code } = await runSit({
    deps: await depsFor(options),
    handout,
    sitting,
    isResumed: true,
    released: { name: released.name, ...(caution === undefined ? {} : { caution }) },
    save: () => {},
  });
  return code;
}

/**
 * Sits a quiz, or opens a result file. @returns the exit code
 * @throws UsageError for a name of which nothing can be shown; DataError for a file that cannot be used
 */
export async function sitCommand(path: string, options: ScreenOptions): Promise<number> {
  const source = readText(path, MOST_RESULTS);
  const kind = jsonKind(source);
  if (kind === 'results') return readResults(source, path, options);
  if (kind === 'answers')
    throw new DataError(
      `${shownFile(path)}: this holds a student's answers; name the handout to sit it, or the result file to read it`,
    );
  const handout = readHandout(libraryStudio(), path);
  const fault = terminalFault('quiz sit');
  if (fault !== undefined) {
    process.stderr.write(`${fault}\n`);
    return 2;
  }
  const name = options.name ?? (await (await import('./quiz-ask.js')).askName());
  const opened = openSitting(path, handout, name, Date.now());
  const deps = await depsFor(options);
  const { runSit } = await import('../tui/quiz/sit/program.js');
  const { sitting, isResumed, save } = opened;
  const ending = await runSit({ deps, handout, sitting, isResumed, save });
  if (ending.fault !== undefined) {
    process.stderr.write(`mudlark: not saved: ${ending.fault}\n`);
    return ending.code;
  }
  if (ending.sitting.answers.length === 0) return ending.code;
  const { answered, points, possible } = markSitting(handout, createGrader(handout), ending.sitting);
  const count = `${answered} of ${handout.questions.length} answered`;
  const result =
    mayShow(handout.rules, ending.sitting, false) === 'all'
      ? `, ${shownPoints(points)} of ${shownPoints(possible)} points`
      : '; your teacher shows the results later';
  process.stdout.write(
    ending.sitting.finished === undefined
      ? `${count}, saved in ${shownFile(opened.path)}; start again with the same name to go on.\n`
      : `Handed in: ${count}${result}. Give your teacher ${shownFile(opened.path)}.\n`,
  );
  return ending.code;
}

/** Holds a quiz in the room. @returns the exit code @throws DataError for a handout that cannot be used */
export async function roomCommand(path: string, options: ScreenOptions): Promise<number> {
  const handout = readHandout(libraryStudio(), path);
  const fault = terminalFault('quiz room');
  if (fault !== undefined) {
    process.stderr.write(`${fault}\n`);
    return 2;
  }
  const { found, fresh, note } = openRoom(path, handout);
  const deps = await depsFor(options);
  const { runRoom } = await import('../tui/quiz/room/program.js');
  const {
    code,
    lines,
    goesOn,
    fault: unsaved,
  } = await runRoom({
    deps,
    handout,
    ...(found === undefined ? {} : { found: { file: shownFile(found.path), counts: found.counts } }),
    fresh: shownFile(fresh.path),
    ...(note === undefined ? {} : { note }),
    save: (counts, toFound) => (toFound && found !== undefined ? found : fresh).save(counts),
  });
  if (lines.length > 0) process.stdout.write(`${lines.join('\n')}\n`);
  const file = shownFile((goesOn && found !== undefined ? found : fresh).path);
  if (unsaved !== undefined) process.stderr.write(`mudlark: not saved: ${unsaved}\n`);
  else if (lines.length > 0)
    process.stdout.write(
      `The counts are kept in ${file}. See: mudlark quiz mark ${shownFile(path)} ${file}\n`,
    );
  return code;
}
