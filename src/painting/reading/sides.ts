/** The sides of a sheet, drawn again along the edge where paper gives way to what it lies on. */
import { median } from 'simple-statistics';
import { meeting } from './hull.js';
import type { Point } from './photograph.js';

/** A side of a sheet as it was seen. */
export interface Side {
  /** Share of its length where an edge lies on one line with the rest, 0-1. */
  readonly support: number;
  /** Width of the edge, pixels from paper to table. */
  readonly softness: number;
  /** It runs along the border of the photograph: the sheet may go on beyond it. */
  readonly atBorder: boolean;
}

/** Places along a side where its edge is looked for, and the share of each end that is left out: corners curl. */
const PLACES = 48;
const ENDS = 0.05;
/** Least step of light from table to paper, as a logarithm. */
const LEAST_STEP = 0.08;
/** Pixels from the middle of an edge to where it has ended, if it is not very soft. */
const FOOT = 8;
/** An edge lies on a line when it is so near, pixels. */
const NEAR_PIXELS = 1.5;

interface Edge {
  /** Along the side, 0-1, and out from it, pixels. */
  readonly along: number;
  readonly out: number;
  readonly softness: number;
}

/** Looks for edges across a side, within `reach` pixels of it. */
function edgesOf(logs: (x: number, y: number) => number, a: Point, b: Point, reach: number): Edge[] {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(dx, dy);
  // Clockwise as it is seen, so that out is to the left of the way.
  const [nx, ny] = [dy / length, -dx / length];
  const found: Edge[] = [];
  const steps = Math.ceil(2 * reach) + 4;
  const profile = new Float64Array(steps + 1);
  for (let place = 0; place < PLACES; place++) {
    const along = ENDS + ((1 - 2 * ENDS) * (place + 0.5)) / PLACES;
    for (let step = 0; step <= steps; step++) {
      const out = step - steps / 2;
      let sum = 0;
      for (const beside of [-1, 0, 1]) {
        const x = a.x + along * dx + out * nx + (beside * dx) / length;
        const y = a.y + along * dy + out * ny + (beside * dy) / length;
        sum += logs(x, y);
      }
      profile[step] = sum / 3;
    }
    let [best, fall] = [-1, LEAST_STEP / 4];
    for (let step = 1; step < steps; step++) {
      const here = ((profile[step - 1] as number) - (profile[step + 1] as number)) / 2;
      if (here > fall) [best, fall] = [step, here];
    }
    if (best < 0) continue;
    const fell = (step: number): number =>
      ((profile[Math.max(0, step - 1)] as number) - (profile[Math.min(steps, step + 1)] as number)) / 2;
    const [before, after] = [fell(best - 1), fell(best + 1)];
    const bend = before - 2 * fall + after;
    const between = bend < 0 ? Math.min(0.5, Math.max(-0.5, (0.5 * (before - after)) / bend)) : 0;
    const height =
      (profile[Math.max(0, best - FOOT)] as number) - (profile[Math.min(steps, best + FOOT)] as number);
    if (height < LEAST_STEP) continue;
    found.push({ along, out: best + between - steps / 2, softness: height / fall });
  }
  return found;
}

/** The line through most edges: the median of slopes between halves, then least squares on what is near it. */
function lineThrough(edges: readonly Edge[]): {
  readonly at0: number;
  readonly at1: number;
  readonly near: number;
} {
  const slopes: number[] = [];
  const half = edges.length >> 1;
  for (let k = 0; k < half; k++) {
    const [one, other] = [edges[k] as Edge, edges[k + (edges.length - half)] as Edge];
    slopes.push((other.out - one.out) / (other.along - one.along));
  }
  let slope = slopes.length === 0 ? 0 : median(slopes);
  let start = median(edges.map(({ along, out }) => out - slope * along));
  let near = edges;
  for (let round = 0; round < 4; round++) {
    const reach = round < 2 ? 2 * NEAR_PIXELS : NEAR_PIXELS;
    near = edges.filter(({ along, out }) => Math.abs(out - start - slope * along) < reach);
    if (near.length < 4) break;
    const meanAlong = near.reduce((sum, { along }) => sum + along, 0) / near.length;
    const meanOut = near.reduce((sum, { out }) => sum + out, 0) / near.length;
    const spread = near.reduce((sum, { along }) => sum + (along - meanAlong) ** 2, 0);
    slope =
      near.reduce((sum, { along, out }) => sum + (along - meanAlong) * (out - meanOut), 0) /
      Math.max(1e-9, spread);
    start = meanOut - slope * meanAlong;
  }
  return { at0: start, at1: start + slope, near: near.length };
}

/** A quadrilateral drawn again, with what is known of its sides: left upper to right upper corner first. */
export interface Redrawn {
  readonly corners: readonly Point[];
  readonly sides: readonly Side[];
}

/**
 * Draws the sides again.
 * @param logs logarithm of luminance at a point
 * @param corners clockwise
 * @param reach pixels that a side may be off
 * @param room pixels from the border of the photograph within which a side runs along it
 */
export function redrawn(
  logs: (x: number, y: number) => number,
  { width, height }: { readonly width: number; readonly height: number },
  corners: readonly Point[],
  reach: number,
  room: number,
): Redrawn | undefined {
  const lines: (readonly [Point, Point])[] = [];
  const sides: Side[] = [];
  for (const [at, a] of corners.entries()) {
    const b = corners[(at + 1) % 4] as Point;
    const atBorder = [
      [a.x, b.x],
      [a.y, b.y],
      [width - a.x, width - b.x],
      [height - a.y, height - b.y],
    ].some((far) => far.every((pixels) => pixels < room));
    const edges = atBorder ? [] : edgesOf(logs, a, b, reach);
    if (edges.length < PLACES / 8) {
      lines.push([a, b]);
      sides.push({ support: 0, softness: 0, atBorder });
      continue;
    }
    const { at0, at1, near } = lineThrough(edges);
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const [nx, ny] = [(b.y - a.y) / length, -(b.x - a.x) / length];
    lines.push([
      { x: a.x + at0 * nx, y: a.y + at0 * ny },
      { x: b.x + at1 * nx, y: b.y + at1 * ny },
    ]);
    sides.push({ support: near / PLACES, softness: median(edges.map(({ softness }) => softness)), atBorder });
  }
  const again = lines.map(([a, b], at) => {
    const [c, d] = lines[(at + 3) % 4] as readonly [Point, Point];
    return meeting(c, d, a, b);
  });
  if (again.some((corner) => corner === undefined)) return undefined;
  return { corners: again as Point[], sides };
}
