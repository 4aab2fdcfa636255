/** Keys of what goes with a screen: the text of its drill, and its picture. */
import type { Command } from './keys.js';
import { withOverlay, withoutOverlay } from './moves.js';
import type { DrillScreen, ResultScreen, State } from './state.js';

/**
 * The state after a key for the text or the picture; undefined for any other key.
 * @param isSeen whether the picture is on the screen already: where it is not, its keys open it
 */
export function updateSheet(
  state: State,
  screen: DrillScreen | ResultScreen,
  command: Command,
  isSeen: () => boolean,
): State | undefined {
  if (command === 'scene') return withOverlay(state, { name: 'scene', top: 0 });
  if (command !== 'sheet' && command !== 'grey' && command !== 'best') return undefined;
  const { inGrey = false } = screen;
  const seen = isSeen();
  const to = (next: DrillScreen | ResultScreen): State => {
    const now = { ...state, screen: next };
    return seen && command !== 'sheet' ? now : withOverlay(now, { name: 'sheet' });
  };
  switch (command) {
    case 'sheet':
      return to({ ...screen, inGrey: seen && inGrey });
    case 'grey':
      return to({ ...screen, inGrey: !seen || !inGrey });
    case 'best':
      return screen.name === 'result' ? to({ ...screen, ofBest: screen.ofBest !== true }) : undefined;
  }
}

/** A key while the picture fills the screen: it changes how the picture looks, or goes back. */
export function onSheetKey(state: State, command: Command | undefined): State {
  const { screen } = state;
  const isShown = screen.name === 'drill' || screen.name === 'result';
  const changed =
    isShown && command !== undefined && command !== 'sheet'
      ? updateSheet(state, screen, command, () => true)
      : undefined;
  return changed ?? withoutOverlay(state);
}
