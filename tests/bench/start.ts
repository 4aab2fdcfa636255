/** How long the built program takes to start, against an empty node process. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { spawn } from '@lydell/node-pty';
import { type BenchRow, median } from './base.js';

const CLI = fileURLToPath(new URL('../cli.js', import.meta.url));
const ROUNDS = 15;

function runMs(args: readonly string[], env: NodeJS.ProcessEnv): number {
  const from = performance.now();
  execFileSync(process.execPath, [...args], { env, stdio: ['ignore', 'ignore', 'ignore'] });
  return performance.now() - from;
}

/** Time until the first frame stands on a pseudo-terminal. */
async function firstFrameMs(env: NodeJS.ProcessEnv): Promise<number> {
  const from = performance.now();
  const terminal = spawn(process.execPath, [CLI], { cols: 80, rows: 24, env: env as Record<string, string> });
  const exited = new Promise<void>((resolve) => terminal.onExit(() => resolve()));
  const time = await new Promise<number>((resolve) => {
    let seen = '';
    terminal.onData((data) => {
      seen += data;
      if (/[Mm]udlark/.test(seen) && seen.length > 400) resolve(performance.now() - from);
    });
    terminal.onExit(() => resolve(Number.NaN));
  });
  terminal.kill('SIGKILL');
  await exited;
  return time;
}

/** Rows for the report. */
export async function benchStart(): Promise<BenchRow[]> {
  const home = mkdtempSync(join(tmpdir(), 'mudlark-bench-'));
  const { CI: _ci, ...rest } = process.env;
  const env = {
    ...rest,
    HOME: home,
    XDG_CONFIG_HOME: join(home, 'c'),
    XDG_DATA_HOME: join(home, 'd'),
    TERM: 'xterm-256color',
    COLORTERM: 'truecolor',
  };
  const empty: number[] = [];
  const version: number[] = [];
  const mix: number[] = [];
  const frame: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    empty.push(runMs(['--input-type=module', '-e', ''], env));
    version.push(runMs([CLI, '--version'], env));
    mix.push(runMs([CLI, 'mix', 'burnt-sienna=4', 'alizarin-crimson=2', '--strength', '0.3'], env));
    frame.push(await firstFrameMs(env));
  }
  rmSync(home, { recursive: true, force: true });
  const base = 'an empty node process';
  const unit = median(empty);
  return [
    { name: '--version', ratio: median(version) / unit, base, atMost: 1.3 },
    { name: 'mix of two paints', ratio: median(mix) / unit, base, atMost: 2.3 },
    { name: 'first frame of the screens', ratio: median(frame) / unit, base, atMost: 4.3 },
  ];
}
