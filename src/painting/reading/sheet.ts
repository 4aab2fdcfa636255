/**
 * The sheet of paper in a photograph. Its bare border is a ring of one light, edged all round by the table: patches of cells that go over
 * into each other without an edge are grown from the brightest, filled, and each that is a quadrilateral with an edge to something
 * darker along its sides may be the sheet.
 */

import type { Photograph } from '../types.js';
import { areaOf, hullOf, inOrder, quadrilateral } from './hull.js';
import { count, filled, opened } from './mask.js';
import { type Cells, luminances, type Point, shrunk } from './photograph.js';
import { type Redrawn, redrawn, type Side } from './sides.js';

/** A sheet that was found, in pixels. */
export interface Sheet {
  readonly corners: readonly Point[];
  readonly sides: readonly Side[];
}

/** Cells along the longer side of the photograph. */
const CELLS = 220;
/** From cell to cell paper changes by no more than this, as logarithms: of luminance, and of red and blue against green. */
const STEP = { luminance: 0.07, colour: 0.14 };
/** Spread of luminance in three by three cells from which there is an edge, as a logarithm. */
const EDGE = 0.16;
/** From the brightest cell of a patch to its darkest, and to its farthest in colour. */
const SPAN = { luminance: 0.75, colour: 0.3 };
/** Share of the cells that a patch must have, and how many patches are tried. */
const LEAST_PATCH = 0.008;
const MOST_PATCHES = 6;
/** Share of the photograph that a sheet must fill. */
const LEAST_SHEET = 0.08;
/** Share of a side that must be seen as an edge; sides that must be. */
const LEAST_SUPPORT = 0.45;
const LEAST_SIDES = 2;
/** Angles of its corners as they are seen, degrees. */
const ANGLES = [45, 135] as const;

interface Logs {
  readonly width: number;
  readonly height: number;
  readonly luminance: Float32Array;
  readonly red: Float32Array;
  readonly blue: Float32Array;
}

function logsOf(cells: Cells): Logs {
  const { width, height, light } = cells;
  const luminance = luminances(cells).map(Math.log);
  const red = new Float32Array(luminance.length);
  const blue = new Float32Array(luminance.length);
  // What is added keeps the noise of what is nearly black out of its colour.
  for (let at = 0, from = 0; at < red.length; at++, from += 3) {
    const green = Math.log(Math.max(0, light[from + 1] as number) + 0.01);
    red[at] = Math.log(Math.max(0, light[from] as number) + 0.01) - green;
    blue[at] = Math.log(Math.max(0, light[from + 2] as number) + 0.01) - green;
  }
  return { width, height, luminance, red, blue };
}

/**
 * Cells with an edge in them or beside them, by the spread of luminance in the three by three around. A patch goes round them, not through: along a
 * slanting edge one cell after another holds a little more of the table, and no step of it is an edge.
 */
function edgesIn({ width, height, luminance }: Logs): Uint8Array {
  const low = new Float32Array(luminance.length);
  const high = new Float32Array(luminance.length);
  const out = new Uint8Array(luminance.length);
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at++) {
      const here = luminance[at] as number;
      const left = x > 0 ? (luminance[at - 1] as number) : here;
      const right = x < width - 1 ? (luminance[at + 1] as number) : here;
      low[at] = Math.min(here, left, right);
      high[at] = Math.max(here, left, right);
    }
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at++) {
      const above = y > 0 ? at - width : at;
      const below = y < height - 1 ? at + width : at;
      const most = Math.max(high[at] as number, high[above] as number, high[below] as number);
      const least = Math.min(low[at] as number, low[above] as number, low[below] as number);
      out[at] = most - least > EDGE ? 1 : 0;
    }
  return out;
}

/** Cells in the order of their luminance, to a hundredth of the range. */
function brightestFirst(luminance: Float32Array): Int32Array {
  const bins = 256;
  const starts = new Int32Array(bins + 2);
  // Down to a ten thousandth of full light.
  const bin = (height: number): number => Math.min(bins - 1, Math.max(0, Math.floor((-height * bins) / 9.3)));
  for (let at = 0; at < luminance.length; at++) {
    const own = bin(luminance[at] as number) + 1;
    starts[own] = (starts[own] as number) + 1;
  }
  for (let at = 1; at < starts.length; at++) starts[at] = (starts[at] as number) + (starts[at - 1] as number);
  const out = new Int32Array(luminance.length);
  for (let at = 0; at < luminance.length; at++) {
    const own = bin(luminance[at] as number);
    out[starts[own] as number] = at;
    starts[own] = (starts[own] as number) + 1;
  }
  return out;
}

/** Patches of cells, each a mask, the brightest first. */
function patchesOf(logs: Logs): Uint8Array[] {
  const { width, height, luminance, red, blue } = logs;
  const count = width * height;
  const taken = edgesIn(logs);
  const order = brightestFirst(luminance);
  const queue = new Int32Array(count);
  const found: Uint8Array[] = [];
  const beside = [-1, 1, -width, width];
  for (const seed of order) {
    if (found.length >= MOST_PATCHES) break;
    if (taken[seed] === 1) continue;
    let [head, tail] = [0, 0];
    queue[tail++] = seed;
    taken[seed] = 1;
    const [top, r0, b0] = [luminance[seed] as number, red[seed] as number, blue[seed] as number];
    while (head < tail) {
      const here = queue[head++] as number;
      const column = here % width;
      for (let k = 0; k < 4; k++) {
        if ((k === 0 && column === 0) || (k === 1 && column === width - 1)) continue;
        const there = here + (beside[k] as number);
        if (there < 0 || there >= count || taken[there] === 1) continue;
        const isPaper =
          Math.abs((luminance[there] as number) - (luminance[here] as number)) < STEP.luminance &&
          Math.abs((red[there] as number) - (red[here] as number)) < STEP.colour &&
          Math.abs((blue[there] as number) - (blue[here] as number)) < STEP.colour &&
          top - (luminance[there] as number) < SPAN.luminance &&
          Math.abs((red[there] as number) - r0) < SPAN.colour &&
          Math.abs((blue[there] as number) - b0) < SPAN.colour;
        if (!isPaper) continue;
        taken[there] = 1;
        queue[tail++] = there;
      }
    }
    if (tail < LEAST_PATCH * count) continue;
    const mask = new Uint8Array(count);
    for (let k = 0; k < tail; k++) mask[queue[k] as number] = 1;
    found.push(mask);
  }
  return found;
}

/** Corners of the cells at the ends of each row of a mask. */
function outline(mask: Uint8Array, width: number, height: number, side: number): Point[] {
  const points: Point[] = [];
  for (let row = 0; row < height; row++) {
    const cells = mask.subarray(row * width, (row + 1) * width);
    const [first, last] = [cells.indexOf(1), cells.lastIndexOf(1)];
    if (first < 0) continue;
    for (const y of [row * side, (row + 1) * side])
      points.push({ x: first * side, y }, { x: (last + 1) * side, y });
  }
  return points;
}

function isSheet({ corners, sides }: Redrawn, { width, height }: Photograph): boolean {
  if (areaOf(corners) < LEAST_SHEET * width * height) return false;
  const seen = sides.filter(({ atBorder }) => !atBorder);
  if (seen.length < LEAST_SIDES || seen.some(({ support }) => support < LEAST_SUPPORT)) return false;
  return corners.every((here, at) => {
    const [before, after] = [corners[(at + 3) % 4] as Point, corners[(at + 1) % 4] as Point];
    const turn =
      Math.atan2(before.y - here.y, before.x - here.x) - Math.atan2(after.y - here.y, after.x - here.x);
    const degrees = ((((turn * 180) / Math.PI) % 360) + 360) % 360;
    return degrees > ANGLES[0] && degrees < ANGLES[1];
  });
}

/** Finds the sheet; undefined where none is seen. */
export function findSheet(photograph: Photograph): Sheet | undefined {
  const cells = shrunk(photograph, CELLS);
  const { width, height, side } = cells;
  if (width < 12 || height < 12) return undefined;
  const logs = logsOf(cells);
  const fine = luminances(photograph);
  const across = photograph.width;
  const at = (x: number, y: number): number => {
    const column = Math.min(across - 1, Math.max(0, x | 0));
    const row = Math.min(photograph.height - 1, Math.max(0, y | 0));
    return Math.log((fine[row * across + column] as number) + 0.01);
  };
  let best: { readonly sheet: Redrawn; readonly merit: number; readonly whole: Uint8Array } | undefined;
  for (const patch of patchesOf(logs)) {
    // Darker than the sheet and within it: a passage of the painting.
    if (best?.whole[patch.indexOf(1)] === 1) continue;
    const whole = filled(patch, width, height);
    const wide = opened(whole, width, height);
    const mask = count(wide) > 0.6 * count(whole) ? wide : whole;
    const rough = quadrilateral(hullOf(outline(mask, width, height, side)));
    if (
      rough === undefined ||
      areaOf(inOrder(rough)) < (LEAST_SHEET / 2) * photograph.width * photograph.height
    )
      continue;
    const first = redrawn(at, photograph, inOrder(rough), 3 * side + 2, 1.5 * side);
    const sheet = first && redrawn(at, photograph, first.corners, side + 3, 1.5 * side);
    if (sheet === undefined || !isSheet(sheet, photograph)) continue;
    let [sum, among] = [0, 0];
    for (let cell = 0; cell < patch.length; cell++)
      if (patch[cell] === 1) {
        sum += logs.luminance[cell] as number;
        among++;
      }
    // The lighter of a sheet and a table top is the paper; the larger of a sheet and a light place in it is the sheet.
    const merit = Math.exp(sum / among) * Math.sqrt(areaOf(sheet.corners));
    if (best === undefined || merit > best.merit) best = { sheet, merit, whole };
  }
  if (best === undefined) return undefined;
  const { corners, sides } = best.sheet;
  const ordered = inOrder(corners);
  const first = corners.indexOf(ordered[0] as Point);
  return { corners: ordered, sides: [...sides.slice(first), ...sides.slice(0, first)] };
}
