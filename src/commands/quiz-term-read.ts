/** Reads and marks what `mudlark quiz term` was given: handouts and answers, or a term file. */
import { dirname, resolve } from 'node:path';
import { MOST_TEXT } from '../drills/yaml-source.js';
import { UsageError } from '../errors.js';
import { type FoundFile, findFiles } from '../files/find.js';
import { readText } from '../files/read.js';
import { libraryStudio } from '../paints/index.js';
import { markClass, type Submitted } from '../quiz/class.js';
import type { ClassList } from '../quiz/class-list.js';
import { type Elsewhere, filesElsewhere } from '../quiz/elsewhere.js';
import { isHandoutName, quizzesAbout } from '../quiz/files/other-quizzes.js';
import { isAnswersName, readAnswers, readClassList, readFound, shownFile } from '../quiz/files/read-files.js';
import { type Handout, parseHandout } from '../quiz/handout.js';
import { fromInstant } from '../quiz/instant.js';
import type { RoomFile } from '../quiz/room-result.js';
import type { TermQuiz } from '../quiz/term/term.js';
import { isTermFile, parseTermFile, type TermFile } from '../quiz/term/term-file.js';
import { localeHere } from './run.js';

/** Quizzes in order, and every file that was read for them. */
export interface MarkedTerm {
  readonly title: string;
  readonly quizzes: readonly TermQuiz[];
  readonly inputs: readonly string[];
  /** Files that were named and cannot be used. */
  readonly strayFiles: readonly string[];
  /** Files that lay in a folder and are of none of the quizzes. */
  readonly elsewhere: readonly Elsewhere[];
  /** Counts of rooms that lay in a folder. */
  readonly passedRooms: readonly string[];
}

export const OF_A_ROOM = 'the hands of a room are of no students; see: mudlark quiz mark';

const isUnnamed = ({ isNamed }: { readonly isNamed?: boolean }): boolean => isNamed === false;

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
  found: readonly FoundFile[],
  handouts: readonly Handout[],
  list: ClassList | undefined,
): Omit<MarkedTerm, 'title'> {
  const files = found.filter(({ path }) => !isYaml(path));
  if (files.length === 0)
    throw new UsageError('name the answers too: files, folders that hold them, or patterns');
  const { submitted, rooms, unreadable, paths: read } = readFound(files);
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
    elsewhere: filesElsewhere(digests, submitted, rooms, () =>
      quizzesAbout(
        libraryStudio(),
        found.map(({ path }) => path),
      ),
    ),
    passedRooms: rooms
      .filter((room) => isUnnamed(room) && digests.has(room.counts.handoutDigest))
      .map(({ file }) => file),
    strayFiles: [
      ...submitted
        .filter((each) => !digests.has(each.sitting.handoutDigest) && !isUnnamed(each))
        .map(({ file }) => `${file}: answers to none of these handouts`),
      ...unreadable.map(({ file, why }) => `${file}: ${why}`),
      ...rooms.filter((room) => !isUnnamed(room)).map(({ file }) => `${file}: ${OF_A_ROOM}`),
    ],
  };
}

/** A term file names everything. */
function fromTermFile(path: string, file: TermFile, list: ClassList | undefined): Omit<MarkedTerm, 'title'> {
  const folder = dirname(path);
  const entries = file.quizzes.map(({ handout: named, answers, title }) => {
    const from = resolve(folder, named);
    const handout = parseHandout(libraryStudio(), readText(from, MOST_TEXT), shownFile(from));
    return { from, handout, title, ...readAnswers(answers.map((each) => resolve(folder, each))) };
  });
  const digests = new Set(entries.map(({ handout }) => handout.digest));
  const quizzes = entries.map(({ handout, title, submitted, unreadable }) => {
    // Files of the other quizzes of the term, and of none, lie in the same folders.
    const own = submitted.filter((each) => each.sitting.handoutDigest === handout.digest || !isUnnamed(each));
    const result = markClass(handout, own, {
      unreadable,
      locale: localeHere(),
      ...(list === undefined ? {} : { list }),
    });
    return { title: title ?? handout.title, result };
  });
  const rooms = entries.flatMap((entry) => entry.rooms);
  const filesOf = (some: readonly RoomFile[]): string[] => [...new Set(some.map((room) => room.file))];
  return {
    quizzes,
    inputs: entries.flatMap(({ from, paths }) => [from, ...paths]),
    elsewhere: filesElsewhere(
      digests,
      entries.flatMap(({ submitted }) => submitted),
      rooms,
      () => quizzesAbout(libraryStudio(), [path, ...entries.flatMap(({ from, paths }) => [from, ...paths])]),
    ),
    passedRooms: filesOf(rooms.filter(isUnnamed)),
    strayFiles: filesOf(rooms.filter((room) => !isUnnamed(room))).map((name) => `${name}: ${OF_A_ROOM}`),
  };
}

/** @throws UsageError, DataError */
export function markTerm(given: readonly string[], classPath: string | undefined): MarkedTerm {
  const found = findFiles(given, (name) => isAnswersName(name) || isHandoutName(name));
  const texts = found
    .map(({ path }) => path)
    .filter(isYaml)
    .map((path) => ({ path, text: readText(path, MOST_TEXT) }));
  const terms = texts.filter(({ text }) => isTermFile(text));
  const listOf = (path: string | undefined): ClassList | undefined =>
    path === undefined ? undefined : readClassList(path);
  const [term] = terms;
  if (term !== undefined) {
    if (found.length > 1)
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
  const marked = fromFiles(found, handouts, listOf(classPath));
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
