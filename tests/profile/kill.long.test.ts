import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, it } from 'vitest';
import { bundled } from './helpers.js';
import { expectKept } from './kill-runs.js';

let folder = '';
let program = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-kill-'));
  program = await bundled('fixture-writer.ts', folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('keeps every answer that was shown over 200 kills, and the record opens', () =>
  expectKept(program, folder, 200));
