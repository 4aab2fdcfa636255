/** `mudlark quiz enter`: answers on paper become answers files, typed in the terminal or read from a table. */
import type { Readable } from 'node:stream';
import { DataError, InputError, UsageError } from '../errors.js';
import { shownPath, withWords } from '../files/faults.js';
import { makeNamedFolder } from '../files/named.js';
import { readText, textOf } from '../files/read.js';
import { libraryStudio } from '../paints/index.js';
import {
  EMPTY_ENTERING,
  type EnterState,
  type EnterWorld,
  enterLine,
  promptOf,
} from '../quiz/enter-update.js';
import { type PaperStore, paperStore } from '../quiz/files/paper-store.js';
import { readHandout } from '../quiz/files/read-files.js';
import { letteredHandout } from '../quiz/lettered.js';
import { sheetCode } from '../quiz/paper/index.js';
import { type Entry, grouped, type Letters, readLines } from '../quiz/paper-entry.js';
import { cleanText, printable } from '../text/sanitize.js';
import { widthOf, wrapText } from '../text/wrap.js';
import { document } from './run.js';
import { typedLines } from './typed-lines.js';

/** Options as typed. */
export interface EnterOptions {
  readonly from?: string;
  readonly folder?: string;
  readonly sheet?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** From the outside. */
export interface EnterPorts {
  readonly input: Readable & { readonly isTTY?: boolean };
  readonly output: NodeJS.WritableStream & { readonly isTTY?: boolean; readonly columns?: number };
  now(): number;
}

/** What is to be printed, and how it ended. */
export interface EnterOutput {
  readonly text: string;
  /** Lines of a table that were not taken. */
  readonly refused: number;
  /** Left in the middle. */
  readonly isLeft: boolean;
}

/** The fault that makes the exit code 1 after the list. */
export function refusedLines(refused: number): DataError {
  return new DataError(
    `${refused} line${refused === 1 ? ' was' : 's were'} not taken; the list above says why, and the others are saved`,
  );
}

/** Largest table that is read, in bytes. */
const MOST_TABLE = 500_000;

async function readInput(input: Readable): Promise<string> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of input) {
    const bytes = Buffer.from(chunk);
    size += bytes.length;
    if (size > MOST_TABLE)
      throw new DataError(`input: larger than ${MOST_TABLE / 1000} kB; check that it is the right one`);
    chunks.push(bytes);
  }
  return withWords(
    'read',
    () => textOf(Buffer.concat(chunks)),
    (words, cause) => new DataError(`input: ${words}`, cause),
  );
}

function enterTable(
  text: string,
  name: string,
  letters: Letters,
  store: PaperStore,
  options: EnterOptions,
  nowMs: number,
): EnterOutput {
  let read: ReturnType<typeof readLines>;
  try {
    read = readLines(text, letters);
  } catch (error) {
    if (error instanceof InputError) throw new DataError(`${name}: ${error.message}`, { cause: error });
    throw error;
  }
  const faults = [...read.faults];
  const students: {
    name: string;
    letters: string;
    file?: string;
    done: 'written' | 'replaced' | 'as before';
  }[] = [];
  for (const { line, ...entry } of read.entries) {
    const there = store.known(entry.name);
    const typed = grouped(entry.letters);
    if (there !== undefined && 'why' in there) faults.push({ line, why: there.why });
    else if (there !== undefined && grouped(there.letters) === typed)
      students.push({ name: entry.name, letters: typed, done: 'as before' });
    else if (there !== undefined && options.force !== true)
      faults.push({
        line,
        why: `${entry.name} was entered before with ${grouped(there.letters)}; add --force to replace it`,
      });
    else {
      const file = store.save(entry, nowMs);
      students.push({
        name: entry.name,
        letters: typed,
        file,
        done: there === undefined ? 'written' : 'replaced',
      });
    }
  }
  faults.sort((one, other) => one.line - other.line);
  if (students.length + faults.length === 0) throw new DataError(`${name}: there are no students in it`);
  const rest = { refused: faults.length, isLeft: false };
  if (options.json === true) return { text: document({ students, faults }), ...rest };
  const lines = [
    ...students.map(
      (student, at) => `${String(at + 1).padStart(3)}. ${student.name}: ${student.letters}  ${student.done}`,
    ),
    `${students.length} student${students.length === 1 ? '' : 's'} entered`,
    ...faults.map(({ line, why }) => `${name}, line ${line}: ${why}`),
  ];
  return { text: `${lines.map(printable).join('\n')}\n`, ...rest };
}

/** Types a class in, one line at a time; each student is on the disk before the next name is asked for. */
async function enterByHand(
  world: EnterWorld,
  store: PaperStore,
  ports: EnterPorts,
  lead: string,
): Promise<EnterOutput> {
  const { input, output } = ports;
  const reader = typedLines(input, output);
  const left = new AbortController();
  reader.on('close', () => left.abort());
  const columns = Math.max(40, (output.columns ?? 80) - 1);
  const say = (line: string): void => {
    const own = printable(line);
    const parts = widthOf(own) <= columns ? [own] : wrapText(own, columns - 2).map((part) => `  ${part}`);
    output.write(`${parts.join('\n')}\n`);
  };
  say(lead);
  let state: EnterState = EMPTY_ENTERING;
  const keep = (entry: Entry, before?: Entry): void => {
    store.save(entry, ports.now(), before);
  };
  try {
    while (!state.isOver) {
      const typed = await reader.question(printable(promptOf(state, world)), { signal: left.signal });
      const step = enterLine(state, world, cleanText(typed, 800));
      // Saved first: what the list shows is on the disk.
      if (step.save !== undefined) keep(step.save.entry, step.save.before);
      state = step.state;
      for (const line of step.lines) say(line);
    }
  } catch (error) {
    if (!left.signal.aborted) throw error;
    output.write('\n');
    const { open } = state;
    // Half a sheet is kept as a sitting that is not finished; its name opens it again.
    if (open === undefined || open.before !== undefined || open.letters.length === 0)
      return { text: counted(state), refused: 0, isLeft: true };
    keep(open);
    const half = `${open.name} is kept with ${grouped(open.letters)}; type the name again to go on\n`;
    return { text: `${half}${counted(state)}`, refused: 0, isLeft: true };
  } finally {
    reader.close();
  }
  return { text: counted(state), refused: 0, isLeft: false };
}

const counted = ({ done }: EnterState): string =>
  `${done.length} student${done.length === 1 ? '' : 's'} entered\n`;

/** Enters a class from paper. @throws UsageError, DataError */
export async function enterCommand(
  path: string,
  options: EnterOptions,
  ports: EnterPorts,
): Promise<EnterOutput> {
  const handout = readHandout(libraryStudio(), path);
  const letters = letteredHandout(handout);
  const code = sheetCode(letters);
  if (options.sheet !== undefined && options.sheet.trim().toUpperCase() !== code)
    throw new DataError(
      `the letters here are those of sheets that bear ${code}, not "${cleanText(options.sheet, 20)}"; the handout or the program has changed since they were printed`,
    );
  if (options.folder !== undefined) makeNamedFolder(options.folder);
  const store = paperStore(path, handout, letters, options.folder);
  const { from } = options;
  const isHand = from === undefined && ports.input.isTTY === true && ports.output.isTTY === true;
  if (!isHand) {
    if (from === undefined && ports.input.isTTY === true)
      throw new UsageError('quiz enter needs a terminal to type in, or --from FILE with one line a student');
    const isInput = from === undefined || from === '-';
    const text = isInput ? await readInput(ports.input) : readText(from, MOST_TABLE);
    return enterTable(text, isInput ? 'input' : shownPath(from), letters, store, options, ports.now());
  }
  if (options.json === true) throw new UsageError('--json needs --from FILE, or lines on the input');
  const lead = `${handout.title}: ${letters.length} questions. The letters are those of sheets that bear ${code} at the foot. ? shows the keys.`;
  return enterByHand({ letters, known: (name) => store.known(name) }, store, ports, lead);
}
