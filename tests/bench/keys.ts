/**
 * Types random keys on every screen on a pseudo-terminal and changes its size all the while: nothing may end but by a key that ends it, no
 * fault may be told, and what was kept must open afterwards. One paste of 100 kB follows on each.
 * Run by hand: `npm run build && node dist/tools/keys.js 20000 200` (keys and changes of size on each screen, then a seed).
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type IPty, spawn } from '@lydell/node-pty';
import { type Draw, seededDraw, seedOf } from '../../src/chance/draw.js';

const CLI = fileURLToPath(new URL('../cli.js', import.meta.url));
const sleep = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

const ARROWS = ['\u001b[A', '\u001b[B', '\u001b[C', '\u001b[D'];
const SIGNS = [...'0123456789?abcdefghijklmnoprstuvwxyz+-,./:=#AZÖ漢', ' ', '\t', '\r', '\r', '\u007f'];
/** Escape, the end of a line and other control signs; what ends or lays aside a program at once is left out. */
const RARE = [
  '\u001b',
  '\u001b',
  'q',
  '\u001b[H',
  '\u001b[5~',
  '\u001bOP',
  '\u001b[Z',
  '\u0001',
  '\u001b[',
  '\u001b[1;5P',
  '👩‍🎨',
];
/** So many keys go together, as fast fingers type: more would be taken for a paste. */
const TOGETHER = 4;
const PASTE = `\u001b[200~${'burnt sienna=1, q\r\n\u001b[A'.repeat(4800)}\u001b[201~`;
const PATIENCE_MS = 20_000;

const any = <T>(draw: Draw, list: readonly T[]): T => list[draw(list.length - 1)] as T;

function key(draw: Draw): string {
  const kind = draw(999);
  return any(draw, kind < 400 ? ARROWS : kind < 985 ? SIGNS : RARE);
}

/** A screen by how it is come to: what is typed after the start, too. */
interface Place {
  readonly name: string;
  readonly args: readonly string[];
  readonly opening?: string;
}

class Run {
  raw = '';
  code: number | undefined;
  private readonly pty: IPty;
  constructor({ args }: Place, env: Record<string, string>, cwd: string) {
    this.pty = spawn(process.execPath, [CLI, ...args], { cols: 80, rows: 24, env, cwd });
    this.pty.onData((data) => {
      this.raw = (this.raw + data).slice(-200_000);
    });
    this.pty.onExit(({ exitCode, signal }) => {
      this.code = exitCode + 1000 * (signal ?? 0);
    });
  }
  get isOver(): boolean {
    return this.code !== undefined;
  }
  write(keys: string): void {
    if (!this.isOver) this.pty.write(keys);
  }
  resize(columns: number, rows: number): void {
    try {
      if (!this.isOver) this.pty.resize(columns, rows);
    } catch {
      // It has ended, and this is not told yet.
    }
  }
  async until(holds: () => boolean): Promise<boolean> {
    const end = performance.now() + PATIENCE_MS;
    while (!holds() && !this.isOver && performance.now() < end) await sleep(5);
    return holds();
  }
  /** Until nothing is written for a while: everything typed is taken. */
  async settled(): Promise<void> {
    for (let last = -1; last !== this.raw.length || this.raw.length === 200_000; ) {
      last = this.raw.length;
      await sleep(150);
      if (this.isOver || last === this.raw.length) return;
    }
  }
  kill(): void {
    if (!this.isOver) this.pty.kill('SIGKILL');
  }
}

/** Types on one screen. @returns faults, how often it was begun anew, and how long the paste took, ms */
async function walk(place: Place, keys: number, sizes: number, draw: Draw) {
  const home = mkdtempSync(join(tmpdir(), 'mudlark-keys-'));
  const { CI: _ci, NO_COLOR: _none, ...rest } = process.env as Record<string, string>;
  const [data, config] = [join(home, 'd'), join(home, 'c')];
  const env = { ...rest, HOME: home, XDG_DATA_HOME: data, XDG_CONFIG_HOME: config, TERM: 'xterm-256color' };
  const mudlark = (...args: string[]): string =>
    execFileSync(process.execPath, [CLI, ...args], {
      env,
      cwd: home,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  mudlark('settings', 'set', 'welcomed', 'yes');
  mudlark('box', 'new', 'studio', '--paints', 'cadmium-red,ultramarine-blue,burnt-sienna');
  mudlark(
    'quiz',
    'write',
    '--families',
    'darken-bright,dull-on-purpose',
    '--count',
    '6',
    '--level',
    '2',
    '--seed',
    '4',
    '--title',
    'Week 3',
    '--out',
    'week3.quiz.yaml',
  );
  if (place.args[0] === 'painting') mudlark('painting', '--demo', 'pictures');
  const faults: string[] = [];
  let [typed, starts, student, sized] = [0, 0, 0, 0];
  let pasteMs = 0;
  while (typed < keys) {
    starts++;
    const args = place.args.map((arg) => arg.replace('STUDENT', `Student ${student++}`));
    const run = new Run({ ...place, args }, env, home);
    if (!(await run.until(() => run.raw.length > 60))) {
      faults.push(`${place.name}: nothing was shown: ${run.raw.slice(-300)}`);
      break;
    }
    for (const each of place.opening ?? '') {
      run.write(each);
      await sleep(120);
    }
    while (typed < keys && !run.isOver) {
      for (let k = 0; k < TOGETHER; k++) run.write(key(draw));
      typed += TOGETHER;
      if (typed * sizes >= sized * keys) {
        sized++;
        run.resize(8 + draw(212), 3 + draw(67));
      }
      await sleep(4);
      if (typed % 400 === 0) await run.settled();
    }
    await run.settled();
    if (!run.isOver && typed >= keys) {
      run.resize(80, 24);
      await run.settled();
      const from = performance.now();
      run.write(PASTE);
      // The answer to it stands on the screen once the program takes keys again: one that is too small says so on each.
      run.raw = '';
      run.write('?');
      run.resize(41, 10);
      if (!(await run.until(() => run.raw.includes('Mudlark needs') || run.raw.length > 200)))
        faults.push(`${place.name}: little was drawn after the paste: ${run.raw.slice(-400)}`);
      await run.settled();
      pasteMs = performance.now() - from;
      run.write('\u0003');
      await run.until(() => run.isOver);
      if (run.code !== 130) faults.push(`${place.name}: Ctrl+C ended it with ${run.code}`);
    } else if (run.code !== 0)
      faults.push(`${place.name}: it ended with ${run.code}: ${run.raw.slice(-400)}`);
    if (run.raw.includes('fault of the program')) faults.push(`${place.name}: ${run.raw.slice(-1500)}`);
    run.kill();
    if (faults.length > 5) break;
  }
  try {
    mudlark('progress', '--json');
    mudlark('record', 'export', '-');
    mudlark('box', 'list', '--json');
  } catch (error) {
    faults.push(
      `${place.name}: what was kept does not open: ${String((error as Error).message).slice(0, 300)}`,
    );
  }
  rmSync(home, { recursive: true, force: true });
  return { faults, starts, typed, sized, pasteMs };
}

const BEFORE = 'pictures/harbour-before.png';
const PLACES: readonly Place[] = [
  { name: 'home', args: [] },
  { name: 'bench', args: [], opening: '3' },
  { name: 'boxes', args: [], opening: '52' },
  { name: 'practice', args: ['practise'] },
  { name: 'practice, read aloud', args: ['practise', '--screen-reader'] },
  { name: 'painting', args: ['painting', BEFORE] },
  { name: 'painting before and after', args: ['painting', BEFORE, 'pictures/harbour-after.png'] },
  { name: 'sitting', args: ['quiz', 'sit', 'week3.quiz.yaml', '--name', 'STUDENT'] },
  { name: 'room', args: ['quiz', 'room', 'week3.quiz.yaml'] },
  { name: 'entering', args: ['quiz', 'enter', 'week3.quiz.yaml'] },
  { name: 'dried', args: ['dried', '--box', 'studio'] },
];

const [, , keys = '500', sizes = '20', seed = '1', only = ''] = process.argv;
let [count, faulty] = [0, 0];
for (const place of PLACES) {
  if (!place.name.startsWith(only)) continue;
  const { faults, starts, typed, sized, pasteMs } = await walk(
    place,
    Number(keys),
    Number(sizes),
    seededDraw(seedOf(seed, place.name)),
  );
  count += typed;
  faulty += faults.length;
  console.log(
    `${place.name}: ${typed} keys, ${sized} sizes, begun ${starts} times, paste ${Math.round(pasteMs)} ms, ${faults.length} faults`,
  );
  for (const fault of faults) console.log(`  ${JSON.stringify(fault)}`);
}
console.log(`${count} keys in all, ${faulty} faults`);
process.exitCode = faulty === 0 ? 0 : 1;
