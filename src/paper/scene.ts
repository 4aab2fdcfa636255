/** The little picture of a scene on paper: its shapes as vectors, an open passage hatched as with a pencil. */
import type { AreaLook, Painted, Tone } from '../pictures/covering.js';
import { boundsOf, LINE_WIDTH } from '../pictures/fill.js';
import { OPEN_TONES } from '../pictures/pixels.js';
import { GRID, type Graded, type Shape } from '../pictures/types.js';
import type { Block } from './block.js';
import { type Edge, type Fill, INK, type Mark, type Outline, type Spot } from './types.js';

/** Stops of a gradation. */
const STOPS = 7;
/** From one stroke of the brush to the next, in units of the picture; from one line of the pencil, in points. */
const STROKE_UNITS = 4;
const HATCH_POINTS = 4;

type Bounds = readonly [left: number, top: number, right: number, bottom: number];

/** Every figure of a shape, in points. */
function outlines({ rects, polygons, ellipses, lines }: Shape, k: number): Outline[] {
  const spot = ([x, y]: readonly [number, number]): Spot => [x * k, y * k];
  return [
    ...(rects ?? []).map(
      ([left, top, right, bottom]): Outline => ({
        box: [left * k, top * k, (right - left) * k, (bottom - top) * k],
      }),
    ),
    ...(polygons ?? []).map((points): Outline => ({ polygon: points.map(spot) })),
    ...(ellipses ?? []).map(([x, y, rx, ry]): Outline => ({ ellipse: [x * k, y * k, rx * k, ry * k] })),
    ...(lines ?? []).map((points): Outline => ({ path: points.map(spot) })),
  ];
}

function gradation({ to, towards }: Graded, look: AreaLook, [left, top, right, bottom]: Bounds): Fill {
  const shade = (way: number): string =>
    look.kind === 'laid' ? look.graded(1 + (to - 1) * way).hex : INK.pale;
  const ends: Record<Graded['towards'], readonly [Spot, Spot]> = {
    down: [
      [0, top],
      [0, bottom],
    ],
    up: [
      [0, bottom],
      [0, top],
    ],
    right: [
      [left, 0],
      [right, 0],
    ],
    left: [
      [right, 0],
      [left, 0],
    ],
  };
  const [from, end] = ends[towards];
  const [first, second, ...rest] = Array.from({ length: STOPS }, (_, stop) => shade(stop / (STOPS - 1)));
  return { from, to: end, colours: [first as string, second as string, ...rest] };
}

/** Slanting lines over a stretch of the sheet. */
function slanted([left, top, right, bottom]: Bounds, apart: number, edge: Edge, shift = 0): Mark[] {
  const lean = (bottom - top) * 0.8;
  const count = Math.max(0, Math.ceil((right + lean - left) / apart) + 1);
  return Array.from({ length: count }, (_, at): Mark => {
    const x = Math.floor(left / apart) * apart + at * apart + shift;
    return {
      kind: 'figure',
      outline: {
        path: [
          [x, top],
          [x - lean, bottom],
        ],
      },
      edge,
    };
  });
}

/** Strokes side by side, as wide as their shares; the first lies under the others. */
function strokeMarks(
  strokes: readonly { readonly tone: Tone; readonly share: number }[],
  outline: Outline,
  bounds: Bounds,
  k: number,
): Mark[] {
  const [under, ...others] = strokes;
  if (under === undefined) return [];
  const apart = STROKE_UNITS * k;
  // A line that leans is narrower across than along.
  const across = apart * Math.cos(Math.atan(0.8));
  let from = 0;
  const bars = others.flatMap(({ tone, share }) => {
    const middle = (from + share / 2) * apart;
    from += share;
    return slanted(bounds, apart, { colour: tone.hex, width: share * across }, middle);
  });
  return [
    { kind: 'figure', outline, fill: under.tone.hex },
    { kind: 'clipped', outline, marks: bars },
  ];
}

function openMarks(outline: Outline, bounds: Bounds, paper: Tone): Mark[] {
  const hatch = slanted(bounds, HATCH_POINTS, { colour: OPEN_TONES.hatch.hex, width: 0.6 });
  return [
    { kind: 'figure', outline, fill: paper.hex },
    { kind: 'clipped', outline, marks: hatch },
    { kind: 'figure', outline, edge: { colour: OPEN_TONES.outline.hex, width: 0.9 } },
  ];
}

function shapeMarks(shape: Shape, look: AreaLook, paper: Tone, k: number): Mark[] {
  const [left, top, right, bottom] = boundsOf(shape);
  const bounds: Bounds = [
    Math.max(0, left) * k,
    Math.max(0, top) * k,
    Math.min(GRID.columns, right) * k,
    Math.min(GRID.rows, bottom) * k,
  ];
  return outlines(shape, k).flatMap((outline): Mark[] => {
    if ('path' in outline) {
      const colour = look.kind === 'open' ? OPEN_TONES.outline.hex : look.tone.hex;
      return [{ kind: 'figure', outline, edge: { colour, width: (shape.width ?? LINE_WIDTH) * k } }];
    }
    if (look.kind === 'open') return openMarks(outline, bounds, paper);
    if (look.strokes !== undefined) return strokeMarks(look.strokes, outline, bounds, k);
    const fill = shape.graded === undefined ? look.tone.hex : gradation(shape.graded, look, bounds);
    return [{ kind: 'figure', outline, fill }];
  });
}

/** Height of a picture of a width. */
const sceneHeight = (width: number): number => (width * GRID.rows) / GRID.columns;

/** A painted picture, so many points wide, in a thin frame. */
export function scenePicture({ picture, looks, paper }: Painted, width: number): Block {
  const k = width / GRID.columns;
  const height = sceneHeight(width);
  const frame: Outline = { box: [0, 0, width, height] };
  const marks = picture.shapes.flatMap((shape) => shapeMarks(shape, looks[shape.area] as AreaLook, paper, k));
  return {
    height,
    marks: [
      { kind: 'figure', outline: frame, fill: paper.hex },
      { kind: 'clipped', outline: frame, marks },
      { kind: 'figure', outline: frame, edge: { colour: INK.line, width: 0.5 } },
    ],
  };
}
