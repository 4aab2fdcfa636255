/** Settings: each choice holds at once and is kept for next time. */
import { wrapText } from '../../text/wrap.js';
import { boxesScreen } from '../boxes/state.js';
import { COLOUR_SETTINGS, type ColourSetting, settingOf } from '../kit/colour-level.js';
import { back } from '../kit/keys.js';
import { textColumns } from '../kit/layout.js';
import { scaleLabel } from '../kit/look.js';
import { Menu } from '../kit/menu.js';
import { type MenuItem, menuKeys, pickIn } from '../kit/menu-keys.js';
import { turn } from '../kit/moves.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { show, withNotice } from '../practice/moves.js';
import type { PracticeScreen, PracticeWorld, State } from '../practice/state.js';
import { changeSettings } from './change.js';

const COLOUR_LABELS: Readonly<Record<ColourSetting, string>> = {
  auto: 'as the terminal says',
  none: 'none, in words only',
  '16': '16 colours',
  '256': '256 colours',
  full: 'all colours',
};

/** The settings with their values. */
export function settingsMenu(
  { settings, colourLevel }: Pick<State, 'settings' | 'colourLevel'>,
  world: PracticeWorld,
): MenuItem[] {
  const palette = world.studio.palettes.find(({ id }) => id === settings.palette);
  const colours =
    world.colourIsForced === true
      ? `${COLOUR_LABELS[settingOf(colourLevel)]} (set from outside)`
      : COLOUR_LABELS[settings.colour];
  return [
    { value: 'valueScale', label: `Value scale     ${scaleLabel(settings.valueScale)}` },
    { value: 'palette', label: `Box of paints   ${palette?.name ?? settings.palette}` },
    { value: 'colour', label: `Colours         ${colours}` },
    { value: 'screenReader', label: `Screen reader   ${settings.screenReader ? 'on' : 'off'}` },
    { value: 'home', label: 'Back to home' },
  ];
}

const FORCED = 'Colours are set by NO_COLOR, FORCE_COLOR or --no-color.';

const following = <T,>(list: readonly T[], value: T): T =>
  list[turn(list.indexOf(value), 1, list.length)] ?? value;

/** A choice in the menu. */
function chooseSetting(state: State, world: PracticeWorld, name: string): State {
  const { settings } = state;
  switch (name) {
    case 'valueScale':
      return changeSettings(state, world, {
        valueScale: settings.valueScale === 'paper-first' ? 'black-first' : 'paper-first',
      });
    case 'palette':
      return show(state, boxesScreen(world, settings.palette));
    case 'screenReader':
      return changeSettings(state, world, { screenReader: !settings.screenReader });
    case 'colour':
      if (world.colourIsForced === true) return withNotice(state, FORCED);
      return changeSettings(state, world, { colour: following(COLOUR_SETTINGS, settings.colour) });
    default:
      return show(state, { name: 'home' });
  }
}

const ABOUT =
  'Changes hold at once and are kept for next time. Colours: a coarser choice helps where greys run together; words and numbers are there in any case.';

function About(): React.JSX.Element {
  const { state } = useSurroundings();
  const lines = wrapText(ABOUT, textColumns(state.size)).map((text): Piece[] => [{ text, role: 'muted' }]);
  return <Rows lines={state.settings.screenReader ? lines : [[], ...lines]} />;
}

export const settings: PracticeScreen<'settings'> = {
  keys: () => [...menuKeys('change'), back('home')],
  update: (state, world, screen, pressed) => {
    if (pressed.command === 'back') return show(state, { name: 'home' });
    const picked = pickIn(settingsMenu(state, world), screen.selected ?? 0, pressed);
    if (picked === undefined) return state;
    const moved = { ...state, screen: { ...screen, selected: picked.selected } };
    return picked.chosen === undefined ? moved : chooseSetting(moved, world, picked.chosen);
  },
  view: (state, world, { selected = 0 }) => ({
    title: 'Settings',
    body: (
      <>
        <Menu items={settingsMenu(state, world)} selected={selected} />
        <About />
      </>
    ),
  }),
};
