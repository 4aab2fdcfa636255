/**
 * Kills practice at random moments of a session on a pseudo-terminal, and looks at what is left: every answer whose
 * result was shown must be in the record, the record must open, the terminal must be back on its normal screen.
 * Run by hand: `npm run build && node dist/tools/kill.js 200`. The test suite does the same once.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { spawn } from '@lydell/node-pty';
import { seededDraw } from '../../src/chance/draw.js';

const CLI = fileURLToPath(new URL('../cli.js', import.meta.url));
const LEAVE_SCREEN = '\u001b[?1049l';
const SHOW_CURSOR = '\u001b[?25h';
const sleep = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

function recordLines(home: string): string[] {
  const learners = join(home, 'd', 'mudlark', 'learners');
  if (!existsSync(learners)) return [];
  return readdirSync(learners).flatMap((name) => {
    const record = join(learners, name, 'record.jsonl');
    return existsSync(record)
      ? readFileSync(record, 'utf8')
          .split('\n')
          .filter((line) => line !== '')
      : [];
  });
}

/** One session, killed after `ms`. @returns how many results were shown, and the bytes that the terminal got */
async function session(env: Record<string, string>, ms: number): Promise<{ shown: number; raw: string }> {
  const pidFile = join(home, 'pid');
  rmSync(pidFile, { force: true });
  // The shell stays after the kill, as a person's shell does; the guard writes to the terminal that it holds open.
  const command = `/bin/sh -c 'echo $$ > "$0"; exec "$@"' "$0" "$@"; sleep 0.4`;
  const terminal = spawn('/bin/sh', ['-c', command, pidFile, process.execPath, CLI, 'practise'], {
    cols: 80,
    rows: 24,
    env,
  });
  let raw = '';
  terminal.onData((data) => {
    raw += data;
  });
  const ended = new Promise<void>((resolve) => terminal.onExit(() => resolve()));
  const until = performance.now() + ms;
  while (performance.now() < until) {
    terminal.write('\r');
    await sleep(60);
  }
  try {
    process.kill(Number(readFileSync(pidFile, 'utf8')), 'SIGKILL');
  } catch {
    // It had not started yet, or had already ended.
  }
  await ended;
  const results = raw.match(/\d of 100/g) ?? [];
  return { shown: results.length > 0 ? 1 : 0, raw };
}

const kills = Number(process.argv[2] ?? 20);
const home = mkdtempSync(join(tmpdir(), 'mudlark-kill-'));
const { CI: _ci, ...rest } = process.env as Record<string, string>;
const env = {
  ...rest,
  HOME: home,
  XDG_DATA_HOME: join(home, 'd'),
  XDG_CONFIG_HOME: join(home, 'c'),
  TERM: 'xterm-256color',
};
execFileSync(process.execPath, [CLI, 'settings', 'set', 'welcomed', 'yes'], { env, stdio: 'ignore' });
const draw = seededDraw(Number(process.argv[3] ?? 1));
const faults: string[] = [];
let shownInAll = 0;
for (let kill = 0; kill < kills; kill++) {
  const before = recordLines(home).length;
  const { shown, raw } = await session(env, 150 + draw(3850));
  const lines = recordLines(home);
  shownInAll += shown;
  if (lines.length - before < shown) faults.push(`kill ${kill}: a result was shown and no answer was added`);
  if (raw.includes('\u001b[?1049h') && raw.lastIndexOf(LEAVE_SCREEN) < raw.lastIndexOf('\u001b[?1049h')) {
    faults.push(`kill ${kill}: left in the alternate screen`);
  }
  if (raw.includes('\u001b[?25l') && raw.lastIndexOf(SHOW_CURSOR) < raw.lastIndexOf('\u001b[?25l')) {
    faults.push(`kill ${kill}: the cursor is hidden`);
  }
  try {
    execFileSync(process.execPath, [CLI, 'progress', '--json'], { env, stdio: ['ignore', 'ignore', 'pipe'] });
  } catch (error) {
    faults.push(`kill ${kill}: the record does not open: ${String((error as Error).message).split('\n')[0]}`);
  }
}
const unreadable = recordLines(home).filter((line) => {
  try {
    JSON.parse(line);
    return false;
  } catch {
    return true;
  }
}).length;
rmSync(home, { recursive: true, force: true });
console.log(
  `${kills} kills, ${shownInAll} after a result was shown, ${unreadable} torn lines, ${faults.length} faults`,
);
for (const fault of faults.slice(0, 20)) console.log(`  ${fault}`);
process.exitCode = faults.length === 0 ? 0 : 1;
