/**
 * The alternate screen, entered and left by hand (Ink 6 has no option for it), and the ways out of the program that
 * must leave the terminal as it was: a normal end, a signal, a crash, and being stopped for a while (Ctrl+Z, `fg`).
 */
import { constants } from 'node:os';
import { MARKING } from './paste-reader.js';

/** Exit code after each signal, 128 plus its number. */
const SIGNAL_EXIT_CODES = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 } as const;
type Ending = keyof typeof SIGNAL_EXIT_CODES;
type Signal = Ending | 'SIGTSTP' | 'SIGCONT';

/** What the session needs of the process; tests hand in a fake. */
export interface SessionHost {
  write(text: string): void;
  onSignal(signal: Signal, listener: () => void): void;
  offSignal(signal: Signal, listener: () => void): void;
  onExit(listener: () => void): void;
  offExit(listener: () => void): void;
  exit(code: number): void;
  /** Ends the process by a signal's own effect. */
  dieOf(signal: Signal): void;
  /** Has keys come one by one, or as lines again, as a shell expects them. */
  setRaw(isRaw: boolean): void;
  /** Whether a process can be stopped here and told to go on. */
  readonly stops: boolean;
  /** Stops the process, or the whole job, by the signal's own effect: no listener may be left. */
  stop(whole: 'process' | 'job'): void;
  /** The size of the terminal is looked up: nobody tells a stopped program of a change. */
  refreshSize(): void;
  /** After the signals that have come already. @returns takes it back */
  soon(listener: () => void): () => void;
  /** After a moment. @returns takes it back */
  later(listener: () => void): () => void;
}

/** What draws on the terminal, and has to be still while the program is stopped. */
export interface Drawing {
  /** Nothing is written from now on. */
  hold(): void;
  /** The last frame is written whole, and those after it as they come. */
  show(): void;
}

const CLEAR = '\u001b[2J\u001b[H';
const ENTER = '\u001b[?1049h';
const HIDE_CURSOR = '\u001b[?25l';
/** Bracketed paste and synchronised output closed. */
const CLOSE = `${MARKING.off}\u001b[?2026l`;
/** Main screen, cursor shown, attributes reset. */
const LEAVE = `${CLOSE}\u001b[?1049l\u001b[?25h\u001b[0m`;
/** A frame read aloud ends without a line break. */
const LEAVE_SPOKEN = `${CLOSE}\r\n\u001b[?25h`;

export interface TerminalSession {
  /** Stops the job as a terminal does for Ctrl+Z: all that was started with the program too, as by npm. Nothing where that cannot be. */
  stop(): void;
  /** Puts the terminal back and stops listening; harmless when called again. */
  leave(): void;
}

/**
 * Takes the screen.
 * @param alternate false for a screen reader: the text stays in the normal screen and its history
 */
export function enterSession(host: SessionHost, alternate: boolean, drawing: Drawing): TerminalSession {
  let state: 'on' | 'stopped' | 'left' = 'on';
  let forget = (): void => {};
  const restore = (): void => {
    if (state === 'on') {
      host.write(alternate ? LEAVE : LEAVE_SPOKEN);
      host.setRaw(false);
    }
    state = 'left';
    forget();
  };

  // The terminal is put back before anything stops: a shell takes it as soon as one process of the job has.
  const stop = (whole: 'process' | 'job'): void => {
    if (state !== 'on' || !host.stops) return;
    state = 'stopped';
    drawing.hold();
    host.write(alternate ? LEAVE : LEAVE_SPOKEN);
    host.setRaw(false);
    host.offSignal('SIGTSTP', onStopped);
    host.stop(whole);
    // The kernel stops no process that nobody could tell to go on: then there is no SIGCONT either.
    forget = host.later(goOn);
  };
  const onStopped = (): void => stop('process');
  const goOn = (): void => {
    forget();
    if (state === 'left') return;
    // Before anything is written: in the background this stops the program again until it is in front.
    if (state === 'on') host.setRaw(false);
    host.setRaw(true);
    host.write(`${alternate ? `${state === 'on' ? '' : ENTER}${CLEAR}${HIDE_CURSOR}` : ''}${MARKING.on}`);
    if (state === 'stopped') host.onSignal('SIGTSTP', onStopped);
    state = 'on';
    host.refreshSize();
    drawing.show();
  };
  // A signal to end that came while it was stopped goes first.
  const onContinued = (): void => {
    forget();
    forget = host.soon(goOn);
  };

  const endings = (Object.keys(SIGNAL_EXIT_CODES) as Ending[]).map((signal) => {
    const listener = (): void => {
      // Node sets the line once more when it exits. In the background that would stop it for good; the line is right by now.
      if (state === 'stopped') host.dieOf(signal);
      // process.exit runs Ink's own clean-up and then `restore` through the exit listener.
      else host.exit(SIGNAL_EXIT_CODES[signal]);
    };
    return [signal, listener] as const;
  });
  const listeners = [...endings, ['SIGTSTP', onStopped] as const, ['SIGCONT', onContinued] as const];
  for (const [signal, listener] of listeners) host.onSignal(signal, listener);
  host.onExit(restore);
  // Ink does so only after its first frame: what is typed or pasted by then would be taken as lines, and a Ctrl+C in it as a signal.
  host.setRaw(true);
  host.write(`${alternate ? `${ENTER}${CLEAR}` : ''}${MARKING.on}`);
  return {
    stop: () => stop('job'),
    leave() {
      restore();
      host.offExit(restore);
      for (const [signal, listener] of listeners) host.offSignal(signal, listener);
    },
  };
}

/** Long enough for a stopped process not to get here before it is continued. */
const STOPPED_MS = 200;

/** The running process as a host. */
export function processHost(): SessionHost {
  return {
    write: (text) => void process.stdout.write(text),
    onSignal: (signal, listener) => void process.on(signal, listener),
    offSignal: (signal, listener) => void process.off(signal, listener),
    onExit: (listener) => void process.on('exit', listener),
    offExit: (listener) => void process.off('exit', listener),
    exit: (code) => process.exit(code),
    dieOf(signal) {
      process.removeAllListeners(signal);
      process.kill(process.pid, signal);
    },
    setRaw: (isRaw) => void process.stdin.setRawMode(isRaw),
    stops: 'SIGTSTP' in constants.signals,
    stop: (whole) => void process.kill(whole === 'job' ? 0 : process.pid, 'SIGTSTP'),
    refreshSize: () => void process.emit('SIGWINCH', 'SIGWINCH'),
    soon(listener) {
      const turn = setImmediate(listener);
      return () => clearImmediate(turn);
    },
    later(listener) {
      // In two steps: a stopped process comes back to a timer that is over, and to its signals only after it.
      let timer = setTimeout(() => {
        timer = setTimeout(listener, STOPPED_MS);
      }, STOPPED_MS);
      return () => clearTimeout(timer);
    },
  };
}
