/** Files that are no photographs, or that no one should open: one clear line each, and nothing is written. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { DataError } from '../../src/errors.js';
import { readPhotograph } from '../../src/files/photograph.js';
import { file, flat, png } from './made-files.js';

/** The fault of a file. */
async function fault(path: string): Promise<string> {
  const before = readdirSync(dirname(path));
  const error = await readPhotograph(path).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(error).toBeInstanceOf(DataError);
  expect(readdirSync(dirname(path))).toEqual(before);
  const { message } = error as DataError;
  expect(message).not.toMatch(/\n|vips|buffer/i);
  return message.slice(message.indexOf(': ') + 2);
}

const BROWN = [200, 100, 50] as const;
const made = (name: string, picture: Sharp): Promise<string> =>
  picture.toBuffer().then((bytes) => file(name, bytes));

describe('what cannot be read is one line', () => {
  const photograph = () =>
    flat(BROWN, 600, 400)
      .composite([{ input: Buffer.from('<svg width="300" height="300"><circle r="200"/></svg>') }])
      .jpeg()
      .toBuffer();
  const DAMAGED = 'the photograph is damaged or cut short; copy it again, or save it anew';

  it('cut short, at any length', async () => {
    const bytes = await photograph();
    for (const share of [0.01, 0.1, 0.5, 0.9])
      expect(await fault(file('cut.jpg', bytes.subarray(0, Math.floor(share * bytes.length))))).toBe(DAMAGED);
    const rows = png({ width: 500, height: 500, pixel: () => [0.5, 0.1, 0.2], rows: 100 });
    expect(await fault(file('cut.png', rows))).toBe(DAMAGED);
    const webp = await flat(BROWN, 600, 400).webp().toBuffer();
    expect(await fault(file('cut.webp', webp.subarray(0, 60)))).toBe(DAMAGED);
    const tiff = await flat(BROWN, 600, 400).tiff().toBuffer();
    expect(await fault(file('cut.tif', tiff.subarray(0, 90)))).toBe(DAMAGED);
  });

  it('reads on where only something was hung on behind', async () => {
    const bytes = Buffer.concat([await photograph(), Buffer.from('a film of the camera')]);
    expect((await readPhotograph(file('hung-on.jpg', bytes))).width).toBe(600);
  });

  it.each([
    ['empty.jpg', '', 'the file is empty; copy it again'],
    ['words.jpg', 'hello', 'this is no photograph that is read; save it as JPEG, PNG, WebP or TIFF'],
    ['drawing.png', '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>', /^this is an SVG file/],
    ['page.jpg', '%PDF-1.7\n', /^this is a PDF file, which is not read; save it as JPEG/],
    ['phone.jpg', '\0\0\0\x18ftypheic\0\0\0\0', /^this is a HEIC file/],
  ] as const)('%s', async (name, bytes, line) => {
    expect(await fault(file(name, bytes))).toMatch(line);
  });

  it('a GIF, whatever its name', async () => {
    expect(await fault(await made('moving.png', flat(BROWN).gif()))).toMatch(/^this is a GIF file/);
  });

  it('one pixel, and a bomb, of which nothing is unpacked', async () => {
    expect(await fault(await made('one.png', flat(BROWN, 1, 1).png()))).toMatch(/^1 by 1 pixels are too few/);
    const bomb = png({ width: 50_000, height: 50_000, pixel: () => [0.5], rows: 4 });
    const before = process.memoryUsage.rss();
    expect(await fault(file('bomb.png', bomb))).toMatch(
      /^50000 by 50000 pixels are more than the 150 million/,
    );
    expect(process.memoryUsage.rss() - before).toBeLessThan(100e6);
  });

  it('folders, pipes, devices, and nothing at all', async () => {
    const pipe = file('pipe', '').replace(/pipe$/, 'named-pipe');
    execFileSync('mkfifo', [pipe]);
    expect(await fault(pipe)).toMatch(/^this is a device or a pipe/);
    expect(await fault('/dev/zero')).toMatch(/^this is a device or a pipe/);
    const folder = pipe.replace(/named-pipe$/, 'folder');
    mkdirSync(folder);
    expect(await fault(folder)).toMatch(/^this is a folder/);
    expect(await fault(`${pipe}.jpg`)).toMatch(/^there is no such file/);
  });
});
