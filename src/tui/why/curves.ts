/** Curves of films: how much of each part of the light comes back, and under them the part that all paints swallow. */
import type { ResultSwatch, Why } from '../../drills/types.js';
import { GRID, type Spectrum, WAVELENGTHS_NM } from '../../optics/index.js';
import type { Run } from '../kit/canvas.js';
import { Canvas } from '../kit/canvas.js';
import type { Glyphs } from '../kit/glyphs.js';
import type { Role } from '../kit/theme.js';

const FROM_NM = 400;
const TO_NM = 700;
/** Columns of the numbers at the left. */
const AXIS = 5;

/** The sign of a curve by its place: the last of several stands out, since it is what the others lead to. */
export const curveSign = (at: number): string => String.fromCharCode('a'.charCodeAt(0) + at);

/** Lines of the plot: reflectance against wavelength, and under it the part that all paints swallow. */
export function curvesPicture(
  { films, swallowed = [] }: Pick<Why, 'films' | 'swallowed'>,
  options: { columns: number; rows: number; glyphs: Glyphs },
): Run<Role>[][] {
  const { columns, rows, glyphs } = options;
  const width = columns - AXIS;
  const canvas = new Canvas<Role>(width, Math.max(4, rows - 2), { braille: glyphs.braille, role: 'plain' });
  const x = (nm: number): number => (nm - FROM_NM) / (TO_NM - FROM_NM);
  const roleOf = (at: number): Role => (at === films.length - 1 ? 'here' : 'muted');
  for (const [at, { reflectance }] of films.entries())
    draw(canvas, reflectance, roleOf(at), curveSign(at), x);
  for (const [at, { reflectance }] of films.entries()) {
    const band = apart(films, at);
    const [column, row] = canvas.cellAt(x(WAVELENGTHS_NM[band] ?? 550), 1 - (reflectance[band] ?? 0));
    canvas.write(column, row, curveSign(at), 'here');
  }
  const height = canvas.rows;
  const lines = canvas.lines().map((runs, row): Run<Role>[] => {
    const label = row === 0 ? '100%' : row === height - 1 ? '0' : row === Math.floor(height / 2) ? '50' : '';
    return [{ text: `${label.padStart(AXIS - 1)}${glyphs.vertical}`, role: 'muted' }, ...runs];
  });
  return [...lines, swallowedLine(swallowed, width, glyphs, x), axis(width)];
}

/** Where a curve is furthest from all others, looked for in a stretch of its own so that the signs stay apart. */
function apart(films: readonly ResultSwatch[], at: number): number {
  const own = films[at]?.reflectance;
  const bands = [...WAVELENGTHS_NM.keys()].filter((band) => {
    const place = ((WAVELENGTHS_NM[band] ?? 0) - FROM_NM) / (TO_NM - FROM_NM);
    return place >= (at + 0.15) / films.length && place <= (at + 0.85) / films.length;
  });
  const gap = (band: number): number =>
    Math.min(
      ...films
        .filter((_, index) => index !== at)
        .map(({ reflectance }) => Math.abs((reflectance[band] ?? 0) - (own?.[band] ?? 0))),
    );
  return bands.reduce((best, band) => (gap(band) > gap(best) ? band : best), bands[0] ?? 0);
}

function draw(
  canvas: Canvas<Role>,
  reflectance: Spectrum,
  role: Role,
  sign: string,
  x: (nm: number) => number,
): void {
  for (let band = 1; band < GRID.count; band++) {
    const [from, to] = [WAVELENGTHS_NM[band - 1] ?? 0, WAVELENGTHS_NM[band] ?? 0];
    if (from < FROM_NM || to > TO_NM) continue;
    canvas.line(x(from), 1 - (reflectance[band - 1] ?? 0), x(to), 1 - (reflectance[band] ?? 0), role, sign);
  }
}

function swallowedLine(
  runs: NonNullable<Why['swallowed']>,
  width: number,
  glyphs: Glyphs,
  x: (nm: number) => number,
): Run<Role>[] {
  const inside = (column: number): boolean => {
    const at = (column + 0.5) / width;
    return runs.some(({ fromNm, toNm }) => at >= x(fromNm - 5) && at <= x(toNm + 5));
  };
  const text = Array.from({ length: width }, (_, column) => (inside(column) ? glyphs.band : ' ')).join('');
  return [
    { text: ' '.repeat(AXIS), role: 'muted' },
    { text, role: 'goal' },
  ];
}

const HUES: readonly (readonly [number, string])[] = [
  [400, 'violet'],
  [450, 'blue'],
  [515, 'green'],
  [570, 'yellow'],
  [600, 'orange'],
  [650, 'red'],
];

function axis(width: number): Run<Role>[] {
  const signs = Array.from({ length: width }, () => ' ');
  let free = 0;
  for (const [nm, name] of HUES) {
    const column = Math.round(((nm - FROM_NM) / (TO_NM - FROM_NM)) * (width - 1));
    if (column < free || column + name.length > width) continue;
    for (const [offset, sign] of [...name].entries()) signs[column + offset] = sign;
    free = column + name.length + 1;
  }
  return [{ text: `${' '.repeat(AXIS)}${signs.join('')}`, role: 'muted' }];
}
