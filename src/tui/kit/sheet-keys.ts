/** Keys for what goes with a screen: what the drill says in full, and its picture. */
import type { Binding } from './keys.js';
import type { State } from './state.js';

const SCENE: Binding = { keys: { s: 'scene' }, show: 's', does: 'scene' };
const SHEET: Binding = { keys: { v: 'sheet' }, show: 'v', does: 'sheet' };

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
    ...(screen.name === 'result' && screen.attempt.sheet === true ? [best] : []),
  ];
}

/** On the screen of a drill or its result; those of the picture only where there is one. */
export function sheetBindings(state: State): Binding[] {
  const { screen } = state;
  const has = screen.name === 'drill' ? screen.sheet : screen.name === 'result' && screen.attempt.sheet;
  return has === undefined || has === false ? [SCENE] : [SCENE, SHEET, ...sheetLookBindings(state)];
}
