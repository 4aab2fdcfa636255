/** The painting on the screen: half blocks in colour or grey, signs where there are no colours; the masses with their numbers. */
import type { PaintingReading } from '../../painting/index.js';
import { ASCII_SIGNS, SHADE_SIGNS, signOf } from '../../pictures/index.js';
import type { ColourLevel } from '../kit/colour-level.js';
import type { Glyphs } from '../kit/glyphs.js';
import { halfBlocks } from '../kit/half-blocks.js';
import type { Piece } from '../kit/row.js';
import { isInSigns } from '../sheet/picture.js';
import { CELL } from './layout.js';
import { numberPlace, photographPixels } from './pixels.js';
import type { PictureLook } from './state.js';

export interface PictureAsked {
  readonly columns: number;
  readonly lines: number;
  readonly look: PictureLook;
  readonly level: ColourLevel;
  readonly glyphs: Glyphs;
  /** The mass in front; absent where the picture is not the one that is walked. */
  readonly mass?: number;
}

/** A line with a text put over some of its cells. */
function withText(pieces: readonly Piece[], from: number, text: string, isHere: boolean): Piece[] {
  const put: Piece = { text, role: isHere ? 'notice' : 'selected' };
  const result: Piece[] = [];
  let at = 0;
  const keep = ({ text: own, ...rest }: Piece, start: number, end: number): void => {
    const part = own.slice(Math.max(0, start), Math.max(0, end));
    if (part !== '') result.push({ ...rest, text: part });
  };
  for (const piece of pieces) {
    const { length } = piece.text;
    keep(piece, 0, from - at);
    if (at <= from && from < at + length) result.push(put);
    keep(piece, from + text.length - at, length);
    at += length;
  }
  return result;
}

function plainLines(reading: PaintingReading, asked: PictureAsked): Piece[][] {
  const { columns, lines, look, level, glyphs, mass } = asked;
  const marked = mass === undefined ? {} : { mass };
  if (isInSigns({ level, inGrey: look !== 'colour' })) {
    const { tones, at } = photographPixels(reading, { width: columns, height: lines, look });
    const { ramp } = glyphs.plainTexts ? ASCII_SIGNS : SHADE_SIGNS;
    return Array.from({ length: lines }, (_, y) => [
      {
        text: Array.from({ length: columns }, (_, x) =>
          signOf(tones[at[y * columns + x] as number]?.colour.value ?? 0, ramp),
        ).join(''),
      },
    ]);
  }
  const plain = glyphs.plainTexts;
  const height = plain ? lines : CELL * lines;
  const pixels = photographPixels(reading, { width: columns, height, look, ...marked });
  return halfBlocks(pixels, { inGrey: look === 'grey', plain });
}

/** The picture as lines of pieces, each mass with its number in it. */
export function photographLines(reading: PaintingReading, asked: PictureAsked): Piece[][] {
  const drawn = plainLines(reading, asked);
  const { columns, lines, mass } = asked;
  if (mass === undefined) return drawn;
  return reading.masses.reduce((rows, _, index) => {
    const { x, y } = numberPlace(reading, index);
    const text = index === mass ? `[${index + 1}]` : `${index + 1}`;
    const column = Math.min(columns - text.length, Math.max(0, Math.floor(x * columns) - (text.length >> 1)));
    const line = Math.min(lines - 1, Math.floor(y * lines));
    return rows.map((row, at) => (at === line ? withText(row, column, text, index === mass) : row));
  }, drawn);
}
