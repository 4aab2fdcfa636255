/** Runs programs on the terminal, one after another: keys, clock and size in, frames out, the way back whatever happens. */
import chalk from 'chalk';
import { Box, type Key, useApp, useInput } from 'ink';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Frame } from './frame.js';
import { SPOKEN } from './glyphs.js';
import { keyNames } from './key-names.js';
import { isTooSmall } from './layout.js';
import { onScreen } from './on-screen.js';
import { TooSmall } from './panels.js';
import { NOT_PASTED, OTHER_SIGNS, pastedKeys } from './pasted.js';
import type { Happening, Program } from './program.js';
import type { Size, Stage } from './stage.js';
import { SurroundingsProvider } from './surroundings.js';
import { usePaste } from './use-paste.js';
import { useTerminalSize } from './use-terminal-size.js';

/** A program of any kind, for those who only run it. */
// biome-ignore lint/suspicious/noExplicitAny: a program is used with its own state alone, whatever that is
export type AnyProgram = Program<any, any, any>;

/** One state of a program as it is drawn. */
export function Scene<S extends Stage<E>, A, E>({
  program,
  state,
}: {
  readonly program: Program<S, A, E>;
  readonly state: S;
}): React.JSX.Element {
  const glyphs = state.settings.screenReader ? SPOKEN : program.glyphs;
  const { world } = program;
  const surroundings = useMemo(() => ({ state, world, glyphs }), [state, world, glyphs]);
  return (
    <SurroundingsProvider value={surroundings}>
      <Box flexDirection="column">
        {isTooSmall(state.size) ? (
          <TooSmall />
        ) : (
          <Frame view={program.view(state, glyphs)} keys={program.keys(state)} />
        )}
      </Box>
    </SurroundingsProvider>
  );
}

/** Takes a key as Ink gives it. */
type Hears = (input: string, key: Key) => void;

interface ShellProps<S extends Stage<E>, A, E> {
  readonly program: Program<S, A, E>;
  /** Called once, with the last state: it has an ending, or has to be drawn anew for the other form. */
  readonly onEnd: (last: S) => void;
  /** Called on Ctrl+Z. */
  readonly onStop: () => void;
  /** Has keys come here. @returns ends it */
  readonly listen: (hears: Hears) => () => void;
}

/** A program under way. */
function Shell<S extends Stage<E>, A, E>({
  program,
  onEnd,
  onStop,
  listen,
}: ShellProps<S, A, E>): React.JSX.Element {
  const [state, setState] = useState(program.initial);
  // Kept beside React's own state: an answer has to be on the disk before the screen shows it.
  const current = useRef(program.initial);
  const size = useTerminalSize();
  const { exit } = useApp();

  // Ink reads chalk's level while it writes the frame, which is before any effect of this render would run.
  chalk.level = state.settings.screenReader ? 0 : state.colourLevel;

  /** Takes a state over, and has done what it asks for. A fault nobody expects ends the program, with the terminal as it was. */
  const take = useCallback(
    (next: S, dispatch: (action: A | Happening) => void): void => {
      const { effects = [], ...rest } = next;
      const asked = rest as unknown as S;
      current.current = program.keep?.(asked) ?? asked;
      setState(current.current);
      for (const effect of effects) program.perform?.(effect, current.current, dispatch).catch(exit);
    },
    [program, exit],
  );

  const dispatch = useCallback(
    (action: A | Happening): void => {
      try {
        const next = program.update(current.current, action);
        if (next !== current.current) take(next, dispatch);
      } catch (fault) {
        exit(fault as Error);
      }
    },
    [program, take, exit],
  );

  useEffect(() => {
    if (current.current.effects !== undefined) take(current.current, dispatch);
  }, [take, dispatch]);

  useEffect(
    () =>
      listen((input, key) => {
        for (const name of keyNames(input, key)) {
          if (name === 'ctrl-z') onStop();
          else dispatch({ type: 'key', key: name, at: program.now() });
        }
      }),
    [listen, onStop, dispatch, program],
  );

  usePaste(
    useCallback(
      (text: string): void => {
        const keys = pastedKeys(program.keys(current.current), text);
        for (const key of keys ?? []) dispatch({ type: 'key', key, at: program.now() });
        const notice = keys === undefined ? NOT_PASTED : keys.length === 0 ? OTHER_SIGNS : undefined;
        // A long text comes in many reads: it is told once.
        if (notice !== undefined && notice !== current.current.notice)
          take({ ...current.current, notice }, dispatch);
      },
      [program, take, dispatch],
    ),
  );

  useEffect(() => dispatch({ type: 'resize', size }), [size, dispatch]);

  const ticking = program.ticks?.(state) === true;
  useEffect(() => {
    if (!ticking) return;
    const timer = setInterval(() => dispatch({ type: 'tick', at: program.now() }), 1000);
    return () => clearInterval(timer);
  }, [ticking, program, dispatch]);

  const isOver =
    state.ending !== undefined || state.settings.screenReader !== program.initial.settings.screenReader;
  useEffect(() => {
    if (isOver) onEnd(current.current);
  }, [isOver, onEnd]);

  return <Scene program={program} state={state} />;
}

/** Programs one after another in one terminal, as long as there is a next one of the same form. */
export function Shells({
  first,
  after,
  onEnd,
  onStop = () => {},
}: {
  readonly first: AnyProgram;
  readonly after: (last: Stage) => AnyProgram | undefined;
  readonly onEnd: (last: Stage) => void;
  /** Called on Ctrl+Z. */
  readonly onStop?: () => void;
}): React.JSX.Element {
  const [program, setProgram] = useState(first);
  const { exit } = useApp();
  // A key that comes between two programs waits for the next one: its frame may be on the screen already.
  const hearing = useRef<Hears | undefined>(undefined);
  const waiting = useRef<Parameters<Hears>[]>([]);
  useInput((...pressed) => {
    if (hearing.current === undefined) waiting.current.push(pressed);
    else hearing.current(...pressed);
  });
  const listen = useCallback((hears: Hears) => {
    hearing.current = hears;
    for (const pressed of waiting.current.splice(0)) hears(...pressed);
    return () => {
      if (hearing.current === hears) hearing.current = undefined;
    };
  }, []);
  const end = useCallback(
    (last: Stage): void => {
      hearing.current = undefined;
      const next = typeof last.ending === 'string' ? after(last) : undefined;
      if (next !== undefined) {
        setProgram(next);
        return;
      }
      onEnd(last);
      exit();
    },
    [after, onEnd, exit],
  );
  return <Shell key={program.name} program={program} onEnd={end} onStop={onStop} listen={listen} />;
}

/** The size of the terminal before anything is drawn. */
export const terminalSize = (): Size => ({
  columns: process.stdout.columns || 80,
  rows: process.stdout.rows || 24,
});

/**
 * Runs a program, and those that it goes on with, until one is left for good.
 * @param after the program for an ending that names one
 * @returns the last state of the last program: its `ending` is the exit code, or is missing where only the form changed
 * @throws whatever a program did not expect; the terminal is as it was by then
 */
export async function runPrograms(
  first: AnyProgram,
  after: (last: Stage) => AnyProgram | undefined = () => undefined,
): Promise<Stage> {
  const spoken = first.initial.settings.screenReader;
  let last: Stage | undefined;
  const keep = (state: Stage): void => {
    last = state;
  };
  await onScreen((stop) => <Shells first={first} after={after} onEnd={keep} onStop={stop} />, spoken);
  // The last frame stays on the screen and ends without a line break.
  if (spoken) process.stdout.write('\n');
  if (last === undefined) throw new Error('the screens ended by themselves');
  return last;
}
