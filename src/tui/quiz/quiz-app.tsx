/** One quiz screen program: reducer, keys, clock, resizing, saving, the way out. Sitting and room differ in what they hand in. */
import chalk from 'chalk';
import { Box, useApp, useInput } from 'ink';
import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import { type Glyphs, glyphsFor, SPOKEN } from '../kit/glyphs.js';
import { keyNames } from '../kit/key-names.js';
import { isTooSmall } from '../kit/layout.js';
import { onScreen } from '../kit/on-screen.js';
import { TooSmall } from '../kit/panels.js';
import type { Screen, World } from '../kit/state.js';
import { type FrameWords, SurroundingsProvider } from '../kit/surroundings.js';
import { useTerminalSize } from '../kit/use-terminal-size.js';
import { practiceState, type QuizAction, type QuizDeps, type QuizState } from './stage.js';

/** Exit code when the screens end without one: a crash inside Ink. */
const FAILED = 1;

/** What a quiz program is made of. */
export interface QuizProgram<S extends QuizState> {
  readonly deps: QuizDeps;
  readonly world: World;
  readonly initial: S;
  reduce(state: S, action: QuizAction): S;
  /** The screen in front and the words around it. */
  view(
    state: S,
    glyphs: Glyphs,
  ): { readonly screen: Screen; readonly frame: FrameWords; readonly body: ReactNode };
  /** Called after each change; may throw: the message is shown until a later call does not. */
  save?(state: S): void;
  /** Whether the clock has to be watched. */
  ticks?(state: S): boolean;
}

/** Saves a state; the one that comes back says what could not be saved. */
function saved<S extends QuizState>(program: QuizProgram<S>, state: S): S {
  const { fault: _before, ...rest } = state;
  try {
    program.save?.(state);
    return rest as S;
  } catch (error) {
    return { ...rest, fault: (error as Error).message } as S;
  }
}

/** One state as it is drawn. */
export function QuizScene<S extends QuizState>({
  program,
  state,
}: {
  readonly program: QuizProgram<S>;
  readonly state: S;
}): React.JSX.Element {
  const { deps, world } = program;
  const glyphs = state.settings.screenReader ? SPOKEN : glyphsFor(deps.env);
  const { screen, frame, body } = program.view(state, glyphs);
  return (
    <SurroundingsProvider
      value={{ state: practiceState(state, screen), world, glyphs, version: deps.version, frame }}
    >
      <Box flexDirection="column">{isTooSmall(state.size) ? <TooSmall /> : body}</Box>
    </SurroundingsProvider>
  );
}

interface QuizAppProps<S extends QuizState> {
  readonly program: QuizProgram<S>;
  readonly onEnd: (state: S) => void;
}

function QuizApp<S extends QuizState>({ program, onEnd }: QuizAppProps<S>): React.JSX.Element {
  const { deps } = program;
  const [state, setState] = useState(program.initial);
  // Kept beside React's own state: an answer has to be on the disk before the screen shows it.
  const current = useRef(program.initial);
  const size = useTerminalSize();
  const { exit } = useApp();

  // Ink reads chalk's level while it writes the frame, which is before any effect of this render would run.
  chalk.level = state.settings.screenReader ? 0 : state.colourLevel;

  const dispatch = useCallback(
    (action: QuizAction): void => {
      const next = program.reduce(current.current, action);
      if (next === current.current) return;
      current.current = saved(program, next);
      setState(current.current);
    },
    [program],
  );

  useInput((input, key) => {
    for (const name of keyNames(input, key)) dispatch({ type: 'key', key: name, at: deps.now() });
  });

  useEffect(() => dispatch({ type: 'resize', size }), [size, dispatch]);

  const ticking = program.ticks?.(state) === true;
  useEffect(() => {
    if (!ticking) return;
    const timer = setInterval(() => dispatch({ type: 'tick', at: deps.now() }), 1000);
    return () => clearInterval(timer);
  }, [ticking, deps, dispatch]);

  useEffect(() => {
    if (state.ending === undefined) return;
    onEnd(state);
    exit();
  }, [state, exit, onEnd]);

  return <QuizScene program={program} state={state} />;
}

/** Runs a quiz program until it is left. @returns its last state */
export async function runQuizProgram<S extends QuizState>(program: QuizProgram<S>): Promise<S> {
  const spoken = program.initial.settings.screenReader;
  let last: S = { ...program.initial, ending: FAILED };
  await onScreen(
    <QuizApp
      program={program}
      onEnd={(state) => {
        last = state;
      }}
    />,
    spoken,
  );
  // The last frame stays on the screen and ends without a line break.
  if (spoken) process.stdout.write('\n');
  return last;
}
