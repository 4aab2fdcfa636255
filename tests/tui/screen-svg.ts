/** The frame of a screen as an SVG: what a terminal would show, cell by cell, for the pictures in the README. */
import { Terminal } from '@xterm/headless';
import { html, join, type Markup } from '../../src/text/html.js';
import type { Size } from '../../src/tui/kit/stage.js';

/** Units of a cell: DejaVu Sans Mono at 14 is 8.43 wide; each run is set to its cells, whatever the font. */
const WIDE = 8.4;
const HIGH = 18;
const FONT_SIZE = 14;
/** From the top of a cell to the line that letters stand on. */
const BASE = 13.5;
const MARGIN = 12;
const GROUND = '#1b1b1b';
const INK = '#dcdcdc';
const DIM = '#969696';
/** Thickness of a drawn line. */
const THIN = 1.2;
const THICK = 3;

const FONTS = 'DejaVu Sans Mono, Menlo, Consolas, Liberation Mono, monospace';

/** Blocks as shares of the cell: left, top, width, height, opacity. Fonts leave seams between them. */
const BLOCKS: Readonly<Record<string, readonly [number, number, number, number, number]>> = {
  '▀': [0, 0, 1, 0.5, 1],
  '▄': [0, 0.5, 1, 0.5, 1],
  '█': [0, 0, 1, 1, 1],
  '░': [0, 0, 1, 1, 0.25],
};

/** Lines by the sides of the cell that they reach: left, right, up, down. */
const LINES: Readonly<Record<string, string>> = {
  '─': 'lr',
  '━': 'lr',
  '│': 'ud',
  '┌': 'rd',
  '┐': 'ld',
  '└': 'ru',
  '┘': 'lu',
};

interface Cell {
  readonly sign: string;
  readonly ink: string;
  readonly ground: string;
  readonly isBold: boolean;
}

interface Run extends Cell {
  readonly from: number;
  readonly to: number;
}

const number = (x: number): string => String(Number(x.toFixed(2)));
const hexOf = (colour: number): string => `#${colour.toString(16).padStart(6, '0')}`;

/** What stands in the cells of a terminal once a frame is written to it. */
async function cellsOf(frame: string, { columns, rows }: Size): Promise<Cell[][]> {
  const terminal = new Terminal({ cols: columns, rows, allowProposedApi: true, convertEol: true });
  await new Promise<void>((resolve) => terminal.write(frame, resolve));
  const { active } = terminal.buffer;
  const cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column): Cell => {
      const cell = active.getLine(active.baseY + row)?.getCell(column);
      if (cell === undefined) return { sign: ' ', ink: INK, ground: GROUND, isBold: false };
      if (cell.isFgPalette() || cell.isBgPalette()) throw new Error('a colour that is not a full one');
      const ink = cell.isFgRGB() ? hexOf(cell.getFgColor()) : cell.isDim() ? DIM : INK;
      const ground = cell.isBgRGB() ? hexOf(cell.getBgColor()) : GROUND;
      const isInverse = cell.isInverse() !== 0;
      return {
        sign: cell.getChars() || ' ',
        ink: isInverse ? ground : ink,
        ground: isInverse ? ink : ground,
        isBold: cell.isBold() !== 0,
      };
    }),
  );
  terminal.dispose();
  return cells;
}

/** Neighbours that are alike, together. */
function runsOf(cells: readonly Cell[], alike: (one: Cell, other: Cell) => boolean): Run[] {
  const runs: Run[] = [];
  for (const [at, cell] of cells.entries()) {
    const last = runs.at(-1);
    if (last !== undefined && alike(last, cell))
      runs[runs.length - 1] = { ...last, sign: last.sign + cell.sign, to: at + 1 };
    else runs.push({ ...cell, from: at, to: at + 1 });
  }
  return runs;
}

function rect(left: number, top: number, width: number, height: number, fill: string, opacity = 1): Markup {
  const faint = opacity === 1 ? html`` : html` fill-opacity="${opacity}"`;
  return html`<rect x="${number(left)}" y="${number(top)}" width="${number(width)}" height="${number(height)}" fill="${fill}"${faint}/>`;
}

/** Whether a sign is drawn rather than set. */
const isDrawn = (sign: string): boolean => sign in BLOCKS || sign in LINES;
const isAscii = (sign: string): boolean => /^[ -~]+$/.test(sign);

/** Letters of one look; signs beyond ASCII one by one, since a font may have them in another width. */
const setTogether = (one: Cell, other: Cell): boolean =>
  one.ink === other.ink && one.isBold === other.isBold && isAscii(one.sign) && isAscii(other.sign);
const drawnTogether = (one: Cell, other: Cell): boolean =>
  one.ink === other.ink && one.sign[0] === other.sign && isDrawn(other.sign) && !/[┌┐└┘]/.test(other.sign);

function drawn({ sign: signs, ink, from, to }: Run, top: number): Markup[] {
  const [sign = ' '] = signs;
  const [left, width] = [from * WIDE, (to - from) * WIDE];
  const block = BLOCKS[sign];
  if (block !== undefined) {
    const [, y, , height, opacity] = block;
    return [rect(left, top + y * HIGH, width, height * HIGH, ink, opacity)];
  }
  const sides = LINES[sign];
  if (sides === undefined) return [];
  const thick = sign === '━' ? THICK : THIN;
  const [middle, centre] = [top + HIGH / 2, left + WIDE / 2];
  const across =
    sides === 'lr' ? [left, left + width] : sides.includes('l') ? [left, centre] : [centre, left + WIDE];
  const down =
    sides === 'ud' ? [top, top + HIGH] : sides.includes('u') ? [top, middle] : [middle, top + HIGH];
  const isAcross = /[lr]/.test(sides);
  const isDown = /[ud]/.test(sides);
  const [x0 = 0, x1 = 0] = across;
  const [y0 = 0, y1 = 0] = down;
  const columns = isDown ? Array.from({ length: to - from }, (_, at) => at * WIDE) : [];
  return [
    ...(isAcross ? [rect(x0, middle - thick / 2, x1 - x0, thick, ink)] : []),
    ...columns.map((more) => rect(centre + more - thick / 2, y0, thick, y1 - y0, ink)),
  ];
}

/** Words of a run, split where blanks stand together: a page draws several as one. */
function set({ sign, ink, isBold, from }: Run, top: number): Markup[] {
  const weight = isBold ? html` font-weight="bold"` : html``;
  const colour = ink === INK ? html`` : html` fill="${ink}"`;
  return [...sign.matchAll(/\S+(?: \S+)*/g)].map(
    ({ 0: words, index }) =>
      html`<text x="${number((from + index) * WIDE)}" y="${number(top + BASE)}" textLength="${number(words.length * WIDE)}" lengthAdjust="spacingAndGlyphs"${colour}${weight}>${words}</text>`,
  );
}

function lineOf(cells: readonly Cell[], row: number): Markup[] {
  const top = row * HIGH;
  const grounds = runsOf(cells, (one, other) => one.ground === other.ground)
    .filter(({ ground }) => ground !== GROUND)
    .map(({ from, to, ground }) => rect(from * WIDE, top, (to - from) * WIDE, HIGH, ground));
  const signs = runsOf(cells, (one, other) => setTogether(one, other) || drawnTogether(one, other)).flatMap(
    (run) => (isDrawn(run.sign[0] ?? ' ') ? drawn(run, top) : set(run, top)),
  );
  return [...grounds, ...signs];
}

/** A frame as a picture. @param frame in full colour; @param title what is to be seen */
export async function screenSvg(frame: string, size: Size, title: string): Promise<string> {
  const cells = await cellsOf(frame, size);
  const [width, height] = [size.columns * WIDE + 2 * MARGIN, size.rows * HIGH + 2 * MARGIN].map(number);
  const lines = join(cells.flatMap((line, row) => lineOf(line, row)));
  return `${
    html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width ?? ''} ${height ?? ''}" width="${width ?? ''}" height="${height ?? ''}" role="img" aria-label="${title}" font-family="${FONTS}" font-size="${FONT_SIZE}" fill="${INK}">
<title>${title}</title>
<rect width="100%" height="100%" rx="6" fill="${GROUND}"/>
<g transform="translate(${MARGIN} ${MARGIN})" shape-rendering="crispEdges">
${lines}
</g>
</svg>`.markup
  }\n`;
}
