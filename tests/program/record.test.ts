/** The record through the built program: what cannot be read or written is one line and an exit code, and nothing is lost. */
import { execFileSync, spawnSync } from 'node:child_process';
import {
  appendFileSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { entryLine } from '../../src/practice/index.js';
import { learnerFiles } from '../../src/profile/index.js';
import { answerNo, IN_PLACE } from '../profile/helpers.js';
import { CLI, cleanEnv, mudlark, type Run } from './run-cli.js';

let env: Record<string, string> = {};
let folder = '';
let record = '';
beforeEach(() => {
  env = cleanEnv();
  const files = learnerFiles(join(env['XDG_DATA_HOME'] as string, 'mudlark'), 'me');
  record = files.record;
  folder = env['HOME'] as string;
  mkdirSync(files.folder, { recursive: true });
  writeFileSync(record, [0, 1, 2].map((n) => entryLine(answerNo(n))).join(''));
});
const run = (...args: string[]): Run => mudlark(args, env);
const oneLine = ({ err }: Run): string => {
  expect(err).toMatch(/^mudlark: [^\n]+\n$/);
  return err;
};

describe('a record that cannot be read', () => {
  const DEVICE = 'this is a device or a pipe, not a plain file';
  const WORDS: Readonly<Record<string, string>> = {
    'a folder': 'this is a folder, not a file',
    'a pipe that nobody reads': DEVICE,
    'links that lead in a circle': 'its links lead in a circle',
    'a device that swallows all': DEVICE,
  };
  it.each(Object.keys(WORDS))('%s: one line and exit code 1 for all that needs it', (kind) => {
    rmSync(record);
    IN_PLACE[kind]?.(record);
    for (const args of [
      ['progress'],
      ['progress', '--json'],
      ['record', 'export', '-'],
      ['record', 'export', join(folder, 'out.json')],
      ['record', 'import', join(folder, 'none.json')],
      ['record', 'reset', '--yes'],
    ]) {
      const ended = run(...args);
      expect([args, ended.code, ended.out]).toEqual([args, 1, '']);
      expect(oneLine(ended)).toContain(`record.jsonl: ${WORDS[kind]}`);
    }
    expect(readdirSync(folder)).not.toContain('out.json');
  });

  it.skipIf(process.getuid?.() === 0)('one without permission', () => {
    execFileSync('chmod', ['000', record]);
    expect(oneLine(run('progress'))).toContain('it may not be read; check its permissions');
  });
});

describe('an export', () => {
  const kept = (): void => {
    expect(readFileSync(record, 'utf8').split('\n')).toHaveLength(4);
    expect(JSON.parse(readFileSync(record, 'utf8').split('\n')[0] as string).v).toBe(1);
  };

  it('never takes the place of a record, by its name, a link or another spelling', () => {
    symlinkSync(record, join(folder, 'link.json'));
    symlinkSync(join(record, '..'), join(folder, 'there'));
    const other = join(record, '..', '..', 'new.json');
    for (const path of [record, join(folder, 'link.json'), join(folder, 'there', 'record.jsonl'), other]) {
      for (const args of [
        ['record', 'export', path, '--force'],
        ['progress', '--csv', path, '--force'],
      ]) {
        const ended = run(...args);
        expect([args, ended.code]).toEqual([args, 1]);
        expect(oneLine(ended)).toContain('records are kept there; name a file in another folder');
        kept();
      }
    }
    expect(lstatSync(join(folder, 'link.json')).isSymbolicLink()).toBe(true);
  });

  it('is written through a link, which stays', () => {
    const link = join(folder, 'link.json');
    symlinkSync('target.json', link);
    for (const _ of [1, 2]) {
      expect(run('record', 'export', link, '--force').code).toBe(0);
      expect(lstatSync(link).isSymbolicLink()).toBe(true);
      expect(JSON.parse(readFileSync(join(folder, 'target.json'), 'utf8')).answers).toHaveLength(3);
    }
    expect(oneLine(run('record', 'export', link))).toContain('is there already');
  });

  it('goes through a pipe into another record, with what it could not read', () => {
    appendFileSync(record, '{"v":2}\n');
    const out = run('record', 'export', '-');
    expect(out).toMatchObject({
      code: 0,
      err: 'mudlark: 1 line that this version cannot read is in it as it stands.\n',
    });
    const taken = spawnSync(process.execPath, [CLI, 'record', 'import', '-', '--learner', 'Ada'], {
      env,
      encoding: 'utf8',
      input: out.out,
    });
    expect([taken.status, taken.stdout.split('\n')[0]]).toEqual([
      0,
      '3 answers added to the record of Ada; none was there already.',
    ]);
    const wrong = spawnSync(process.execPath, [CLI, 'record', 'import', '-'], {
      env,
      encoding: 'utf8',
      input: 'no',
    });
    expect([wrong.status, wrong.stderr]).toEqual([
      1,
      'mudlark: standard input: there is no answer in it that can be used; give a file made by "record export"\n',
    ]);
  });
});

describe('a full device', () => {
  const onto = (stream: 'stdout' | 'stderr', args: readonly string[]) => {
    const full = openSync('/dev/full', 'w');
    const stdio = stream === 'stdout' ? ['ignore', full, 'pipe'] : ['ignore', 'pipe', full];
    return spawnSync(process.execPath, [CLI, ...args], { env, encoding: 'utf8', stdio: stdio as 'pipe'[] });
  };

  it.each([['record export -'], ['progress'], ['pigments'], ['--version'], ['--help']])(
    'is told in words: %s',
    (args) => {
      const { status, stderr } = onto('stdout', args.split(' '));
      expect([status, stderr]).toEqual([1, 'mudlark: the output cannot be written: the disk is full\n']);
    },
  );

  it.each([
    ['record nothing', 2],
    ['record import none.json', 1],
  ])('does not change an exit code where the fault itself cannot be said: %s', (args, code) => {
    expect(onto('stderr', args.split(' ')).status).toBe(code);
  });
});
