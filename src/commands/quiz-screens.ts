/** `mudlark quiz sit` and `mudlark quiz room`: the ports of their screens. */
import { UsageError } from '../errors.js';
import { libraryStudio } from '../paints/index.js';
import { readHandout, shownFile } from '../quiz/files/read-files.js';
import { openSitting } from '../quiz/files/sitting-file.js';
import { createGrader, markSitting } from '../quiz/marking.js';
import { noTerminalReason, terminalFacts } from '../tui/kit/terminal-check.js';
import type { QuizDeps } from '../tui/quiz/classroom.js';

/** Options as typed. */
export interface ScreenOptions {
  readonly name?: string;
  readonly color?: boolean;
  readonly screenReader?: boolean;
}

/** Why the screens cannot be drawn here, in the words of the quiz. */
function terminalFault(what: string): string | undefined {
  if (noTerminalReason(terminalFacts(), '') === undefined) return undefined;
  return `mudlark: ${what} needs a terminal; run it in one, without a pipe, a file or a CI runner around it`;
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

/**
 * Sits a quiz. @returns the exit code
 * @throws UsageError without a name; DataError for a handout or a sitting that cannot be used
 */
export async function sitCommand(path: string, options: ScreenOptions): Promise<number> {
  const { name } = options;
  if (name === undefined) throw new UsageError('quiz sit needs --name, like --name "Ann Lee"');
  const handout = readHandout(libraryStudio(), path);
  const fault = terminalFault('quiz sit');
  if (fault !== undefined) {
    process.stderr.write(`${fault}\n`);
    return 2;
  }
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
  process.stdout.write(
    ending.sitting.finished === undefined
      ? `${count}, saved in ${shownFile(opened.path)}; start again with the same name to go on.\n`
      : `Handed in: ${count}, ${Math.round(points * 100) / 100} of ${possible} points. Give your teacher ${shownFile(opened.path)}.\n`,
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
  const deps = await depsFor(options);
  const { runRoom } = await import('../tui/quiz/room/program.js');
  const { code, lines } = await runRoom(handout, deps);
  if (lines.length > 0) process.stdout.write(`${lines.join('\n')}\n`);
  return code;
}
