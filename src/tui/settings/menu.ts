/** The settings with their values, from the state. */
import type { ColourSetting } from '../kit/colour-level.js';
import { scaleLabel } from '../kit/look.js';
import type { MenuItem } from '../kit/menu.js';
import type { State, World } from '../kit/state.js';

const COLOUR_LABELS: Readonly<Record<ColourSetting, string>> = {
  auto: 'as the terminal says',
  none: 'none, in words only',
  '16': '16 colours',
  '256': '256 colours',
  full: 'all colours',
};

/** The settings with their values. */
export function settingsMenu({ settings }: Pick<State, 'settings'>, world: World): MenuItem[] {
  const palette = world.studio.palettes.find(({ id }) => id === settings.palette);
  const forced = world.colourIsForced === true ? ' (a flag or the environment rules)' : '';
  return [
    { value: 'valueScale', label: `Value scale     ${scaleLabel(settings.valueScale)}` },
    { value: 'palette', label: `Palette         ${palette?.name ?? settings.palette}` },
    { value: 'colour', label: `Colours         ${COLOUR_LABELS[settings.colour]}${forced}` },
    { value: 'screenReader', label: `Screen reader   ${settings.screenReader ? 'on' : 'off'}` },
    { value: 'home', label: 'Back to home' },
  ];
}
