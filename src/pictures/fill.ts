/** Which pixels a figure covers: a pixel belongs to what lies over its middle, and a thin thing keeps at least one pixel of width. */
import { type Box, type Ellipse, GRID, type Point, type Shape } from './types.js';

/** A sheet of so many pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Called for every pixel that is covered. */
type Plot = (x: number, y: number) => void;

const clamp = (x: number, most: number): number => Math.min(most, Math.max(0, x));

/** First and last whole pixel of a stretch: those whose middle it covers, else the one in which its own middle lies. */
function stretch(from: number, to: number, most: number): readonly [number, number] {
  const first = Math.ceil(from - 0.5);
  const last = Math.ceil(to - 0.5) - 1;
  if (last >= first) return [Math.max(0, first), Math.min(most - 1, last)];
  const only = Math.floor((from + to) / 2);
  return only < 0 || only >= most ? [0, -1] : [only, only];
}

function fillBox([left, top, right, bottom]: Box, size: Size, plot: Plot): void {
  const [kx, ky] = [size.width / GRID.columns, size.height / GRID.rows];
  const [x0, x1] = stretch(left * kx, right * kx, size.width);
  const [y0, y1] = stretch(top * ky, bottom * ky, size.height);
  for (let y = y0; y <= y1; y++) for (let x = x0; x <= x1; x++) plot(x, y);
}

/** Where the edges of a polygon cross a row, left to right; points in pixels. */
function crossings(points: readonly Point[], y: number): number[] {
  const found: number[] = [];
  for (const [index, [x0, y0]] of points.entries()) {
    const [x1, y1] = points[(index + 1) % points.length] as Point;
    if (y0 <= y !== y1 <= y) found.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
  }
  return found.sort((one, other) => one - other);
}

/** Fills between the edges; a row that the polygon passes between two middles keeps its one pixel. */
function fillPolygon(units: readonly Point[], size: Size, plot: Plot): void {
  const [kx, ky] = [size.width / GRID.columns, size.height / GRID.rows];
  const points = units.map(([x, y]): Point => [x * kx, y * ky]);
  const ys = points.map(([, y]) => y);
  const [first, last] = stretch(Math.min(...ys), Math.max(...ys), size.height);
  for (let row = first; row <= last; row++) {
    const inside = Math.min(Math.max(row + 0.5, Math.min(...ys) + 1e-6), Math.max(...ys) - 1e-6);
    const edges = crossings(points, inside);
    for (let at = 0; at + 1 < edges.length; at += 2) {
      const [x0, x1] = stretch(edges[at] as number, edges[at + 1] as number, size.width);
      for (let x = x0; x <= x1; x++) plot(x, row);
    }
  }
}

const CORNERS = 28;

/** An ellipse as a polygon. */
function around([cx, cy, rx, ry]: Ellipse): Point[] {
  return Array.from({ length: CORNERS }, (_, corner): Point => {
    const turn = (2 * Math.PI * (corner + 0.5)) / CORNERS;
    return [cx + rx * Math.cos(turn), cy + ry * Math.sin(turn)];
  });
}

/** A line of so many units; at least a pixel wide across its own direction. */
function fillLine(points: readonly Point[], width: number, size: Size, plot: Plot): void {
  const [kx, ky] = [size.width / GRID.columns, size.height / GRID.rows];
  for (const [index, [x0, y0]] of points.slice(0, -1).entries()) {
    const [x1, y1] = points[index + 1] as Point;
    const [dx, dy] = [(x1 - x0) * kx, (y1 - y0) * ky];
    const steep = Math.abs(dy) > Math.abs(dx);
    const [along, reach] = steep ? [dy, width * kx] : [dx, width * ky];
    const [start, side] = steep ? [y0 * ky, x0 * kx] : [x0 * kx, y0 * ky];
    const [most, sides] = steep ? [size.height, size.width] : [size.width, size.height];
    const slope = along === 0 ? 0 : (steep ? dx : dy) / along;
    const [from, to] = stretch(Math.min(start, start + along), Math.max(start, start + along), most);
    for (let step = from; step <= to; step++) {
      const inside =
        clamp((step + 0.5 - start) * Math.sign(along || 1), Math.abs(along)) * Math.sign(along || 1);
      const middle = side + inside * slope;
      const [a, b] = stretch(middle - reach / 2, middle + reach / 2, sides);
      for (let across = a; across <= b; across++) plot(steep ? across : step, steep ? step : across);
    }
  }
}

/** Width of lines that state none, in units. */
export const LINE_WIDTH = 0.6;

/** Every pixel of a shape, perhaps some more than once. */
export function fillShape(
  { rects, polygons, ellipses, lines, width = LINE_WIDTH }: Shape,
  size: Size,
  plot: Plot,
): void {
  for (const box of rects ?? []) fillBox(box, size, plot);
  for (const points of polygons ?? []) fillPolygon(points, size, plot);
  for (const ellipse of ellipses ?? []) fillPolygon(around(ellipse), size, plot);
  for (const points of lines ?? []) fillLine(points, width, size, plot);
}

/** The box that a shape fills, in units. */
export function boundsOf({ rects, polygons, ellipses, lines }: Shape): Box {
  const points = [
    ...(rects ?? []).flatMap(([left, top, right, bottom]): Point[] => [
      [left, top],
      [right, bottom],
    ]),
    ...(ellipses ?? []).flatMap(([cx, cy, rx, ry]): Point[] => [
      [cx - rx, cy - ry],
      [cx + rx, cy + ry],
    ]),
    ...(polygons ?? []).flat(),
    ...(lines ?? []).flat(),
  ];
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
