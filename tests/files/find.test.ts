import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findFiles } from '../../src/files/find.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-find-'));
  for (const name of ['w', 'w/sub', 'w/a/b/c/d/e', 'v']) mkdirSync(join(folder, name), { recursive: true });
  for (const name of [
    'w/2.answers.json',
    'w/10.answers.json',
    'w/notes.txt',
    'w/sub/x.answers.json',
    'w/.hidden.json',
    'v/[1].json',
    'v/a+b.json',
    'w/a/b/c/d/e/deep.answers.json',
  ])
    writeFileSync(join(folder, name), '');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const wants = (name: string): boolean => name.endsWith('.answers.json');
const found = (...given: string[]): [string, boolean][] =>
  findFiles(
    given.map((name) => join(folder, name)),
    wants,
  ).map(({ path, isNamed }) => [relative(folder, path), isNamed]);

describe('finding files', () => {
  it('takes a file for itself, there or not, and of a folder what is wanted, in the order of people', () => {
    expect(found('w/notes.txt', 'none.json')).toEqual([
      ['w/notes.txt', true],
      ['none.json', true],
    ]);
    expect(found('w')).toEqual([
      ['w/2.answers.json', false],
      ['w/10.answers.json', false],
      ['w/sub/x.answers.json', false],
    ]);
  });

  // IEEE Std 1003.1, 2.14 Pattern Matching Notation: * any string, ? any character, neither a slash nor a leading dot.
  it('fills patterns in as a shell does', () => {
    expect(found('w/*.json').map(([path]) => path)).toEqual(['w/2.answers.json', 'w/10.answers.json']);
    expect(found('w/?.answers.json')).toEqual([['w/2.answers.json', true]]);
    expect(found('?/[1]*').map(([path]) => path)).toEqual(['v/[1].json']);
    expect(found('v/a+?.json').map(([path]) => path)).toEqual(['v/a+b.json']);
    expect(found('w/.h*').map(([path]) => path)).toEqual(['w/.hidden.json']);
    expect(found('*/sub')).toEqual([['w/sub/x.answers.json', false]]);
  });

  it('says so when nothing is there', () => {
    expect(() => found('v')).toThrow(/this folder holds no file to read here/);
    expect(() => found('w/*.pdf')).toThrow(/no file fits this pattern/);
    expect(() => found('none/*.json')).toThrow(/no file fits this pattern|no such/);
  });

  it('takes no time over many stars, and follows no links into a circle', () => {
    writeFileSync(join(folder, 'v', 'a'.repeat(200)), '');
    expect(() => found(`v/${'*a'.repeat(40)}*b`)).toThrow(/no file fits/);
    symlinkSync(folder, join(folder, 'w', 'round'));
    expect(found('w')).toHaveLength(3);
  });
});
