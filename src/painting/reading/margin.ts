/** Where the painting ends and the bare margin of its sheet begins. */
import type { Photograph } from '../types.js';

/** Whole pixels: from left and top up to, not including, right and bottom. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Share of the sheet's sides that is left out at its edge: it is mixed with the table. */
const EDGE = 0.01;
/** A line of pixels is margin while so much of it is bare; so many lines together end it: JPEG leaves specks. */
const BARE_SHARE = 0.8;
const TOGETHER = 3;
/** Lines at the edge, as a share of the side, that may be soft or in shadow before the margin begins. */
const SOFT = 0.025;
/** A margin is at most so many times as wide as the second narrowest: a white sky is not a margin. */
const WIDEST = 1.8;
/** Share of the sheet's area under which what is left of it is no painting. */
const LEAST_AREA = 0.08;

/** The painting on a sheet; the whole sheet within its edge where all of it is bare. @param bare 1 where a pixel is bare paper */
export function paintingIn({ width, height }: Omit<Photograph, 'light'>, bare: Uint8Array): Box {
  const [ex, ey] = [Math.ceil(EDGE * width), Math.ceil(EDGE * height)];
  const [right, bottom] = [width - ex, height - ey];
  const rows = shares(bare, width, 1, [ex, right], [ey, bottom]);
  const columns = shares(bare, 1, width, [ey, bottom], [ex, right]);
  const runs = [run(columns), run([...columns].reverse()), run(rows), run([...rows].reverse())];
  const sheet = { left: ex, top: ey, right, bottom };
  if (runs.some((length) => length === undefined)) return sheet;
  const found = runs as number[];
  const wide = found.filter((length) => length > 0).sort((one, other) => one - other);
  const second = (wide[wide.length > 2 ? 1 : 0] ?? 0) + Math.min(ex, ey);
  // A line that is half margin is neither.
  const [l, r, t, b] = found.map((length) =>
    length === 0 ? 0 : Math.min(length, Math.round(WIDEST * second)) + 2,
  ) as [number, number, number, number];
  const box = { left: ex + l, top: ey + t, right: right - r, bottom: bottom - b };
  const area = (box.right - box.left) * (box.bottom - box.top);
  return box.right - box.left < 2 || box.bottom - box.top < 2 || area < LEAST_AREA * width * height
    ? sheet
    : box;
}

/** Share of bare pixels of each line. */
function shares(
  bare: Uint8Array,
  step: number,
  along: number,
  [from, to]: readonly [number, number],
  [first, last]: readonly [number, number],
): number[] {
  const out: number[] = [];
  for (let line = first; line < last; line++) {
    let count = 0;
    for (let k = from; k < to; k++) count += bare[line * step + k * along] as number;
    out.push(count / Math.max(1, to - from));
  }
  return out;
}

/** How many of the first lines are margin; undefined where all are. */
function run(lines: readonly number[]): number | undefined {
  const isBare = (share: number): boolean => share >= BARE_SHARE;
  const start = lines.findIndex(isBare);
  if (start < 0 || start > SOFT * lines.length) return 0;
  const end = lines.findIndex(
    (_, at) => at > start && lines.slice(at, at + TOGETHER).every((share) => !isBare(share)),
  );
  return end < 0 ? undefined : end;
}
