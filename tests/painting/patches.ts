/** Photographs of flat patches, without camera or table: what is read of them is what was put in. */
import type { Photograph, Place } from '../../src/painting/types.js';
import type { Light } from './scenes.js';

/** Patches in rows, with where each has its middle. */
export interface Chart {
  readonly photograph: Photograph;
  readonly middles: readonly Place[];
}

/** Pixels along a patch. */
const SIDE = 40;

/** A chart of patches, row by row. @param keep what a file makes of light */
export function chartOf(lights: readonly Light[], columns: number, keep: (light: number) => number): Chart {
  const rows = Math.ceil(lights.length / columns);
  const [width, height] = [columns * SIDE, rows * SIDE];
  const light = new Float32Array(3 * width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const patch = lights[Math.floor(y / SIDE) * columns + Math.floor(x / SIDE)] ?? [0, 0, 0];
      for (let k = 0; k < 3; k++) light[3 * (y * width + x) + k] = keep(patch[k] as number);
    }
  const middles = lights.map((_, at) => ({
    x: ((at % columns) + 0.5) / columns,
    y: (Math.floor(at / columns) + 0.5) / rows,
  }));
  return { photograph: { width, height, light }, middles };
}
