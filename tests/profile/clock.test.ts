/** A wrong clock, and data of a newer version: nothing is lost, nothing is refused, and one line says what stands there. */
import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { progressJson, progressText } from '../../src/commands/progress.js';
import { recordExport, recordExportText, recordImport } from '../../src/commands/record.js';
import { entryLine, standingToJson } from '../../src/practice/index.js';
import { loadRecord, openProfile, type Profile } from '../../src/profile/index.js';
import { answerNo, DAY, freshHome, START } from './helpers.js';

const home = freshHome();
const now = new Date(START + DAY);
const families = [{ id: 'family-1', title: 'Family 1' }];
/** Of one family and drill, so that every answer bears on when it is due. */
const inFamily = (n: number, at = new Date(START + n * 60_000).toISOString()) =>
  answerNo(n, { family: 'family-1', drill: 'drill-1', at, mark: 85, verdict: 'good', level: 1 });
const ahead = (n: number): ReturnType<typeof inFamily> => inFamily(n, `2031-05-0${n}T10:00:00.000Z`);
const opened = (learner: string): Promise<Profile> => openProfile({ learner }, () => now.getTime());
const recordOf = ({ files }: Profile): string => files?.record ?? '';

async function withLines(learner: string, lines: string): Promise<Profile> {
  const profile = await opened(learner);
  profile.save(inFamily(0));
  appendFileSync(recordOf(profile), lines);
  return opened(learner);
}

interface Report {
  readonly families: readonly { readonly due?: string; readonly level: number }[];
}
const reportOf = (profile: Profile): Report => JSON.parse(progressJson(profile, { families, now }));

describe('answers dated ahead of the clock', () => {
  const future = [1, 2, 3, 4].map(ahead);

  it('set no date for review, and count for levels', async () => {
    const before = reportOf(await withLines('before', '')).families[0];
    const wrong = await withLines('wrong', future.map(entryLine).join(''));
    const after = reportOf(wrong).families[0];
    expect(after?.due).toBe(before?.due);
    expect(wrong.standing.answers).toBe(5);
    expect(wrong.standing.families.get('family-1')?.level).not.toEqual(
      (await opened('before')).standing.families.get('family-1')?.level,
    );
    // The next answer under the right clock moves the date on as it would without them.
    wrong.save(inFamily(9));
    const right = await opened('before');
    right.save(inFamily(9));
    expect(reportOf(await opened('wrong')).families[0]?.due).toBe(reportOf(right).families[0]?.due);
  });

  it('are due at once where nothing else is known, and begin anew with the next answer', async () => {
    const profile = await opened('only');
    writeFileSync(join(home.path, 'only.jsonl'), future.map(entryLine).join(''));
    recordImport(profile, join(home.path, 'only.jsonl'));
    expect(JSON.parse(progressJson(profile, { families, now })).glance).toMatchObject({
      due: [{ id: 'family-1' }],
      last: { when: '2031-05-04T10:00:00.000Z' },
    });
    expect(reportOf(profile).families[0]?.due).toBeUndefined();
    profile.save(inFamily(0));
    const fresh = await opened('fresh');
    fresh.save(inFamily(0));
    expect(profile.standing.families.get('family-1')?.memory).toEqual(
      fresh.standing.families.get('family-1')?.memory,
    );
  });

  it('are told in one line', async () => {
    const profile = await withLines('Ada', future.map(entryLine).join(''));
    const line =
      "4 answers are dated ahead of this computer's clock (up to 2031-05-04); levels count them, dates for review do not. Check the clock.";
    expect(profile.cautions).toEqual([line]);
    expect(progressText(profile, { families, now, columns: 160 })).toContain(line);
    expect((await withLines('right', '')).cautions).toEqual([]);
    const soon = inFamily(1, new Date(now.getTime() + DAY / 2).toISOString());
    expect((await withLines('travels', entryLine(soon))).cautions).toEqual([]);
  });

  it.each(['out.json', 'out.jsonl'])('go out and come in whole: %s', async (name) => {
    const profile = await withLines('Ada', future.map(entryLine).join(''));
    profile.save(inFamily(9));
    recordExport(profile, join(home.path, name), { now });
    const other = await opened('other');
    expect(recordImport(other, join(home.path, name))).toMatch(/^6 answers added/);
    expect(standingToJson(other.standing)).toBe(standingToJson((await opened('Ada')).standing));
  });

  it('are judged by the clock of the day, whatever a checkpoint says', async () => {
    const profile = await opened('Ada');
    const { record = '', summary = '' } = profile.files ?? {};
    profile.save(answerNo(0));
    const many = Array.from({ length: 600 }, (_, n) => answerNo(n));
    writeFileSync(record, many.map(entryLine).join(''));
    const at = (latest: number) => loadRecord(record, summary, latest).standing.ahead?.count;
    const half = Date.parse(answerNo(299).at);
    expect([at(half), at(START + DAY), at(half), at(half + 60_000)]).toEqual([300, undefined, 300, 299]);
  });
});

describe('lines of a newer version', () => {
  const newer = '{"v":2,"at":"2026-03-02T18:05:00.000Z","brush":"mop"}';
  const torn = '{"v":1,"at":"2026-0';
  const bytes = Buffer.concat([Buffer.from(`${newer}\n${torn}\n`), Buffer.of(0xff, 0xfe, 0x01, 0x0a)]);

  it('are counted and named, not called damaged', async () => {
    const profile = await withLines('Ada', `${newer}\n${newer.replace('mop', 'flat')}\n`);
    const line =
      '2 answers were written by a newer version of the program; they are kept, but not counted here. Bring the program up to date.';
    expect(profile).toMatchObject({ cautions: [line], newerLines: 2, foreignLines: 0, notices: [] });
    expect(progressText(profile, { families, now, columns: 160 })).toContain(line);
    expect(JSON.parse(progressJson(profile, { families, now }))).toMatchObject({ newerLines: 2 });
  });

  it.each(['out.json', 'out.jsonl'])(
    'are carried by an export with all else, and put back: %s',
    async (name) => {
      const profile = await withLines('Ada', '');
      appendFileSync(recordOf(profile), bytes);
      const long = `{"v":3,"x":"${'y'.repeat(40_000)}"}`;
      appendFileSync(recordOf(profile), `${long}\n${entryLine(inFamily(5))}`);
      const path = join(home.path, name);
      expect(recordExport(profile, path, { now })).toContain(
        '\n4 lines that this version cannot read are in it as they stand.\n',
      );
      const other = await opened('other');
      expect(recordImport(other, path)).toMatch(
        /^2 answers added .*\n4 lines that this version cannot read were put back as they stand\.\n/,
      );
      const lines = (profile: Profile): string[] =>
        readFileSync(recordOf(profile), 'latin1').split('\n').sort();
      expect(lines(other)).toEqual(lines(profile));
      expect(recordImport(other, path)).toMatch(/^0 answers added .* 2 were there already\.\n1 answer was/);
      expect(lines(other)).toEqual(lines(profile));
    },
  );

  it('are read when they come back to a version that knows them', async () => {
    const path = join(home.path, 'carried.json');
    const unread = [JSON.stringify(answerNo(7)), newer];
    writeFileSync(path, JSON.stringify({ schemaVersion: 1, kind: 'mudlark-record', answers: [], unread }));
    const profile = await opened('Ada');
    expect(recordImport(profile, path)).toMatch(
      /^1 answer added .*\n1 line that .* was put back as it stands/,
    );
    expect(profile.standing.answers).toBe(1);
  });

  it('cannot smuggle lines in: a carried line is one line', async () => {
    const path = join(home.path, 'carried.json');
    const unread = [`x\n${JSON.stringify(answerNo(7))}`, '', 7, { base64: 'Cg==' }, 'y'.repeat(1_000_001)];
    const answers = [answerNo(1)];
    writeFileSync(path, JSON.stringify({ schemaVersion: 1, kind: 'mudlark-record', answers, unread }));
    const profile = await opened('Ada');
    expect(recordImport(profile, path)).toMatch(
      /^1 answer added .*\n5 answers could not be used .* number 2\./,
    );
    expect(readFileSync(recordOf(profile), 'utf8')).toBe(entryLine(answerNo(1)));
  });

  it('are safe to print', async () => {
    const profile = await withLines('Ada', '{"v":2,"x":"\u202e\u009b31m"}\n');
    const { text, notes } = recordExportText(profile, { now });
    expect(text).not.toMatch(/[\u202e\u009b]/);
    expect(notes).toEqual(['1 line that this version cannot read is in it as it stands.']);
  });
});
