/** The keys of a result. */
import { type Binding, letter, scroll } from '../kit/keys.js';
import { isWide } from '../kit/layout.js';
import type { Stage, World } from '../kit/stage.js';
import { paintings } from '../paint-it/update.js';
import type { PracticeWorld, ResultScreen, State } from '../practice/state.js';
import { sheetKeys } from '../sheet/keys.js';
import type { Judged } from './judged.js';

/** Keys that change how a result is shown: its picture, its plane where one column has no room for both, its text. */
export function showingKeys(stage: Stage, world: World, shown: Judged): Binding[] {
  const { grade } = shown.answered;
  const hasBoth = grade.value !== undefined && grade.chroma !== undefined;
  return [
    ...(isWide(stage.size) || !hasBoth
      ? []
      : [letter('p', 'picture', shown.plane === true ? 'swatches' : 'plane')]),
    ...sheetKeys(stage, world, shown),
    scroll(true),
  ];
}

export const HOME: Binding = {
  keys: { escape: 'home', q: 'home', erase: 'home' },
  show: 'Esc',
  does: 'home',
  stays: true,
};

export function resultKeys(state: State, world: PracticeWorld, screen: ResultScreen): Binding[] {
  const { from, worked } = screen;
  return [
    {
      keys: { enter: 'next', n: 'next' },
      show: 'Enter',
      does: from === 'summary' ? 'back to the set' : worked ? 'go on' : 'next',
    },
    ...(worked ? [] : [letter('t', 'again', 'try again')]),
    letter('w', 'why', 'why'),
    ...(paintings(world, screen).length === 0 ? [] : [letter('d', 'paint', 'paint it')]),
    ...showingKeys(state, world, screen),
    from === 'summary'
      ? { ...HOME, keys: { escape: 'next', q: 'next', erase: 'next' }, does: 'the set' }
      : HOME,
  ];
}
