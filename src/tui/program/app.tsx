/** The program on the screen: one reducer, one place for keys, one for what the reducer asks for. */
import chalk from 'chalk';
import { Box, useApp, useInput } from 'ink';
import { useCallback, useEffect, useMemo, useReducer, useRef } from 'react';
import type { TuiDeps } from '../kit/deps.js';
import { type Glyphs, SPOKEN } from '../kit/glyphs.js';
import { keyNames } from '../kit/key-names.js';
import { isTooSmall } from '../kit/layout.js';
import { TooSmall } from '../kit/panels.js';
import type { State, World } from '../kit/state.js';
import { SurroundingsProvider } from '../kit/surroundings.js';
import { useTerminalSize } from '../kit/use-terminal-size.js';
import { runEffect } from './effects.js';
import { ScreenView } from './screen-view.js';
import { createReducer } from './update.js';

/** How a run of the app ended. */
export interface Ending {
  readonly state: State;
  /** Exit code, or undefined when the app has to be drawn anew in the other form. */
  readonly code?: number;
}

interface AppProps {
  readonly deps: TuiDeps;
  readonly world: World;
  readonly initial: State;
  readonly glyphs: Glyphs;
  readonly onEnd: (ending: Ending) => void;
}

export function App({ deps, world, initial, glyphs, onEnd }: AppProps): React.JSX.Element {
  const reducer = useMemo(() => createReducer(world), [world]);
  const [state, dispatch] = useReducer(reducer, initial);
  const size = useTerminalSize();
  const { exit } = useApp();
  const done = useRef(0);
  const wasSpoken = useRef(initial.settings.screenReader);

  // Ink reads chalk's level while it writes the frame, which is before any effect of this render would run.
  chalk.level = state.settings.screenReader ? 0 : state.colourLevel;

  useInput((input, key) => {
    for (const name of keyNames(input, key)) dispatch({ type: 'key', key: name, at: deps.now() });
  });

  useEffect(() => dispatch({ type: 'resize', size }), [size]);

  useEffect(() => {
    for (const effect of state.effects) {
      if (effect.id <= done.current) continue;
      done.current = effect.id;
      if (effect.type === 'exit') {
        onEnd({ state, code: effect.code });
        exit();
        return;
      }
      void runEffect(effect, state, deps, world, dispatch);
    }
    if (state.settings.screenReader !== wasSpoken.current) {
      wasSpoken.current = state.settings.screenReader;
      onEnd({ state });
      exit();
    }
  }, [state, deps, world, exit, onEnd]);

  // The menu hears Enter before the keys here do. Taken at once, its choice would let the same Enter act on the
  // screen it opens: a drill would be answered unseen.
  const onSelect = useCallback(
    (value: string) => queueMicrotask(() => dispatch({ type: 'menu', value, at: deps.now() })),
    [deps],
  );
  const surroundings = useMemo(
    () => ({
      state,
      world,
      glyphs: state.settings.screenReader ? SPOKEN : glyphs,
      version: deps.version,
      ...(deps.learner === undefined ? {} : { learner: deps.learner }),
    }),
    [state, world, glyphs, deps],
  );

  return (
    <SurroundingsProvider value={surroundings}>
      <Box flexDirection="column">
        {isTooSmall(state.size) ? <TooSmall /> : <ScreenView onSelect={onSelect} />}
      </Box>
    </SurroundingsProvider>
  );
}
