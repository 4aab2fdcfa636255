/** What every component may look at: the stage, what is fixed for the run, and the signs to draw with. */
import { createContext, useContext } from 'react';
import type { Glyphs } from './glyphs.js';
import type { Stage, World } from './stage.js';

export interface Surroundings {
  readonly state: Stage;
  readonly world: World;
  readonly glyphs: Glyphs;
}

const Context = createContext<Surroundings | undefined>(undefined);

export const SurroundingsProvider = Context.Provider;

/** @throws Error outside the app */
export function useSurroundings(): Surroundings {
  const value = useContext(Context);
  if (value === undefined) throw new Error('a screen was drawn outside the app');
  return value;
}
