/** What a pasted text does: it is text where text is typed, and nothing elsewhere. Pure. */
import { cleanText } from '../../text/sanitize.js';
import type { KeyName } from './key-names.js';
import { type Binding, commandIn } from './keys.js';

/** Told on a screen where nothing is typed. */
export const NOT_PASTED = 'Nothing was pasted: this screen goes by keys.';
/** Told where the field takes other signs. */
export const OTHER_SIGNS = 'Nothing was pasted: the text has signs that do not belong here.';

/** Signs that are put in at most; a field may take fewer. */
const MOST_SIGNS = 100;

/**
 * The keys that would have typed a text, on one line and without what is not printable.
 * @param bindings those that work now
 * @returns undefined where no text is typed; none where the field does not take all of its signs
 */
export function pastedKeys(bindings: readonly Binding[], text: string): KeyName[] | undefined {
  const field = bindings.find(({ writes }) => writes !== undefined);
  if (field === undefined) return undefined;
  const signs = [...cleanText(text)].slice(0, MOST_SIGNS);
  const keys = signs.map((sign) => (sign === ' ' ? 'space' : sign));
  return keys.every((key) => commandIn([field], key) !== undefined) ? keys : [];
}
