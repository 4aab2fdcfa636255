/** The package as npm makes it: small, nothing but what runs, and at work in an empty place without a network. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';

/** Largest package, bytes. */
const MOST_BYTES = 35e6;

const place = mkdtempSync(join(tmpdir(), 'mudlark-package-'));
const elsewhere = join(place, 'elsewhere');
let tarball: string;

const npm = (...args: string[]): string =>
  execFileSync('npm', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });

beforeAll(() => {
  mkdirSync(elsewhere);
  const [name = ''] = npm('pack', '--pack-destination', place).trim().split('\n').slice(-1);
  tarball = join(place, name);
  npm('install', '--global', '--prefix', place, '--offline', '--omit=optional', '--ignore-scripts', tarball);
});

/** The program as it was installed, run where nothing of its sources is. */
const mudlark = (...args: string[]): string =>
  execFileSync(join(place, 'bin', 'mudlark'), args, {
    cwd: elsewhere,
    encoding: 'utf8',
    env: { PATH: process.env['PATH'], HOME: elsewhere, LANG: 'C.UTF-8' },
  });

it('is small, and holds what runs and its terms', () => {
  expect(statSync(tarball).size).toBeLessThan(MOST_BYTES);
  const folder = join(place, 'lib', 'node_modules', 'mudlark');
  expect(readdirSync(folder).sort()).toEqual(['LICENSE', 'README.md', 'dist', 'package.json', 'src']);
  expect(readdirSync(join(folder, 'src'))).toEqual(['SOURCES.md']);
  expect(readdirSync(join(folder, 'dist'))).not.toContain('tools');
  const notice = readFileSync(join(folder, 'dist', 'NOTICE'), 'utf8');
  for (const name of ['react', 'ink', 'commander', 'munsell', 'culori'])
    expect(notice).toMatch(new RegExp(`^${name} [0-9]`, 'm'));
});

it('installs nothing beside itself', () => {
  expect(readdirSync(join(place, 'lib', 'node_modules'))).toEqual(['mudlark']);
  expect(readdirSync(join(place, 'lib', 'node_modules', 'mudlark'))).not.toContain('node_modules');
});

it('predicts, lists drills, makes a quiz and a chart', () => {
  expect(mudlark('mix', 'burnt-sienna=4', 'alizarin-crimson=2', '--strength', '0.3')).toContain('CIELAB');
  expect(mudlark('drills')).toContain('darken-bright');
  mudlark(
    'quiz',
    'write',
    '--families',
    'darken-bright',
    '--count',
    '2',
    '--seed',
    '1',
    '--out',
    'q.quiz.yaml',
  );
  mudlark('chart', 'values', '--out', 'v.pdf');
  expect(readdirSync(elsewhere)).toEqual(expect.arrayContaining(['q.quiz.yaml', 'v.pdf']));
});
