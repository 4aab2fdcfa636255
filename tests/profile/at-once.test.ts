/** Several programs at one record at once. */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withLock } from '../../src/files/lock.js';
import { openProfile } from '../../src/profile/index.js';
import { answerNo, bundled, freshHome } from './helpers.js';

const home = freshHome();

function ran(program: string, args: readonly string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...args], { stdio: ['ignore', 'pipe', 'inherit'] });
    let printed = '';
    child.stdout.on('data', (piece: Buffer) => {
      printed += piece.toString('utf8');
    });
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve(printed) : reject(new Error(`exit ${code}`))));
  });
}

describe('three imports of one file at once', () => {
  it('bring each answer in once', async () => {
    const count = 4000;
    const path = join(home.path, 'in.json');
    const answers = Array.from({ length: count }, (_, n) => answerNo(n));
    writeFileSync(path, JSON.stringify({ schemaVersion: 1, kind: 'mudlark-record', answers }));
    const program = await bundled('fixture-importer.ts', home.path);
    const ready = [1, 2, 3].map((at) => join(home.path, `ready-${at}`));
    const go = join(home.path, 'go');
    const runs = Promise.all(ready.map((file) => ran(program, [path, 'Ada', file, go])));
    await expect.poll(() => ready.every((file) => existsSync(file)), { timeout: 60_000 }).toBe(true);
    writeFileSync(go, '');
    const said = await runs;
    const added = said.map((text) => Number(text.replace(',', '').match(/^(\d+) answers? added/)?.[1]));
    expect(added.sort()).toEqual([0, 0, count]);
    const profile = await openProfile({ learner: 'Ada' });
    const lines = readFileSync(profile.files?.record ?? '', 'utf8')
      .trimEnd()
      .split('\n');
    expect([lines.length, new Set(lines).size, profile.standing.answers]).toEqual([count, count, count]);
    expect(existsSync(profile.files?.lock ?? '')).toBe(false);
  });
});

describe('a lock', () => {
  const lock = (): string => join(home.path, 'a.lock');
  const held = (pid: number, host: string): void => writeFileSync(lock(), JSON.stringify({ pid, host }));
  const hostname = async (): Promise<string> => (await import('node:os')).hostname();

  it('is there while the work is done, and gone after it, also when it failed', () => {
    expect(withLock(lock(), () => existsSync(lock()))).toBe(true);
    expect(existsSync(lock())).toBe(false);
    expect(() =>
      withLock(lock(), () => {
        throw new Error('no');
      }),
    ).toThrow('no');
    expect(existsSync(lock())).toBe(false);
  });

  it('is waited for while its program runs, and not for ever', async () => {
    held(process.pid, await hostname());
    expect(() => withLock(lock(), () => 1, 60)).toThrow(/another program .*a\.lock$/);
    expect(existsSync(lock())).toBe(true);
  });

  it('is taken over when its program has ended, or when it is old', async () => {
    const child = spawn(process.execPath, ['-e', '0']);
    await new Promise((resolve) => child.on('close', resolve));
    held(child.pid ?? 0, await hostname());
    expect(withLock(lock(), () => 1, 1000)).toBe(1);
    held(1, 'another computer');
    expect(() => withLock(lock(), () => 1, 60)).toThrow(/another program/);
    utimesSync(lock(), 0, 0);
    expect(withLock(lock(), () => 1, 1000)).toBe(1);
    expect(existsSync(lock())).toBe(false);
  });
});
