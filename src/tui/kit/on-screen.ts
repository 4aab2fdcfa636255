/** Draws an app until it exits, and leaves the terminal as it was whatever happens. */
import { render } from 'ink';
import type { ReactElement } from 'react';
import { readFrom } from './read-from.js';
import { guardTerminal, savedLine } from './terminal-guard.js';
import { enterSession, processHost } from './terminal-session.js';
import { writtenTo } from './written.js';

/**
 * @param draw the app, given what stops the program for a while
 * @param spoken for a screen reader: no alternate screen, and the last frame stays
 */
export async function onScreen(draw: (stop: () => void) => ReactElement, spoken: boolean): Promise<void> {
  const host = processHost();
  const written = writtenTo(process.stdout);
  // Both before anything is changed: the guard knows what to go back to, and stands by from the first change on.
  const guard = guardTerminal(savedLine(), !spoken);
  const session = enterSession(host, !spoken, {
    hold() {
      written.hold();
      guard.rest();
    },
    show() {
      guard.watch();
      written.show();
    },
  });
  const release = (): void => guard.release();
  host.onExit(release);
  try {
    const app = render(draw(session.stop), {
      exitOnCtrlC: false,
      isScreenReaderEnabled: spoken,
      stdin: readFrom(process.stdin),
      stdout: written.out,
    });
    // In the same tick: asked after the app has gone, it never settles.
    await app.waitUntilExit();
  } finally {
    session.leave();
    release();
    host.offExit(release);
  }
}
