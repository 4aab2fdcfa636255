/** A likeness of a painting as a sheet of pixels, the mass in front outlined. Pure. */
import { labToXyz, readXyz, valueFromStep, whiteOf, yFromMunsellValue } from '../../colour/index.js';
import {
  type Likeness,
  type PaintingReading,
  type Place,
  studyBounds,
  studySteps,
  studyValueOf,
} from '../../painting/index.js';
import { type Pixels, type Tone, toneOf, tonePool } from '../../pictures/index.js';
import type { PictureLook } from './state.js';

/** Colours closer than this are shown as one: nobody sees it on a screen of characters, and runs of one colour stay together. */
const GRAIN = { l: 2, ab: 3 } as const;
/** Munsell values of the outline: that which stands out. */
const OUTLINE = { light: 9.5, dark: 1.5, turns: 5 } as const;

const WHITE = whiteOf('D65-2');

function neutral(value: number): Tone {
  const share = yFromMunsellValue(value) / 100;
  return toneOf(readXyz({ x: WHITE.x * share, y: WHITE.y * share, z: WHITE.z * share }));
}

/** Rows and columns of the likeness under a row or a column of the sheet, at least one. */
function under(at: number, of: number, side: number): readonly [number, number] {
  const from = Math.min(side - 1, Math.floor((at * side) / of));
  return [from, Math.max(from + 1, Math.floor(((at + 1) * side) / of))];
}

function meanUnder(
  { width, lab }: Likeness,
  columns: readonly [number, number],
  rows: readonly [number, number],
) {
  const sum = { l: 0, a: 0, b: 0 };
  for (let y = rows[0]; y < rows[1]; y++)
    for (let x = columns[0]; x < columns[1]; x++) {
      const at = 3 * (y * width + x);
      sum.l += lab[at] as number;
      sum.a += lab[at + 1] as number;
      sum.b += lab[at + 2] as number;
    }
  const count = (rows[1] - rows[0]) * (columns[1] - columns[0]);
  return { l: sum.l / count, a: sum.a / count, b: sum.b / count };
}

const rounded = (value: number, grain: number): number => Math.round(value / grain) * grain;

/** The tones of one look, each made once. */
function toneMaker(look: PictureLook): (lab: { l: number; a: number; b: number }) => Tone {
  const [bounds, steps] = typeof look === 'number' ? [studyBounds(look), studySteps(look)] : [[], []];
  const known = new Map<string, Tone>();
  return ({ l, a, b }) => {
    const lab = { l: rounded(l, GRAIN.l), a: rounded(a, GRAIN.ab), b: rounded(b, GRAIN.ab) };
    const key = `${lab.l} ${lab.a} ${lab.b}`;
    let tone = known.get(key);
    if (tone === undefined) {
      const colour = readXyz(labToXyz(lab, WHITE));
      tone =
        typeof look === 'number'
          ? neutral(valueFromStep(steps[studyValueOf(colour.step, bounds)] ?? 1))
          : toneOf(colour);
      known.set(key, tone);
    }
    return tone;
  };
}

/** Size of a picture, and the mass that is outlined in it; none is where `mass` is absent. */
export interface PixelsAsked {
  readonly width: number;
  readonly height: number;
  readonly look: PictureLook;
  readonly mass?: number;
}

/** The painting as a sheet of pixels. */
export function photographPixels(
  { likeness, massAt }: Pick<PaintingReading, 'likeness' | 'massAt'>,
  { width, height, look, mass }: PixelsAsked,
): Pixels {
  const toneFor = toneMaker(look);
  const { tones, indexOf } = tonePool();
  const at = new Uint16Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const mean = meanUnder(likeness, under(x, width, likeness.width), under(y, height, likeness.height));
      at[y * width + x] = indexOf(toneFor(mean));
    }
  if (mass !== undefined) outline();
  return { width, height, tones, at };

  /** Draws round the mass, inside of it, in a grey that stands out from it. */
  function outline(): void {
    const isIn = (x: number, y: number): boolean => {
      if (x < 0 || y < 0 || x >= width || y >= height) return false;
      const column = Math.floor(((x + 0.5) / width) * likeness.width);
      const row = Math.floor(((y + 0.5) / height) * likeness.height);
      return massAt[row * likeness.width + column] === mass;
    };
    const marks = [neutral(OUTLINE.light), neutral(OUTLINE.dark)] as const;
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) {
        if (!isIn(x, y) || (isIn(x - 1, y) && isIn(x + 1, y) && isIn(x, y - 1) && isIn(x, y + 1))) continue;
        const { colour } = tones[at[y * width + x] as number] as Tone;
        at[y * width + x] = indexOf(colour.value < OUTLINE.turns ? marks[0] : marks[1]);
      }
  }
}

/** The place of a mass that is nearest to its middle and inside of it, for its number: in shares. */
export function numberPlace({ likeness, massAt, masses }: PaintingReading, mass: number): Place {
  const { width, height } = likeness;
  const { x, y } = masses[mass] as Place;
  let best: Place = { x, y };
  let nearest = Number.POSITIVE_INFINITY;
  for (let pixel = 0; pixel < massAt.length; pixel++) {
    if (massAt[pixel] !== mass) continue;
    const there = { x: ((pixel % width) + 0.5) / width, y: (Math.floor(pixel / width) + 0.5) / height };
    const far = Math.hypot(there.x - x, there.y - y);
    if (far < nearest) [nearest, best] = [far, there];
  }
  return best;
}
