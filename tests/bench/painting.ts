/** A photograph of 24 million pixels, read to the end, against sharp's own decoding and bringing to working size. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { shippedPictures } from '../../src/files/shipped.js';
import { demoSheet } from '../../src/painting/demo/scenes.js';
import { libraryStudio } from '../../src/paints/index.js';
import type { Picture } from '../../src/pictures/index.js';
import { type BenchRow, median } from './base.js';

const CHILD = fileURLToPath(new URL('./painting-child.js', import.meta.url));
const ROUNDS = 9;
const SIDES = { width: 6000, height: 4000 } as const;
/** Of the sensor, standard deviation in numbers of 8 bits. */
const NOISE = 10;

interface Once {
  readonly ms: number;
  readonly bytes: number;
}

const once = (what: 'decode' | 'light' | 'whole', file: string): Once =>
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
    .jpeg({ quality: 95 })
    .toFile(file);
}

/** Rows for the report. */
export async function benchPainting(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-bench-'));
  const file = join(folder, 'photograph.jpg');
  try {
    await photograph(file);
    const rounds = Array.from({ length: ROUNDS }, () => ({
      bare: once('decode', file),
      light: once('light', file),
      whole: once('whole', file),
    }));
    const base = "sharp's decoding to working size";
    const row = (name: string, what: 'light' | 'whole', figure: keyof Once, atMost: number): BenchRow => {
      const of = (which: 'bare' | 'light' | 'whole'): number =>
        median(rounds.map((round) => round[which][figure]));
      const shown = (x: number): string =>
        figure === 'ms' ? `${Math.round(x)} ms` : `${Math.round(x / 1e6)} MB`;
      return {
        name,
        ratio: median(rounds.map((round) => round[what][figure] / round.bare[figure])),
        base,
        atMost,
        note: `${shown(of(what))} against ${shown(of('bare'))}`,
      };
    };
    return [
      row('24 MP read as light, time', 'light', 'ms', 2),
      row('24 MP read as light, most memory', 'light', 'bytes', 1.5),
      row('24 MP read to its masses, time', 'whole', 'ms', 2),
      row('24 MP read to its masses, most memory', 'whole', 'bytes', 1.5),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
