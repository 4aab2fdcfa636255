/** Picture files made for the tests, by sharp or byte by byte. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';

const folder = mkdtempSync(join(tmpdir(), 'mudlark-photo-'));

/** Writes bytes under a name and gives the path. */
export function file(name: string, bytes: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

/** A flat picture of 8 bits, 64 by 48 pixels where nothing else is said. */
export function flat(colour: readonly number[], width = 64, height = 48): Sharp {
  const data = Buffer.alloc(width * height * colour.length);
  for (let at = 0; at < data.length; at++) data[at] = colour[at % colour.length] as number;
  return sharp(data, { raw: { width, height, channels: colour.length as 1 | 2 | 3 | 4 } });
}

function chunk(type: string, body: Uint8Array): Buffer {
  const whole = Buffer.concat([Buffer.from(type, 'latin1'), body]);
  const out = Buffer.alloc(whole.length + 8);
  out.writeUInt32BE(body.length, 0);
  whole.copy(out, 4);
  out.writeUInt32BE(crc32(whole), whole.length + 4);
  return out;
}

/** What a PNG is made of. */
interface Png {
  readonly width: number;
  readonly height: number;
  /** Bits a sample. */
  readonly depth?: 8 | 16;
  readonly profile?: Uint8Array;
  /** Samples 0-1 of a pixel: one for grey, three for colour. */
  readonly pixel: (x: number, y: number) => readonly number[];
  /** Rows that are written: fewer make a file that was cut short. */
  readonly rows?: number;
}

/** A PNG of one's own bytes. Source: PNG, W3C, sections 5 and 11. */
export function png({ width, height, depth = 8, profile, pixel, rows = height }: Png): Buffer {
  const samples = pixel(0, 0).length;
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = depth;
  header[9] = samples === 1 ? 0 : 2;
  const bytes = depth / 8;
  const line = 1 + width * samples * bytes;
  const body = Buffer.alloc(line * rows);
  for (let y = 0; y < rows; y++)
    for (let x = 0; x < width; x++)
      for (const [channel, share] of pixel(x, y).entries()) {
        const at = y * line + 1 + (x * samples + channel) * bytes;
        if (depth === 16) body.writeUInt16BE(Math.round(share * 65_535), at);
        else body[at] = Math.round(share * 255);
      }
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', header),
    ...(profile === undefined
      ? []
      : [chunk('iCCP', Buffer.concat([Buffer.from('made\0\0', 'latin1'), deflateSync(profile)]))]),
    chunk('IDAT', deflateSync(body)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** A flat TIFF of 16 bits, one strip, not packed. Source: TIFF 6.0, section 6, RGB full-colour images. @param pixel samples 0-1 */
export function tiff16(width: number, height: number, pixel: readonly number[]): Buffer {
  const [SHORT, LONG] = [3, 4];
  const size = width * height * 6;
  const end = 8 + size;
  // Tag, type, count, value; bits of each sample lie behind the list.
  const entries = [
    [256, LONG, 1, width],
    [257, LONG, 1, height],
    [258, SHORT, 3, end + 2 + 12 * 9 + 4],
    [259, SHORT, 1, 1],
    [262, SHORT, 1, 2],
    [273, LONG, 1, 8],
    [277, SHORT, 1, 3],
    [278, LONG, 1, height],
    [279, LONG, 1, size],
  ] as const;
  const bytes = Buffer.alloc(end + 2 + 12 * entries.length + 4 + 6);
  bytes.write('II*\0', 0, 'latin1');
  bytes.writeUInt32LE(end, 4);
  for (let at = 0; at < size / 2; at++)
    bytes.writeUInt16LE(Math.round((pixel[at % 3] as number) * 65_535), 8 + 2 * at);
  bytes.writeUInt16LE(entries.length, end);
  for (const [row, [tag, type, count, value]] of entries.entries()) {
    const at = end + 2 + 12 * row;
    bytes.writeUInt16LE(tag, at);
    bytes.writeUInt16LE(type, at + 2);
    bytes.writeUInt32LE(count, at + 4);
    bytes.writeUInt32LE(value, at + 8);
  }
  for (const at of [6, 4, 2]) bytes.writeUInt16LE(16, bytes.length - at);
  return bytes;
}

/** The bytes of a profile that sharp brings along. */
export async function profileOf(name: 'p3' | 'srgb'): Promise<Uint8Array> {
  const { icc } = await sharp(await flat([9, 9, 9]).withIccProfile(name).png().toBuffer()).metadata();
  return icc as Uint8Array;
}

/**
 * A profile of three primaries under D50 and a power for the tone. Source: ICC.1:2022, sections 7 to 10.
 * @param columns XYZ of red, green and blue
 */
export function matrixProfile(columns: readonly (readonly number[])[], gamma: number): Buffer {
  const fixed = (number: number): number => Math.round(number * 65_536);
  const xyz = (triple: readonly number[]): Buffer => {
    const tag = Buffer.alloc(20);
    tag.write('XYZ ', 0, 'latin1');
    for (const [at, number] of triple.entries()) tag.writeInt32BE(fixed(number), 8 + 4 * at);
    return tag;
  };
  const curve = Buffer.alloc(16);
  curve.write('curv', 0, 'latin1');
  curve.writeUInt32BE(1, 8);
  curve.writeUInt16BE(Math.round(gamma * 256), 12);
  const text = Buffer.alloc(44);
  text.write('desc', 0, 'latin1');
  text.writeUInt32BE(5, 8);
  text.write('made', 12, 'latin1');
  const note = Buffer.from('text\0\0\0\0none\0\0\0\0', 'latin1');
  const [red = [], green = [], blue = []] = columns;
  const tags: [string, Buffer][] = [
    ['desc', text],
    ['cprt', note],
    ['wtpt', xyz([0.9642, 1, 0.8249])],
    ['rXYZ', xyz(red)],
    ['gXYZ', xyz(green)],
    ['bXYZ', xyz(blue)],
    ...['rTRC', 'gTRC', 'bTRC'].map((name): [string, Buffer] => [name, curve]),
  ];
  const table = Buffer.alloc(4 + 12 * tags.length);
  table.writeUInt32BE(tags.length, 0);
  let offset = 128 + table.length;
  for (const [at, [name, body]] of tags.entries()) {
    table.write(name, 4 + 12 * at, 'latin1');
    table.writeUInt32BE(offset, 8 + 12 * at);
    table.writeUInt32BE(body.length, 12 + 12 * at);
    offset += body.length;
  }
  const header = Buffer.alloc(128);
  header.writeUInt32BE(offset, 0);
  header.writeUInt32BE(0x02400000, 8);
  header.write('mntrRGB XYZ ', 12, 'latin1');
  header.write('acsp', 36, 'latin1');
  for (const [at, number] of [0.9642, 1, 0.8249].entries()) header.writeInt32BE(fixed(number), 68 + 4 * at);
  return Buffer.concat([header, table, ...tags.map(([, body]) => body)]);
}
