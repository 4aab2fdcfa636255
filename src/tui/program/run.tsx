/** Runs the screens until the learner leaves. Loads Ink: check the terminal first (terminal-check.ts). */

import type { TuiDeps } from '../kit/deps.js';
import { glyphsFor } from '../kit/glyphs.js';
import { onScreen } from '../kit/on-screen.js';
import { App, type Ending } from './app.js';
import { startedState, worldOf } from './initial.js';

/** Exit code when the screens end without one: a crash inside Ink. */
const FAILED = 1;

/** What is printed on the normal screen after leaving. */
function farewell({ state }: Ending): string {
  if (state.answered === 0) return '';
  const answers = state.answered === 1 ? '1 answer' : `${state.answered} answers`;
  if (state.unsaved === 0) return `${answers} kept in your record.\n`;
  return `${answers} given, ${state.unsaved} of them not saved.\n`;
}

/**
 * The whole interactive program.
 * @returns the exit code: 0 after leaving, 130 after Ctrl+C
 */
export async function runTui(deps: TuiDeps): Promise<number> {
  const world = worldOf(deps);
  const size = { columns: process.stdout.columns || 80, rows: process.stdout.rows || 24 };
  let state = startedState(deps, world, size);
  for (;;) {
    const ending = await runOnce(deps, world, state);
    if (ending.code !== undefined) {
      process.stdout.write(farewell(ending));
      return ending.code;
    }
    state = { ...ending.state, effects: [] };
  }
}

async function runOnce(
  deps: TuiDeps,
  world: ReturnType<typeof worldOf>,
  initial: Ending['state'],
): Promise<Ending> {
  const spoken = initial.settings.screenReader;
  let ending: Ending = { state: initial, code: FAILED };
  const app = (
    <App
      deps={deps}
      world={world}
      initial={initial}
      glyphs={glyphsFor(deps.env)}
      onEnd={(end) => {
        ending = end;
      }}
    />
  );
  await onScreen(app, spoken);
  return ending;
}
