/** Reading the photograph of a painting. */
import type { Metadata, SharpOptions } from 'sharp';
import { DataError } from '../errors.js';
import { lightOf, type Samples } from '../painting/light/decode.js';
import { type Profile, readProfile } from '../painting/light/profile.js';
import type { Photograph } from '../painting/types.js';
import { shownPath, withWords } from './faults.js';
import { readBytes } from './read.js';
import { loadSharp, type Sharp } from './sharp.js';

/** Largest file, in bytes: 24 million pixels of 16 bits, uncompressed, are 144 MB. */
const MOST_BYTES = 200e6;
/** Most pixels, and most bytes that they take unpacked: what a decoder may need at once where a format gives no rows one by one. */
const MOST_PIXELS = 150e6;
const MOST_UNPACKED = 500e6;
/** Longest and shortest side, in pixels. */
const MOST_SIDE = 30_000;
const LEAST_SIDE = 32;
/** Longer side at working size, in pixels. */
const WORKING_SIDE = 640;
/**
 * Longer side of what the decoder hands over; from there on it is light that is averaged. A JPEG gets there cheaply by being unpacked at a
 * quarter of its size. What is averaged before, as the file holds it, comes out too dark by its contrast squared: grain of 5 % in
 * the middle of the scale by 0.03 of a Munsell value.
 */
const HANDED_OVER = { jpeg: 800, other: 2400 } as const;

const READ = ['jpeg', 'png', 'webp', 'tiff'] as const;
const READ_WORDS = 'JPEG, PNG, WebP or TIFF';

/** Other formats that photographs and pictures come in, by how their files begin; known only to be called by their name. */
const OTHERS: readonly (readonly [beginning: RegExp, name: string])[] = [
  [/^GIF8[79]a/, 'a GIF'],
  [/^%PDF-/, 'a PDF'],
  [/^....ftyp(avif|avis)/s, 'an AVIF'],
  [/^....ftyp(hei|hev|mif1|msf1)/s, 'a HEIC'],
  [/^....ftyp/s, 'a film'],
  [/^(\0\0\0\fJXL |\xff\n)/, 'a JPEG XL'],
  [/^(\0\0\0\fjP {2}|\xff\x4f\xff\x51)/, 'a JPEG 2000'],
  [/^BM/, 'a BMP'],
  [/^8BPS/, 'a layered picture (PSD)'],
  [/^(\xef\xbb\xbf)?\s*<(\?xml|svg|!--|!DOCTYPE svg)/i, 'an SVG'],
  [/^PK\x03\x04/, 'a ZIP'],
];

/** How the four begin. Sources: ISO/IEC 10918-1 B.2, PNG 5.2, WebP container, TIFF 6.0 section 2. */
const BEGINNINGS: Readonly<Record<(typeof READ)[number], RegExp>> = {
  jpeg: /^\xff\xd8\xff/,
  png: /^\x89PNG\r\n\x1a\n/,
  webp: /^RIFF....WEBP/s,
  tiff: /^(II[*+]\0|MM\0[*+])/,
};

/** A photograph as it was read, and what is to be known of the reading. */
export interface ReadPhotograph extends Photograph {
  /** Sentences. */
  readonly notes: readonly string[];
}

/** @throws DataError, without the path, for what is none of the four, by its first bytes and not by its name */
function requireFormat(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new DataError('the file is empty; copy it again');
  const beginning = Buffer.from(bytes.subarray(0, 256)).toString('latin1');
  if (READ.some((format) => BEGINNINGS[format].test(beginning))) return;
  const other = OTHERS.find(([pattern]) => pattern.test(beginning))?.[1];
  throw new DataError(
    other === undefined
      ? `this is no photograph that is read; save it as ${READ_WORDS}`
      : `this is ${other} file, which is not read; save it as ${READ_WORDS}`,
  );
}

const BYTES_OF: Readonly<Record<string, number>> = { uchar: 1, ushort: 2 };

/** @throws DataError, without the path, for what is too large, too small or kept in another way than 8 or 16 bits */
function requireSize({ width, height, channels, depth }: Metadata): void {
  const size = `${width} by ${height} pixels`;
  const bytes = BYTES_OF[depth];
  if (bytes === undefined || channels > 5)
    throw new DataError(
      'its colours are kept in an unusual way; save it with 8 or 16 bits a channel, as RGB',
    );
  if (Math.max(width, height) > MOST_SIDE || width * height > MOST_PIXELS)
    throw new DataError(
      `${size} are more than the ${MOST_PIXELS / 1e6} million, ${MOST_SIDE} a side, that are read; make it smaller`,
    );
  if (width * height * channels * bytes > MOST_UNPACKED)
    throw new DataError(`${size} of ${8 * bytes} bits are more than is read; make it smaller`);
  if (Math.min(width, height) < LEAST_SIDE)
    throw new DataError(`${size} are too few to show a painting; take one of ${LEAST_SIDE} a side or more`);
}

/** What is to be said of a file that holds more than its one picture. */
function pagesNote({ pages = 1, format }: Metadata): string[] {
  if (pages <= 1) return [];
  return [
    format === 'webp'
      ? `The file is animated, ${pages} pictures; the first was read.`
      : `The file has ${pages} pages; the first was read.`,
  ];
}

/** What the numbers mean where the file says so in curves and primaries; anything else the decoder has to bring to sRGB. */
function profileOf({ icc, space }: Metadata): Profile | undefined {
  if (icc === undefined) return undefined;
  if (space === 'srgb' || space === 'rgb16' || space === 'rgb') return readProfile(icc, 3);
  return space === 'b-w' || space === 'grey16' ? readProfile(icc, 1) : undefined;
}

/** Samples upright, a little larger than working size. */
async function samplesOf(sharp: Sharp, bytes: Uint8Array, kept: Metadata): Promise<Samples> {
  const { depth, space, icc, format } = kept;
  const profile = profileOf(kept);
  // Of inks there is only a way to 8 bits.
  const isDeep = depth === 'ushort' && space !== 'cmyk';
  const options: SharpOptions = {
    autoOrient: true,
    failOn: 'warning',
    sequentialRead: true,
    limitInputPixels: MOST_PIXELS,
    ignoreIcc: profile !== undefined,
  };
  const side = format === 'jpeg' ? HANDED_OVER.jpeg : HANDED_OVER.other;
  // The triangle never goes beyond what it averages; sharper kernels leave bright and dark rims along edges.
  const small = sharp(bytes, options).resize(side, side, {
    fit: 'inside',
    withoutEnlargement: true,
    kernel: 'linear',
    fastShrinkOnLoad: true,
  });
  const plain = small.toColourspace(isDeep ? 'rgb16' : 'srgb');
  // By a profile that goes by tables sharp brings 16 bits to wide primaries first, and 8 bits to sRGB at once.
  const isByTables = isDeep && space === 'rgb16' && icc !== undefined && profile === undefined;
  const { data, info } = await (isByTables ? plain.withIccProfile('srgb') : plain)
    .raw({ depth: isDeep ? 'ushort' : 'uchar' })
    .toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  if (channels > 4) throw new DataError('it has more than three colours; save it as RGB');
  const whole = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
  return { width, height, channels, profile, data: isDeep ? new Uint16Array(whole.slice().buffer) : whole };
}

async function readIn(sharp: Sharp, bytes: Uint8Array): Promise<ReadPhotograph> {
  // The header alone: whatever it says, nothing is unpacked yet.
  const kept = await sharp(bytes, { limitInputPixels: false, failOn: 'warning' }).metadata();
  requireSize(kept);
  const { photograph, isTransparent } = lightOf(await samplesOf(sharp, bytes, kept), WORKING_SIDE);
  const opacity = isTransparent ? ['Parts of it are transparent; they were laid on white.'] : [];
  return { ...photograph, notes: [...pagesNote(kept), ...opacity] };
}

/**
 * Reads a photograph: upright, in linear sRGB, its longer side at most 640 pixels. Nothing else of the file comes along, neither
 * what the camera wrote into it nor its place.
 * @throws DataError when it is missing, no plain file, too large, too small, damaged or none of JPEG, PNG, WebP and TIFF;
 * MudlarkError when there is no sharp to read it with
 */
export async function readPhotograph(path: string): Promise<ReadPhotograph> {
  const named = (words: string, options: ErrorOptions): DataError =>
    new DataError(`${shownPath(path)}: ${words}`, options);
  const bytes = withWords(
    'read',
    () => {
      const read = readBytes(path, MOST_BYTES);
      requireFormat(read);
      return read;
    },
    named,
  );
  const sharp = await loadSharp();
  try {
    return await readIn(sharp, bytes);
  } catch (cause) {
    if (cause instanceof DataError) throw named(cause.message, { cause });
    // What sharp throws is about the bytes, and its words are for programmers.
    throw named('the photograph is damaged or cut short; copy it again, or save it anew', { cause });
  }
}
