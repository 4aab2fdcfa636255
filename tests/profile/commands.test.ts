import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { progressCsv, progressJson, progressText } from '../../src/commands/progress.js';
import { recordExport, recordExportText, recordImport, recordReset } from '../../src/commands/record.js';
import { DataError, StoreError } from '../../src/errors.js';
import { standingToJson } from '../../src/practice/index.js';
import type { Profile } from '../../src/profile/index.js';
import { openProfile, readEntries } from '../../src/profile/index.js';
import { answerNo, DAY, freshHome, START } from './helpers.js';

const home = freshHome();
const families = Array.from({ length: 15 }, (_, i) => ({
  id: `family-${i}`,
  title: `Skill number ${i}, with a long name`,
}));
const now = new Date(START + DAY);

async function practised(learner: string, count: number, from = 0): Promise<Profile> {
  const profile = await openProfile({ learner });
  for (let n = from; n < from + count; n += 1) profile.save(answerNo(n));
  return profile;
}

describe('mudlark progress', () => {
  it.each([60, 80, 120])('fits in %i columns, with and without the wider characters', async (columns) => {
    const profile = await practised('Ada', 150);
    for (const ascii of [true, false]) {
      const text = progressText(profile, { families, now, columns, ascii });
      for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
      if (ascii) expect(text).toMatch(/^[\n -~]*$/);
      expect(text).not.toContain('\u001b');
      expect(text).toContain('A taller column is better.');
      expect(text).toContain('Value error: steps outside what was asked');
      expect(text).toContain('Chroma kept');
      expect(text.match(/03-0\d/g)).toHaveLength(14);
      expect(text).toContain('What to do next');
    }
  });

  it('is sentences for a screen reader', async () => {
    const text = progressText(await practised('Ada', 150), { families, now, plain: true });
    expect(text).not.toMatch(/[┤█▁|#]/);
    expect(text.replaceAll('\n', ' ')).toMatch(
      /The last 7 sets, oldest first\. Value error: steps outside what was asked; less is better: \d\.\d, /,
    );
  });

  it('is readable for a beginner, and says when nothing is saved', async () => {
    delete process.env['HOME'];
    const text = progressText(await openProfile(), { families, now });
    expect(text).toContain('No sets yet.');
    expect(text).toContain('Not saving: HOME is not set');
    expect(text).toContain('Begin with Skill number 0');
  });

  it('is one JSON document', async () => {
    const read = JSON.parse(progressJson(await practised('Ada', 150), { families, now }));
    expect(read).toMatchObject({ schemaVersion: 1, learner: 'Ada', answers: 150, saving: true });
    expect(read.families).toHaveLength(15);
    expect(read.sets).toHaveLength(7);
    expect(read.sets[6]).toMatchObject({ set: 'set-12', answers: 6 });
  });

  it('is CSV that no spreadsheet takes for formulas', async () => {
    const profile = await openProfile({ learner: '=cmd|"/c calc"!A1' });
    for (const [n, set] of ['+1', '-1', '@x', '=1+1', 'plain'].entries())
      profile.save(answerNo(n, { set, family: 'family-1' }));
    const rows = (await progressCsv(profile, { families, now })).split('\r\n').filter(Boolean);
    expect(rows[0]).toBe(
      'learner,family,skill,level,set,started,answers,good,fair,off,mark,value_error_steps,chroma_kept,dull_error_chroma',
    );
    expect(rows).toHaveLength(6);
    for (const row of rows.slice(1)) expect(row).toMatch(/^"'=cmd/);
    for (const [n, set] of ["'+1", "'-1", "'@x", "'=1+1", 'plain'].entries())
      expect(rows[n + 1]).toContain(`,${set},2026-`);
  });
});

describe('mudlark record', () => {
  it('goes out and comes in on another computer, whole', async () => {
    const profile = await practised('Ada', 40);
    for (const name of ['out.json', 'out.jsonl']) {
      const path = join(home.path, name);
      expect(recordExport(profile, path, { now })).toContain(name);
      const other = await openProfile({ learner: `Other ${name}` });
      expect(recordImport(other, path)).toBe(
        `40 answers added to the record of Other ${name}; none was there already.\n`,
      );
      expect(standingToJson(other.standing)).toBe(standingToJson(profile.standing));
      expect(recordImport(other, path)).toMatch(/^0 answers added .* 40 were there already/);
      expect(readEntries(other.files?.record ?? '')).toHaveLength(40);
    }
    expect(JSON.parse(recordExportText(profile, { now }).text)).toMatchObject({
      schemaVersion: 1,
      kind: 'mudlark-record',
      learner: 'Ada',
    });
    expect(readdirSync(home.path).filter((name) => name.endsWith('.tmp'))).toEqual([]);
  });

  it('merges two records in order of time, without doubles', async () => {
    const early = await practised('early', 30);
    const both = await practised('both', 30, 20);
    const path = join(home.path, 'early.json');
    recordExport(early, path, { now });
    expect(recordImport(both, path)).toMatch(/^20 answers added .* 10 were there already/);
    const whole = await practised('whole', 50);
    expect(standingToJson(both.standing)).toBe(standingToJson(whole.standing));
  });

  it('writes over nothing unless told to', async () => {
    const profile = await practised('Ada', 2);
    const path = join(home.path, 'there.json');
    writeFileSync(path, 'mine');
    expect(() => recordExport(profile, path, { now })).toThrow(DataError);
    expect(readFileSync(path, 'utf8')).toBe('mine');
    recordExport(profile, path, { now, force: true });
    expect(JSON.parse(readFileSync(path, 'utf8')).answers).toHaveLength(2);
    expect(() => recordExport(profile, join(home.path, 'no', 'where.json'), { now })).toThrow(DataError);
  });

  it('takes only answers that check out, and says which do not', async () => {
    const profile = await openProfile({ learner: 'Ada' });
    const path = join(home.path, 'in.json');
    const answers = [
      answerNo(1),
      { ...answerNo(2), mark: 1000 },
      { ...answerNo(4), drill: '\u001b]0;x\u0007' },
      answerNo(5),
    ];
    writeFileSync(path, JSON.stringify({ schemaVersion: 1, kind: 'mudlark-record', answers }));
    expect(recordImport(profile, path)).toBe(
      '2 answers added to the record of Ada; none was there already.\n2 answers could not be used and were left out; the first is number 2.\n',
    );
  });

  it.each([
    ['a picture', '\u0089PNG\n\u001a'],
    ['another document', '{"hello": "world"}'],
    ['a list', '[1, 2, 3]'],
    ['a newer version', '{"schemaVersion": 2, "kind": "mudlark-record", "answers": []}'],
  ])('refuses %s in one line and changes nothing', async (_, text) => {
    const profile = await practised('Ada', 2);
    const path = join(home.path, 'in.json');
    writeFileSync(path, text);
    expect(() => recordImport(profile, path)).toThrow(DataError);
    expect(readEntries(profile.files?.record ?? '')).toHaveLength(2);
    expect(() => recordImport(profile, join(home.path, 'missing.json'))).toThrow(/no such file/);
  });

  it('begins anew only when it is confirmed, and keeps a copy with the date', async () => {
    const profile = await practised('Ada', 5);
    const record = profile.files?.record ?? '';
    const before = readFileSync(record, 'utf8');
    let asked = '';
    const no = (question: string): boolean => {
      asked = question;
      return false;
    };
    expect(await recordReset(profile, no, now)).toBe('Nothing was changed.\n');
    expect(asked).toBe('Begin a new record for Ada? The old one, with 5 answers, is kept as a copy.');
    expect(readFileSync(record, 'utf8')).toBe(before);

    expect(await recordReset(profile, () => true, now)).toContain('record.until-2026-03-03T18-00-00.jsonl');
    expect(existsSync(record)).toBe(false);
    expect(profile.standing.answers).toBe(0);
    const kept = join(profile.files?.folder ?? '', 'record.until-2026-03-03T18-00-00.jsonl');
    expect(readFileSync(kept, 'utf8')).toBe(before);

    profile.save(answerNo(9));
    expect(await recordReset(profile, () => true, now)).toContain('T18-00-00-2.jsonl');
    expect(await recordReset(profile, () => true, now)).toBe('The record of Ada is empty already.\n');
    recordImport(profile, kept);
    expect(profile.standing.answers).toBe(5);
  });

  it('says in one line when there is no place for a record', async () => {
    delete process.env['HOME'];
    const profile = await openProfile();
    expect(() => recordImport(profile, 'x.json')).toThrow(StoreError);
    await expect(recordReset(profile, () => true, now)).rejects.toThrow(/HOME is not set/);
    expect(JSON.parse(recordExportText(profile, { now }).text).answers).toEqual([]);
  });
});
