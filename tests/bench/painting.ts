/** A photograph of 24 million pixels, read to the end, against sharp's own decoding and bringing to working size. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { shippedPictures } from '../../src/files/shipped.js';
import { demoSheet } from '../../src/painting/demo.js';
import { libraryStudio } from '../../src/paints/index.js';
import type { Picture } from '../../src/pictures/index.js';
import { type BenchRow, median } from './base.js';

const CHILD = fileURLToPath(new URL('./painting-child.js', import.meta.url));
const ROUNDS = 9;
const SIDES = { width: 6000, height: 4000 } as const;
/** Of the sensor, standard deviation in numbers of 8 bits. */
const NOISE = 3;

interface Once {
  readonly ms: number;
  readonly bytes: number;
}

const once = (what: 'decode' | 'read', file: string): Once =>
  JSON.parse(execFileSync(process.execPath, [CHILD, what, file], { encoding: 'utf8' })) as Once;

/** A sheet on a grey table, as a camera would have it. */
async function photograph(file: string): Promise<void> {
  const studio = libraryStudio();
  const [picture] = await shippedPictures(studio);
  const { width, height, data } = demoSheet(studio, picture as Picture, 'after');
  const sheet = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize(SIDES.width - 600, SIDES.height - 500, { fit: 'inside' })
    .png()
    .toBuffer();
  const { width: across = 0, height: down = 0 } = await sharp(sheet).metadata();
  const noise = { type: 'gaussian', mean: 128, sigma: NOISE } as const;
  const grain = await sharp({ create: { ...SIDES, channels: 3, background: '#808080', noise } })
    .png({ compressionLevel: 1 })
    .toBuffer();
  await sharp({ create: { ...SIDES, channels: 3, background: '#6d675f' } })
    .composite([
      { input: sheet, left: (SIDES.width - across) >> 1, top: (SIDES.height - down) >> 1 },
      { input: grain, blend: 'overlay' },
    ])
    .jpeg({ quality: 90 })
    .toFile(file);
}

/** Rows for the report. */
export async function benchPainting(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-bench-'));
  const file = join(folder, 'photograph.jpg');
  try {
    await photograph(file);
    const rounds = Array.from({ length: ROUNDS }, () => {
      const [bare, ours] = [once('decode', file), once('read', file)];
      return { bare, ours, time: ours.ms / bare.ms, memory: ours.bytes / bare.bytes };
    });
    const of = (pick: (round: (typeof rounds)[number]) => number): number => median(rounds.map(pick));
    const base = "sharp's decoding to working size";
    const megabytes = (bytes: number): string => `${Math.round(bytes / 1e6)} MB`;
    return [
      {
        name: 'a photograph of 24 MP read, time',
        ratio: of(({ time }) => time),
        base,
        atMost: 2,
        note: `${Math.round(of(({ ours }) => ours.ms))} ms against ${Math.round(of(({ bare }) => bare.ms))} ms`,
      },
      {
        name: 'a photograph of 24 MP read, most memory',
        ratio: of(({ memory }) => memory),
        base,
        atMost: 1.5,
        note: `${megabytes(of(({ ours }) => ours.bytes))} against ${megabytes(of(({ bare }) => bare.bytes))}`,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
