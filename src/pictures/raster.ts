/** A picture as pixels: which area each belongs to, and how much of the strength of its wash has come so far. */
import { boundsOf, fillShape, type Size } from './fill.js';
import { GRID, type Graded, type Picture, type Shape } from './types.js';

/** Of a pixel that no shape covers: paper. */
export const BARE = 255;

/** Pixels row by row from the left upper corner. Of the picture only: colours come later. */
export interface Raster extends Size {
  readonly picture: Picture;
  /** Index of the area in the picture's list, or {@link BARE}. */
  readonly area: Uint8Array;
  /** Strength there as a share of the wash's own; 1 where it is flat. */
  readonly strength: Float32Array;
}

/** Smallest and largest sheet that is drawn, in pixels across and down. */
const LEAST_PIXELS = 4;
const MOST_PIXELS = 2000;

/** Strength at a place between the two ends of a gradation; units. */
function strengthAt({ to, towards }: Graded, [left, top, right, bottom]: ReturnType<typeof boundsOf>) {
  const upright = towards === 'down' || towards === 'up';
  const [low, high] = upright
    ? [Math.max(0, top), Math.min(GRID.rows, bottom)]
    : [Math.max(0, left), Math.min(GRID.columns, right)];
  const turned = towards === 'up' || towards === 'left';
  return (x: number, y: number): number => {
    const way = Math.min(1, Math.max(0, ((upright ? y : x) - low) / Math.max(1e-6, high - low)));
    return 1 + (to - 1) * (turned ? 1 - way : way);
  };
}

/**
 * Draws a picture.
 * @param width pixels across: columns of half blocks
 * @param height pixels down: twice the lines of half blocks
 * @throws RangeError for a size that nobody can look at
 */
export function raster(picture: Picture, width: number, height: number): Raster {
  if (![width, height].every((side) => Number.isInteger(side) && side >= LEAST_PIXELS && side <= MOST_PIXELS))
    throw new RangeError(
      `a picture has ${LEAST_PIXELS} to ${MOST_PIXELS} pixels a side, not ${width} by ${height}`,
    );
  const size = { width, height };
  const area = new Uint8Array(width * height).fill(BARE);
  const strength = new Float32Array(width * height).fill(1);
  const index = new Map(picture.areas.map(({ id }, at) => [id, at]));
  for (const shape of picture.shapes) draw(shape, index.get(shape.area) as number);
  return { picture, ...size, area, strength };

  function draw(shape: Shape, own: number): void {
    const share = shape.graded === undefined ? () => 1 : strengthAt(shape.graded, boundsOf(shape));
    fillShape(shape, size, (x, y) => {
      const at = y * width + x;
      area[at] = own;
      strength[at] = share(((x + 0.5) / width) * GRID.columns, ((y + 0.5) / height) * GRID.rows);
    });
  }
}
