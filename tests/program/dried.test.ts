/** What dried, through the built program without a terminal. */
import { spawnSync } from 'node:child_process';
import { beforeEach, describe, expect, it } from 'vitest';
import { CLI, cleanEnv, mudlark, mudlarkHere, type Run } from './run-cli.js';

let env: Record<string, string> = {};
const run = (...args: string[]): Run => mudlark(args, env);
const piped = (input: string, ...args: string[]): Run => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [CLI, ...args], {
    env,
    input,
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
};
const BOX = ['box', 'new', 'mine', '--paints', 'burnt-sienna,ultramarine-blue,prussian-blue,cadmium-yellow'];

beforeEach(async () => {
  env = cleanEnv();
  for (const args of [BOX, ['box', 'use', 'mine']]) expect((await mudlarkHere(args, env)).code).toBe(0);
});

describe('mudlark dried', () => {
  it('asks for mixtures of the box in use, in words and as JSON', () => {
    const { out, code } = run('dried', 'ask');
    expect(code).toBe(0);
    expect(out).toMatch(/1\. +Make a wash of 1 part [\w ]+ to \d+ of water/);
    expect(out).toContain('cadmium yellow');
    expect(out).toContain('--lab');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    const { mixtures, silent } = JSON.parse(run('dried', 'ask', '--json').out);
    expect(mixtures).toHaveLength(3);
    expect(silent).toEqual(['cadmium-yellow']);
    expect(JSON.parse(run('dried', '--lab', 'ask', '--json').out).silent).toEqual([]);
  });

  it('keeps a table, shows it, and forgets it', () => {
    const table =
      'burnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 6\nburnt-sienna=1 1:12; prussian-blue=1; 5; 8\n';
    expect(piped(table, 'dried', 'add', '--from', '-').out).toContain('2 readings kept.');
    const { readings, tubes } = JSON.parse(run('dried', 'show', '--json').out);
    expect(readings).toHaveLength(2);
    expect(readings[0].predicted.mixed.step).toBeGreaterThan(readings[0].predicted.alone.step);
    expect(tubes.map(({ id }: { id: string }) => id).toSorted()).toEqual([
      'burnt-sienna',
      'prussian-blue',
      'ultramarine-blue',
    ]);
    expect(run('dried', 'forget', 'all', '--yes').out).toContain('All readings');
    expect(run('dried', 'show').out).toContain('No readings');
  });

  it('breaks lines between words', () => {
    const lab = 'burnt-sienna=1 1:24; ultramarine-blue=2; lab(60 10 20); lab(30 0 -20)';
    const { out } = piped(`${lab}\n`, 'dried', 'add', '--from', '-');
    for (const text of [out, run('dried', 'show').out, run('dried', '--help').out])
      for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
    expect(out).toMatch(/^ +yours lab\(60 10 20\), predicted lab/m);
  });

  it('believes no steps that are the same whatever was mixed, and corrects nothing by them', () => {
    const { mixtures } = JSON.parse(run('dried', 'ask', '--json').out);
    interface Mixture {
      readonly paints: object;
      readonly water: string;
      readonly add: object;
    }
    const cell = (parts: object) =>
      Object.entries(parts)
        .map((each) => each.join('='))
        .join(' ');
    const wider = ['1:48', '1:24', '1:12'].flatMap((water) =>
      (mixtures as Mixture[]).map(({ paints, add }) => `${cell(paints)} ${water}; ${cell(add)}; 4; 5`),
    );
    expect(piped(wider.join('\n'), 'dried', 'add', '--from', '-').out).toContain('do not fit together');
    expect(run('dried', 'correct', '--yes').err).toMatch(/do not fit together.*daylight/);
  });

  it('refuses a paint of another box, as it is built', async () => {
    const args = ['dried', 'add', 'viridian=1', '--water', '1:24', '--mixed', '6'];
    expect(run(...args)).toEqual(await mudlarkHere(args, env));
  });

  it.each([
    [['dried'], 2, /asks in a terminal/],
    [['dried', '--box', 'mine'], 2, /asks in a terminal/],
    [['dried', '--lab', '--box', 'mine', '--learner', 'me'], 2, /asks in a terminal/],
    [['dried', '--box', 'mine', 'shw'], 2, /dried has no command "shw"/],
    [['dried', 'add'], 2, /say what was painted/],
    [['dried', 'add', 'burnt-sienna=1', '--water', '24', '--mixed', '6'], 2, /1:24/],
    [['dried', 'add', 'viridian=1', '--water', '1:24', '--mixed', '6'], 2, /not in the mine box/],
    [
      ['dried', 'add', 'viridian=1', '--water', '1:24', '--mixed', '6', '--box', 'twelve'],
      2,
      /the program's/,
    ],
    [['dried', 'forget', '1'], 2, /no readings/],
    [['dried', 'correct', '--yes'], 1, /no tube is known well enough/],
    [['dried', 'add', '--from', 'nowhere.txt'], 1, /nowhere/],
  ])('refuses %j in one line', async (args, code, words) => {
    const { code: got, err, out } = await mudlarkHere(args, env);
    expect([got, out]).toEqual([code, '']);
    expect(err).toMatch(/^mudlark: [^\n]+\n$/);
    expect(err).toMatch(words);
  });
});
