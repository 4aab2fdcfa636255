/** Small steps that the reducers share. */
import type { Effect, Overlay, Screen, State, World } from './state.js';

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

/** Asks the app to do something. */
export function ask(state: State, effect: Effect): State {
  return {
    ...state,
    effects: [...state.effects.slice(-8), { ...effect, id: state.nextEffectId }],
    nextEffectId: state.nextEffectId + 1,
  };
}

/** An index moved by one and kept inside a list. */
export function step(index: number, by: number, length: number): number {
  return Math.min(Math.max(0, length - 1), Math.max(0, index + by));
}

/** `step`, but past the end it starts again at the other one. */
export function turn(index: number, by: number, length: number): number {
  return length === 0 ? 0 : (index + by + length) % length;
}

/** Asks for the placing round. */
export function startPlacing(state: State): State {
  return ask(show(state, { name: 'waiting' }), { type: 'start-set', choice: { placing: true } });
}

/** The end of the welcome: the placing round, where it is still open. */
export function offerPlacing(state: State, world: World): State {
  if (!world.placingIsOpen()) return show(state, { name: 'home' });
  return show(state, { name: 'welcome', step: 'placing', selected: 0 });
}
