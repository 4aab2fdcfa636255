/** What every component may look at: the state, what is fixed for the run, and the signs to draw with. */
import { createContext, useContext } from 'react';
import type { Glyphs } from './glyphs.js';
import type { Binding } from './keys.js';
import type { State, World } from './state.js';

/** Words around a screen that is shown outside practice, in a quiz: they take the place of its own. */
export interface FrameWords {
  readonly title?: string;
  readonly side?: string;
  readonly help: readonly Pick<Binding, 'show' | 'does' | 'quiet' | 'stays'>[];
}

export interface Surroundings {
  readonly state: State;
  readonly world: World;
  readonly glyphs: Glyphs;
  readonly version: string;
  readonly learner?: string;
  readonly frame?: FrameWords;
}

const Context = createContext<Surroundings | undefined>(undefined);

export const SurroundingsProvider = Context.Provider;

/** @throws Error outside the app */
export function useSurroundings(): Surroundings {
  const value = useContext(Context);
  if (value === undefined) throw new Error('a screen was drawn outside the app');
  return value;
}
