/** The files of sittings that are typed in from paper: beside those from the screen, in the same form, never in their place. */
import { existsSync, rmSync } from 'node:fs';
import { DataError } from '../../errors.js';
import { replaceNamed } from '../../files/named.js';
import { readText } from '../../files/read.js';
import { MOST_ANSWERS, parseSitting, type Sitting, sittingText } from '../answers.js';
import type { Known } from '../enter-update.js';
import type { Handout } from '../handout.js';
import { nameKey } from '../names.js';
import { type Entry, type Letters, lettersIn, paperSitting } from '../paper-entry.js';
import { shownFile } from './read-files.js';
import { studentFile } from './sitting-file.js';

/** Where entries are kept. */
export interface PaperStore {
  /** What lies under a name. */
  known(name: string): Known | undefined;
  /**
   * Saves an entry in one step.
   * @param before the entry that it takes the place of, under another name perhaps
   * @returns the file, as it is shown
   * @throws DataError when it cannot be written
   */
  save(entry: Entry, nowMs: number, before?: Entry): string;
}

/** Keeps entries in a folder. @param folder absent: beside the handout */
export function paperStore(
  handoutPath: string,
  handout: Handout,
  letters: Letters,
  folder?: string,
): PaperStore {
  const fileOf = (name: string): string => studentFile(handoutPath, name, 'answers.json', folder);
  const whyKept = (file: string, sitting: Sitting, name: string): string | undefined => {
    if (nameKey(sitting.name) !== nameKey(name)) return `${file} is the sitting of another student`;
    if (sitting.source !== 'paper')
      return `${name} has sat on a screen: ${file} stays as it is. A second student of this name needs another one, like "${name} B"`;
    return sitting.handoutDigest === handout.digest
      ? undefined
      : `${file} belongs to another handout, or to one changed since; move it away first`;
  };
  const known = (name: string): Known | undefined => {
    const path = fileOf(name);
    if (!existsSync(path)) return undefined;
    const file = shownFile(path);
    let sitting: Sitting;
    try {
      sitting = parseSitting(readText(path, MOST_ANSWERS), file);
    } catch (error) {
      if (!(error instanceof DataError)) throw error;
      return { why: `${error.message}; move it away first` };
    }
    const why = whyKept(file, sitting, name);
    if (why !== undefined) return { why };
    const typed = lettersIn(handout, letters, sitting);
    return typed === undefined
      ? { why: `${file} was typed in from sheets with other letters; move it away first` }
      : { name: sitting.name, letters: typed };
  };
  return {
    known,
    save(entry, nowMs, before) {
      const path = fileOf(entry.name);
      replaceNamed(path, sittingText(paperSitting(handout, letters, entry, nowMs)));
      const old = before === undefined ? path : fileOf(before.name);
      // The same sheet under a corrected name: two files would be two students.
      if (old !== path && before !== undefined && 'letters' in (known(before.name) ?? {})) rmSync(old);
      return shownFile(path);
    },
  };
}
