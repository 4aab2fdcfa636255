/** Keys for the picture that goes with a screen. */
import type { Binding } from './keys.js';
import type { State } from './state.js';

const SHEET: Binding = { keys: { v: 'sheet' }, show: 'v', does: 'sheet', stays: true };

/** What lies in the picture and how it is shown; without colours its signs go by value already, and greys are nothing to the ear. */
export function sheetLookBindings({ screen, colourLevel, settings }: State): Binding[] {
  if (screen.name !== 'drill' && screen.name !== 'result') return [];
  const grey: Binding = {
    keys: { g: 'grey' },
    show: 'g',
    does: screen.inGrey === true ? 'colours' : 'greys',
  };
  const best: Binding = {
    keys: { b: 'best' },
    show: 'b',
    does: screen.name === 'result' && screen.ofBest === true ? 'yours' : 'best',
  };
  return [
    ...(colourLevel > 0 && !settings.screenReader ? [grey] : []),
    ...(screen.name === 'result' ? [best] : []),
  ];
}

/** On the screen that a picture goes with; none where there is no picture. */
export function sheetBindings(state: State): Binding[] {
  const { screen } = state;
  const has = screen.name === 'drill' ? screen.sheet : screen.name === 'result' && screen.attempt.sheet;
  return has === true ? [SHEET, ...sheetLookBindings(state)] : [];
}
