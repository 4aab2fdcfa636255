/** The demo pictures as the built program writes them: once for all files that look at them, which write nothing there. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import { cleanEnv, mudlark } from './run-cli.js';

let folder: string | undefined;

/** The folder with the demo pictures. */
export function demoFolder(): string {
  if (folder === undefined) {
    const demo = join(mkdtempSync(join(tmpdir(), 'mudlark-demo-')), 'demo');
    const { code, err } = mudlark(['painting', '--demo', demo], cleanEnv());
    expect([code, err]).toEqual([0, '']);
    folder = demo;
  }
  return folder;
}
