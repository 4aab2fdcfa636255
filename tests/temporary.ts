/** What tests write lies in one folder of the run, and goes with it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The variable that names the folder to the workers; tests/setup.ts takes it for theirs. */
export const RUN_FOLDER = 'MUDLARK_TESTS_FOLDER';

/** Before all tests. @returns what is done after them */
export function setup(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-'));
  process.env[RUN_FOLDER] = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
