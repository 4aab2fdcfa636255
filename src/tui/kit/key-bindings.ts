/** Rows of key tables that practice and quizzes share. A table maps keys to commands and draws the help line. */
import type { KeyName } from './key-names.js';

/** Commands that mean the same on every screen. */
export type CommonCommand =
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
  | 'next';

/** One row of a table: keys with their commands, how they are written and what they do. */
export interface KeyBinding<C extends string> {
  readonly keys: Readonly<Record<KeyName, C>>;
  /** Keys as the help line writes them; a key of Glyphs between braces is drawn: "{up}{down}". */
  readonly show: string;
  /** What it does, in a word or three. */
  readonly does: string;
  /** Left out of the help line, listed under ? all the same. */
  readonly quiet?: boolean;
  /** Among the last that the help line drops where it has no room. */
  readonly stays?: boolean;
}

type CommonBinding = KeyBinding<CommonCommand>;

export const KEYS: CommonBinding = { keys: { '?': 'keys' }, show: '?', does: 'keys', stays: true };

/** Ctrl+C; says what is kept. */
export const stop = (does: string): CommonBinding => ({
  keys: { 'ctrl-c': 'stop' },
  show: 'Ctrl+C',
  does,
  quiet: true,
});
export const upDown = (does: string): CommonBinding => ({
  keys: { up: 'up', down: 'down', k: 'up', j: 'down' },
  show: '{up}{down}',
  does,
});
export const leftRight = (does: string): CommonBinding => ({
  keys: { left: 'less', right: 'more', '-': 'less', '+': 'more', '=': 'more' },
  show: '{left}{right}',
  does,
});
export const enter = (does: string): CommonBinding => ({
  keys: { enter: 'confirm' },
  show: 'Enter',
  does,
  stays: true,
});
export const scroll = (quiet: boolean): CommonBinding => ({
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

/** Digits from one of them to 9, each the same command. */
export const digits = (from: string, does: string, quiet: boolean): CommonBinding => ({
  keys: Object.fromEntries(
    [...'0123456789'].filter((each) => each >= from).map((each) => [each, 'digit' as const]),
  ),
  show: `${from}-9`,
  does,
  quiet,
});

/** The command of a key, or undefined when it does nothing now. */
export function commandIn<C extends string>(bindings: readonly KeyBinding<C>[], key: KeyName): C | undefined {
  for (const { keys } of bindings) if (Object.hasOwn(keys, key)) return keys[key];
  return undefined;
}
