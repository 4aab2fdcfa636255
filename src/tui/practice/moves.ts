/** Small steps that the reducers of practice share. */
import type { Effect, Overlay, PracticeWorld, Screen, State } from './state.js';

/** The state with a screen in front and no panel over it. */
export function show(state: State, screen: Screen): State {
  const { overlay: _closed, notice: _read, ...rest } = state;
  return { ...rest, screen };
}

export function withOverlay(state: State, overlay: Overlay): State {
  return { ...state, overlay };
}

export function withoutOverlay(state: State): State {
  const { overlay: _closed, ...rest } = state;
  return rest;
}

export function withNotice(state: State, notice: string): State {
  return { ...state, notice };
}

/** Asks the outside to do something. */
export function ask(state: State, effect: Effect): State {
  return { ...state, effects: [...(state.effects ?? []), effect] };
}

/** Asks for a set, and waits for it. */
export const startSet = (state: State, choice: Extract<Effect, { type: 'start-set' }>['choice']): State =>
  ask(show(state, { name: 'waiting' }), { type: 'start-set', choice });

/** The end of the welcome: the placing round, where it is still open. */
export function offerPlacing(state: State, world: PracticeWorld): State {
  if (!world.placingIsOpen()) return show(state, { name: 'home' });
  return show(state, { name: 'welcome', step: 'placing', selected: 0 });
}
