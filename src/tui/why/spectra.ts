/** The spectra behind a result: each paint alone at the strength of the wash, and what was laid. */

import type { Grade, LaidPart } from '../../drills/types.js';
import { GRID, type Spectrum, WAVELENGTHS_NM } from '../../optics/index.js';
import { findPaint, type Studio } from '../../paints/index.js';
import { seeAlone, strengthOf } from '../../washes/index.js';
import { runsWords, swallowedByAll } from '../../words/spectrum.js';
import type { Run } from '../kit/canvas.js';
import { Canvas } from '../kit/canvas.js';
import type { Glyphs } from '../kit/glyphs.js';
import type { Role } from '../kit/theme.js';

export interface Spectra {
  readonly paints: readonly { readonly name: string; readonly reflectance: Spectrum }[];
  readonly mixture: Spectrum;
  /** Where every paint takes at least half of the light, in words; empty when there is no such part. */
  readonly shared: string;
  readonly sharedRuns: readonly { readonly fromNm: number; readonly toNm: number }[];
}

/** Strongest wash that a paint is shown at alone. */
const MASSTONE = 1;

/** Spectra of a graded mixture, or undefined when it says nothing of paints. */
export function spectraOf(grade: Grade, studio: Studio): Spectra | undefined {
  const laid = (grade.laid ?? []).flatMap((part: LaidPart) => {
    const pigment = findPaint(studio, part.pigment);
    return pigment === undefined ? [] : [{ ...part, pigment }];
  });
  const mixture = grade.swatches.find(({ label }) => label === 'yours') ?? grade.swatches[0];
  if (laid.length === 0 || mixture === undefined) return undefined;
  const strength = Math.min(MASSTONE, Math.max(0.05, strengthOf(laid)));
  const paints = laid.map(({ pigment }) => ({
    name: pigment.name,
    reflectance: seeAlone(studio, pigment.id, strength).reflectance,
  }));
  const runs =
    laid.length < 2
      ? []
      : swallowedByAll(
          paints.map(({ reflectance }) => reflectance),
          studio.paper.reflectance,
        );
  return { paints, mixture: mixture.reflectance, shared: runsWords(runs), sharedRuns: runs };
}

const FROM_NM = 400;
const TO_NM = 700;
/** Columns of the numbers at the left. */
const AXIS = 5;

/** Signs of the curves: the first paint, the second, the third. */
export const CURVE_SIGNS = ['1', '2', '3'] as const;
export const MIXTURE_SIGN = 'M';

/** Lines of the plot: reflectance against wavelength, and under it the part that all paints swallow. */
export function spectraPicture(
  spectra: Spectra,
  options: { columns: number; rows: number; glyphs: Glyphs },
): Run<Role>[][] {
  const { columns, rows, glyphs } = options;
  const width = columns - AXIS;
  const canvas = new Canvas<Role>(width, Math.max(4, rows - 2), { braille: glyphs.braille, role: 'plain' });
  const x = (nm: number): number => (nm - FROM_NM) / (TO_NM - FROM_NM);
  const curves = [
    ...spectra.paints.map(({ reflectance }, index) => ({
      reflectance,
      role: 'muted' as Role,
      sign: CURVE_SIGNS[index] ?? '?',
    })),
    { reflectance: spectra.mixture, role: 'here' as Role, sign: MIXTURE_SIGN },
  ];
  for (const { reflectance, role, sign } of curves) draw(canvas, reflectance, role, sign, x);
  for (const [index, { reflectance, sign }] of curves.entries()) {
    // Names at different places along the curves, so that they stay apart.
    const band = Math.round(((index + 1) / (curves.length + 1)) * 26) + 4;
    const [column, row] = canvas.cellAt(x(WAVELENGTHS_NM[band] ?? 550), 1 - (reflectance[band] ?? 0));
    canvas.write(column, row, sign, 'here');
  }
  const height = canvas.rows;
  const lines = canvas.lines().map((runs, row): Run<Role>[] => {
    const label = row === 0 ? '100%' : row === height - 1 ? '0' : row === Math.floor(height / 2) ? '50' : '';
    return [{ text: `${label.padStart(AXIS - 1)}${glyphs.vertical}`, role: 'muted' }, ...runs];
  });
  return [...lines, swallowed(spectra, width, glyphs, x), axis(width)];
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

function swallowed(
  { sharedRuns }: Spectra,
  width: number,
  glyphs: Glyphs,
  x: (nm: number) => number,
): Run<Role>[] {
  const inside = (column: number): boolean => {
    const at = (column + 0.5) / width;
    return sharedRuns.some(({ fromNm, toNm }) => at >= x(fromNm - 5) && at <= x(toNm + 5));
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
