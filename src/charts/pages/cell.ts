/** A cell of a chart: a patch over its grey, and below it what it is made of and what it comes to. */
import { type Pigment, paintOf, type Studio } from '../../paints/index.js';
import { type Block, line, paragraph, stack } from '../../paper/block.js';
import { NEAR_SIGN, patchBox } from '../../paper/patch.js';
import type { PaperStyle } from '../../paper/style.js';
import { type Seen, timesLibrary, type Wash, waterOf } from '../../washes/index.js';
import { ratioWords, thinWords } from '../../words/laid.js';
import { lookOf } from '../../words/look.js';
import { valueWords } from '../../words/voice.js';

/** Type under a patch, in points. */
export const CELL_TYPE = { size: 7.5, leading: 1.22 } as const;
const VALUE_TYPE = { ...CELL_TYPE, face: 'bold' } as const;

/** Stands after a paint whose parts are a guess. */
export const GUESS_SIGN = '*';

/** "burnt sienna (PBr7)"; "sap green (no code)" where the source states none. */
export const coded = ({ name, ci, strengthEvidence }: Pigment): string =>
  `${name} (${ci.length === 0 ? 'no code' : ci.join(', ')})${strengthEvidence === 'assumed' ? GUESS_SIGN : ''}`;

/** "1:12": one part of paint to so many of water. */
const waterText = (strength: number): string => {
  const water = waterOf(strength);
  return `1:${water < 10 ? Number(water.toFixed(1)) : Math.round(water)}`;
};

const partsText = (parts: number): string => String(Number(parts.toPrecision(3)));

/** What a wash is made up of: "3 burnt sienna (PBr7)", a line each, then its water. */
export function madeLines(studio: Studio, { paints, strength }: Wash): string[] {
  return [
    ...Object.entries(paints).map(([id, parts]) => `${partsText(parts)} ${coded(paintOf(studio, id))}`),
    `water ${waterText(strength / timesLibrary(studio, paints))}`,
  ];
}

/** What comes into a wash afterwards: "1:4 Prussian blue (PB27)", then its water. */
export function addedLines(studio: Studio, { add = {}, thin = 1 }: Wash): string[] {
  return [
    ...Object.entries(add).map(([id, ratio]) => `${ratioWords(ratio)} ${coded(paintOf(studio, id))}`),
    thin === 1 ? 'no water' : thinWords(thin),
  ];
}

/** "step 5.4, chroma 41", with the sign of a colour that is printed only nearly. */
function valueLine({ reflectance }: Pick<Seen, 'reflectance'>, { voice }: PaperStyle): string {
  const look = lookOf(reflectance);
  return `${valueWords(look.value, voice)}, chroma ${look.chroma.toFixed(0)}${look.inScreenGamut ? '' : ` ${NEAR_SIGN}`}`;
}

/** How large a patch is, in points. */
export interface CellSize {
  readonly width: number;
  readonly height: number;
}

/** A patch with its grey below it, its value, and more lines under that. */
export function cell(
  seen: Seen,
  lines: readonly string[],
  { width, height }: CellSize,
  style: PaperStyle,
): Block {
  return stack([
    patchBox(seen, width, height, 'below'),
    { height: 2, marks: [] },
    line(valueLine(seen, style), width, VALUE_TYPE, style.ruler),
    ...lines.map((text) => paragraph(text, width, CELL_TYPE, style.ruler)),
  ]);
}

/** Between the cells of a row: near enough to be compared, each with its own edge. */
export const CELL_GAP = 6;

/** Width of a cell where so many stand in a row. */
export const cellWidth = (count: number, width: number): number => (width - CELL_GAP * (count - 1)) / count;
