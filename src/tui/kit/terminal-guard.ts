/**
 * Puts the terminal back when the program is killed outright (SIGKILL, out of memory), where none of its own
 * handlers run: a shell waits on a pipe; when the pipe closes without a word, it restores what it was told to.
 */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';

/** A running guard. */
export interface TerminalGuard {
  /** While the program is stopped the terminal is the shell's, and the guard keeps off it. */
  rest(): void;
  /** The terminal is the program's again. */
  watch(): void;
  /** Tells the guard that all ended well and lets it go. */
  release(): void;
}

const NO_GUARD: TerminalGuard = { rest: () => {}, watch: () => {}, release: () => {} };

/**
 * Reads lines; after "rest" the program has restored the terminal itself. $1 holds the settings saved by stty. The escapes
 * close synchronised output and bracketed paste, leave the alternate screen when there is one, show the cursor, reset colours.
 */
const SCRIPT = [
  'word=watch',
  'while read -r next; do word=$next; done',
  '[ "$word" = rest ] && exit 0',
  'stty "$1" <&1 2>/dev/null',
  'printf "%b" "$2"',
].join('; ');

/** How the terminal line is set now, in stty's own form; undefined where there is no stty. */
export function savedLine(): string | undefined {
  if (process.platform === 'win32') return undefined;
  const { status, stdout } = spawnSync('stty', ['-g'], {
    stdio: ['inherit', 'pipe', 'ignore'],
    encoding: 'utf8',
  });
  return status === 0 ? stdout.trim() : undefined;
}

/**
 * Starts the guard. Call it before anything is changed: it costs two short processes.
 * @param line terminal settings from {@link savedLine}, taken before the screens changed them
 * @param alternate whether the alternate screen is in use
 */
export function guardTerminal(line: string | undefined, alternate: boolean): TerminalGuard {
  if (line === undefined) return NO_GUARD;
  const escapes = `\\033[?2026l\\033[?2004l${alternate ? '\\033[?1049l' : ''}\\033[?25h\\033[0m`;
  let child: ChildProcess;
  try {
    // Its own session, so that Ctrl+C and a closing job do not end it together with the program.
    child = spawn('/bin/sh', ['-c', SCRIPT, 'guard', line, escapes], {
      stdio: ['pipe', 'inherit', 'ignore'],
      detached: true,
    });
  } catch {
    return NO_GUARD;
  }
  child.on('error', () => {});
  child.stdin?.on('error', () => {});
  child.unref();
  (child.stdin as unknown as { unref?: () => void })?.unref?.();
  return {
    rest: () => void child.stdin?.write('rest\n'),
    watch: () => void child.stdin?.write('watch\n'),
    release: () => void child.stdin?.end('rest\n'),
  };
}
