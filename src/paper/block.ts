/** Blocks: marks of a known height, stacked, set side by side and moved. Places are relative to their own left upper corner. */
import { wrapText } from '../text/wrap.js';
import {
  type Edge,
  type Face,
  type Fill,
  INK,
  LEAST_TYPE,
  type Mark,
  type Outline,
  type Ruler,
  type Spot,
  type Type,
} from './types.js';

export interface Block {
  /** In points. */
  readonly height: number;
  readonly marks: readonly Mark[];
}

export const EMPTY: Block = { height: 0, marks: [] };

/** Usual distance of base lines, as a share of the size. */
const LEADING = 1.32;

function movedOutline(outline: Outline, dx: number, dy: number): Outline {
  const by = ([x, y]: Spot): Spot => [x + dx, y + dy];
  if ('box' in outline) {
    const [x, y, width, height] = outline.box;
    return { box: [x + dx, y + dy, width, height] };
  }
  if ('ellipse' in outline) {
    const [x, y, halfWidth, halfHeight] = outline.ellipse;
    return { ellipse: [x + dx, y + dy, halfWidth, halfHeight] };
  }
  return 'polygon' in outline ? { polygon: outline.polygon.map(by) } : { path: outline.path.map(by) };
}

function movedFill(fill: Fill, dx: number, dy: number): Fill {
  if (typeof fill === 'string') return fill;
  return {
    ...fill,
    from: [fill.from[0] + dx, fill.from[1] + dy],
    to: [fill.to[0] + dx, fill.to[1] + dy],
  };
}

/** Marks moved to the right and down. */
export function moved(marks: readonly Mark[], dx: number, dy: number): Mark[] {
  return marks.map((mark): Mark => {
    if (mark.kind === 'text') return { ...mark, x: mark.x + dx, y: mark.y + dy };
    const outline = movedOutline(mark.outline, dx, dy);
    if (mark.kind === 'clipped') return { ...mark, outline, marks: moved(mark.marks, dx, dy) };
    return { ...mark, outline, ...(mark.fill === undefined ? {} : { fill: movedFill(mark.fill, dx, dy) }) };
  });
}

/** One below the other. @param gap between them; empty ones take none */
export function stack(blocks: readonly Block[], gap = 0): Block {
  const marks: Mark[] = [];
  let height = 0;
  for (const block of blocks) {
    if (block.height === 0) continue;
    if (height > 0) height += gap;
    marks.push(...moved(block.marks, 0, height));
    height += block.height;
  }
  return { height, marks };
}

/** Side by side, tops level. @param blocks with the place of each from the left */
export function beside(blocks: readonly (readonly [x: number, block: Block])[]): Block {
  return {
    height: Math.max(0, ...blocks.map(([, { height }]) => height)),
    marks: blocks.flatMap(([x, { marks }]) => moved(marks, x, 0)),
  };
}

/** Where a line of text stands in its room. */
export type Side = 'left' | 'middle' | 'right';

/** One line. @throws RangeError for type that is too small to be read */
export function line(text: string, width: number, type: Type, ruler: Ruler, side: Side = 'left'): Block {
  const { size, face = 'regular', colour = INK.plain, leading = LEADING } = type;
  if (size < LEAST_TYPE) throw new RangeError(`type of ${size} points is too small to be read`);
  const spare = side === 'left' ? 0 : width - ruler(text, { size, face });
  const x = side === 'middle' ? spare / 2 : spare;
  const height = size * leading;
  const base = (height + size * 0.72) / 2;
  return { height, marks: [{ kind: 'text', x, y: base, text, size, face, colour }] };
}

/** A paragraph, broken to the width at blanks; a word that is wider is cut. */
export function paragraph(text: string, width: number, type: Type, ruler: Ruler, side: Side = 'left'): Block {
  const face: Face = type.face ?? 'regular';
  const lines = wrapText(text, width, (part) => ruler(part, { size: type.size, face }));
  return stack(lines.map((part) => line(part, width, type, ruler, side)));
}

/** A box of its own, filled, drawn around, or both. */
export function box(width: number, height: number, look: { fill?: Fill; edge?: Edge }): Block {
  return { height, marks: [{ kind: 'figure', outline: { box: [0, 0, width, height] }, ...look }] };
}

/** A line across. */
export function rule(width: number, edge: Edge = { colour: INK.line, width: 0.5 }): Block {
  return {
    height: edge.width,
    marks: [
      {
        kind: 'figure',
        outline: {
          path: [
            [0, 0],
            [width, 0],
          ],
        },
        edge,
      },
    ],
  };
}

/** Marks of one block in the place of another: the height of the first counts. */
export function over(base: Block, ...tops: readonly Block[]): Block {
  return { height: base.height, marks: [...base.marks, ...tops.flatMap(({ marks }) => marks)] };
}

/** Room above and to the left of a block. */
export function inset(block: Block, left: number, top = 0): Block {
  return { height: block.height + top, marks: moved(block.marks, left, top) };
}

/** The left edge of each column. @param columns widths */
export function startsOf(columns: readonly number[]): number[] {
  let x = 0;
  return columns.map((width) => {
    x += width;
    return x - width;
  });
}
