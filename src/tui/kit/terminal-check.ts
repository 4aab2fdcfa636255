/**
 * Whether the screens can run here. Asked before Ink is loaded: without a terminal Ink throws a stack trace,
 * and under a CI runner it draws nothing.
 */

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

/**
 * Why the screens cannot be drawn, as one line that names a command to use instead; undefined when they can.
 * @param instead the plain command for the same job, "mudlark grade --help"
 */
export function noTerminalReason(facts: TerminalFacts, instead: string): string | undefined {
  if (!facts.stdinIsTTY || !facts.stdoutIsTTY) {
    const side = facts.stdinIsTTY ? 'output' : 'input';
    return `mudlark: the practice screens need a terminal and the ${side} is not one; use ${instead} instead`;
  }
  if (runsUnderCi(facts.env)) {
    return `mudlark: the practice screens do not run under a CI runner (CI is set); use ${instead} instead`;
  }
  return undefined;
}

/** As Ink decides it: set, and neither "0" nor "false". */
function runsUnderCi(env: TerminalFacts['env']): boolean {
  return ['CI', 'CONTINUOUS_INTEGRATION'].some(
    (name) => env[name] !== undefined && env[name] !== '0' && env[name] !== 'false',
  );
}
