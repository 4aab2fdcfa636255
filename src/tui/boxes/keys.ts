/** The keys of the boxes. */
import { type Binding, back, enter, letter, upDown } from '../kit/keys.js';
import type { World } from '../kit/stage.js';
import { type BoxesScreen, boxAt } from './state.js';

const TICK: Binding = {
  keys: { enter: 'confirm', space: 'confirm' },
  show: 'Enter',
  does: 'in or out',
  stays: true,
};
const PAGES: Binding = {
  keys: { 'page-up': 'page-up', 'page-down': 'page-down', home: 'top', end: 'bottom' },
  show: 'Page keys',
  does: 'ten paints on or back',
  quiet: true,
};

export function boxesKeys(world: World, screen: BoxesScreen): readonly Binding[] {
  if (screen.ticking !== undefined) return [upDown('paint'), TICK, PAGES, back('keep it')];
  return [
    upDown('box'),
    enter('use it'),
    ...(boxAt(world, screen)?.isOwn === true ? [letter('e', 'open', 'its paints')] : []),
    letter('n', 'new', 'new box from it'),
    back('settings'),
  ];
}
