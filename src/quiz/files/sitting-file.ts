/** The file of a sitting: where it lies, opening it again, saving it after each choice. */
import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { DataError, UsageError } from '../../errors.js';
import { replaceNamed } from '../../files/named.js';
import { readText } from '../../files/read.js';
import { MOST_ANSWERS, parseSitting, type Sitting, sittingText } from '../answers.js';
import type { Handout } from '../handout.js';
import { fileNamePart, nameKey, shownName } from '../names.js';
import { resumeSitting, startSitting } from '../sitting.js';
import { shownFile } from './read-files.js';

/** Longest beginning of a handout's name that its other files keep, in bytes. */
const MOST_STEM_BYTES = 120;

/** The name of a handout without its endings: "week3" of "week3.quiz.yaml". */
export function handoutStem(path: string): string {
  const stem = basename(path).replace(/(?:\.quiz)?\.ya?ml$/i, '');
  return (
    Buffer.from(stem)
      .subarray(0, MOST_STEM_BYTES)
      .toString()
      .replace(/\ufffd+$/, '') || 'quiz'
  );
}

/** Path of a file that belongs to one student, beside the handout: "week3.ann-lee.answers.json". */
export function studentFile(handoutPath: string, name: string, ending: string, folder?: string): string {
  return join(folder ?? dirname(handoutPath), `${handoutStem(handoutPath)}.${fileNamePart(name)}.${ending}`);
}

/** A sitting with its file. */
export interface OpenSitting {
  readonly path: string;
  readonly sitting: Sitting;
  /** Whether it was there already and goes on. */
  readonly isResumed: boolean;
  /**
   * Saves in one step, through to the disk.
   * @throws DataError when it cannot be written, or when something else has changed the file meanwhile
   */
  save(sitting: Sitting): void;
}

function goOn(text: string, file: string, handout: Handout, name: string): Sitting {
  const sitting = parseSitting(text, file);
  if (nameKey(sitting.name) !== nameKey(name))
    throw new DataError(
      `${file}: this is the sitting of another student; move it away or choose another --name`,
    );
  if (sitting.source === 'paper')
    throw new DataError(
      `${file}: these answers were typed in from paper; a second student of this name sits with another --name, like "${sitting.name} B"`,
    );
  if (sitting.handoutDigest !== handout.digest)
    throw new DataError(
      `${file}: these answers belong to another handout, or to one changed since; move the file away to begin again`,
    );
  if (sitting.finished !== undefined)
    throw new DataError(
      `${file}: this sitting is finished; a second student of this name sits with another --name, like "${sitting.name} B"`,
    );
  return sitting;
}

/**
 * Opens the sitting of a student, or begins one.
 * @throws UsageError when nothing of the name can be shown
 * @throws DataError when the file is there and is not this student's open sitting of this handout
 */
export function openSitting(handoutPath: string, handout: Handout, name: string, nowMs: number): OpenSitting {
  if (shownName(name) === '')
    throw new UsageError('--name must hold at least one letter or sign that can be shown');
  const path = studentFile(handoutPath, name, 'answers.json');
  const textNow = (): string | undefined => (existsSync(path) ? readText(path, MOST_ANSWERS) : undefined);
  let known = textNow();
  const isResumed = known !== undefined;
  const sitting =
    known === undefined
      ? startSitting(handout, name, nowMs)
      : resumeSitting(handout, goOn(known, shownFile(path), handout, name), nowMs);
  return {
    path,
    sitting,
    isResumed,
    save(changed) {
      const there = textNow();
      if (there !== undefined && there !== known)
        throw new DataError(
          `${shownFile(path)}: another window or program has changed this sitting; close one of them and start again`,
        );
      const text = sittingText(changed, handout.secret);
      if (text === there) return;
      replaceNamed(path, text);
      known = text;
    },
  };
}
