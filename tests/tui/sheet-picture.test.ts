/** The little sheet as lines of pieces: every pixel in its colour, few pieces, and signs where there are no colours. */
import { describe, expect, it } from 'vitest';
import { findPicture, type Picture, painted, pixelsOf, screenTones } from '../../src/pictures/index.js';
import { ASCII, UNICODE } from '../../src/tui/kit/glyphs.js';
import { halfBlocks } from '../../src/tui/kit/half-blocks.js';
import type { Piece } from '../../src/tui/kit/row.js';
import { LEAST_SHEET, sheetPicture, sheetSize } from '../../src/tui/sheet/picture.js';
import { SHIPPED_PICTURES } from '../exercises.js';
import { STUDIO } from '../studio.js';

const PICTURES = SHIPPED_PICTURES;
const scene = painted(STUDIO, findPicture(PICTURES, 'harbour-roofs') as Picture);

/** Colours of the two pixels of each cell, read back from the pieces. */
const cells = (line: readonly Piece[]): [string | undefined, string | undefined][] =>
  line.flatMap(({ text, style }) =>
    [...text].map((sign): [string | undefined, string | undefined] => [
      sign === ' ' ? style?.backgroundColor : style?.color,
      style?.backgroundColor,
    ]),
  );

describe.each([
  [24, 8],
  [48, 14],
  [96, 28],
])('%i by %i', (columns, lines) => {
  it.each([false, true])('shows every pixel, in grey %s', (inGrey) => {
    const pixels = pixelsOf(scene, columns, 2 * lines);
    const hexes = screenTones(pixels, inGrey);
    const at = (x: number, y: number): string | undefined => hexes[pixels.at[y * columns + x] as number];
    for (const [y, line] of halfBlocks(pixels, { inGrey }).entries())
      expect(cells(line)).toEqual(
        Array.from({ length: columns }, (_, x) => [at(x, 2 * y), at(x, 2 * y + 1)]),
      );
  });

  it('joins cells that are alike: no two neighbouring pieces look the same', () => {
    for (const line of halfBlocks(pixelsOf(scene, columns, 2 * lines)))
      for (const [index, { style }] of line.slice(1).entries()) expect(style).not.toEqual(line[index]?.style);
  });
});

it('keeps to ASCII where no other sign may be drawn', () => {
  for (const level of [0, 1, 2, 3] as const) {
    const drawn = sheetPicture(scene, { columns: 48, lines: 14, level, glyphs: ASCII, inGrey: false });
    expect(drawn).toHaveLength(14);
    for (const line of drawn) {
      const text = line.map((piece) => piece.text).join('');
      expect(text).toMatch(/^[ -~]{48}$/);
    }
  }
});

it('has no colours where there are none, and values by density all the same', () => {
  const drawn = sheetPicture(scene, { columns: 48, lines: 14, level: 0, glyphs: UNICODE, inGrey: false });
  expect(drawn.flat().every(({ style }) => style === undefined)).toBe(true);
  expect(new Set(drawn.flat().flatMap(({ text }) => [...text])).size).toBeGreaterThanOrEqual(4);
});

it('takes the room there is, keeps its shape, and says when there is too little', () => {
  expect(sheetSize(23, 20)).toBeUndefined();
  expect(sheetSize(80, 7)).toBeUndefined();
  expect(sheetSize(48, 14)).toEqual({ columns: 48, lines: 14 });
  for (let columns: number = LEAST_SHEET.columns; columns < 140; columns += 7)
    for (let lines: number = LEAST_SHEET.lines; lines < 40; lines += 3) {
      const size = sheetSize(columns, lines) as { columns: number; lines: number };
      expect(size.columns).toBeLessThanOrEqual(Math.min(columns, 112));
      expect(size.lines).toBeLessThanOrEqual(lines);
      expect(size.columns / size.lines).toBeGreaterThan(2.3);
      expect(size.columns / size.lines).toBeLessThan(4.2);
    }
});
