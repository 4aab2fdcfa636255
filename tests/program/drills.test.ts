import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mudlark, mudlarkHere, mudlarkJson } from './run-cli.js';

interface GradeDocument {
  schemaVersion: number;
  drill: string;
  mark: number;
  value: { before: number; after: number; asked: number[]; verdict: string };
  chroma: { kept: number; shadingLine: number; best: number; verdict: string };
  best: { second: string; amount: string; thin: string; mark: number };
  explanation: string[];
  judged: { part: string; verdict: string; text: string }[];
}

function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-drills-'));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

const GOOD = `format: 1
family: darken-bright
drills:
  - id: quay-test
    level: 3
    kind: mix
    title: Quay
    scene: A quay wall.
    start: { paints: { burnt-sienna: 1 }, strength: 0.3 }
    goal: { aim: rich, value: [5.3, 6.3] }
    tray: [alizarin-crimson, ultramarine-blue, ivory-black]
    amounts: ['1:8', '1:4', '1:2', '1:1']
`;

describe('mudlark grade', () => {
  it('grades the best answer full and explains', () => {
    const args = ['grade', 'harbour-roof-shade'];
    const first = mudlark([...args, '--second', 'nonsense', '--amount', '1:4']);
    expect(first.code).toBe(2);
    const some = mudlark([...args, '--second', 'ultramarine-blue', '--amount', '1:2', '--json']);
    const grade = JSON.parse(some.out) as GradeDocument;
    expect(grade.schemaVersion).toBe(1);
    const { best } = grade;
    const again = mudlarkJson<GradeDocument>([
      ...args,
      '--second',
      best.second,
      '--amount',
      best.amount,
      // What the drill fixes may be said, too.
      '--thin',
      best.thin,
    ]);
    expect(again.mark).toBe(100);
    expect(again.mark).toBe(best.mark);
    expect(grade.mark).toBeLessThan(60);
    expect(again.explanation.length).toBeGreaterThanOrEqual(3);
    expect(again.judged.map(({ part }) => part)).toEqual(expect.arrayContaining(['value', 'chroma']));
    expect(again.chroma.best).toBeGreaterThan(0);
  });

  it.each([
    [['grade', 'harbour-rof-shade', '--second', 'x', '--amount', '1:4'], /Did you mean harbour-roof-shade/],
    [
      ['grade', 'harbour-roof-shade', '--second', 'alizarin-crimson', '--amount', '1:3'],
      /added paint to wash.*takes one of/,
    ],
    [['grade', 'harbour-roof-shade', '--second', 'alizarin-crimson'], /added paint to wash.*is not chosen/],
  ])('refuses %j', async (args, message) => {
    const run = await mudlarkHere(args);
    expect(run.code).toBe(2);
    expect(run.err).toMatch(message);
    expect(run.err.trimEnd().split('\n')).toHaveLength(1);
  });
});

describe('mudlark drills', () => {
  it('lists every shipped drill as JSON', () => {
    const { drills } = mudlarkJson<{ drills: { id: string; family: string }[] }>(['drills']);
    expect(drills.length).toBeGreaterThanOrEqual(24);
    expect(new Set(drills.map(({ id }) => id)).size).toBe(drills.length);
  });

  it('lists the id of each drill and family beside its title, within 80 columns', () => {
    const { drills } = mudlarkJson<{ drills: { id: string; family: string; title: string }[] }>(['drills']);
    const lines = mudlark(['drills']).out.trimEnd().split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    let family = '';
    const listed = lines.flatMap((line) => {
      family = /^\S.*\(([a-z-]+)\)$/.exec(line)?.[1] ?? family;
      const [, id, title] = /^ {2}(\S+) +level \d {2}(.+)$/.exec(line) ?? [];
      return id === undefined ? [] : [{ id, family, title }];
    });
    const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);
    expect(listed.sort(byId)).toEqual(
      drills.map(({ id, family: of, title }) => ({ id, family: of, title })).sort(byId),
    );
  });

  it('checks a folder of drills', () => {
    const run = mudlark(['drills', 'check', folderWith({ 'a.yaml': GOOD })]);
    expect(run.err).toBe('');
    expect(run.out).toMatch(/1 drills checked, 0 with faults/);
    expect(run.code).toBe(0);
  });

  it('fails a drill whose goal cannot be reached', () => {
    const run = mudlark([
      'drills',
      'check',
      folderWith({ 'a.yaml': GOOD.replace('[5.3, 6.3]', '[9.4, 9.9]') }),
    ]);
    expect(run.code).toBe(1);
    expect(run.out).toMatch(/cannot be reached/);
  });

  it.each<[string, Record<string, string>, RegExp]>([
    ['malformed YAML', { 'a.yaml': 'format: 1\nfamily: [unclosed\n' }, /a\.yaml:\d+: /],
    ['an unknown key', { 'a.yaml': GOOD.replace('title:', 'titel:') }, /a\.yaml:\d+: .*titel/],
    [
      'an unknown paint',
      { 'a.yaml': GOOD.replace('alizarin-crimson,', 'alizarin-crimsom,') },
      /a\.yaml:11: .*Did you mean alizarin-crimson/,
    ],
    ['a goal without its aim', { 'a.yaml': GOOD.replace('aim: rich, ', '') }, /a\.yaml:10: .*aim is missing/],
    [
      'a shade with a chroma of its own',
      { 'a.yaml': GOOD.replace('aim: rich,', 'aim: shade, chroma: [20, 36],') },
      /a\.yaml:10: .*a shade has its chroma from the light/,
    ],
    ['a duplicated id in two files', { 'a.yaml': GOOD, 'sub/b.yaml': GOOD }, /quay-test/],
    [
      'control characters',
      { 'a.yaml': GOOD.replace('title: Quay', 'title: "Qu\\eay"') },
      /a\.yaml:\d+: .*control/,
    ],
    [
      'a bidi override',
      { 'a.yaml': GOOD.replace('title: Quay', 'title: "Qu\\u202Eay"') },
      /control or direction/,
    ],
    ['5 MB', { 'a.yaml': `# ${'x'.repeat(5_000_000)}` }, /5\.0 MB/],
    ['deep nesting', { 'a.yaml': `format: ${'['.repeat(100_000)}` }, /nested/],
    ['an alias bomb', { 'a.yaml': `a: &a [x,x]\nb: &b [*a,*a]\nc: [*b,*b]\n` }, /a\.yaml/],
    ['another format', { 'a.yaml': GOOD.replace('format: 1', 'format: 9') }, /a\.yaml:1: .*format/],
    ['an empty file', { 'a.yaml': '' }, /a\.yaml/],
    ['no files', { 'readme.txt': 'hello' }, /no \.yaml files/],
  ])('refuses %s with one line and exit code 1', async (_what, files, message) => {
    const run = await mudlarkHere(['drills', 'check', folderWith(files)]);
    expect(run.code).toBe(1);
    expect(run.err).toMatch(message);
    expect(run.err.trimEnd().split('\n')).toHaveLength(1);
    expect(run.err).not.toMatch(/fault of the program/);
  });

  it('says when the folder is not there, as it is built', async () => {
    const args = ['drills', 'check', '/nowhere/at/all'];
    const run = mudlark(args);
    expect(run).toEqual(await mudlarkHere(args));
    expect(run.code).toBe(1);
    expect(run.err).toMatch(/no such file/);
  });
});
