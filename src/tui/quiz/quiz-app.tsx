/** One quiz screen program: reducer, keys, clock, resizing, saving, the way out. Sitting and room differ in what they hand in. */
import chalk from 'chalk';
import { Box, render, useApp, useInput } from 'ink';
import { type ReactNode, useEffect, useReducer } from 'react';
import { type Glyphs, glyphsFor, SPOKEN } from '../glyphs.js';
import { useTerminalSize } from '../hooks/use-terminal-size.js';
import { keyNames } from '../key-names.js';
import { isTooSmall } from '../layout.js';
import { TooSmall } from '../screens/panels.js';
import type { Screen, World } from '../state.js';
import { type FrameWords, SurroundingsProvider } from '../surroundings.js';
import { enterSession, processHost } from '../terminal-session.js';
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

/** Saves, and says what could not be saved. */
function saving<S extends QuizState>(program: QuizProgram<S>, state: S): string | undefined {
  try {
    program.save?.(state);
    return undefined;
  } catch (error) {
    return (error as Error).message;
  }
}

interface QuizAppProps<S extends QuizState> {
  readonly program: QuizProgram<S>;
  readonly onEnd: (state: S) => void;
}

function QuizApp<S extends QuizState>({ program, onEnd }: QuizAppProps<S>): React.JSX.Element {
  const { deps } = program;
  const [state, dispatch] = useReducer(
    (before: S, action: QuizAction) => program.reduce(before, action),
    program.initial,
  );
  const size = useTerminalSize();
  const { exit } = useApp();
  const spoken = state.settings.screenReader;

  // Ink reads chalk's level while it writes the frame, which is before any effect of this render would run.
  chalk.level = spoken ? 0 : state.colourLevel;

  useInput((input, key) => {
    for (const name of keyNames(input, key)) dispatch({ type: 'key', key: name, at: deps.now() });
  });

  useEffect(() => dispatch({ type: 'resize', size }), [size]);

  const ticking = program.ticks?.(state) === true;
  useEffect(() => {
    if (!ticking) return;
    const timer = setInterval(() => dispatch({ type: 'tick', at: deps.now() }), 1000);
    return () => clearInterval(timer);
  }, [ticking, deps]);

  useEffect(() => {
    const fault = saving(program, state);
    if (fault !== state.fault)
      dispatch({ type: 'fault', ...(fault === undefined ? {} : { message: fault }) });
    if (state.ending === undefined) return;
    const { fault: _before, ...rest } = state;
    onEnd({ ...rest, ...(fault === undefined ? {} : { fault }) } as S);
    exit();
  }, [state, program, exit, onEnd]);

  const glyphs = spoken ? SPOKEN : glyphsFor(deps.env);
  const { screen, frame, body } = program.view(state, glyphs);
  return (
    <SurroundingsProvider
      value={{
        state: practiceState(state, screen),
        world: program.world,
        glyphs,
        version: deps.version,
        frame,
      }}
    >
      <Box flexDirection="column">{isTooSmall(state.size) ? <TooSmall /> : body}</Box>
    </SurroundingsProvider>
  );
}

/** Runs a quiz program until it is left. @returns its last state */
export async function runQuizProgram<S extends QuizState>(program: QuizProgram<S>): Promise<S> {
  const spoken = program.initial.settings.screenReader;
  const session = enterSession(processHost(), !spoken);
  let last: S = { ...program.initial, ending: FAILED };
  try {
    const app = render(
      <QuizApp
        program={program}
        onEnd={(state) => {
          last = state;
        }}
      />,
      { exitOnCtrlC: false, isScreenReaderEnabled: spoken },
    );
    // In the same tick: asked after the app has gone, it never settles.
    await app.waitUntilExit();
  } finally {
    session.leave();
    // The last frame stays on the screen and ends without a line break.
    if (spoken) process.stdout.write('\n');
  }
  return last;
}
