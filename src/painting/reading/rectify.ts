/** The sheet laid flat: from its four corners in the photograph to an upright rectangle. */

import type { Photograph } from '../types.js';
import { addLight, type Point } from './photograph.js';

/** Longest side of a likeness, pixels. */
const MOST_PIXELS = 480;

/** Takes a place in the unit square to the photograph, in pixels; written into `out`. */
export type Projection = (u: number, v: number, out: Float64Array) => void;

/**
 * The projection of the unit square onto a quadrilateral, its corners clockwise from the left upper one.
 * Source: P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping (1989), section 2.2.3, square to quadrilateral.
 */
function projection(corners: readonly Point[]): Projection {
  const [p, q, r, s] = corners as readonly [Point, Point, Point, Point];
  const [sx, sy] = [p.x - q.x + r.x - s.x, p.y - q.y + r.y - s.y];
  const [dx1, dy1, dx2, dy2] = [q.x - r.x, q.y - r.y, s.x - r.x, s.y - r.y];
  const det = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / det;
  const h = (dx1 * sy - sx * dy1) / det;
  const [a, b] = [q.x - p.x + g * q.x, s.x - p.x + h * s.x];
  const [d, e] = [q.y - p.y + g * q.y, s.y - p.y + h * s.y];
  return (u, v, out) => {
    const w = g * u + h * v + 1;
    out[0] = (a * u + b * v + p.x) / w;
    out[1] = (d * u + e * v + p.y) / w;
  };
}

/** A sheet laid flat, with the way back to where each of its pixels was seen. */
export interface Flat extends Photograph {
  readonly project: Projection;
  /** Pixels of the photograph along one pixel of it, about. */
  readonly scale: number;
}

const far = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * Lays a sheet flat. Its proportions are those of the means of opposite sides: a likeness is to be looked at and counted, and nothing in
 * it is measured in lengths.
 */
export function laidFlat(photograph: Photograph, corners: readonly Point[]): Flat {
  const [p, q, r, s] = corners as readonly [Point, Point, Point, Point];
  const [across, down] = [(far(p, q) + far(s, r)) / 2, (far(p, s) + far(q, r)) / 2];
  const shrink = Math.min(1, MOST_PIXELS / Math.max(across, down));
  const width = Math.max(1, Math.round(across * shrink));
  const height = Math.max(1, Math.round(down * shrink));
  const project = projection(corners);
  const light = new Float32Array(3 * width * height);
  const taps = Math.min(4, Math.max(1, Math.round(1 / shrink)));
  const weight = 1 / (taps * taps);
  const at = new Float64Array(2);
  for (let row = 0, into = 0; row < height; row++)
    for (let column = 0; column < width; column++, into += 3)
      for (let j = 0; j < taps; j++)
        for (let i = 0; i < taps; i++) {
          project((column + (i + 0.5) / taps) / width, (row + (j + 0.5) / taps) / height, at);
          addLight(photograph, at[0] as number, at[1] as number, light, into, weight);
        }
  return { width, height, light, project, scale: 1 / shrink };
}

/** Light averaged with that of the pixels around (1 2 1 both ways): the grain of paper and sensor is not a value of the painting. */
export function smoothed<T extends Photograph>(image: T): T {
  const { width, height, light } = image;
  const between = new Float32Array(light.length);
  const out = new Float32Array(light.length);
  pass(light, between, 3, width, 3 * width, height);
  pass(between, out, 3 * width, height, 3, width);
  return { ...image, light: out };
}

/** Along lines of `count` pixels that lie `step` apart in the array; `lines` of them, `apart` from start to start. */
function pass(
  from: Float32Array,
  to: Float32Array,
  step: number,
  count: number,
  apart: number,
  lines: number,
): void {
  for (let line = 0; line < lines; line++)
    for (let k = 0; k < count; k++) {
      const at = line * apart + k * step;
      const before = k > 0 ? at - step : at;
      const after = k < count - 1 ? at + step : at;
      to[at] = ((from[before] as number) + 2 * (from[at] as number) + (from[after] as number)) / 4;
      to[at + 1] =
        ((from[before + 1] as number) + 2 * (from[at + 1] as number) + (from[after + 1] as number)) / 4;
      to[at + 2] =
        ((from[before + 2] as number) + 2 * (from[at + 2] as number) + (from[after + 2] as number)) / 4;
    }
}
