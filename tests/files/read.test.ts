/** Reading files that may be anything, and the words for what went wrong. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { faultOf, faultWords } from '../../src/errors.js';
import { shownPath } from '../../src/files/faults.js';
import { readText, readWhole } from '../../src/files/read.js';

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-files-'));
  path = join(folder, 'a.txt');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

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
