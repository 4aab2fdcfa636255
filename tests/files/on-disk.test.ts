/** What was written is on disk when the call returns, also where the file system cannot do all. */
import { fstatSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { faultOf } from '../../src/errors.js';
import { appendLines, makeFolder, PRIVATE, replaceWhole, writeNew } from '../../src/files/write.js';
import { callsOf, whileCalling, whileFailing } from './calls.js';

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-files-'));
  path = join(folder, 'a.txt');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const text = (): string => readFileSync(path, 'utf8');

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
