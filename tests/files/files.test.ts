import { spawnSync } from 'node:child_process';
import {
  existsSync,
  fstatSync,
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
import { faultOf, faultWords } from '../../src/errors.js';
import { shownPath } from '../../src/files/faults.js';
import { readText, readWhole } from '../../src/files/read.js';
import {
  appendLines,
  makeFolder,
  moveAside,
  PRIVATE,
  replaceWhole,
  SHARED,
  writeNew,
} from '../../src/files/write.js';
import { callsOf, whileCalling, whileFailing } from './calls.js';

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

// POSIX.1-2017, fsync: only what was flushed is sure to be there after a power cut; a new name is flushed with its folder (fsync(2)).
describe('what was written is on disk when the call returns', () => {
  it('a line: written, then flushed, and the first one with the folder that has the new name', () => {
    const append = () => appendLines(path, 'one\n', PRIVATE);
    expect(callsOf(append)).toEqual(['writeSync', 'fsyncSync file', 'fsyncSync folder']);
    expect(callsOf(append)).toEqual(['writeSync', 'fsyncSync file']);
  });

  it('a whole file: flushed before it takes the place of the old one', () => {
    const replace = () => replaceWhole(path, ['one', 'two'], PRIVATE);
    const calls = ['writeFileSync', 'writeFileSync', 'fsyncSync file', 'renameSync', 'fsyncSync folder'];
    expect(callsOf(replace)).toEqual(calls);
    expect(callsOf(replace)).toEqual(calls);
  });

  it('a new file: flushed before it has its name', () => {
    expect(callsOf(() => writeNew(path, 'one', PRIVATE))).toEqual([
      'writeFileSync',
      'fsyncSync file',
      'linkSync',
      'fsyncSync folder',
    ]);
  });

  it('and a flush that fails is a fault, but not where the file system knows none', () => {
    const flushing = (code: string) => () =>
      whileFailing('fsyncSync', code, () => appendLines(path, 'one\n', PRIVATE));
    expect(flushing('EIO')).toThrow('EIO');
    expect(flushing('ENOSPC')).toThrow('ENOSPC');
    for (const code of ['EINVAL', 'ENOTSUP', 'ENOSYS']) expect(flushing(code)).not.toThrow();
    expect(() => whileFailing('fsyncSync', 'EIO', () => replaceWhole(path, 'new', PRIVATE))).toThrow('EIO');
    expect(text()).toBe('one\n'.repeat(5));
  });
});

describe('where the file system cannot do all', () => {
  const failing = (code: string, isExcused: (fd: number) => boolean, work: () => void): void =>
    whileCalling(
      'fsyncSync',
      (sound) =>
        (...given) => {
          const [fd] = given as unknown as [number];
          if (!isExcused(fd)) throw faultOf(code);
          return sound(...given);
        },
      work,
    );
  const isFile = (fd: number): boolean => fstatSync(fd).isFile();

  it('a folder that cannot be flushed is passed over, a broken disk is not', () => {
    for (const code of ['EINVAL', 'ENOTSUP', 'ENOSYS', 'EISDIR', 'EPERM', 'EACCES']) {
      failing(code, isFile, () => replaceWhole(path, code, PRIVATE));
      expect(text()).toBe(code);
    }
    expect(() => failing('EIO', isFile, () => replaceWhole(path, 'x', PRIVATE))).toThrow('EIO');
    rmSync(path);
    expect(() => failing('EIO', isFile, () => appendLines(path, 'x\n', PRIVATE))).toThrow('EIO');
    // Only of a folder: a file that may not be flushed is not on disk.
    expect(() =>
      failing(
        'EPERM',
        () => false,
        () => appendLines(path, 'x\n', PRIVATE),
      ),
    ).toThrow('EPERM');
  });

  it('a disk that takes a part of a line is full; the next line closes what stands there', () => {
    appendLines(path, 'one\n', PRIVATE);
    const short = () => appendLines(path, 'two\n', PRIVATE);
    const half = (sound: (...given: never[]) => unknown) => (fd: number, bytes: Uint8Array) =>
      sound(...([fd, bytes.subarray(0, 2)] as unknown as never[]));
    expect(() => whileCalling('writeSync', half as never, short)).toThrow('ENOSPC');
    appendLines(path, 'three\n', PRIVATE);
    expect(text()).toBe('one\ntw\nthree\n');
  });

  it('a new file has its name where no second one can be given', () => {
    whileFailing('linkSync', 'EPERM', () => writeNew(path, 'one', PRIVATE));
    expect(text()).toBe('one');
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it('a folder that another program made in between is there', () => {
    const deep = join(folder, 'a', 'b');
    const twice =
      (sound: (...given: never[]) => unknown) =>
      (...given: never[]) => {
        sound(...given);
        return sound(...given);
      };
    whileCalling('mkdirSync', twice, () => makeFolder(deep, 0o700));
    expect(statSync(deep).isDirectory()).toBe(true);
  });

  it('no file stays open, whatever was written', () => {
    const open = (): number => readdirSync('/proc/self/fd').length;
    const before = open();
    for (let n = 0; n < 20; n += 1) {
      replaceWhole(path, 'x', PRIVATE);
      appendLines(path, 'y\n', PRIVATE);
    }
    expect(open()).toBeLessThan(before + 10);
  });

  it('nothing is left beside a file that could not be put in place', () => {
    writeFileSync(path, 'old');
    expect(() => whileFailing('renameSync', 'EACCES', () => replaceWhole(path, 'new', PRIVATE))).toThrow(
      'EACCES',
    );
    expect(() => whileFailing('writeFileSync', 'ENOSPC', () => replaceWhole(path, 'new', PRIVATE))).toThrow(
      'ENOSPC',
    );
    expect(text()).toBe('old');
    expect(readdirSync(folder)).toEqual(['a.txt']);
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

describe('reading', () => {
  it('gives the text without a byte-order mark', () => {
    writeFileSync(path, '\ufeffgrün');
    expect(readWhole(path, 100)).toBe('grün');
    writeFileSync(path, '');
    expect(readWhole(path, 100)).toBe('');
  });

  it('neither waits for a pipe nor follows a device without end', () => {
    expect(spawnSync('mkfifo', [path]).status).toBe(0);
    expect(() => readText(path, 100)).toThrow(`${path}: this is a device or a pipe, not a plain file`);
    expect(() => readText('/dev/zero', 100)).toThrow(
      '/dev/zero: this is a device or a pipe, not a plain file',
    );
  });

  it.each([
    ['too much', 'x'.repeat(2_000_000), /2\.0 MB is more than the 1\.0 MB/],
    ['no UTF-8', Buffer.from([0xff, 0xfe, 0]), /it is not a UTF-8 text/],
  ])('refuses %s in one line', (_, bytes, message) => {
    writeFileSync(path, bytes);
    expect(() => readText(path, 1_000_000)).toThrow(message);
  });
});

describe('words for faults', () => {
  it('say what was being done, and name a code that has none', () => {
    expect(faultWords(faultOf('EACCES'), 'read')).toBe('it may not be read; check its permissions');
    expect(faultWords(faultOf('EACCES'), 'keep')).toBe('the folder may not be written to');
    expect(faultWords(faultOf('ENOSPC'), 'write')).toBe('the disk is full');
    expect(faultWords(faultOf('EBUSY'), 'write')).toBe('it cannot be written (EBUSY)');
    expect(faultWords(faultOf('toString'), 'write')).toBe('it cannot be written (toString)');
    expect(faultWords(new Error('first\nsecond'))).toBe('first');
  });

  it('show a path without what steers a terminal, and of a long one the end', () => {
    expect(shownPath('/a/\u001b[31mred\u202e.txt')).toBe('/a/red.txt');
    const long = shownPath(`/${'x'.repeat(300)}/end.txt`);
    expect(long).toHaveLength(160);
    expect(long).toMatch(/^\.\.\.x+\/end\.txt$/);
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
