/**
 * Whether the screens can run here. Asked before Ink is loaded: without a terminal Ink throws a stack trace,
 * and under a CI runner it draws nothing.
 */

/** What a CI runner sets, to anything but nothing, "0" and "false". Ink counts an empty one too: the entry (cli.ts) takes that out. */
const RUNNERS = ['CI', 'CONTINUOUS_INTEGRATION'];

/** What the check looks at. */
export interface TerminalFacts {
  readonly stdinIsTTY: boolean;
  readonly stdoutIsTTY: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** The facts of the running process. */
export function terminalFacts(): TerminalFacts {
  return {
    stdinIsTTY: process.stdin.isTTY === true,
    stdoutIsTTY: process.stdout.isTTY === true,
    env: process.env,
  };
}

/** Why the screens cannot be drawn here, to stand after their name; undefined when they can. */
export function screensFault({ stdinIsTTY, stdoutIsTTY, env }: TerminalFacts): string | undefined {
  if (!stdinIsTTY || !stdoutIsTTY)
    return `need a terminal and the ${stdinIsTTY ? 'output' : 'input'} is not one`;
  if (RUNNERS.some((name) => !['', '0', 'false', undefined].includes(env[name])))
    return 'do not run under a CI runner (CI is set)';
  // terminfo's "dumb" has no movement of the cursor, and all it is sent would be seen as signs.
  if (env['TERM'] === 'dumb') return 'move the cursor and this terminal cannot (TERM is dumb)';
  return undefined;
}

/**
 * The fault as one line that names a command to use instead.
 * @param instead the plain command for the same job, "mudlark grade --help"
 */
export function noTerminalReason(facts: TerminalFacts, instead: string): string | undefined {
  const fault = screensFault(facts);
  return fault === undefined ? undefined : `mudlark: the practice screens ${fault}; use ${instead} instead`;
}
