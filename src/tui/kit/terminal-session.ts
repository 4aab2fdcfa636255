/**
 * The alternate screen, entered and left by hand (Ink 6 has no option for it), and the ways out of the program that
 * must leave the terminal as it was: a normal end, a signal, a crash.
 */

/** Exit code after each signal, 128 plus its number. */
const SIGNAL_EXIT_CODES = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 } as const;
type Signal = keyof typeof SIGNAL_EXIT_CODES;

/** What the session needs of the process; tests hand in a fake. */
export interface SessionHost {
  write(text: string): void;
  onSignal(signal: Signal, listener: () => void): void;
  offSignal(signal: Signal, listener: () => void): void;
  onExit(listener: () => void): void;
  offExit(listener: () => void): void;
  exit(code: number): void;
}

const ENTER = '\u001b[?1049h\u001b[2J\u001b[H';
/** Main screen, cursor shown, attributes reset, synchronised output closed. */
const LEAVE = '\u001b[?2026l\u001b[?1049l\u001b[?25h\u001b[0m';

export interface TerminalSession {
  /** Puts the terminal back and stops listening; harmless when called again. */
  leave(): void;
}

/**
 * Takes the screen.
 * @param alternate false for a screen reader: the text stays in the normal screen and its history
 */
export function enterSession(host: SessionHost, alternate: boolean): TerminalSession {
  let inside = true;
  const restore = (): void => {
    if (!inside) return;
    inside = false;
    // A frame read aloud ends without a line break.
    host.write(alternate ? LEAVE : '\r\n\u001b[?25h');
  };
  const listeners = (Object.keys(SIGNAL_EXIT_CODES) as Signal[]).map((signal) => {
    // process.exit runs Ink's own clean-up and then `restore` through the exit listener.
    const listener = (): void => host.exit(SIGNAL_EXIT_CODES[signal]);
    host.onSignal(signal, listener);
    return { signal, listener };
  });
  host.onExit(restore);
  if (alternate) host.write(ENTER);
  return {
    leave() {
      restore();
      host.offExit(restore);
      for (const { signal, listener } of listeners) host.offSignal(signal, listener);
    },
  };
}

/** The running process as a host. */
export function processHost(): SessionHost {
  return {
    write: (text) => void process.stdout.write(text),
    onSignal: (signal, listener) => void process.on(signal, listener),
    offSignal: (signal, listener) => void process.off(signal, listener),
    onExit: (listener) => void process.on('exit', listener),
    offExit: (listener) => void process.off('exit', listener),
    exit: (code) => process.exit(code),
  };
}
