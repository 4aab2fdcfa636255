/**
 * A painting on a sheet of the library's paper, lying on a table, photographed: perspective, lens, sensor, JPEG. What is computed here stands
 * apart from the reader.
 */
import { inverse, Matrix, solve } from 'ml-matrix';
import sharp from 'sharp';
import { fraction, seededDraw, seedOf } from '../../src/chance/draw.js';
import { GRID } from '../../src/optics/index.js';
import type { Photograph, Place } from '../../src/painting/types.js';
import { STUDIO } from '../studio.js';
import { type Light, lightFrom, mixedLight, type Painting, TO_SRGB } from './scenes.js';

/** How a sheet is photographed. */
export interface Shot {
  readonly seed: string | number;
  readonly width: number;
  readonly height: number;
  /** Bare margin, share of the painting's width. */
  readonly margin: number;
  /** Corners of the sheet in the photograph, clockwise from the left upper one. */
  readonly corners: readonly Place[];
  readonly illuminant: readonly number[];
  /** Light of the table, as a surface. */
  readonly table: Light;
  /** Luminance of paper in the middle, before the lens. */
  readonly exposure: number;
  /** Share of the light that is lost in the corners of the photograph. */
  readonly vignette: number;
  /** Share of the light that is lost from one side to the other. */
  readonly slope: number;
  /** How much of the cast the camera takes out, 0-1. */
  readonly balance: number;
  /** Noise: share of full scale that is read, and light at full scale in electrons. */
  readonly readNoise: number;
  readonly electrons: number;
  /** Passes of a 1 2 1 filter: how far out of focus. */
  readonly blur: number;
  /** JPEG quality; undefined keeps 16 bits. */
  readonly jpeg: number | undefined;
}

const between = (from: number, to: number, share: number): number => from + (to - from) * share;

/** A shot by chance, of the kind that a painter takes with a telephone under a lamp by a window. */
export function shotOf(seed: string | number, { width: across, height: down }: Painting): Shot {
  const draw = seededDraw(seedOf('shot', seed));
  const any = (from: number, to: number): number => between(from, to, fraction(draw));
  const [width, height] = [640, 480];
  const margin = any(0.035, 0.1);
  const aspect = (down + 2 * margin * across) / (across * (1 + 2 * margin));
  const half = { x: any(0.33, 0.44), y: 0 };
  half.y = Math.min(0.45, (half.x * aspect * width) / height);
  const turn = any(-0.12, 0.12);
  const middle = { x: any(0.48, 0.52), y: any(0.48, 0.52) };
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([sx = 0, sy = 0]) => {
    const x = sx * half.x * any(0.9, 1);
    const y = sy * half.y * any(0.9, 1);
    const r = width / height;
    return {
      x: Math.min(0.985, Math.max(0.015, middle.x + x * Math.cos(turn) - (y / r) * Math.sin(turn))),
      y: Math.min(0.985, Math.max(0.015, middle.y + y * Math.cos(turn) + x * r * Math.sin(turn))),
    };
  });
  const tables: readonly Light[] = [
    [0.3, 0.17, 0.08],
    [0.45, 0.32, 0.18],
    [0.05, 0.05, 0.055],
    [0.2, 0.2, 0.19],
    [0.5, 0.49, 0.47],
    [0.08, 0.13, 0.09],
  ];
  const illuminant = mixedLight(any(0.1, 0.7));
  return {
    seed,
    width,
    height,
    margin,
    corners,
    illuminant,
    table: tables[draw(tables.length - 1)] as Light,
    exposure: any(0.45, 0.8),
    vignette: 0.2,
    slope: any(0, 0.15),
    balance: any(0.2, 0.8),
    readNoise: any(0.001, 0.004),
    electrons: any(1500, 8000),
    blur: draw(1),
    jpeg: 70,
  };
}

/** Tristimulus values to cone-like responses, and linear sRGB to tristimulus values: Bradford (ICC.1) and IEC 61966-2-1. */
const CONES = new Matrix([
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
]).mmul(inverse(new Matrix(TO_SRGB.map((row) => [...row]))));

/**
 * A camera's white balance: it multiplies the responses of its sensors, which are broader than the primaries of a screen, before it makes
 * screen colours of them. Cone responses stand for those of the sensor; a part of the cast is taken out.
 */
function balancing(illuminant: readonly number[], part: number): (light: Light) => Light {
  const responses = (light: Light): number[] => CONES.mmul(Matrix.columnVector([...light])).to1DArray();
  const white = responses(lightFrom(new Float64Array(GRID.count).fill(1), illuminant));
  const goal = responses([1, 1, 1]);
  const gains = white.map((response, k) => ((goal[k] as number) / response) ** part);
  const whole = inverse(CONES).mmul(Matrix.diag(gains)).mmul(CONES);
  return (light) => whole.mmul(Matrix.columnVector([...light])).to1DArray() as unknown as Light;
}

/** The projection that takes four corners to the unit square: eight unknowns, solved, in the order of its rows. */
function toSquare(corners: readonly Place[]): number[] {
  const goals = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ];
  const rows = corners.flatMap(({ x, y }, k) => {
    const [u = 0, v = 0] = goals[k] as number[];
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y],
      [0, 0, 0, x, y, 1, -v * x, -v * y],
    ];
  });
  return solve(new Matrix(rows), Matrix.columnVector(goals.flat())).to1DArray();
}

/** The transfer function of sRGB (IEC 61966-2-1), and back. */
const encoded = (light: number): number =>
  light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
const decoded = (code: number): number => (code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4);
const DECODED = Float32Array.from({ length: 256 }, (_, code) => decoded(code / 255));

/** Light as a file of so many bits keeps it. */
export const quantised = (light: number, bits: 8 | 16): number => {
  const most = 2 ** bits - 1;
  return decoded(Math.round(encoded(Math.min(1, Math.max(0, light))) * most) / most);
};

/** Looks that a photograph takes at each pixel, across and down. */
const TAPS = 3;

/** The light that comes through the lens: the table with the sheet on it. */
function seen(painting: Painting, shot: Shot, lights: readonly Light[], paper: Light, table: Light) {
  const { width, height } = shot;
  const margin = shot.margin * painting.width;
  const projection = toSquare(shot.corners.map(({ x, y }) => ({ x: x * width, y: y * height })));
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = projection;
  const across = painting.width * (1 + 2 * shot.margin);
  const down = painting.height + 2 * margin;
  const light = new Float32Array(3 * width * height);
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) {
      const at = 3 * (row * width + column);
      const wave = 2 * Math.sin(0.01 * column);
      for (let j = 0; j < TAPS; j++)
        for (let i = 0; i < TAPS; i++) {
          const left = column + (i + 0.5) / TAPS;
          const top = row + (j + 0.5) / TAPS;
          const w = g * left + h * top + 1;
          const u = (a * left + b * top + c) / w;
          const v = (d * left + e * top + f) / w;
          let here = table;
          let grain = 1;
          if (u >= 0 && u < 1 && v >= 0 && v < 1) {
            const x = Math.floor(u * across - margin);
            const y = Math.floor(v * down - margin);
            const isBare = x < 0 || y < 0 || x >= painting.width || y >= painting.height;
            here = isBare ? paper : (lights[painting.at[y * painting.width + x] as number] as Light);
          } else {
            // A table has a grain.
            grain += 0.12 * Math.sin(0.05 * (row + j / TAPS) + wave);
          }
          light[at] = (light[at] as number) + (here[0] * grain) / TAPS ** 2;
          light[at + 1] = (light[at + 1] as number) + (here[1] * grain) / TAPS ** 2;
          light[at + 2] = (light[at + 2] as number) + (here[2] * grain) / TAPS ** 2;
        }
    }
  return light;
}

/** The same light as the sensor counts it: less in the corners and on one side, with noise. It is written into. */
function counted(light: Float32Array, shot: Shot, gain: number): void {
  const { width, height } = shot;
  const draw = seededDraw(seedOf('sensor', shot.seed));
  const gauss = (): number =>
    Math.sqrt(-2 * Math.log(1 - fraction(draw))) * Math.cos(2 * Math.PI * fraction(draw));
  const corner = (width / 2) ** 2 + (height / 2) ** 2;
  // Light falls off with the fourth power of a cosine: so much that the corners lose what is asked.
  const tangent2 = (1 - shot.vignette) ** -0.5 - 1;
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) {
      const r2 = ((column - width / 2) ** 2 + (row - height / 2) ** 2) / corner;
      const fall = gain * (1 + tangent2 * r2) ** -2 * (1 - (shot.slope * column) / width);
      for (let k = 0; k < 3; k++) {
        const at = 3 * (row * width + column) + k;
        const clean = fall * (light[at] as number);
        const noise = gauss() * Math.sqrt(shot.readNoise ** 2 + Math.max(0, clean) / shot.electrons);
        light[at] = clean + noise;
      }
    }
}

/** Takes the photograph. */
export async function photographed(painting: Painting, shot: Shot): Promise<Photograph> {
  const { width, height, illuminant } = shot;
  const balanced = balancing(illuminant, shot.balance);
  const paper = balanced(lightFrom(STUDIO.paper.reflectance, illuminant));
  const lights = painting.surfaces.map(({ reflectance }) => balanced(lightFrom(reflectance, illuminant)));
  const warm = lightFrom(new Float64Array(GRID.count).fill(1), illuminant);
  const table = balanced(shot.table.map((channel, k) => channel * (warm[k] as number)) as unknown as Light);
  let light = seen(painting, shot, lights, paper, table);
  for (let pass = 0; pass < shot.blur; pass++) light = blurred(light, width, height);
  counted(light, shot, shot.exposure / Math.max(...paper));
  if (shot.jpeg === undefined) return { width, height, light: light.map((one) => quantised(one, 16)) };
  const bytes = new Uint8Array(light.length);
  for (const [at, one] of light.entries())
    bytes[at] = Math.round(255 * encoded(Math.min(1, Math.max(0, one))));
  const jpeg = await sharp(bytes, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: shot.jpeg })
    .toBuffer();
  const codes = await sharp(jpeg).raw().toBuffer();
  for (let at = 0; at < light.length; at++) light[at] = DECODED[codes[at] as number] as number;
  return { width, height, light };
}

/** One pass of the filter, along the rows and then down the columns; beyond an edge lies what lies at it. */
function blurred(light: Float32Array, width: number, height: number): Float32Array<ArrayBuffer> {
  const across = new Float64Array(light.length);
  const out = new Float32Array(light.length);
  const row = 3 * width;
  for (let start = 0; start < light.length; start += row)
    for (let at = start; at < start + row; at++) {
      const [before, after] = [at - 3 < start ? at : at - 3, at + 3 < start + row ? at + 3 : at];
      across[at] = (light[before] as number) + 2 * (light[at] as number) + (light[after] as number);
    }
  for (let at = 0; at < row * height; at++) {
    const [above, below] = [at < row ? at : at - row, at + row < row * height ? at + row : at];
    out[at] = ((across[above] as number) + 2 * (across[at] as number) + (across[below] as number)) / 16;
  }
  return out;
}
