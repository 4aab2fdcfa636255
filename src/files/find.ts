/** Files by name, by folder and by pattern, since not every shell fills patterns in. */
import { type Dirent, readdirSync, statSync } from 'node:fs';
import { join, parse, sep } from 'node:path';
import { DataError } from '../errors.js';
import { shownPath, withWords } from './faults.js';

/** Folders within folders that are looked through, and most files looked at in all: a drive named by mistake ends soon. */
const MOST_DEPTH = 4;
const MOST_LOOKED_AT = 20_000;

/** A file and whether it was named, by itself or by a pattern, or lay in a folder that was. */
export interface FoundFile {
  readonly path: string;
  readonly isNamed: boolean;
}

/** "week2" before "week10". */
const { compare: inFileOrder } = new Intl.Collator('en', { numeric: true });

const isPattern = (segment: string): boolean => /[*?]/.test(segment);

/**
 * Whether a name fits a segment: `*` is any letters, `?` any one; a leading dot has to be named. Where letters do not fit, only the
 * last star is tried again, so that no pattern takes longer than its length times the name's; a regular expression would.
 */
function fits(segment: string, name: string): boolean {
  if (name.startsWith('.') && !segment.startsWith('.')) return false;
  const [shape, letters] = [[...segment], [...name]];
  let at = 0;
  let star = -1;
  let resume = 0;
  for (let place = 0; place < letters.length; ) {
    if (shape[at] === '*') {
      star = at++;
      resume = place;
    } else if (shape[at] === '?' || shape[at] === letters[place]) {
      at++;
      place++;
    } else if (star >= 0) {
      at = star + 1;
      place = ++resume;
    } else return false;
  }
  return shape.slice(at).every((left) => left === '*');
}

function entriesOf(folder: string): Dirent[] {
  const read = (): Dirent[] => readdirSync(folder === '' ? '.' : folder, { withFileTypes: true });
  return withWords(
    'read',
    read,
    (words, options) => new DataError(`${shownPath(folder)}: ${words}`, options),
  ).sort((a, b) => inFileOrder(a.name, b.name));
}

const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;

/** The paths that fit a pattern, segment by segment. */
function byPattern(pattern: string): string[] {
  const { root } = parse(pattern);
  const segments = pattern
    .slice(root.length)
    .split(sep === '\\' ? /[\\/]/ : '/')
    .filter(Boolean);
  return segments.reduce<string[]>(
    (bases, segment, at) => {
      const isLast = at === segments.length - 1;
      if (!isPattern(segment)) return bases.map((base) => join(base, segment));
      return bases
        .filter((base) => base === '' || isFolder(base))
        .flatMap((base) =>
          entriesOf(base)
            .filter(({ name }) => fits(segment, name))
            .map(({ name }) => join(base, name)),
        )
        .filter((path) => isLast || isFolder(path));
    },
    [root],
  );
}

/** The files below a folder whose names the caller wants; links to folders are not followed. */
function below(folder: string, wants: (name: string) => boolean): string[] {
  const found: string[] = [];
  let seen = 0;
  const look = (at: string, depth: number): void => {
    for (const entry of entriesOf(at)) {
      if (++seen > MOST_LOOKED_AT)
        throw new DataError(
          `${shownPath(folder)}: more than ${MOST_LOOKED_AT} files lie in this folder; name a smaller one`,
        );
      const path = join(at, entry.name);
      if (entry.isDirectory() && depth < MOST_DEPTH) look(path, depth + 1);
      else if (entry.isFile() && wants(entry.name)) found.push(path);
    }
  };
  look(folder, 1);
  return found;
}

/**
 * The files that a person named: a file stands for itself, whether it is there or not; a folder for those in it that the caller
 * wants; a pattern for all that fit it.
 * @param wants of a file in a folder, whether its name is that of one to read
 * @throws DataError for a folder without any, a pattern that nothing fits, a folder that cannot be read
 */
export function findFiles(given: readonly string[], wants: (name: string) => boolean): FoundFile[] {
  return given.flatMap((name): FoundFile[] => {
    if (isFolder(name)) {
      const found = below(name, wants);
      if (found.length === 0)
        throw new DataError(`${shownPath(name)}: this folder holds no file to read here`);
      return found.map((path) => ({ path, isNamed: false }));
    }
    if (!isPattern(name) || statSync(name, { throwIfNoEntry: false }) !== undefined)
      return [{ path: name, isNamed: true }];
    const matched = byPattern(name).filter((path) => statSync(path, { throwIfNoEntry: false }) !== undefined);
    if (matched.length === 0) throw new DataError(`${shownPath(name)}: no file fits this pattern`);
    return matched.flatMap((path): FoundFile[] =>
      isFolder(path)
        ? below(path, wants).map((inner) => ({ path: inner, isNamed: false }))
        : [{ path, isNamed: true }],
    );
  });
}
