/** The little sheet on a screen: in colours, in the greys of the value check, or with signs where there are no colours. */
import { ASCII_SIGNS, inCharacters, type Painted, pixelsOf, SHADE_SIGNS } from '../../pictures/index.js';
import type { ColourLevel } from '../kit/colour-level.js';
import type { Glyphs } from '../kit/glyphs.js';
import { halfBlocks } from '../kit/half-blocks.js';
import type { Piece } from '../kit/row.js';

/** Least room in which a picture can be read, cells across and lines. */
export const LEAST_SHEET = { columns: 24, lines: 8 } as const;

/** Wider, a picture gains nothing. */
const MOST_COLUMNS = 112;

/** Cells that a picture takes: as many as there is room for, in the shape that it was drawn in. */
export function sheetSize(
  columns: number,
  lines: number,
): { readonly columns: number; readonly lines: number } | undefined {
  if (columns < LEAST_SHEET.columns || lines < LEAST_SHEET.lines) return undefined;
  // A cell is about twice as high as wide: 48 columns go with 14 lines.
  const across = Math.min(columns, Math.round(lines * 3.6), MOST_COLUMNS);
  return { columns: across, lines: Math.max(LEAST_SHEET.lines, Math.min(lines, Math.round(across / 3))) };
}

/** What a terminal can show. */
export interface SheetLook {
  readonly columns: number;
  readonly lines: number;
  readonly level: ColourLevel;
  readonly glyphs: Glyphs;
  readonly inGrey: boolean;
}

/** Whether a picture is drawn with signs: where there are no colours, and in the value check where there are too few for greys. */
export const isInSigns = ({ level, inGrey }: Pick<SheetLook, 'level' | 'inGrey'>): boolean =>
  level === 0 || (level === 1 && inGrey);

/** The picture as lines of pieces. @throws RangeError for a size that nobody can look at */
export function sheetPicture(
  painted: Painted,
  { columns, lines, level, glyphs, inGrey }: SheetLook,
): Piece[][] {
  const plain = glyphs.plainTexts;
  if (isInSigns({ level, inGrey })) {
    const signs = plain ? ASCII_SIGNS : SHADE_SIGNS;
    return inCharacters(painted, columns, lines, signs).map((text) => [{ text }]);
  }
  return halfBlocks(pixelsOf(painted, columns, plain ? lines : 2 * lines), { inGrey, plain });
}
