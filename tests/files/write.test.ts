/** Writing files: put in place whole, never over another, and nothing left beside them. */
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  appendLines,
  makeFolder,
  moveAside,
  PRIVATE,
  replaceWhole,
  SHARED,
  writeNew,
} from '../../src/files/write.js';

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-files-'));
  path = join(folder, 'a.txt');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const text = (): string => readFileSync(path, 'utf8');

describe('replacing a file', () => {
  it('puts the new text there, whole or piece by piece, and leaves nothing beside it', () => {
    replaceWhole(path, 'one', PRIVATE);
    expect(text()).toBe('one');
    expect(statSync(path).mode & 0o777).toBe(PRIVATE);
    replaceWhole(path, ['two, ', 'é'.repeat(100_000)], SHARED);
    expect(text()).toBe(`two, ${'é'.repeat(100_000)}`);
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it('leaves the old one as it was when the text ends in a fault', () => {
    replaceWhole(path, 'old', PRIVATE);
    const broken = function* (): Generator<string> {
      yield 'half';
      throw new Error('no more');
    };
    expect(() => replaceWhole(path, broken(), PRIVATE)).toThrow('no more');
    expect(text()).toBe('old');
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it('follows a link instead of putting a file in its place', () => {
    const link = join(folder, 'link');
    writeFileSync(path, 'old');
    symlinkSync(path, link);
    replaceWhole(link, 'new', PRIVATE);
    expect(text()).toBe('new');
    expect(
      readdirSync(folder, { withFileTypes: true })
        .find(({ name }) => name === 'link')
        ?.isSymbolicLink(),
    ).toBe(true);
  });

  it('writes through a link that leads to nothing yet, and to a link, and leaves them', () => {
    const [one, two] = [join(folder, 'one'), join(folder, 'two')];
    symlinkSync('two', one);
    symlinkSync(path, two);
    replaceWhole(one, 'new', PRIVATE);
    expect(text()).toBe('new');
    const links = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isSymbolicLink());
    expect(links.map(({ name }) => name).sort()).toEqual(['one', 'two']);
    symlinkSync(join(folder, 'b'), join(folder, 'a'));
    symlinkSync(join(folder, 'a'), join(folder, 'b'));
    expect(() => replaceWhole(join(folder, 'a'), 'x', PRIVATE)).toThrow('ELOOP');
  });

  it('takes the place of nothing but a plain file', () => {
    mkdirSync(path);
    expect(() => replaceWhole(path, 'x', PRIVATE)).toThrow('EISDIR');
    const pipe = join(folder, 'pipe');
    expect(spawnSync('mkfifo', [pipe]).status).toBe(0);
    expect(() => replaceWhole(pipe, 'x', PRIVATE)).toThrow('ENXIO');
    expect(() => replaceWhole(join(folder, 'none', 'x'), 'x', PRIVATE)).toThrow('ENOENT');
  });
});

describe('a new file', () => {
  it('is written once and never over another', () => {
    writeNew(path, 'one', PRIVATE);
    expect(() => writeNew(path, 'two', PRIVATE)).toThrow('EEXIST');
    expect(text()).toBe('one');
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it('does not take the place of one that came while it was written', () => {
    const pieces = function* (): Generator<string> {
      yield 'mine';
      writeFileSync(path, 'theirs');
    };
    expect(() => writeNew(path, pieces(), PRIVATE)).toThrow('EEXIST');
    expect(text()).toBe('theirs');
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });
});

describe('appending', () => {
  it('adds lines, and closes one that was cut off', () => {
    appendLines(path, 'one\n', PRIVATE);
    expect(statSync(path).mode & 0o777).toBe(PRIVATE);
    writeFileSync(path, 'one\ntor');
    appendLines(path, 'two\nthree\n', PRIVATE);
    expect(text()).toBe('one\ntor\ntwo\nthree\n');
  });
});

describe('names and folders', () => {
  it('are the first that is free', () => {
    writeFileSync(path, 'x');
    writeFileSync(join(folder, 'old-1'), '');
    expect(moveAside(path, (n) => join(folder, `old-${n}`))).toBe(join(folder, 'old-2'));
    expect(existsSync(path)).toBe(false);
  });

  it('are made one by one, and end where none can be made', () => {
    const deep = join(folder, 'a', 'b', 'c');
    makeFolder(deep, 0o700);
    makeFolder(deep, 0o700);
    expect(statSync(deep).isDirectory()).toBe(true);
    for (const made of [deep, join(folder, 'a')]) expect(statSync(made).mode & 0o777).toBe(0o700);
    expect(() => makeFolder('/proc/self/none/such', 0o700)).toThrow();
  });
});

it('no other room writes a file', () => {
  const writers =
    /\b(?:writeFile|appendFile|open|write|rename|link|copyFile|mkdir|truncate|createWriteStream)(?:Sync)?\b/;
  const others = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !name.startsWith(join('files', '')))
    .filter((name) => {
      const [, names = ''] =
        /import \{([^}]*)\} from 'node:fs(?:\/promises)?'/.exec(readFileSync(join('src', name), 'utf8')) ??
        [];
      return writers.test(names);
    });
  expect(others).toEqual([]);
});
