/** The hue circle seen from above: hue goes around as in CIELAB, red at the right and yellow on top, chroma grows outwards. */
import { Canvas, type Run } from './canvas.js';
import type { Glyphs } from './glyphs.js';
import type { Role } from './theme.js';

interface HuePoint {
  /** C*ab. */
  readonly chroma: number;
  /** h_ab in degrees. */
  readonly hue: number;
}

/** Where a name stands outside the ring, in degrees. */
const NAMED = [
  [25, 'R'],
  [90, 'Y'],
  [150, 'G'],
  [250, 'B'],
  [320, 'V'],
] as const;
/** What the letters around the ring mean, for a caption. */
export const HUE_LETTERS = 'Red Yellow Green Blue Violet';

const RING_DEGREES = 5;
/** The ring leaves a cell for its letters. */
const INSIDE = 0.8;

/**
 * Lines of the circle.
 * @param path joined from the first to the last
 * @param letters points with the letters that they are told by
 */
export function huePicture(
  path: readonly HuePoint[],
  letters: readonly (readonly [point: HuePoint, letter: string])[],
  { columns, rows, glyphs }: { readonly columns: number; readonly rows: number; readonly glyphs: Glyphs },
): Run<Role>[][] {
  const canvas = new Canvas<Role>(columns, rows, { braille: glyphs.braille, role: 'plain' });
  const points = [...path, ...letters.map(([point]) => point)];
  const most = Math.max(30, ...points.map(({ chroma }) => chroma));
  // A cell is twice as high as wide.
  const across = Math.min(1, (2 * rows) / columns) / 2;
  const down = Math.min(1, columns / (2 * rows)) / 2;
  const at = ({ chroma, hue }: HuePoint, scale = INSIDE): [number, number] => {
    const [angle, radius] = [(hue * Math.PI) / 180, (scale * chroma) / most];
    return [0.5 + across * radius * Math.cos(angle), 0.5 - down * radius * Math.sin(angle)];
  };
  for (let hue = 0; hue < 360; hue += RING_DEGREES) {
    canvas.line(...at({ chroma: most, hue }), ...at({ chroma: most, hue: hue + RING_DEGREES }), 'muted');
  }
  const write = (place: [number, number], sign: string, role: Role): void => {
    const [column, row] = canvas.cellAt(...place);
    canvas.write(column, row, sign, role);
  };
  for (const [hue, name] of NAMED) write(at({ chroma: most, hue }, 0.98), name, 'muted');
  write([0.5, 0.5], '+', 'muted');
  for (const [index, point] of path.slice(1).entries())
    canvas.line(...at(path[index] as HuePoint), ...at(point), 'here');
  for (const point of path) write(at(point), glyphs.open, 'muted');
  for (const [point, letter] of letters) write(at(point), letter, 'here');
  return canvas.lines();
}
