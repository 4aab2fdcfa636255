/** The welcome as one of the screens of practice. */
import { menuKeys } from '../kit/menu-keys.js';
import type { PracticeScreen } from '../practice/state.js';
import { updateWelcome } from './update.js';
import { TITLES, Welcome } from './view.js';

export const welcome: PracticeScreen<'welcome'> = {
  keys: (_state, _world, { step }) => [
    ...menuKeys('choose'),
    {
      keys: { escape: 'back' },
      show: 'Esc',
      does: step === 'placing' ? 'home' : 'skip the welcome',
      stays: true,
    },
  ],
  update: updateWelcome,
  view: (_state, _world, { step, selected }) => ({
    title: TITLES[step],
    body: <Welcome step={step} selected={selected} />,
  }),
};
