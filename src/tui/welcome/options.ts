/** What can be answered in each step of the welcome. */
import { VALUE_SCALES } from '../../colour/index.js';
import { scaleLabel } from '../kit/look.js';
import type { MenuItem } from '../kit/menu-keys.js';
import type { Settings, World } from '../kit/stage.js';
import type { WelcomeStep } from '../practice/state.js';

/** What can be answered in a step of the welcome. */
export function welcomeOptions(step: WelcomeStep, world: Pick<World, 'studio'>): MenuItem[] {
  switch (step) {
    case 'greeting':
      return [
        { value: 'start', label: 'Begin, about two minutes' },
        { value: 'skip', label: 'Skip to the home screen' },
      ];
    case 'colours':
      return [
        { value: 'yes', label: 'Yes, ten greys and six hues, all different' },
        { value: 'no', label: 'No, some of them look the same' },
        { value: 'none', label: 'I would rather have words and numbers only' },
      ];
    case 'palette':
      return world.studio.palettes.map(({ id, name, note }) => ({ value: id, label: `${name}: ${note}` }));
    case 'scale':
      return [...Object.keys(VALUE_SCALES)].map((id) => ({
        value: id,
        label: scaleLabel(id as Settings['valueScale']),
      }));
    case 'placing':
      return [
        { value: 'placing', label: 'Placing round: eight decisions at most' },
        { value: 'home', label: 'To the home screen' },
      ];
  }
}
