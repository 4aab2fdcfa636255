/** From what Ink reports of a read to the names of the keys in it. */
import type { Key } from 'ink';

/** A printable character, or one of: up, down, left, right, page-up, page-down, home, end, enter, escape, tab, back-tab, erase, ctrl-c, ctrl-z. */
export type KeyName = string;

const FLAGS: readonly (readonly [keyof Key, KeyName])[] = [
  ['upArrow', 'up'],
  ['downArrow', 'down'],
  ['leftArrow', 'left'],
  ['rightArrow', 'right'],
  ['pageUp', 'page-up'],
  ['pageDown', 'page-down'],
  ['home', 'home'],
  ['end', 'end'],
  ['return', 'enter'],
  // Before meta: Ink sets meta with Esc.
  ['escape', 'escape'],
];

const CONTROL: Readonly<Record<string, KeyName>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'tab',
  '\u007f': 'erase',
  '\b': 'erase',
  '\u0003': 'ctrl-c',
  '\u001a': 'ctrl-z',
  '\u001b': 'escape',
  ' ': 'space',
};

/**
 * The keys of one read, in order. Quick typing arrives as one string without flags; what is pasted does not come here
 * (read-from.ts). Focus and mouse reports arrive as text such as "[I" and are dropped.
 */
export function keyNames(input: string, key: Partial<Key>): KeyName[] {
  if (key.ctrl === true) {
    if (input === 'c' || input === 'z') return [`ctrl-${input}`];
    if (input === 'm' || input === 'j') return ['enter'];
    return [];
  }
  for (const [flag, name] of FLAGS) if (key[flag] === true) return [name];
  if (key.tab === true) return [key.shift === true ? 'back-tab' : 'tab'];
  // Backspace comes as `delete` in Ink 6.
  if (key.backspace === true || key.delete === true) return ['erase'];
  if (key.meta === true || (input.length > 1 && /^[[O]/.test(input))) return [];
  return [...input].flatMap((character) => {
    const name = CONTROL[character] ?? (/\p{C}/u.test(character) ? undefined : character);
    return name === undefined ? [] : [name];
  });
}
