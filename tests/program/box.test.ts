/** `mudlark box` on the built program: every command, every fault one line, and what the box does elsewhere. */
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { cleanEnv, mudlark, mudlarkHere, type Run } from './run-cli.js';

let env: Record<string, string> = {};
let folder = '';
beforeEach(() => {
  env = cleanEnv();
  folder = mkdtempSync(join(tmpdir(), 'mudlark-box-'));
});
const run = (...args: string[]): Run => mudlark(args, env);
const here = (...args: string[]): Promise<Run> => mudlarkHere(args, env);
const json = async <T>(...args: string[]): Promise<T> => JSON.parse((await here(...args, '--json')).out) as T;
// Few drills ask for raw sienna: each that does is checked again at its strength.
const NEW = [
  ...['box', 'new', 'studio', '--paints', 'raw-sienna,ultramarine-blue', '--paints', 'alizarin-crimson'],
  ...['--name-of', 'raw-sienna=my sienna', '--strength', 'raw-sienna=1.4'],
];
const made = async (): Promise<void> => {
  expect(await here(...NEW)).toMatchObject({ code: 0, err: '' });
};
interface Shown {
  id: string;
  own: boolean;
  inUse: boolean;
  revision: string;
  paints: { id: string; name: string; strength: number }[];
  drills: { held: number; notOwned: number; unsound: number };
}

describe('mudlark box', () => {
  it('is called otherwise, and stays in use', async () => {
    await made();
    expect((await here('box', 'use', 'studio')).code).toBe(0);
    expect(run('box', 'edit', 'studio', '--name', 'Quay').out).toMatch(
      /^The quay box is kept: 3 paints\. It is in use\.\n/,
    );
    expect(await json<Shown>('box', 'show')).toMatchObject({ id: 'quay', own: true, inUse: true });
    expect((await here('box', 'show', 'studio')).code).toBe(2);
  });

  it('puts one together, shows it, changes it', async () => {
    const { out } = run(...NEW);
    expect(out).toMatch(
      /^The studio box is kept: 3 paints\. Use it with: mudlark box use studio\nWith the studio box/,
    );
    const before = await json<Shown>('box', 'show', 'studio');
    expect(before).toMatchObject({ id: 'studio', own: true, inUse: false });
    expect(before.paints).toEqual([
      { id: 'raw-sienna', name: 'my sienna', strength: 1.4 },
      { id: 'ultramarine-blue', name: 'ultramarine blue', strength: 1 },
      { id: 'alizarin-crimson', name: 'alizarin crimson', strength: 1 },
    ]);
    expect(before.drills.notOwned).toBeGreaterThan(0);
    expect(run('box', 'show', 'studio').out).toMatch(/raw-sienna +"my sienna" +1\.4 times as strong\n/);
    const edit = [
      '--add',
      'viridian',
      '--remove',
      'alizarin-crimson',
      '--name-of',
      'raw-sienna=',
      '--strength',
      'viridian=0.5',
    ];
    expect(run('box', 'edit', 'Studio', ...edit).code).toBe(0);
    const after = await json<Shown>('box', 'show', 'studio');
    expect(after.paints.map(({ name, strength }) => [name, strength])).toEqual([
      ['raw sienna', 1.4],
      ['ultramarine blue', 1],
      ['viridian', 0.5],
    ]);
    expect(after.revision).not.toBe(before.revision);
  });

  it('lists all, and uses one for this learner alone', async () => {
    await made();
    expect(run('box', 'use', 'studio').out).toMatch(/^The box in use is studio\.\nWith the studio box/);
    const { boxes } = await json<{ boxes: Shown[] }>('box', 'list');
    expect(boxes.map(({ id, own, inUse }) => [id, own, inUse])).toContainEqual(['studio', true, true]);
    expect(run('box', 'list').out).toMatch(/^studio +3 paints +your own +in use$/m);
    expect(run('settings').out).toMatch(/^palette +studio +settings file$/m);
    const ben = await here('mix', 'raw-sienna=1', '--box', 'six');
    expect(ben.out).toContain('raw sienna');
    const other = mudlark(['recipe', '--to', '#6b4a2f', '--learner', 'Ben'], env);
    expect(other.code).toBe(0);
    expect(other.err).toBe(
      'mudlark: Ben has no box called "studio"; the twelve paints are used. See: mudlark box list\n',
    );
  });

  it('keeps predictions and recipes to it, and says so', async () => {
    await made();
    await here('box', 'use', 'studio');
    const mixture = ['mix', 'raw-sienna=1', 'ultramarine-blue=1', '--strength', '0.4'];
    const own = run(...mixture);
    expect(own.out).toContain('my sienna');
    expect(own.out).toContain(
      "Tubes as you say they are, against the library's: my sienna 1.4 times as strong.",
    );
    // A part of this tube does what 1.4 parts of the library's paint do.
    const { lab } = await json<{ lab: object }>(...mixture);
    const same = ['mix', 'raw-sienna=1.4', 'ultramarine-blue=1', '--strength', '0.4', '--box', 'twelve'];
    const { lab: byLibrary } = await json<{ lab: Record<string, number> }>(...same);
    for (const [axis, value] of Object.entries(lab))
      expect(value).toBeCloseTo(byLibrary[axis] ?? Number.NaN, 6);
    const { asked, recipes } = await json<{ asked: { within: string[] }; recipes: { words: string }[] }>(
      ...['recipe', '--from', 'ultramarine-blue=1', '--goal', 'dull'],
    );
    expect(asked.within).toEqual(['raw-sienna', 'ultramarine-blue', 'alizarin-crimson']);
    expect(recipes.map(({ words }) => words).join(' ')).toContain('my sienna');
  });

  it('goes to a file and back, and replaces nothing unasked', async () => {
    await made();
    const file = join(folder, 'studio.box.json');
    expect(run('box', 'export', 'studio', file).out).toBe('written: studio.box.json\n');
    expect(await here('box', 'export', 'studio', file)).toMatchObject({ code: 1, out: '' });
    expect(run('box', 'export', 'studio', '-').out).toBe(readFileSync(file, 'utf8'));
    expect(run('box', 'import', file).out).toBe('The box studio is there already.\n');
    await here('box', 'edit', 'studio', '--strength', 'raw-sienna=1');
    const refused = run('box', 'import', file);
    expect(refused).toMatchObject({ code: 1, out: '' });
    expect(refused.err).toMatch(
      /^mudlark: a box called studio is there already; add --as NAME .*--force[^\n]*\n$/,
    );
    expect((await here('box', 'import', file, '--as', 'ana')).code).toBe(0);
    expect((await here('box', 'import', file, '--force')).code).toBe(0);
    expect((await json<Shown>('box', 'show', 'studio')).paints[0]?.strength).toBe(1.4);
    const [ana, studio] = [
      await json<Shown>('box', 'show', 'ana'),
      await json<Shown>('box', 'show', 'studio'),
    ];
    expect(ana.paints).toEqual(studio.paints);
  });

  it('is deleted when sure; the box in use is the usual one then', async () => {
    await made();
    await here('box', 'use', 'studio');
    expect(run('box', 'delete', 'studio').code).toBe(2);
    expect(run('box', 'delete', 'studio', '--yes').out).toBe(
      'The box studio is deleted; the box in use is twelve now.\n',
    );
    expect(await json<Shown>('box', 'show')).toMatchObject({ id: 'twelve', inUse: true });
  });

  it('refuses a paint that there is not, as it is built', async () => {
    const args = ['box', 'new', 'x', '--paints', 'burnt-siena,viridian'];
    expect(run(...args)).toEqual(await mudlarkHere(args, env));
  });

  it.each([
    [['box', 'new', 'x', '--paints', 'burnt-siena,viridian'], /Did you mean burnt-sienna/],
    [['box', 'new', 'x', '--paints', 'viridian'], /holds 2 to 60 paints, not 1/],
    [['box', 'new', 'x'], /--paints/],
    [['box', 'new', 'six', '--paints', 'viridian,raw-sienna'], /a box called six already; choose another/],
    [['box', 'new', 'a/b', '--paints', 'viridian,raw-sienna'], /must be small letters, digits and hyphens/],
    [[...NEW, '--strength', 'raw-sienna=4.5'], /must be 0\.25 to 4 times the library's/],
    [[...NEW, '--strength', 'raw-sienna=x'], /must be a number/],
    [[...NEW, '--strength', 'viridian=1.2'], /viridian is not in the box/],
    [[...NEW, '--strength', 'raw-sienna'], /must be written paint=times/],
    [[...NEW, '--name-of', 'raw-sienna=a\u001b[31mb'], /a character that cannot be shown/],
    [[...NEW, '--name-of', `raw-sienna=${'x'.repeat(31)}`], /at most 30 columns/],
    [[...NEW, '--name-of', 'ultramarine-blue=My Sienna'], /two paints would be called "my sienna"/],
    [
      ['box', 'edit', 'studio', '--add', 'viridian'],
      /no box of your own is called "studio"; there is none yet/,
    ],
    [['box', 'use', 'twelv'], /no box is called "twelv"\. Did you mean twelve\?/],
    [['box', 'show', 'twelv'], /no box is called/],
    [['box'], /box needs a command; there are: new, edit/],
    [['mix', 'viridian=1', '--box', 'twelv'], /no box is called/],
  ])('refuses %j in one line', async (args, words) => {
    const { code, out, err } = await mudlarkHere(args, env);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(words);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it.each([
    ['a record', '{"kind": "mudlark-record"}', /"kind"|must be "mudlark-box"|known key|missing/],
    ['no JSON', 'box: studio', /this is not JSON/],
    [
      'a paint that there is not',
      '{"kind":"mudlark-box","format":1,"box":{"name":"a","paints":[{"paint":"burnt-siena"},{"paint":"viridian"}]}}',
      /no paint is called "burnt-siena"\. Did you mean burnt-sienna/,
    ],
    [
      'a name that steers',
      '{"kind":"mudlark-box","format":1,"box":{"name":"a","paints":[{"paint":"viridian","name":"a\\u001b[2Jb"},{"paint":"raw-sienna"}]}}',
      /cannot be shown/,
    ],
    ['a megabyte', `"${'x'.repeat(1_000_000)}"`, /more than the 0\.5 MB/],
  ])('refuses a file of %s in one line, and keeps nothing', async (_, text, words) => {
    const file = join(folder, 'x.json');
    writeFileSync(file, text);
    const { code, out, err } = await mudlarkHere(['box', 'import', file], env);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(words);
    expect(err).toMatch(/^mudlark: [^\p{Cc}]+\n$/u);
    expect((await mudlarkHere(['box', 'list'], env)).out).toMatch(/^twelve(?![\s\S]*your own)/m);
  });
});

it('a quiz is the same whatever box its author uses', async () => {
  const write = async (name: string): Promise<string> => {
    const path = join(folder, name);
    const flags = [
      '--families',
      'darken-bright,tinting-strength',
      '--count',
      '6',
      '--level',
      '4',
      '--seed',
      '7',
    ];
    expect((await here('quiz', 'write', ...flags, '--title', 'Week', '--out', path)).code).toBe(0);
    return path;
  };
  // The secret of each handout is its own.
  const told = (path: string): string => readFileSync(path, 'utf8').replace(/^secret: .*$/m, '');
  const keyOf = async (path: string): Promise<string> => (await here('quiz', 'key', path)).out;
  const before = await write('before.yaml');
  const key = await keyOf(before);
  await here(...NEW);
  await here('box', 'edit', 'studio', '--strength', 'ultramarine-blue=4');
  await here('box', 'use', 'studio');
  expect(told(await write('after.yaml'))).toBe(told(before));
  expect(await keyOf(before)).toBe(key);
  expect(key).not.toContain('my sienna');
});
