/** A setting changed from a screen. Pure. */
import type { SettingsPatch } from '../practice/deps.js';
import { ask } from '../practice/moves.js';
import type { PracticeWorld, State } from '../practice/state.js';

/** Changes a setting at once and asks for it to be kept. */
export function changeSettings(state: State, world: PracticeWorld, patch: SettingsPatch): State {
  const { welcomed: _told, ...changes } = patch;
  const settings = { ...state.settings, ...changes };
  const next = { ...state, settings, colourLevel: world.colourLevelFor(settings.colour) };
  return ask(next, { type: 'save-settings', patch });
}
