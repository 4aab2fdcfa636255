/** A program that answers is killed (SIGKILL) at random moments: every answer whose result was shown is in the record. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { loadRecord, readEntries } from '../../src/profile/index.js';

/** Runs the program and kills it some time after its first output. @returns what it printed */
function runAndKill(program: string, path: string, set: string, afterMs: number): Promise<string> {
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

/**
 * Kills it so many times, two at once on the same record. The moments are drawn from a seed; where exactly they fall is
 * up to the machine.
 */
export async function expectKept(program: string, folder: string, kills: number): Promise<void> {
  const path = join(folder, 'record.jsonl');
  const draw = seededDraw(2026);
  const shown: string[] = [];
  for (let kill = 0; kill < kills; kill += 2) {
    const runs = [kill, kill + 1].map((n) => runAndKill(program, path, `set-${n}`, draw(40)));
    for (const printed of await Promise.all(runs)) {
      const lines = printed.split('\n');
      // A last line without its newline was cut while it was printed: it was not yet shown.
      lines.pop();
      shown.push(...lines.map((line) => line.replace('shown ', '')));
    }
  }
  const kept = new Set(readEntries(path).map(({ set, drill }) => `${set} ${drill}`));
  expect(shown.length).toBeGreaterThan(kills);
  expect(shown.filter((answer) => !kept.has(answer))).toEqual([]);
  const loaded = loadRecord(path);
  expect(loaded.standing.answers).toBe(kept.size);
  expect(loaded.lines - loaded.foreignCount).toBe(kept.size);
}
