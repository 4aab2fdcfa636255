/** The boxes as one of the screens of practice. */
import type { PracticeScreen } from '../practice/state.js';
import { boxesKeys } from './keys.js';
import { updateBoxes } from './update.js';
import { BoxesBody } from './view.js';

export const boxes: PracticeScreen<'boxes'> = {
  keys: (_state, world, screen) => boxesKeys(world, screen),
  update: updateBoxes,
  view: (state, { studio }, screen) => ({
    title: screen.ticking === undefined ? 'Boxes of paints' : `The paints of ${screen.ticking.id}`,
    ...(state.settings.screenReader
      ? {}
      : {
          side:
            screen.ticking === undefined
              ? `${screen.selected + 1} of ${studio.palettes.length}`
              : `${screen.ticking.paints.length} in it`,
        }),
    body: <BoxesBody {...screen} />,
  }),
};
