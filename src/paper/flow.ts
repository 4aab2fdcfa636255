/** Flowing blocks onto pages, in one column or several, with what stands at the foot of each page. */
import { type Block, line, moved, stack } from './block.js';
import { INK, type Mark, type PageSize, type Ruler } from './types.js';

/** How a page is set, in points. */
export interface Frame {
  readonly size: PageSize;
  readonly margins: {
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
    readonly left: number;
  };
  /** Columns of equal width, and the room between them. */
  readonly columns?: { readonly count: number; readonly gap: number };
}

/** What is kept on one page where a page can hold it, else broken between its parts. */
export interface Group {
  readonly parts: readonly Block[];
  /** Between its parts. */
  readonly gap?: number;
  /** Begins a page. */
  readonly onNewPage?: boolean;
}

/** Width of a column. */
export function columnWidth({ size, margins, columns }: Frame): number {
  const { count, gap } = columns ?? { count: 1, gap: 0 };
  return (size.width - margins.left - margins.right - gap * (count - 1)) / count;
}

/** Height that a column holds. */
export const columnHeight = ({ size, margins }: Frame): number => size.height - margins.top - margins.bottom;

/**
 * Sets groups on pages from top to bottom, column by column.
 * @param gap between groups
 */
export function flow(groups: readonly Group[], frame: Frame, gap: number): Mark[][] {
  const { margins, columns } = frame;
  const room = columnHeight(frame);
  const count = columns?.count ?? 1;
  const step = columnWidth(frame) + (columns?.gap ?? 0);
  const pages: Mark[][] = [[]];
  let column = 0;
  let used = 0;
  const turn = (wholePage: boolean): void => {
    used = 0;
    column = wholePage ? count : column + 1;
    if (column < count) return;
    column = 0;
    pages.push([]);
  };
  const isFresh = (): boolean => used === 0 && column === 0 && pages.at(-1)?.length === 0;
  const put = (block: Block, before: number): void => {
    if (used > 0 && used + before + block.height > room) turn(false);
    const top = used === 0 ? 0 : used + before;
    pages.at(-1)?.push(...moved(block.marks, margins.left + column * step, margins.top + top));
    used = top + block.height;
  };
  for (const { parts, gap: inner = 0, onNewPage = false } of groups) {
    if (onNewPage && !isFresh()) turn(true);
    const whole = stack(parts, inner);
    if (whole.height <= room) put(whole, gap);
    else for (const [at, part] of parts.entries()) put(part, at === 0 ? gap : inner);
  }
  return pages;
}

/** The foot of a page: a text at the left, one in the middle, its number at the right. */
export interface Foot {
  readonly left: string;
  readonly middle: string;
}

/** Type of what stands at the foot of a page, in points. */
const FOOT_SIZE = 7.5;
/** From the lower margin down to the foot. */
const FOOT_DROP = 12;

/** Pages with their feet: "page 2 of 5". */
export function withFeet(pages: readonly Mark[][], frame: Frame, foot: Foot, ruler: Ruler): Mark[][] {
  const { size, margins } = frame;
  const width = size.width - margins.left - margins.right;
  const type = { size: FOOT_SIZE, colour: INK.muted };
  return pages.map((marks, at) => {
    const lines = [
      line(foot.left, width, type, ruler),
      line(foot.middle, width, type, ruler, 'middle'),
      line(`page ${at + 1} of ${pages.length}`, width, type, ruler, 'right'),
    ];
    const feet = lines.flatMap((block) =>
      moved(block.marks, margins.left, size.height - margins.bottom + FOOT_DROP),
    );
    return [...marks, ...feet];
  });
}
