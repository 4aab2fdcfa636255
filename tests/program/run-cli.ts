/** Runs the program with its own home, no terminal and no input: the built one, or its command line inside the test. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { vi } from 'vitest';
import { runProgram } from '../../src/commands/program.js';

export const CLI = fileURLToPath(new URL('../../dist/cli.js', import.meta.url));

/** What a run printed and how it ended. */
export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** An environment with an empty home and nothing of the machine's own settings. */
export function cleanEnv(extra: Readonly<Record<string, string>> = {}): Record<string, string> {
  const home = mkdtempSync(join(tmpdir(), 'mudlark-test-'));
  return {
    PATH: process.env['PATH'] ?? '',
    HOME: home,
    XDG_CONFIG_HOME: join(home, 'config'),
    XDG_DATA_HOME: join(home, 'data'),
    XDG_CACHE_HOME: join(home, 'cache'),
    XDG_STATE_HOME: join(home, 'state'),
    TERM: 'xterm-256color',
    LANG: 'C.UTF-8',
    ...extra,
  };
}

/** Runs `mudlark` with arguments. */
export function mudlark(args: readonly string[], env: Record<string, string> = cleanEnv()): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, [CLI, ...args], {
    env,
    encoding: 'utf8',
    timeout: 60_000,
    maxBuffer: 1 << 26,
  });
  return { code: status, out: stdout, err: stderr };
}

/**
 * Runs a command line as the entry does, without a process of its own: for the many cases of one command, of which one is run as it is
 * built. For what reads no input and draws no screen.
 */
export async function mudlarkHere(
  args: readonly string[],
  env: Record<string, string> = cleanEnv(),
): Promise<Run> {
  const before = { ...process.env };
  const clear = (): void => {
    for (const name of Object.keys(process.env)) delete process.env[name];
  };
  let [out, err] = ['', ''];
  const streams = [
    vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
      out += String(text);
      return true;
    }),
    vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
      err += String(text);
      return true;
    }),
  ];
  clear();
  Object.assign(process.env, env);
  try {
    const code = await runProgram(args, '0.0.0-test');
    return { code, out, err };
  } finally {
    for (const stream of streams) stream.mockRestore();
    clear();
    Object.assign(process.env, before);
  }
}

/** Runs a command with `--json` and reads the document. */
export function mudlarkJson<T>(args: readonly string[]): T {
  const run = mudlark([...args, '--json']);
  if (run.code !== 0) throw new Error(`exit ${run.code}: ${run.err}`);
  return JSON.parse(run.out) as T;
}
