/**
 * A program is killed (SIGKILL) at random moments, 200 times: every answer whose result was shown is in the record.
 * The moments are drawn from a seed; where exactly they fall is up to the machine.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { loadRecord, readEntries } from '../../src/profile/index.js';
import { bundled } from './helpers.js';

const KILLS = 200;
let folder = '';
let program = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-kill-'));
  program = await bundled('fixture-writer.ts', folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the program and kills it some time after its first output. @returns what it printed */
function runAndKill(path: string, set: string, afterMs: number): Promise<string> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, path, set, '100000'], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let printed = '';
    let isTimed = false;
    child.stdout.on('data', (piece: Buffer) => {
      printed += piece.toString('utf8');
      if (!isTimed) setTimeout(() => child.kill('SIGKILL'), afterMs);
      isTimed = true;
    });
    child.on('error', reject);
    child.on('close', (_, signal) =>
      signal === 'SIGKILL' ? resolve(printed) : reject(new Error(`ended by ${signal}`)),
    );
  });
}

it('keeps every answer that was shown, and the record opens', async () => {
  const path = join(folder, 'record.jsonl');
  const random = xoroshiro128plus(2026);
  const shown: string[] = [];
  for (let kill = 0; kill < KILLS; kill += 2) {
    // Two programs at once on the same record.
    const runs = [kill, kill + 1].map((n) => runAndKill(path, `set-${n}`, uniformInt(random, 0, 40)));
    for (const printed of await Promise.all(runs)) {
      const lines = printed.split('\n');
      // A last line without its newline was cut while it was printed: it was not yet shown.
      lines.pop();
      shown.push(...lines.map((line) => line.replace('shown ', '')));
    }
  }
  const kept = new Set(readEntries(path).map(({ set, drill }) => `${set} ${drill}`));
  expect(shown.length).toBeGreaterThan(KILLS);
  expect(shown.filter((answer) => !kept.has(answer))).toEqual([]);
  const loaded = loadRecord(path);
  expect(loaded.standing.answers).toBe(kept.size);
  expect(loaded.lines - loaded.foreignCount).toBe(kept.size);
  expect(readFileSync(path).length).toBe(statSync(path).size);
}, 120_000);

it('loses nothing when two programs write at once', async () => {
  const path = join(folder, 'together.jsonl');
  const runs = ['left', 'right'].map(
    (set) =>
      new Promise<number | null>((resolve) => {
        spawn(process.execPath, [program, path, set, '400'], { stdio: 'ignore' }).on('close', resolve);
      }),
  );
  expect(await Promise.all(runs)).toEqual([0, 0]);
  const entries = readEntries(path);
  expect(entries).toHaveLength(800);
  expect(loadRecord(path).foreignCount).toBe(0);
  for (const set of ['left', 'right'])
    expect(entries.filter((entry) => entry.set === set).map(({ drill }) => drill)).toEqual(
      Array.from({ length: 400 }, (_, n) => `drill-${n}`),
    );
}, 60_000);
