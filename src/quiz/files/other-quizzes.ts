/** Which other quizzes lie about, so that files of theirs can be told of by title. */
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Studio } from '../../paints/index.js';
import type { OtherQuiz } from '../elsewhere.js';
import { readHandout, shownFile } from './read-files.js';

/** Most handouts that are looked at. */
const MOST_QUIZZES = 60;

/** Files in a folder that hold a handout. */
export const isHandoutName = (name: string): boolean => /\.quiz\.ya?ml$/i.test(name);

/** What cannot be read is passed over: nothing depends on it but a title. */
function attempt<T>(read: () => T, otherwise: T): T {
  try {
    return read();
  } catch {
    return otherwise;
  }
}

/** Handouts in the folders of these files, by digest. @param paths of a handout and of answers */
export function quizzesAbout(studio: Studio, paths: readonly string[]): Map<string, OtherQuiz> {
  const handouts = [...new Set(paths.map(dirname))].flatMap((folder) =>
    attempt(() => readdirSync(folder), [])
      .filter(isHandoutName)
      .map((name) => join(folder, name)),
  );
  return new Map(
    handouts.slice(0, MOST_QUIZZES).flatMap((path) =>
      attempt((): [string, OtherQuiz][] => {
        const { digest, title } = readHandout(studio, path);
        return [[digest, { title, file: shownFile(path) }]];
      }, []),
    ),
  );
}
