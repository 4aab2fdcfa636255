/** Reading handouts and answers by path. */
import { basename } from 'node:path';
import { MOST_TEXT } from '../../drills/yaml-source.js';
import { DataError } from '../../errors.js';
import { realPath } from '../../files/named.js';
import { readText } from '../../files/read.js';
import type { Studio } from '../../paints/index.js';
import { cleanText } from '../../text/sanitize.js';
import { MOST_ANSWERS, parseSitting, type Sitting } from '../answers.js';
import type { Submitted } from '../class.js';
import { type Handout, parseHandout } from '../handout.js';

/** A file's name as messages and reports show it. */
export function shownFile(path: string): string {
  return cleanText(basename(path), 160) || 'file';
}

/** @throws DataError one line: which file, where in it, what is wrong */
export function readHandout(studio: Studio, path: string): Handout {
  return parseHandout(studio, readText(path, MOST_TEXT), shownFile(path));
}

/** @throws DataError as {@link readHandout} does */
function readSitting(path: string): Sitting {
  return parseSitting(readText(path, MOST_ANSWERS), shownFile(path));
}

/** Sittings that could be read, and why the other files could not. */
export interface ReadSittings {
  readonly submitted: readonly Submitted[];
  readonly unreadable: readonly { readonly file: string; readonly why: string }[];
}

/** Most answers files of one class. */
const MOST_SITTINGS = 2000;

/**
 * Reads the answers of a class; a file named twice is read once, and one that cannot be read does not stop the others.
 * @throws DataError when there are more files than any class has
 */
export function readSittings(given: readonly string[]): ReadSittings {
  if (given.length > MOST_SITTINGS)
    throw new DataError(
      `${given.length} answers files are more than the ${MOST_SITTINGS} that are read at once`,
    );
  const submitted: Submitted[] = [];
  const unreadable: { file: string; why: string }[] = [];
  const paths = new Map(given.map((path) => [realPath(path), path]));
  const bases = new Map<string, number>();
  for (const path of paths.values()) bases.set(basename(path), (bases.get(basename(path)) ?? 0) + 1);
  for (const path of paths.values()) {
    const file = (bases.get(basename(path)) ?? 0) > 1 ? cleanText(path, 160) : shownFile(path);
    try {
      submitted.push({ file, sitting: readSitting(path) });
    } catch (error) {
      if (!(error instanceof DataError)) throw error;
      const [, why = error.message] = /^[^:]*: (.*)$/s.exec(error.message) ?? [];
      unreadable.push({ file, why: cleanText(why, 400) });
    }
  }
  return { submitted, unreadable };
}
