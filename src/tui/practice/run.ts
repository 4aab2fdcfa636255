/** Runs practice, and the bench that it opens, until the learner leaves. Loads Ink: check the terminal first (terminal-check.ts). */
import { benchProgram } from '../bench/program.js';
import { type BenchState, freshBench } from '../bench/state.js';
import { type AnyProgram, runPrograms, terminalSize } from '../kit/shell.js';
import type { Stage } from '../kit/stage.js';
import type { TuiDeps } from './deps.js';
import { practiceProgram } from './program.js';
import { startedState, worldOf } from './start.js';
import type { PracticeWorld, State } from './state.js';

/** What is printed on the normal screen after leaving. */
function farewell({ answered, unsaved }: State): string {
  if (answered === 0) return '';
  const answers = answered === 1 ? '1 answer' : `${answered} answers`;
  if (unsaved === 0) return `${answers} kept in your record.\n`;
  return `${answers} given, ${unsaved} of them not saved.\n`;
}

/** Practice and bench, each going on where it was left. */
export function switching(deps: TuiDeps, world: PracticeWorld, started: State) {
  let practice = started;
  let bench: BenchState | undefined;
  const open = ({ ending, size, cautioned }: Stage): AnyProgram => {
    const { ending: _left, notice: _read, ...rest } = practice;
    if (ending !== 'bench') return practiceProgram(deps, world, { ...rest, size, cautioned });
    const { settings, colourLevel, savingNote } = practice;
    const stage = { size, cautioned, settings, colourLevel, ...(savingNote && { savingNote }) };
    return benchProgram(deps, world, {
      ...(bench ?? freshBench(world, settings.palette, practice.lastPaints)),
      ...stage,
    });
  };
  return {
    first: practiceProgram(deps, world, started),
    /** The program to go on with after another. */
    after: (last: Stage): AnyProgram => {
      if ('slots' in last) {
        const { ending: _left, notice: _read, ...left } = last as BenchState;
        bench = left;
      } else practice = last as State;
      return open(last);
    },
    practice: (): State => practice,
  };
}

/**
 * The whole interactive program.
 * @returns the exit code: 0 after leaving, 130 after Ctrl+C
 */
export async function runTui(deps: TuiDeps): Promise<number> {
  const world = worldOf(deps);
  const started = startedState(deps, world, terminalSize());
  const { first, after, practice } = switching(deps, world, started);
  let program: AnyProgram = first;
  for (;;) {
    const last = await runPrograms(program, after);
    program = after(last);
    if (typeof last.ending !== 'number') continue;
    process.stdout.write(farewell(practice()));
    return last.ending;
  }
}
