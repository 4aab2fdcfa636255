/** The one place that loads sharp, which reads and writes pictures: only when one is asked for. */
import { MudlarkError } from '../errors.js';
import type { FilePixels } from '../painting/file-pixels.js';

export type Sharp = typeof import('sharp').default;

/** @throws MudlarkError when the package is not there, or not for this machine */
export async function loadSharp(): Promise<Sharp> {
  try {
    const { default: sharp } = await import('sharp');
    // One picture is read and the program ends: nothing is worth keeping.
    sharp.cache(false);
    return sharp;
  } catch (cause) {
    throw new MudlarkError(
      'photographs need the package sharp, which is not installed here; run "npm install sharp" in the folder of mudlark',
      1,
      { cause },
    );
  }
}

/** Share of what JPEG can keep, 0-100, at which no block is seen in a wash. */
const JPEG_QUALITY = 92;

/** A picture file, with nothing in it but the picture. @throws MudlarkError as {@link loadSharp} */
export async function pictureFile(
  { width, height, data }: FilePixels,
  format: 'png' | 'jpeg',
): Promise<Uint8Array> {
  const sharp = await loadSharp();
  const channels = data.length === width * height ? 1 : 3;
  const picture = sharp(data, { raw: { width, height, channels } });
  if (channels === 1) picture.toColourspace('b-w');
  return format === 'png'
    ? picture.png().toBuffer()
    : picture.jpeg({ quality: JPEG_QUALITY, chromaSubsampling: '4:4:4' }).toBuffer();
}
