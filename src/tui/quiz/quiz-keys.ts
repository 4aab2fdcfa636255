/** Keys of the quiz screens: one table for each screen yields the commands and the help line. */
import type { KeyName } from '../key-names.js';

export type QuizCommand =
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
  | 'erase'
  | 'confirm'
  | 'back'
  | 'next'
  | 'previous'
  | 'overview'
  | 'finish'
  | 'time'
  | 'caution'
  | 'recount'
  | 'keys'
  | 'stop';

/** One entry of a table; `show` is written as in the practice screens: "{up}{down}". */
export interface QuizBinding {
  readonly keys: Readonly<Record<KeyName, QuizCommand>>;
  readonly show: string;
  readonly does: string;
  /** Left out of the help line, listed under ? all the same. */
  readonly quiet?: boolean;
}

export const STOP: QuizBinding = {
  keys: { 'ctrl-c': 'stop' },
  show: 'Ctrl+C',
  does: 'stop at once; what was chosen is saved',
  quiet: true,
};
export const KEYS: QuizBinding = { keys: { '?': 'keys' }, show: '?', does: 'all keys' };

export const enter = (does: string): QuizBinding => ({ keys: { enter: 'confirm' }, show: 'Enter', does });
export const esc = (does: string): QuizBinding => ({
  keys: { escape: 'back', q: 'back' },
  show: 'Esc',
  does,
});
export const upDown = (does: string): QuizBinding => ({
  keys: { up: 'up', down: 'down', k: 'up', j: 'down' },
  show: '{up}{down}',
  does,
});
export const leftRight = (does: string): QuizBinding => ({
  keys: { left: 'less', right: 'more', '-': 'less', '+': 'more', '=': 'more' },
  show: '{left}{right}',
  does,
});
export const letter = (key: string, command: QuizCommand, does: string, quiet = false): QuizBinding => ({
  keys: { [key]: command },
  show: key,
  does,
  ...(quiet ? { quiet } : {}),
});
export const digits = (from: string, does: string, quiet: boolean): QuizBinding => ({
  keys: Object.fromEntries([...'0123456789'].filter((each) => each >= from).map((each) => [each, 'digit'])),
  show: `${from}-9`,
  does,
  quiet,
});
export const SCROLL: QuizBinding = {
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
  quiet: true,
};

/** The command of a key, or undefined when it does nothing now. */
export function commandIn(bindings: readonly QuizBinding[], key: KeyName): QuizCommand | undefined {
  for (const { keys } of bindings) if (Object.hasOwn(keys, key)) return keys[key];
  return undefined;
}
