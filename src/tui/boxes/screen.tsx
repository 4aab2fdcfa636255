/** The boxes as one of the screens of practice. */
import type { PracticeScreen } from '../practice/state.js';
import { boxesKeys } from './keys.js';
import { openBox } from './state.js';
import { updateBoxes } from './update.js';
import { BoxesBody } from './view.js';

export const boxes: PracticeScreen<'boxes'> = {
  keys: (_state, world, screen) => boxesKeys(world, screen),
  update: updateBoxes,
  view: (state, world, screen) => {
    const box = openBox(world, screen)?.box;
    const { palettes } = world.studio;
    const side =
      box === undefined
        ? `${Math.min(screen.selected + 1, palettes.length)} of ${palettes.length}`
        : `${box.pigments.length} in it`;
    return {
      title: box === undefined ? 'Boxes of paints' : `The paints of ${box.id}`,
      ...(state.settings.screenReader ? {} : { side }),
      body: <BoxesBody {...screen} />,
    };
  },
};
