/** Reading handouts and answers by path. */
import { basename } from 'node:path';
import { MOST_TEXT } from '../../drills/yaml-source.js';
import { DataError } from '../../errors.js';
import { type FoundFile, findFiles } from '../../files/find.js';
import { realPath } from '../../files/named.js';
import { readText } from '../../files/read.js';
import type { Studio } from '../../paints/index.js';
import { cleanText } from '../../text/sanitize.js';
import { MOST_ANSWERS, parseSitting } from '../answers.js';
import type { Submitted } from '../class.js';
import { type ClassList, parseClassList } from '../class-list.js';
import { type Handout, parseHandout } from '../handout.js';
import { isRoomCounts, parseRoomCounts } from '../room-counts.js';
import type { RoomFile } from '../room-result.js';

/** A file's name as messages and reports show it. */
export function shownFile(path: string): string {
  return cleanText(basename(path), 160) || 'file';
}

/** @throws DataError one line: which file, where in it, what is wrong */
export function readHandout(studio: Studio, path: string): Handout {
  return parseHandout(studio, readText(path, MOST_TEXT), shownFile(path));
}

/** @throws DataError as {@link readHandout} does */
export function readClassList(path: string): ClassList {
  return parseClassList(readText(path, MOST_TEXT), shownFile(path));
}

/** What could be read of students and rooms, and why the other files could not. */
export interface ReadAnswers {
  /** Every file that was found. */
  readonly paths: readonly string[];
  readonly submitted: readonly Submitted[];
  readonly rooms: readonly RoomFile[];
  readonly unreadable: readonly { readonly file: string; readonly why: string }[];
}

/** Most files that are read at once: ten quizzes of a large year. */
const MOST_FILES = 5000;

/** Files in a folder that hold answers or the counts of a room. */
export const isAnswersName = (name: string): boolean => /\.(?:answers|room)\.json$/i.test(name);

/**
 * Reads the answers of a class, by file, folder or pattern; a file met twice is read once, and one that cannot be read does not
 * stop the others.
 * @throws DataError when nothing is found, or more than any class has
 */
export function readAnswers(given: readonly string[]): ReadAnswers {
  return readFound(findFiles(given, isAnswersName));
}

/** As {@link readAnswers}, of files that were found already. */
export function readFound(files: readonly FoundFile[]): ReadAnswers {
  const paths = new Map<string, FoundFile>();
  for (const found of files) {
    const real = realPath(found.path);
    const before = paths.get(real);
    paths.set(real, { path: before?.path ?? found.path, isNamed: before?.isNamed === true || found.isNamed });
  }
  if (paths.size > MOST_FILES)
    throw new DataError(`${paths.size} answers files are more than the ${MOST_FILES} that are read at once`);
  const bases = new Map<string, number>();
  for (const { path } of paths.values()) bases.set(basename(path), (bases.get(basename(path)) ?? 0) + 1);
  const submitted: Submitted[] = [];
  const rooms: RoomFile[] = [];
  const unreadable: { file: string; why: string }[] = [];
  for (const { path, isNamed } of paths.values()) {
    const file = (bases.get(basename(path)) ?? 0) > 1 ? cleanText(path, 160) : shownFile(path);
    try {
      const text = readText(path, MOST_ANSWERS);
      if (isRoomCounts(text)) rooms.push({ file, isNamed, counts: parseRoomCounts(text, shownFile(path)) });
      else submitted.push({ file, isNamed, sitting: parseSitting(text, shownFile(path)) });
    } catch (error) {
      if (!(error instanceof DataError)) throw error;
      const [, why = error.message] = /^[^:]*: (.*)$/s.exec(error.message) ?? [];
      unreadable.push({ file, why: cleanText(why, 400) });
    }
  }
  return { paths: [...paths.values()].map(({ path }) => path), submitted, rooms, unreadable };
}
