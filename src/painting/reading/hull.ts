/** The quadrilateral that a patch of cells fills: its convex hull, with sides taken away until four are left. */
import type { Point } from './photograph.js';

const cross = (o: Point, a: Point, b: Point): number => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

/** One half of a hull: points in order that always turn the same way. */
function chain(points: readonly Point[]): Point[] {
  const out: Point[] = [];
  for (const point of points) {
    while (out.length >= 2 && cross(out.at(-2) as Point, out.at(-1) as Point, point) <= 0) out.pop();
    out.push(point);
  }
  out.pop();
  return out;
}

/** Convex hull, clockwise as it is seen (y runs down). Andrew's monotone chain (Information Processing Letters 9, 216, 1979). */
export function hullOf(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((one, other) => one.x - other.x || one.y - other.y);
  if (sorted.length < 3) return sorted;
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

/** Where two lines meet, each given by two points; undefined where they are parallel. */
export function meeting(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const turn = ux * vy - uy * vx;
  if (Math.abs(turn) < 1e-9 * Math.hypot(ux, uy) * Math.hypot(vx, vy) || turn === 0) return undefined;
  const t = ((c.x - a.x) * vy - (c.y - a.y) * vx) / turn;
  return { x: a.x + t * ux, y: a.y + t * uy };
}

/** Area of a polygon, positive clockwise as it is seen. */
export function areaOf(points: readonly Point[]): number {
  let sum = 0;
  for (const [at, { x, y }] of points.entries()) {
    const next = points[(at + 1) % points.length] as Point;
    sum += x * next.y - y * next.x;
  }
  return sum / 2;
}

/** What it costs to take side `at` away, its neighbours going on until they meet: the area that comes in. */
function withoutSide(
  points: readonly Point[],
  at: number,
): { readonly added: number; readonly corner: Point } | undefined {
  const side = (k: number): Point => points[(at + k + points.length) % points.length] as Point;
  const corner = meeting(side(-1), side(0), side(1), side(2));
  if (corner === undefined) return undefined;
  // The neighbours have to meet outside: beyond the end of the one before and before the start of the one after.
  const ahead =
    (corner.x - side(0).x) * (side(0).x - side(-1).x) + (corner.y - side(0).y) * (side(0).y - side(-1).y);
  const behind =
    (corner.x - side(1).x) * (side(1).x - side(2).x) + (corner.y - side(1).y) * (side(1).y - side(2).y);
  if (ahead < 0 || behind < 0) return undefined;
  return { added: Math.abs(cross(side(0), corner, side(1))) / 2, corner };
}

/** The quadrilateral around a hull that adds little area, side by side; undefined where there is none. */
export function quadrilateral(hull: readonly Point[]): Point[] | undefined {
  let points = [...hull];
  while (points.length > 4) {
    let best: { readonly added: number; readonly corner: Point } | undefined;
    let which = -1;
    for (let at = 0; at < points.length; at++) {
      const one = withoutSide(points, at);
      if (one !== undefined && (best === undefined || one.added < best.added)) [best, which] = [one, at];
    }
    if (best === undefined) return undefined;
    const next = (which + 1) % points.length;
    points[which] = best.corner;
    points = points.filter((_, at) => at !== next);
  }
  return points.length === 4 ? points : undefined;
}

/** Corners clockwise, the left upper one first. */
export function inOrder(points: readonly Point[]): Point[] {
  const turned = areaOf(points) < 0 ? [...points].reverse() : [...points];
  const first = turned.reduce((best, { x, y }, at) => {
    const { x: bx, y: by } = turned[best] as Point;
    return x + y < bx + by ? at : best;
  }, 0);
  return [...turned.slice(first), ...turned.slice(0, first)];
}
