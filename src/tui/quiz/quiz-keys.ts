/** Keys of the quiz screens: one table for each screen yields the commands and the help line. */
import { type CommonCommand, type KeyBinding, scroll, stop } from '../kit/key-bindings.js';

export { commandIn, digits, enter, KEYS, leftRight, upDown } from '../kit/key-bindings.js';

export type QuizCommand = CommonCommand | 'erase' | 'previous' | 'overview' | 'finish' | 'time' | 'recount';

export type QuizBinding = KeyBinding<QuizCommand>;

export const STOP: QuizBinding = stop('stop at once; what was chosen is saved');
export const SCROLL: QuizBinding = scroll(true);

export const esc = (does: string): QuizBinding => ({
  keys: { escape: 'back', q: 'back' },
  show: 'Esc',
  does,
  stays: true,
});
export const letter = (key: string, command: QuizCommand, does: string, quiet = false): QuizBinding => ({
  keys: { [key]: command },
  show: key,
  does,
  ...(quiet ? { quiet } : {}),
});
