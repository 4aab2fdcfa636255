/** A profile: what is saved and found again, and the names of learners. */
import { appendFileSync, existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { UsageError } from '../../src/errors.js';
import { learnerFolder, learnerName, openProfile, readEntries } from '../../src/profile/index.js';
import { answerNo, freshHome } from './helpers.js';

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
