/** Settings: each choice holds at once. */
import { COLOUR_SETTINGS } from '../kit/colour-level.js';
import type { SettingsPatch } from '../kit/deps.js';
import { ask, show, turn } from '../kit/moves.js';
import type { State, World } from '../kit/state.js';

/** Changes a setting at once and asks for it to be kept. */
export function changeSettings(state: State, world: World, patch: SettingsPatch): State {
  const { welcomed: _told, ...changes } = patch;
  const settings = { ...state.settings, ...changes };
  const next = { ...state, settings, colourLevel: world.colourLevelFor(settings.colour) };
  return ask(next, { type: 'save-settings', patch });
}

const following = <T>(list: readonly T[], value: T): T =>
  list[turn(list.indexOf(value), 1, list.length)] ?? value;

/** A choice in the menu. */
export function chooseSetting(state: State, world: World, name: string): State {
  const { settings } = state;
  switch (name) {
    case 'valueScale':
      return changeSettings(state, world, {
        valueScale: settings.valueScale === 'paper-first' ? 'black-first' : 'paper-first',
      });
    case 'palette':
      return changeSettings(state, world, {
        palette: following(
          world.studio.palettes.map(({ id }) => id),
          settings.palette,
        ),
      });
    case 'screenReader':
      return changeSettings(state, world, { screenReader: !settings.screenReader });
    case 'colour':
      return changeSettings(state, world, { colour: following(COLOUR_SETTINGS, settings.colour) });
    default:
      return show(state, { name: 'home' });
  }
}
