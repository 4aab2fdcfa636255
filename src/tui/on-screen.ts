/** Draws an app until it exits, and leaves the terminal as it was whatever happens. */
import { render } from 'ink';
import type { ReactElement } from 'react';
import { keepScrollback } from './scrollback-guard.js';
import { guardTerminal, savedLine, type TerminalGuard } from './terminal-guard.js';
import { enterSession, processHost } from './terminal-session.js';

/**
 * @param spoken for a screen reader: no alternate screen, and the last frame stays
 */
export async function onScreen(element: ReactElement, spoken: boolean): Promise<void> {
  const host = processHost();
  // Before raw mode is switched on: this is what a killed program's terminal goes back to.
  const line = savedLine();
  const session = enterSession(host, !spoken);
  let guard: TerminalGuard | undefined;
  const release = (): void => guard?.release();
  host.onExit(release);
  try {
    const app = render(element, {
      exitOnCtrlC: false,
      isScreenReaderEnabled: spoken,
      stdout: keepScrollback(process.stdout),
    });
    // In the same tick: asked after the app has gone, it never settles.
    const exited = app.waitUntilExit();
    guard = guardTerminal(line, !spoken);
    await exited;
  } finally {
    session.leave();
    release();
    host.offExit(release);
  }
}
