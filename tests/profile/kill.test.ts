import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { loadRecord, readEntries } from '../../src/profile/index.js';
import { bundled } from './helpers.js';
import { expectKept } from './kill-runs.js';

let folder = '';
let program = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-kill-'));
  program = await bundled('fixture-writer.ts', folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('keeps every answer that was shown over 20 kills, and the record opens', () =>
  expectKept(program, folder, 20));

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
});
