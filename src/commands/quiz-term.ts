/** `mudlark quiz term`: the quizzes of several weeks, before against after. */
import { dirname, resolve } from 'node:path';
import { MOST_TEXT } from '../drills/yaml-source.js';
import { DataError, UsageError } from '../errors.js';
import { findFiles } from '../files/find.js';
import { requireOutputs, writeNamed } from '../files/named.js';
import { readText } from '../files/read.js';
import { libraryStudio } from '../paints/index.js';
import { markClass, type Submitted } from '../quiz/class.js';
import type { ClassList } from '../quiz/class-list.js';
import { isAnswersName, readAnswers, readClassList, shownFile } from '../quiz/files/read-files.js';
import { type Handout, parseHandout } from '../quiz/handout.js';
import { fromInstant } from '../quiz/instant.js';
import type { RoomFile } from '../quiz/room-result.js';
import { type TermQuiz, termFrom } from '../quiz/term/term.js';
import { termCsv, termJson } from '../quiz/term/term-data.js';
import { isTermFile, parseTermFile, type TermFile } from '../quiz/term/term-file.js';
import { termText } from '../quiz/term/term-text.js';
import type { TextLook } from '../quiz/text-parts.js';
import { type MarkOutput, refusedIn } from './quiz-mark.js';
import { document, localeHere } from './run.js';

/** Options as typed. */
export interface TermCommandOptions {
  readonly class?: string;
  readonly before?: string;
  readonly after?: string;
  readonly csv?: string;
  readonly html?: string;
  readonly anonymous?: boolean;
  readonly json?: boolean;
  readonly force?: boolean;
}

/** Quizzes in order, and every file that was read for them. */
interface Marked {
  readonly title: string;
  readonly quizzes: readonly TermQuiz[];
  readonly inputs: readonly string[];
  /** Answers that are of none of the handouts. */
  readonly strayFiles: readonly string[];
}

const strayRoom = ({ file }: RoomFile): string =>
  `${file}: the hands of a room are of no students; see: mudlark quiz mark`;

const isYaml = (path: string): boolean => /\.ya?ml$/i.test(path);

/**
 * When the middle one of the sittings began, ms since 1970; without sittings at the end. Those typed in from paper, which may be weeks
 * after, are asked only where there are no others.
 */
function middleStart(submitted: readonly Submitted[]): number {
  const onScreen = submitted.filter(({ sitting }) => sitting.source !== 'paper');
  const starts = (onScreen.length === 0 ? submitted : onScreen)
    .map(({ sitting }) => fromInstant(sitting.started))
    .sort((a, b) => a - b);
  return starts[starts.length >> 1] ?? Number.POSITIVE_INFINITY;
}

/** Handouts and answers in any order: the answers say by their digest whose they are, the sittings when the quiz was. */
function fromFiles(
  paths: readonly string[],
  handouts: readonly Handout[],
  list: ClassList | undefined,
): Omit<Marked, 'title'> {
  const files = paths.filter((path) => !isYaml(path));
  if (files.length === 0)
    throw new UsageError('name the answers too: files, folders that hold them, or patterns');
  const { submitted, rooms, unreadable, paths: read } = readAnswers(files);
  const digests = new Set(handouts.map(({ digest }) => digest));
  if (digests.size < handouts.length)
    throw new UsageError(
      'two of the handouts are the same quiz; a term file says which answers are of which time, see: mudlark quiz term --help',
    );
  const quizzes = handouts
    .map((handout) => {
      const own = submitted.filter(({ sitting }) => sitting.handoutDigest === handout.digest);
      const result = markClass(handout, own, {
        locale: localeHere(),
        ...(list === undefined ? {} : { list }),
      });
      return { title: handout.title, result, start: middleStart(own) };
    })
    .sort((a, b) => (a.start === b.start ? 0 : a.start - b.start));
  return {
    quizzes,
    inputs: read,
    strayFiles: [
      ...submitted
        .filter(({ sitting }) => !digests.has(sitting.handoutDigest))
        .map(({ file }) => `${file}: answers to none of these handouts`),
      ...unreadable.map(({ file, why }) => `${file}: ${why}`),
      ...rooms.map(strayRoom),
    ],
  };
}

/** A term file names everything. */
function fromTermFile(path: string, file: TermFile, list: ClassList | undefined): Omit<Marked, 'title'> {
  const folder = dirname(path);
  const inputs: string[] = [];
  const strayFiles: string[] = [];
  const quizzes = file.quizzes.map(({ handout: handoutPath, answers, title }) => {
    const from = resolve(folder, handoutPath);
    const handout = parseHandout(libraryStudio(), readText(from, MOST_TEXT), shownFile(from));
    const { submitted, rooms, unreadable, paths } = readAnswers(answers.map((each) => resolve(folder, each)));
    inputs.push(from, ...paths);
    strayFiles.push(...rooms.map(strayRoom));
    const result = markClass(handout, submitted, {
      unreadable,
      locale: localeHere(),
      ...(list === undefined ? {} : { list }),
    });
    return { title: title ?? handout.title, result };
  });
  return { quizzes, inputs, strayFiles };
}

function markTerm(given: readonly string[], classPath: string | undefined): Marked {
  const found = findFiles(given, (name) => isAnswersName(name) || /\.quiz\.ya?ml$/i.test(name));
  const paths = found.map(({ path }) => path);
  const texts = paths.filter(isYaml).map((path) => ({ path, text: readText(path, MOST_TEXT) }));
  const terms = texts.filter(({ text }) => isTermFile(text));
  const listOf = (path: string | undefined): ClassList | undefined =>
    path === undefined ? undefined : readClassList(path);
  const [term] = terms;
  if (term !== undefined) {
    if (paths.length > 1)
      throw new UsageError('a term file names all its quizzes and answers; give it alone');
    const file = parseTermFile(term.text, shownFile(term.path));
    const named = file.class === undefined ? undefined : resolve(dirname(term.path), file.class);
    const classFile = classPath ?? named;
    const marked = fromTermFile(term.path, file, listOf(classFile));
    return {
      ...marked,
      title: file.title ?? 'Term',
      inputs: [term.path, ...marked.inputs, ...(classFile === undefined ? [] : [classFile])],
    };
  }
  const handouts = texts.map(({ path, text }) => parseHandout(libraryStudio(), text, shownFile(path)));
  if (handouts.length === 0)
    throw new UsageError('name the handouts too, like week1.quiz.yaml, or a term file that names them');
  const marked = fromFiles(paths, handouts, listOf(classPath));
  return {
    ...marked,
    title: 'Term',
    inputs: [
      ...texts.map(({ path }) => path),
      ...marked.inputs,
      ...(classPath === undefined ? [] : [classPath]),
    ],
  };
}

/** The two quizzes to compare, as indexes. @throws UsageError for numbers that are none of theirs */
function comparedPair(
  { before, after }: TermCommandOptions,
  count: number,
): { readonly compare?: readonly [number, number] } {
  if (before === undefined && after === undefined) return {};
  const place = (flag: string, text: string): number => {
    const number = /^\d{1,3}$/.test(text) ? Number(text) : 0;
    if (number < 1 || number > count)
      throw new UsageError(`${flag} must be the number of a quiz, 1 to ${count}, as the report counts them`);
    return number - 1;
  };
  const pair = [place('--before', before ?? '1'), place('--after', after ?? String(count))] as const;
  if (pair[0] === pair[1]) throw new UsageError('--before and --after must be two quizzes');
  return { compare: pair };
}

/** Marks the quizzes of a term and compares them. @throws UsageError, DataError */
export async function termCommand(
  given: readonly string[],
  options: TermCommandOptions,
  look: TextLook,
): Promise<MarkOutput> {
  const replace = options.force === true;
  const isAnonymous = options.anonymous === true;
  if (isAnonymous && options.csv !== undefined)
    throw new UsageError(
      '--anonymous leaves every student out, so there is nothing for --csv; leave one of the two away',
    );
  const { title, quizzes, inputs, strayFiles } = markTerm(given, options.class);
  requireOutputs(
    [options.csv, options.html].filter((path) => path !== undefined),
    inputs,
    replace,
  );
  const term = termFrom(quizzes, { ...comparedPair(options, quizzes.length), locale: localeHere() });
  const written: string[] = [];
  if (options.csv !== undefined) written.push(writeNamed(options.csv, termCsv(term), replace));
  if (options.html !== undefined) {
    const { termHtml } = await import('../quiz/term/term-html.js');
    written.push(writeNamed(options.html, termHtml(title, quizzes, term, { isAnonymous }), replace));
  }
  const refused = quizzes.reduce((sum, { result }) => sum + refusedIn(result), strayFiles.length);
  if (options.json === true)
    return {
      text: document({ ...termJson(title, quizzes, term, isAnonymous), strayFiles, written }),
      refused,
    };
  const strays = strayFiles.length === 0 ? [] : ['Set aside', ...strayFiles.map((line) => `  ${line}`)];
  const tail = [...strays, ...written];
  const text = termText(title, quizzes, term, look, isAnonymous);
  return { text: `${text}${tail.length > 0 ? `\n${tail.join('\n')}\n` : ''}`, refused };
}

/** The fault that makes the exit code 1 after the report. */
export function strayFault(count: number): DataError {
  return new DataError(
    `${count} file${count === 1 ? '' : 's'} could not be used; the report names ${count === 1 ? 'it' : 'them'}`,
  );
}
