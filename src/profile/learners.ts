/** Learners by name, and the folder of each. */
import { createHash } from 'node:crypto';
import { UsageError } from '../errors.js';
import { cleanText } from '../text/sanitize.js';

/** The learner when none is named. */
export const DEFAULT_LEARNER = 'me';
/** Longest name that is shown, in characters; the folder tells longer ones apart as well. */
const SHOWN = 60;
/** Longest name that is taken. */
const MOST = 1000;

/**
 * A name as it is kept: Unicode NFC without blanks at the ends.
 * @throws UsageError when nothing of it can be shown, or it is longer than 1,000 characters
 */
export function learnerName(name: string): string {
  const trimmed = name.normalize('NFC').trim();
  if (trimmed.length > MOST) throw new UsageError(`a learner's name has at most ${MOST} characters`);
  if (cleanText(trimmed) === '')
    throw new UsageError("a learner's name needs at least one character that can be shown");
  return trimmed;
}

/** A name as it may be shown: one line, no control characters, not endless. */
export const shownName = (name: string): string => cleanText(name, SHOWN);

/**
 * The folder of a learner: readable where the name is plain, and always with a digest of the exact name, so that
 * names that are equal after cleaning, or differ only in case, or are reserved words of a system, stay apart.
 */
export function learnerFolder(name: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+/, '')
    .slice(0, 40)
    .replace(/-+$/, '');
  const digest = createHash('sha256').update(name, 'utf8').digest('hex').slice(0, 12);
  return plain === '' ? digest : `${plain}-${digest}`;
}
