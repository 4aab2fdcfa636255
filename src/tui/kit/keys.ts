/**
 * Rows of key tables. A table maps keys to commands and draws the help line, so that the two cannot disagree.
 * Arrows first; letters for quick hands; nothing needs a modifier.
 */
import type { Glyphs } from './glyphs.js';
import type { KeyName } from './key-names.js';

/** What a key asks for; the same word means the same on every screen. */
export type Command =
  | 'up'
  | 'down'
  | 'less'
  | 'more'
  | 'page-up'
  | 'page-down'
  | 'top'
  | 'bottom'
  | 'next-field'
  | 'previous-field'
  | 'digit'
  | 'confirm'
  | 'back'
  | 'stop'
  | 'keys'
  | 'caution'
  | 'next'
  | 'quit'
  | 'hint'
  | 'again'
  | 'why'
  | 'paint'
  | 'picture'
  | 'sheet'
  | 'scene'
  | 'grey'
  | 'best'
  | 'home'
  | 'restart'
  | 'mend'
  | 'erase'
  | 'previous'
  | 'overview'
  | 'finish'
  | 'time'
  | 'recount'
  | 'open'
  | 'undo'
  | 'path'
  | 'ways'
  | 'aside'
  | 'asides'
  | 'recipes'
  | 'sooner'
  | 'name'
  | 'strength'
  | 'rename'
  | 'names'
  | 'type'
  | 'values'
  | 'new';

/** One row of a table: keys with their commands, how they are written and what they do. */
export interface Binding {
  readonly keys: Readonly<Record<KeyName, Command>>;
  /** Keys as the help line writes them; a key of Glyphs between braces is drawn: "{up}{down}". */
  readonly show: string;
  /** What it does, in a word or three. */
  readonly does: string;
  /** Left out of the help line, listed under ? all the same. */
  readonly quiet?: boolean;
  /** Among the last that the help line drops where it has no room. */
  readonly stays?: boolean;
  /** Its keys write into a field: a text of any signs, or of theirs alone. What is pasted goes there. */
  readonly writes?: 'text' | 'signs';
}

export const KEYS: Binding = { keys: { '?': 'keys' }, show: '?', does: 'keys', stays: true };

/** Ctrl+C; says what is kept. */
export const stop = (does: string): Binding => ({
  keys: { 'ctrl-c': 'stop' },
  show: 'Ctrl+C',
  does,
  quiet: true,
});
export const upDown = (does: string): Binding => ({
  keys: { up: 'up', down: 'down', k: 'up', j: 'down' },
  show: '{up}{down}',
  does,
});
/** How left and right are written. */
export const LEFT_RIGHT = '{left}{right}';
/** What they do in a row of amounts. */
export const LESS_MORE = 'less, more';
export const leftRight = (does: string): Binding => ({
  keys: { left: 'less', right: 'more', '-': 'less', '+': 'more', '=': 'more' },
  show: LEFT_RIGHT,
  does,
});
export const enter = (does: string): Binding => ({
  keys: { enter: 'confirm' },
  show: 'Enter',
  does,
  stays: true,
});
export const scroll = (quiet: boolean): Binding => ({
  keys: {
    up: 'up',
    down: 'down',
    k: 'up',
    j: 'down',
    'page-up': 'page-up',
    'page-down': 'page-down',
    space: 'page-down',
    home: 'top',
    end: 'bottom',
  },
  show: '{up}{down}',
  does: 'scroll',
  quiet,
});

/** Back to the screen before, or out of the program. */
export const back = (does: string): Binding => ({
  keys: { escape: 'back', erase: 'back', q: 'back' },
  show: 'Esc',
  does,
  stays: true,
});
/** Out of a text that is typed: `q` and the like are text there. */
export const CANCEL: Binding = { keys: { escape: 'back' }, show: 'Esc', does: 'leave it', stays: true };
/** A letter with a command of its own. */
export const letter = (key: string, command: Command, does: string, quiet = false): Binding => ({
  keys: { [key]: command },
  show: key,
  does,
  ...(quiet ? { quiet } : {}),
});
/** Text is typed: every sign of an ASCII keyboard; what lies beyond is text where this row is. */
export const typing = (does: string): Binding => ({
  keys: {
    ...Object.fromEntries(
      Array.from({ length: 94 }, (_, at) => [String.fromCharCode(33 + at), 'type' as const]),
    ),
    space: 'type',
    erase: 'erase',
  },
  show: 'a-z',
  does,
  writes: 'text',
});

/** Text after a key of `typing`, at most so many signs. */
export function typed(text: string, key: KeyName, most: number): string {
  if (key === 'erase') return [...text].slice(0, -1).join('');
  const sign = key === 'space' ? ' ' : key;
  return [...sign].length === 1 && [...text].length < most ? text + sign : text;
}

/** Enter or any other way out of a panel that only tells something. */
export const close = (does = 'close'): Binding => ({
  keys: { enter: 'confirm', escape: 'back', q: 'back', '?': 'back' },
  show: 'Esc',
  does,
  stays: true,
});

/** Digits from one of them to 9, each the same command. */
export const digits = (from: string, does: string, quiet: boolean): Binding => ({
  keys: Object.fromEntries(
    [...'0123456789'].filter((each) => each >= from).map((each) => [each, 'digit' as const]),
  ),
  show: `${from}-9`,
  does,
  quiet,
});

/** The command of a key, or undefined when it does nothing now. */
export function commandIn(bindings: readonly Binding[], key: KeyName): Command | undefined {
  for (const { keys } of bindings) if (Object.hasOwn(keys, key)) return keys[key];
  const isBeyondAscii = (key.codePointAt(0) as number) > 126;
  return isBeyondAscii && bindings.some(({ writes }) => writes === 'text') ? 'type' : undefined;
}

/** Keys as they are written on this terminal. */
export function shownKeys({ show }: Pick<Binding, 'show'>, glyphs: Glyphs): string {
  const drawn = show.replace(
    /\{(up|down|left|right)\}/g,
    (_, name: 'up' | 'down' | 'left' | 'right') => `${glyphs[name]} `,
  );
  return (glyphs.braille ? drawn.replaceAll(' ', '') : drawn.trim().replaceAll(' ', '/')) || show;
}
