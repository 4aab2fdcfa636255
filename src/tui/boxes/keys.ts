/** The keys of the boxes. */
import { type Binding, back, CANCEL, enter, letter, typing, upDown } from '../kit/keys.js';
import type { World } from '../kit/stage.js';
import { type BoxesScreen, type BoxTyping, boxAt, openBox } from './state.js';

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
const TYPED: Readonly<Record<BoxTyping['what'], string>> = {
  box: 'its name',
  name: 'your name for it',
  strength: 'how strong',
};

export function boxesKeys(world: World, screen: BoxesScreen): readonly Binding[] {
  if (screen.typing !== undefined) return [typing(TYPED[screen.typing.what]), enter('keep it'), CANCEL];
  const shown = openBox(world, screen);
  if (shown !== undefined) {
    const isIn = shown.box.pigments.includes(shown.paint.id);
    return [
      upDown('paint'),
      TICK,
      ...(isIn ? [letter('n', 'name', 'your name'), letter('s', 'strength', 'strength')] : []),
      PAGES,
      back('boxes'),
    ];
  }
  return [
    upDown('box'),
    enter('use it'),
    ...(boxAt(world, screen)?.isOwn === true
      ? [letter('e', 'open', 'its paints'), letter('r', 'rename', 'rename')]
      : []),
    letter('n', 'new', 'new box from it'),
    back('settings'),
  ];
}
