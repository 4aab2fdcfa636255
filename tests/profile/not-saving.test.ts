/** Where nothing can be saved: no home, no permission, something else in the record's place, a full disk. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openProfile, readEntries } from '../../src/profile/index.js';
import { whileFailing } from '../files/calls.js';
import { answerNo, freshHome, IN_PLACE } from './helpers.js';

const home = freshHome();

describe('where nothing can be saved, practice goes on and one line says so', () => {
  const isOneLine = (text: string | undefined): void => {
    expect(text).toMatch(/^Not saving: .+\. Practice works, but nothing is kept\.$/);
  };

  it.each([
    ['no HOME', undefined],
    ['an empty HOME', ''],
    ['a relative HOME', 'somewhere'],
    ['a HOME that does not exist', '/nowhere/at/all'],
  ])('%s', async (_, value) => {
    if (value === undefined) delete process.env['HOME'];
    else process.env['HOME'] = value;
    const profile = await openProfile();
    expect(profile.saving).toBe(false);
    isOneLine(profile.problem);
    expect(profile.problem).toContain('HOME');
    expect(profile.save(answerNo(1)).saved).toBe(false);
    expect(profile.standing.answers).toBe(1);
    expect(existsSync('/nowhere')).toBe(false);
  });

  it('saves without HOME when XDG_DATA_HOME says where', async () => {
    delete process.env['HOME'];
    process.env['XDG_DATA_HOME'] = home.path;
    const profile = await openProfile();
    expect(profile.save(answerNo(1))).toEqual({ saved: true });
  });

  it.each(['/sys', '/proc/self'])('a home that may not be written to: %s', async (home) => {
    // Nobody, not even root, can make a folder in these.
    process.env['HOME'] = home;
    const profile = await openProfile();
    expect(profile.save(answerNo(1)).saved).toBe(false);
    expect(profile.saving).toBe(false);
    isOneLine(profile.problem);
    expect(profile.save(answerNo(2)).saved).toBe(false);
    expect(profile.standing.answers).toBe(2);
  });

  it('a file where a folder should be', async () => {
    writeFileSync(join(home.path, '.local'), '');
    const profile = await openProfile();
    isOneLine(profile.problem);
    expect(profile.problem).toContain('.local is not a folder');
  });

  it.each(Object.keys(IN_PLACE))('a record that is %s', async (kind) => {
    const { folder = '', record = '' } = (await openProfile()).files ?? {};
    mkdirSync(folder, { recursive: true });
    IN_PLACE[kind]?.(record);
    const profile = await openProfile();
    isOneLine(profile.problem);
    expect(profile.unreadable).toContain('record.jsonl: ');
    expect(profile.save(answerNo(1)).saved).toBe(false);
    expect(profile.standing.answers).toBe(1);
    isOneLine(profile.problem);
  });

  it('a record that the disk cannot give back', async () => {
    const profile = await openProfile();
    profile.save(answerNo(1));
    whileFailing('readSync', 'EIO', () => profile.reload());
    isOneLine(profile.problem);
    expect(profile.unreadable).toMatch(/record\.jsonl: the disk reports an error$/);
    profile.reload();
    expect([profile.saving, profile.unreadable, profile.standing.answers]).toEqual([true, undefined, 1]);
  });

  it('a disk that is full, and saves all of it when there is room again', async () => {
    const profile = await openProfile();
    const record = profile.files?.record ?? '';
    mkdirSync(profile.files?.folder ?? '', { recursive: true });
    writeFileSync(join(profile.files?.folder ?? '', 'learner.json'), '{}');
    whileFailing('writeSync', 'ENOSPC', () => {
      const result = profile.save(answerNo(1));
      expect(result.saved).toBe(false);
      isOneLine(result.problem);
      expect(result.problem).toContain('the disk is full');
      expect(profile.saving).toBe(false);
      expect(profile.save(answerNo(2)).saved).toBe(false);
      expect(profile.standing.answers).toBe(2);
    });

    expect(profile.save(answerNo(3))).toEqual({ saved: true });
    expect(profile.saving).toBe(true);
    expect(readEntries(record)).toEqual([answerNo(1), answerNo(2), answerNo(3)]);
  });
});

/** A file system of 128 KB; undefined where this user may not mount one. */
function smallDisk(): string | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-disk-'));
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=128k', 'tmpfs', folder], {
      stdio: 'ignore',
      timeout: 5000,
    });
    return folder;
  } catch {
    rmSync(folder, { recursive: true });
    return undefined;
  }
}

const disk = smallDisk();
describe.skipIf(disk === undefined)('on a real disk of 128 KB', () => {
  it('keeps every answer that it said was saved, also when the disk fills up', async () => {
    const folder = disk as string;
    try {
      process.env['XDG_DATA_HOME'] = folder;
      const profile = await openProfile();
      const saved: number[] = [];
      let refused = 0;
      for (let n = 0; refused < 5 && n < 2000; n += 1) {
        if (profile.save(answerNo(n)).saved) saved.push(n);
        else refused += 1;
      }
      expect(saved.length).toBeGreaterThan(100);
      expect(refused).toBe(5);
      expect(profile.problem).toContain('the disk is full');
      const kept = readEntries(profile.files?.record ?? '');
      expect(kept.slice(0, saved.length)).toEqual(saved.map((n) => answerNo(n)));
      expect(await openProfile()).toMatchObject({ saving: false });
      expect(readFileSync(profile.files?.record ?? '').length).toBeGreaterThan(0);
    } finally {
      execFileSync('umount', [folder]);
      rmSync(folder, { recursive: true });
    }
  });
});
