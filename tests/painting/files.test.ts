import { converter } from 'culori';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { codeOfLight, lightOfCode } from '../../src/colour/srgb.js';
import { munsellValueFromY } from '../../src/colour/value.js';
import { readPhotograph } from '../../src/files/photograph.js';
import { file, flat, matrixProfile, png, profileOf, tiff16 } from './made-files.js';

const linear = converter('lrgb');

/** Light in the middle of a photograph. */
async function middle(path: string): Promise<number[]> {
  const { width, height, light } = await readPhotograph(path);
  const at = 3 * ((height >> 1) * width + (width >> 1));
  return [...light.subarray(at, at + 3)];
}

function expectLight(light: readonly number[], wanted: readonly number[], room: number): void {
  for (const [at, one] of wanted.entries()) expect(Math.abs((light[at] as number) - one)).toBeLessThan(room);
}

const BROWN = [200, 100, 50] as const;
const BROWN_LIGHT = BROWN.map((code) => lightOfCode(code / 255));
const made = (name: string, picture: Sharp): Promise<string> =>
  picture.toBuffer().then((bytes) => file(name, bytes));

describe('the tone curve of sRGB', () => {
  // IEC 61966-2-1: the ends, the joint of the line with the power (0.04045 is 0.0031308), and a half. From memory.
  it.each([
    [0, 0],
    [0.04045, 0.0031308],
    [0.5, 0.2140411],
    [1, 1],
  ])('%f is light %f, and back', (code, light) => {
    expect(lightOfCode(code)).toBeCloseTo(light, 6);
    expect(codeOfLight(light)).toBeCloseTo(code, 5);
  });
});

describe('the four formats', () => {
  it.each([
    ['a.jpg', () => flat(BROWN).jpeg({ quality: 100, chromaSubsampling: '4:4:4' }), 0.01],
    ['a.png', () => flat(BROWN).png(), 1e-6],
    ['palette.png', () => flat(BROWN).png({ palette: true }), 1e-6],
    ['a.webp', () => flat(BROWN).webp({ lossless: true }), 1e-6],
    ['a.tif', () => flat(BROWN).tiff({ compression: 'lzw' }), 1e-6],
    // What a file is called is of no account.
    ['really-a.jpg.png', () => flat(BROWN).jpeg({ quality: 100 }), 0.01],
    ['no-ending', () => flat(BROWN).png(), 1e-6],
  ] as const)('reads %s', async (name, picture, room) => {
    expectLight(await middle(await made(name, picture())), BROWN_LIGHT, room);
  });

  it('reads grey as three primaries', async () => {
    const grey = lightOfCode(128 / 255);
    const path = await made('grey.jpg', flat([128, 128, 128]).greyscale().jpeg());
    expectLight(await middle(path), [grey, grey, grey], 1e-6);
  });

  it('reads the inks of print near the colour that they were made from', async () => {
    // The profile of the inks holds colours only so near: a few hundredths of light.
    const path = await made('inks.jpg', flat(BROWN).toColourspace('cmyk').jpeg({ quality: 100 }));
    expectLight(await middle(path), BROWN_LIGHT, 0.04);
  });

  // Published sRGB of neutral patches of the 24-patch colour chart, which are made to Munsell values; from memory. Its black is left
  // out: its published L* 20.5 is itself a tenth of a value lighter than N 2.
  it.each([
    [200, 8],
    [160, 6.5],
    [122, 5],
    [85, 3.5],
  ])('reads the neutral of code %i as value %f', async (code, value) => {
    const [, y = 0] = await middle(await made('neutral.png', flat([code, code, code]).png()));
    expect(Math.abs(munsellValueFromY(100 * y) - value)).toBeLessThan(0.1);
  });
});

describe('what a file says of itself', () => {
  it('turns the picture as the camera was held', async () => {
    // Orientation 6: the row on top is the right side of the sheet (Exif 2.3, tag 274). Left half dark, right half light.
    const data = Buffer.alloc(64 * 48 * 3).map((_, at) => (Math.floor(at / 3) % 64 < 32 ? 0 : 255));
    const picture = sharp(data, { raw: { width: 64, height: 48, channels: 3 } });
    const path = await made('turned.png', picture.withMetadata({ orientation: 6 }).png());
    const { width, height, light } = await readPhotograph(path);
    expect([width, height]).toEqual([48, 64]);
    expect(light[0]).toBeCloseTo(0, 3);
    expect(light.at(-1)).toBeCloseTo(1, 3);
  });

  it('keeps 16 bits of PNG and TIFF, alone and with a profile', async () => {
    // Between the 3rd and the 4th of 256 numbers: 8 bits on the way would give 0.00091 or 0.00121.
    const deep = [0.5, 0.25, 0.0137];
    const bytes = png({ width: 64, height: 48, depth: 16, pixel: () => deep });
    const wanted = deep.map(lightOfCode);
    expectLight(await middle(file('deep.png', bytes)), wanted, 1e-5);
    expectLight(await middle(file('deep.tif', tiff16(64, 48, deep))), wanted, 1e-5);
    const profile = await profileOf('srgb');
    const profiled = png({ width: 64, height: 48, depth: 16, profile, pixel: () => deep });
    expectLight(await middle(file('deep-profile.png', profiled)), wanted, 4e-5);
    const grey = png({ width: 64, height: 48, depth: 16, pixel: () => [0.0137] });
    expectLight(await middle(file('deep-grey.png', grey)), [lightOfCode(0.0137)], 1e-5);
  });

  it('honours Display P3, also where sRGB does not reach', async () => {
    const profile = await profileOf('p3');
    const at = (depth: 8 | 16, pixel: readonly number[]): string =>
      file('p3.png', png({ width: 64, height: 48, depth, profile, pixel: () => pixel }));
    // color(display-p3 0.21604 0.49418 0.13151) is sRGB green, #008000: CSS Color 4, web platform tests; from memory.
    const green = [0.21604, 0.49418, 0.13151];
    expectLight(await middle(at(16, green)), [0, lightOfCode(128 / 255), 0], 1e-4);
    expectLight(await middle(at(8, green)), [0, lightOfCode(128 / 255), 0], 2e-3);
    const { r, g, b } = linear({ mode: 'p3', r: 0, g: 1, b: 0 });
    expect(r).toBeLessThan(-0.2);
    expectLight(await middle(at(8, [0, 1, 0])), [r, g, b], 2e-3);
  });

  it('honours Adobe RGB (1998): primaries under D50 as published by B. Lindbloom, against culori', async () => {
    const columns = [
      [0.6097559, 0.3111242, 0.0194811],
      [0.2052401, 0.625656, 0.0608902],
      [0.149224, 0.0632197, 0.7448387],
    ];
    const profile = matrixProfile(columns, 563 / 256);
    for (const pixel of [
      [0.8, 0.3, 0.2],
      [0.2, 0.6, 0.7],
      [0.5, 0.5, 0.5],
      [1, 1, 1],
    ] as const) {
      const [red, green, blue] = pixel;
      const { r, g, b } = linear({ mode: 'a98', r: red, g: green, b: blue });
      const path = file('a98.png', png({ width: 64, height: 48, depth: 16, profile, pixel: () => pixel }));
      expectLight(await middle(path), [r, g, b], 1.5e-3);
    }
  });

  it('takes a damaged profile for none', async () => {
    for (const depth of [8, 16] as const) {
      const bytes = png({
        width: 64,
        height: 48,
        depth,
        profile: Buffer.from('acsp'.repeat(60)),
        pixel: () => [0.5, 0.25, 0.1],
      });
      expectLight(await middle(file('damaged.png', bytes)), [0.5, 0.25, 0.1].map(lightOfCode), 2e-3);
    }
  });

  it('lays what is transparent on white, as light, and says so', async () => {
    const path = await made('clear.png', flat([...BROWN, 128]).png());
    const cover = 128 / 255;
    expectLight(
      await middle(path),
      BROWN_LIGHT.map((light) => light * cover + 1 - cover),
      1e-5,
    );
    expect((await readPhotograph(path)).notes).toEqual([
      'Parts of it are transparent; they were laid on white.',
    ]);
    expect((await readPhotograph(await made('opaque.png', flat([...BROWN, 255]).png()))).notes).toEqual([]);
  });

  it('takes the first of several pictures, and says so', async () => {
    const frames = await Promise.all([10, 250].map((code) => flat([code, code, code]).png().toBuffer()));
    const bytes = await sharp(frames, { join: { animated: true } })
      .webp({ lossless: true })
      .toBuffer();
    const path = file('moving.webp', bytes);
    expectLight(await middle(path), [lightOfCode(10 / 255)], 1e-6);
    expect((await readPhotograph(path)).notes).toEqual([
      'The file is animated, 2 pictures; the first was read.',
    ]);
  });
});

describe('working size', () => {
  it('brings the longer side to 640 pixels and enlarges nothing', async () => {
    const sizes = [
      [1500, 1000, 640, 427],
      [1000, 3000, 213, 640],
      [640, 100, 640, 100],
      [64, 48, 64, 48],
    ] as const;
    for (const [width, height, columns, rows] of sizes) {
      const read = await readPhotograph(await made('size.png', flat(BROWN, width, height).png()));
      expect([read.width, read.height]).toEqual([columns, rows]);
      // A flat wash stays what it is, up to its edges.
      for (const at of [0, 3 * (columns - 1), read.light.length - 3])
        expectLight([...read.light.subarray(at, at + 3)], BROWN_LIGHT, 1e-4);
    }
  });

  it('averages light, not numbers: half black and half white is half the light', async () => {
    const path = file('squares.png', png({ width: 1200, height: 900, pixel: (x, y) => [(x + y) % 2] }));
    const { light } = await readPhotograph(path);
    expect(light.reduce((sum, one) => sum + one, 0) / light.length).toBeCloseTo(0.5, 2);
  });

  it('shifts a grained wash in a JPEG of a camera by less than 0.05 of a Munsell value', async () => {
    const [width, height] = [3000, 2000];
    const known = Array.from({ length: 256 }, (_, code) => lightOfCode(code / 255));
    let light = 0;
    let state = 1;
    const data = Buffer.alloc(width * height * 3);
    for (let at = 0; at < data.length; at += 3) {
      state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
      const code = 128 + ((state >> 16) % 45) - 22;
      data[at] = data[at + 1] = data[at + 2] = code;
      light += known[code] as number;
    }
    const picture = sharp(data, { raw: { width, height, channels: 3 } });
    const read = await readPhotograph(await made('grain.jpg', picture.jpeg({ quality: 95 })));
    const mean = read.light.reduce((sum, one) => sum + one, 0) / read.light.length;
    const truly = munsellValueFromY((100 * light) / (data.length / 3));
    expect(Math.abs(munsellValueFromY(100 * mean) - truly)).toBeLessThan(0.05);
  });
});
