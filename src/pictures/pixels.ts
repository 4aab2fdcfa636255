/** The colour of every pixel: flat and graded washes, strokes as strokes, an open passage as paper with a pencil hatch. */
import { readXyz, whiteOf, yFromMunsellValue } from '../colour/index.js';
import { greyOfValue } from '../colour/screen.js';
import type { AreaLook, Painted, Tone } from './covering.js';
import { type Raster, raster } from './raster.js';

/** A sheet in colour: for each pixel, row by row, the index of its tone. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly tones: readonly Tone[];
  readonly at: Uint16Array;
}

/** Munsell value of the pencil that marks an open passage: a hatch near the paper's own, an outline that reads in grey. */
const PENCIL = { hatch: 7.6, outline: 4.6 } as const;

function pencil(value: number): Tone {
  const white = whiteOf('D65-2');
  const share = yFromMunsellValue(value) / 100;
  const grey = greyOfValue(value);
  return { colour: readXyz({ x: white.x * share, y: white.y * share, z: white.z * share }), hex: grey, grey };
}

/** The hatch and the outline of an open passage. */
export const OPEN_TONES = { hatch: pencil(PENCIL.hatch), outline: pencil(PENCIL.outline) } as const;

/** Pixels from one line of the pencil hatch, or one stroke of the brush, to the next. */
const HATCH_PIXELS = 4;
const strokePixels = (width: number): number => Math.max(5, Math.round(width / 8));

/** What an open passage shows at a pixel. */
type OpenMark = 'outline' | 'hatch' | 'paper';

/**
 * The mark at a pixel of an open area. What is too thin to hold an outline is left as paper.
 * @param area index of the open area
 */
function openMark({ width, height, area: areas }: Raster, area: number, x: number, y: number): OpenMark {
  const isOwn = (x: number, y: number): boolean =>
    x < 0 || y < 0 || x >= width || y >= height || areas[y * width + x] === area;
  const isInside = (x: number, y: number): boolean =>
    isOwn(x, y) && isOwn(x - 1, y) && isOwn(x + 1, y) && isOwn(x, y - 1) && isOwn(x, y + 1);
  if (isInside(x, y)) return (x + y) % HATCH_PIXELS === 0 ? 'hatch' : 'paper';
  const isEdge = [-1, 0, 1].some((dx) => [-1, 0, 1].some((dy) => isInside(x + dx, y + dy)));
  return isEdge ? 'outline' : 'paper';
}

/** How far a pixel lies from the middle of the slanting stroke that it is nearest to, 0-1. */
function fromStroke(x: number, y: number, apart: number): number {
  const along = (((x + y * 0.8) % apart) + apart) % apart;
  return Math.abs(along / apart - 0.5) * 2;
}

/** The pixels of an area in the order in which slanting strokes come to cover it. */
function strokeOrder({ width, area: areas }: Raster, area: number): number[] {
  const apart = strokePixels(width);
  const own: number[] = [];
  for (const [at, of] of areas.entries()) if (of === area) own.push(at);
  const far = new Map(own.map((at) => [at, fromStroke(at % width, Math.floor(at / width), apart)]));
  return own.sort((one, other) => (far.get(one) as number) - (far.get(other) as number) || one - other);
}

/** Tones in the order in which they are met, each once. */
export function tonePool(): { readonly tones: Tone[]; readonly indexOf: (tone: Tone) => number } {
  const tones: Tone[] = [];
  const known = new Map<Tone, number>();
  const indexOf = (tone: Tone): number => {
    let index = known.get(tone);
    if (index === undefined) {
      index = tones.push(tone) - 1;
      known.set(tone, index);
    }
    return index;
  };
  return { tones, indexOf };
}

/** Colours the pixels of a picture. @param drawn a raster of the same picture */
export function colourPixels({ picture, looks, paper }: Painted, drawn: Raster): Pixels {
  const { width, height, area: areas, strength } = drawn;
  const { tones, indexOf } = tonePool();
  const at = new Uint16Array(width * height);
  const own = picture.areas.map(({ id }) => looks[id] as AreaLook);
  for (let pixel = 0; pixel < at.length; pixel++) {
    const area = areas[pixel] as number;
    const look = own[area];
    if (look === undefined) at[pixel] = indexOf(paper);
    else if (look.kind === 'laid') at[pixel] = indexOf(look.graded(strength[pixel] as number));
    else
      at[pixel] = indexOf(openTone(openMark(drawn, area, pixel % width, Math.floor(pixel / width)), paper));
  }
  for (const [area, look] of own.entries()) {
    if (look.kind !== 'laid' || look.strokes === undefined) continue;
    const order = strokeOrder(drawn, area);
    let done = 0;
    let share = 0;
    // The last first: a second paint comes as strokes into the wash of the first.
    for (const stroke of [...look.strokes].reverse()) {
      share += stroke.share;
      const until = Math.round(share * order.length);
      for (; done < until; done++) at[order[done] as number] = indexOf(stroke.tone);
    }
  }
  return { width, height, tones, at };
}

function openTone(mark: OpenMark, paper: Tone): Tone {
  return mark === 'paper' ? paper : OPEN_TONES[mark];
}

/** A painted picture as pixels. @throws RangeError for a size that nobody can look at */
export function pixelsOf(from: Painted, width: number, height: number): Pixels {
  return colourPixels(from, raster(from.picture, width, height));
}

/** Screen colour of each tone: as painted, or the greys of the value check. */
export const screenTones = ({ tones }: Pixels, inGrey: boolean): string[] =>
  tones.map(({ hex, grey }) => (inGrey ? grey : hex));
