/** Texts of the plain menus, from the state. */
import { scaleEnds, VALUE_SCALES } from '../../colour/index.js';
import { COLOUR_SETTINGS, type ColourSetting } from '../kit/colour-level.js';
import type { Settings } from '../kit/deps.js';
import type { State, World } from '../kit/state.js';

export interface MenuItem {
  readonly value: string;
  readonly label: string;
}

/** The home menu; a set under way comes first. The placing round, while it is open, moves no other entry's number. */
export function homeMenu(
  { set }: Pick<State, 'set'>,
  { placingIsOpen }: Pick<World, 'placingIsOpen'>,
): MenuItem[] {
  const left = set === undefined ? 0 : set.items.length - set.index;
  return [
    ...(set !== undefined && left > 0
      ? [{ value: 'go-on', label: `Go on with the set, ${set.index + 1} of ${set.items.length}` }]
      : []),
    { value: 'practise', label: "Practise today's set" },
    { value: 'families', label: 'Choose what to practise' },
    { value: 'bench', label: 'Mixing bench' },
    { value: 'progress', label: 'Progress' },
    { value: 'settings', label: 'Settings' },
    { value: 'help', label: 'How to read the screens' },
    ...(placingIsOpen() && !(left > 0 && set?.choice.placing === true)
      ? [{ value: 'placing', label: 'Placing round: eight decisions, to find your level' }]
      : []),
    { value: 'quit', label: 'Quit' },
  ];
}

const COLOUR_LABELS: Readonly<Record<ColourSetting, string>> = {
  auto: 'as the terminal says',
  none: 'none, in words only',
  '16': '16 colours',
  '256': '256 colours',
  full: 'all colours',
};

export const scaleLabel = (id: Settings['valueScale']): string =>
  `${VALUE_SCALES[id].title}: ${scaleEnds(VALUE_SCALES[id])}`;

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

/** What can be answered in a step of the welcome. */
export function welcomeOptions(state: State, world: World): MenuItem[] {
  if (state.screen.name !== 'welcome') return [];
  switch (state.screen.step) {
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
        { value: 'home', label: 'Begin with worked cases; to the home screen' },
      ];
  }
}

/** All colour settings, in the order they are walked. */
export const COLOUR_CHOICES = COLOUR_SETTINGS;
