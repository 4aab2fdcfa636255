/** Work on files whose faults are told in words, and paths as they may be shown. */
import { type Doing, faultWords, isFileFault, type MudlarkError } from '../errors.js';
import { cleanText } from '../text/sanitize.js';

/**
 * Does work on a file.
 * @param tell makes the fault that is thrown from a few words and the cause
 */
export function withWords<T>(
  doing: Doing,
  work: () => T,
  tell: (words: string, options: ErrorOptions) => MudlarkError,
): T {
  try {
    return work();
  } catch (error) {
    if (!isFileFault(error)) throw error;
    throw tell(faultWords(error, doing), { cause: error });
  }
}

/** Longest path that is shown, in characters. */
const MOST_SHOWN = 160;

/** A path as it may be shown: nothing in it steers the terminal; of a long one the end. */
export function shownPath(path: string): string {
  const clean = [...cleanText(path, 5000)];
  return clean.length > MOST_SHOWN ? `...${clean.slice(3 - MOST_SHOWN).join('')}` : clean.join('');
}
