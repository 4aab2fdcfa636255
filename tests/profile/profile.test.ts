import { execFileSync } from 'node:child_process';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { UsageError } from '../../src/errors.js';
import { learnerFolder, learnerName, openProfile, readEntries } from '../../src/profile/index.js';
import { answerNo, freshHome, whileFailing } from './helpers.js';

const home = freshHome();

describe('a profile', () => {
  it('opens without writing anything, saves, and opens again with what was saved', async () => {
    const first = await openProfile();
    expect(first).toMatchObject({ saving: true, learner: 'me', isFirstRun: true, notices: [] });
    expect(readdirSync(home.path)).toEqual([]);
    expect(first.save(answerNo(1))).toEqual({ saved: true });
    expect(first.standing.answers).toBe(1);
    const second = await openProfile();
    expect(second.standing).toEqual(first.standing);
    expect(readEntries(first.files?.record ?? '')).toEqual([answerNo(1)]);
  });

  it('follows the XDG variables and ignores relative ones', async () => {
    process.env['XDG_DATA_HOME'] = join(home.path, 'data');
    process.env['XDG_CONFIG_HOME'] = 'relative';
    const profile = await openProfile();
    expect(profile.paths.data).toBe(join(home.path, 'data', 'mudlark'));
    expect(profile.paths.config).toBe(join(home.path, '.config', 'mudlark'));
  });

  it('sees what another program added', async () => {
    const [one, two] = [await openProfile(), await openProfile()];
    one.save(answerNo(1));
    two.save(answerNo(2));
    one.reload();
    expect(one.standing.answers).toBe(2);
  });

  it('tells of torn lines once, keeps a copy, and goes on', async () => {
    const first = await openProfile();
    first.save(answerNo(1));
    appendFileSync(first.files?.record ?? '', '{"v":1,"at":"2026-0');
    const second = await openProfile();
    expect(second.notices).toHaveLength(1);
    expect(second.notices[0]).toMatch(
      /^1 line of the record could not be read; copied to .*record\.set-aside\.jsonl/,
    );
    expect(second.save(answerNo(2)).saved).toBe(true);
    const third = await openProfile();
    expect(third).toMatchObject({ notices: [], foreignLines: 1 });
    expect(third.standing.answers).toBe(2);
    expect(existsSync(third.files?.setAside ?? '')).toBe(true);
  });
});

describe('several learners', () => {
  const odd = [
    'Ada',
    'ada',
    'Ada ',
    'Ad\u0061\u0301',
    '../../etc/passwd',
    '..',
    '.',
    'a/b',
    'a\\b',
    'a b',
    'a-b',
    '🎨',
    '🎨🎨',
    'CON',
    'nul.txt',
    'x'.repeat(300),
    `${'x'.repeat(300)}y`,
    'עדה',
    'line\nbreak',
    '-rf',
  ];

  it('have folders of safe names, one each', () => {
    const names = [...new Set(odd.map(learnerName))];
    const folders = names.map(learnerFolder);
    expect(new Set(folders).size).toBe(names.length);
    for (const folder of folders) expect(folder).toMatch(/^[a-z0-9](?:[a-z0-9-]{0,51}[a-z0-9])?$/);
    expect(learnerName('Ada ')).toBe('Ada');
    expect(learnerName('Ada\u0301')).toBe('Ad\u00e1');
  });

  it('keep their records apart', async () => {
    for (const [n, name] of ['Ada', 'ada', '🎨'].entries())
      (await openProfile({ learner: name })).save(answerNo(n));
    for (const name of ['Ada', 'ada', '🎨'])
      expect((await openProfile({ learner: name })).standing.answers).toBe(1);
  });

  it('are shown without characters that steer a terminal', async () => {
    const profile = await openProfile({ learner: 'A\u001b[31mda\u202e' });
    expect(profile.shownLearner).toBe('Ada');
  });

  it('need a name that can be shown, of at most 1,000 characters', async () => {
    for (const name of ['', '   ', '\u200b', 'x'.repeat(1001)])
      await expect(openProfile({ learner: name })).rejects.toThrow(UsageError);
  });
});

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

  const inPlace: Readonly<Record<string, (record: string) => void>> = {
    'a folder': (record) => mkdirSync(record),
    'a pipe that nobody reads': (record) => execFileSync('mkfifo', [record]),
    'a device that swallows all': (record) => symlinkSync('/dev/null', record),
    'a device that is full': (record) => symlinkSync('/dev/full', record),
    'links that lead in a circle': (record) => symlinkSync(record, record),
    'a socket': (record) =>
      execFileSync(
        process.execPath,
        [
          '-e',
          // Killed before it can clean up, so that the socket stays.
          `require('node:net').createServer().listen(${JSON.stringify(record)}, () => process.kill(process.pid, 'SIGKILL'))`,
        ],
        { stdio: 'ignore' },
      ),
  };
  it.each(Object.keys(inPlace))('a record that is %s', async (kind) => {
    const { folder = '', record = '' } = (await openProfile()).files ?? {};
    mkdirSync(folder, { recursive: true });
    try {
      inPlace[kind]?.(record);
    } catch (error) {
      if ((error as { signal?: string }).signal !== 'SIGKILL') throw error;
    }
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
