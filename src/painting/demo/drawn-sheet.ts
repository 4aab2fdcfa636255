/** A little sheet drawn large, as a photograph of it would look: washes that settle unevenly in the tooth of the paper, on a sheet with a margin. */
import { type Draw, fraction, seededDraw, seedOf } from '../../chance/draw.js';
import { readColour } from '../../colour/reading.js';
import { toScreen } from '../../colour/screen.js';
import { codeOfLight, lightOfCode } from '../../colour/srgb.js';
import type { Xyz } from '../../colour/xyz.js';
import type { Studio } from '../../paints/index.js';
import { type Picture, type Raster, raster } from '../../pictures/index.js';
import { seeLaid, type Wash } from '../../washes/index.js';
import type { FilePixels } from '../file-pixels.js';

type Light = readonly [number, number, number];

/** Pixels of the painted part and of the margin around it. */
const PAINTED = { width: 960, height: 560 } as const;
const MARGIN = 56;
/** Raster pixels to one of the sheet, a side. */
const FINE = 2;

/** How far a wash strays from its strength: in the tooth of the paper, and in pools as it dries; shares. */
const GRAIN = [
  { period: 2.6, share: 0.07 },
  { period: 6, share: 0.05 },
] as const;
const POOLS = [
  { period: 46, share: 0.06 },
  { period: 150, share: 0.11 },
] as const;
/** How far an edge strays, in pixels of the sheet, and how much stronger paint dries along it. */
const STRAY = { period: 34, share: 2.2 } as const;
const RIM = { pixels: 2, share: 0.13 } as const;
/** Light that the tooth of bare paper takes or gives, as a share. */
const TOOTH = 0.012;

/** Strengths that a wash is predicted at, as shares of its own. */
const SHARES = { most: 2.5, count: 51 } as const;

/** A field of chance between -1 and 1 without steps: numbers on a lattice, joined smoothly. */
function field(draw: Draw, period: number): (x: number, y: number) => number {
  const side = 64;
  const lattice = Float32Array.from({ length: side * side }, () => 2 * fraction(draw) - 1);
  const at = (x: number, y: number): number => lattice[(y & (side - 1)) * side + (x & (side - 1))] as number;
  const smooth = (t: number): number => t * t * (3 - 2 * t);
  return (x, y) => {
    const u = x / period;
    const v = y / period;
    const left = Math.floor(u);
    const top = Math.floor(v);
    const s = smooth(u - left);
    const upper = at(left, top) * (1 - s) + at(left + 1, top) * s;
    const lower = at(left, top + 1) * (1 - s) + at(left + 1, top + 1) * s;
    const t = smooth(v - top);
    return upper * (1 - t) + lower * t;
  };
}

/** Several fields on each other, each by its share. */
function fields(
  seed: number,
  parts: readonly { readonly period: number; readonly share: number }[],
): (x: number, y: number) => number {
  const made = parts.map(({ period }, part) => field(seededDraw(seedOf(seed, part)), period));
  return (x, y) => {
    let sum = 0;
    for (let part = 0; part < made.length; part++)
      sum += (parts[part]?.share ?? 0) * (made[part]?.(x, y) ?? 0);
    return sum;
  };
}

function lightOf(xyz: Xyz): Light {
  const { hex } = toScreen(xyz);
  return [1, 3, 5].map((at) =>
    lightOfCode(Number.parseInt(hex.slice(at, at + 2), 16) / 255),
  ) as unknown as Light;
}

/** Adds a wash to light, at a share of its strength: a part of the mean of a pixel. */
type Lay = (share: number, light: Float32Array, to: number) => void;

function lightsOf(studio: Studio, wash: Wash): Lay {
  const step = SHARES.most / (SHARES.count - 1);
  const known = new Float32Array(SHARES.count * 3);
  for (let at = 0; at < SHARES.count; at++) {
    const strength = Math.min(1, Math.max(0.001, wash.strength * step * at));
    known.set(lightOf(seeLaid(studio, { ...wash, strength }).colour.xyz), 3 * at);
  }
  return (share, light, to) => {
    const at = Math.min(SHARES.count - 1.001, Math.max(0, share / step));
    const low = Math.floor(at);
    const far = (at - low) / FINE ** 2;
    const near = 1 / FINE ** 2 - far;
    for (let channel = 0; channel < 3; channel++) {
      const from = 3 * low + channel;
      light[to + channel] =
        (light[to + channel] as number) + (known[from] as number) * near + (known[from + 3] as number) * far;
    }
  };
}

/** Whether another area begins within the rim of a raster pixel. */
function isRim({ width, height, area }: Raster, x: number, y: number): boolean {
  const far = RIM.pixels * FINE;
  if (x < far || y < far || x >= width - far || y >= height - far) return true;
  const at = y * width + x;
  const own = area[at];
  return (
    area[at - far] !== own ||
    area[at + far] !== own ||
    area[at - far * width] !== own ||
    area[at + far * width] !== own
  );
}

/** Numbers of 8 bits by light in so many steps: fine enough for the darkest. */
const LIGHTS = 1 << 14;

function codesOfLight(): Uint8Array {
  return Uint8Array.from({ length: LIGHTS + 1 }, (_, at) => Math.round(255 * codeOfLight(at / LIGHTS)));
}

const within = (x: number, most: number): number => Math.round(Math.min(most, Math.max(0, x)));

/** How a sheet dries at each pixel: its strength as a multiple, and how far its edges stray. */
interface Drying {
  readonly settled: Float32Array;
  readonly across: Float32Array;
  readonly down: Float32Array;
}

/** The last that was worked out: all pictures of a set dry alike. */
let known: { readonly seed: number; readonly drying: Drying } | undefined;

function dryingOf(seed: number): Drying {
  if (known?.seed === seed) return known.drying;
  const { width, height } = PAINTED;
  const uneven = fields(seed, [...GRAIN, ...POOLS]);
  const across = fields(seed + 1, [STRAY]);
  const down = fields(seed + 2, [STRAY]);
  const list = (at: (x: number, y: number) => number): Float32Array => {
    const out = new Float32Array(width * height);
    for (let y = 0, to = 0; y < height; y++) for (let x = 0; x < width; x++, to++) out[to] = at(x, y);
    return out;
  };
  const drying = { settled: list((x, y) => 1 + uneven(x, y)), across: list(across), down: list(down) };
  known = { seed, drying };
  return drying;
}

/** The last that was drawn: a scene is painted before and after. */
let drawnLast: { readonly picture: Picture; readonly drawn: Raster } | undefined;

function drawnAs(picture: Picture): Raster {
  if (drawnLast?.picture !== picture)
    drawnLast = { picture, drawn: raster(picture, PAINTED.width * FINE, PAINTED.height * FINE) };
  return drawnLast.drawn;
}

/** The painted part as light: each pixel the mean of the raster pixels that fall on it. */
function paintedLight(
  studio: Studio,
  picture: Picture,
  washes: Readonly<Record<string, Wash>>,
  seed: number,
) {
  const { width, height } = PAINTED;
  const drawn = drawnAs(picture);
  const paints = picture.areas.map(({ id, wash }) => lightsOf(studio, washes[id] ?? wash));
  const { settled, across, down } = dryingOf(seed);
  const light = new Float32Array(width * height * 3);
  for (let y = 0, pixel = 0; y < height; y++)
    for (let x = 0; x < width; x++, pixel++) {
      const left = FINE * (x + (across[pixel] as number));
      const top = FINE * (y + (down[pixel] as number));
      const to = pixel * 3;
      for (let part = 0; part < FINE * FINE; part++) {
        const u = within(left + (part % FINE), drawn.width - 1);
        const v = within(top + Math.floor(part / FINE), drawn.height - 1);
        const at = v * drawn.width + u;
        const share =
          (drawn.strength[at] as number) *
          (settled[pixel] as number) *
          (isRim(drawn, u, v) ? 1 + RIM.share : 1);
        paints[drawn.area[at] as number]?.(share, light, to);
      }
    }
  return light;
}

/**
 * Draws a picture as it would be painted.
 * @param washes by area, as the picture has them where none is given
 * @param seed another one, another drying
 */
export function drawnSheet(
  studio: Studio,
  picture: Picture,
  washes: Readonly<Record<string, Wash>>,
  seed: number,
): FilePixels {
  const painted = paintedLight(studio, picture, washes, seed);
  const paper = lightOf(readColour(studio.paper.reflectance).xyz);
  const tooth = fields(seed + 3, [{ period: GRAIN[0].period, share: TOOTH }]);
  const codes = codesOfLight();
  const [width, height] = [PAINTED.width + 2 * MARGIN, PAINTED.height + 2 * MARGIN];
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [u, v] = [x - MARGIN, y - MARGIN];
      const isPainted = u >= 0 && v >= 0 && u < PAINTED.width && v < PAINTED.height;
      const from = isPainted ? (v * PAINTED.width + u) * 3 : 0;
      const shine = isPainted ? 1 : 1 + tooth(x, y);
      for (let channel = 0; channel < 3; channel++) {
        const light = isPainted ? painted[from + channel] : paper[channel];
        const step = within((light as number) * shine * LIGHTS, LIGHTS);
        data[(y * width + x) * 3 + channel] = codes[step] as number;
      }
    }
  return { width, height, data };
}
