/**
 * The bare margin of a sheet: the sides of it that are of one colour and lie in one smooth light. Sides that are painted to the edge are left
 * out, one at most two.
 */
import { median, medianAbsoluteDeviation } from 'simple-statistics';
import { drift, type Order, paperSurface } from './lighting.js';
import { isPlausible, type Paper } from './paper.js';
import { kept, overOf, type Seen, weighed } from './spots.js';

/** A side is even where its luminance strays no more, and of the colour of another where red and half of blue are so near; all as logarithms. */
const SIDE = { stray: 0.15, colour: 0.12, least: 8 } as const;
/** Paper: share of the spots of each side on the surface; how far off it, and off its colour, they may lie; what share of the sheet may be lighter, and by how much. */
const HOLDS = { share: 0.5, off: 0.06, colour: 0.08, lighter: 0.04, by: 0.1 } as const;
/** Bare spots inside the painting: so near to the margin's surface and its colour. */
const INSIDE = { off: 0.02, colour: 0.025, weight: 0.3 } as const;

interface RingSide {
  readonly side: number;
  readonly height: number;
  readonly red: number;
  readonly blue: number;
  readonly stray: number;
}

/** The four sides as they look, those with spots enough. */
function sidesOf(seen: Seen): RingSide[] {
  return [1, 2, 3, 4].flatMap((side) => {
    const own = (at: number): boolean => seen.ring[at] === side;
    const heights = kept(seen.height, own);
    if (heights.length < SIDE.least) return [];
    return {
      side,
      height: median(heights),
      red: median(kept(seen.red, own)),
      blue: median(kept(seen.blue, own)),
      stray: medianAbsoluteDeviation(heights),
    };
  });
}

const alike = (one: RingSide, other: RingSide): boolean =>
  Math.abs(one.red - other.red) < SIDE.colour && Math.abs(one.blue - other.blue) < 2 * SIDE.colour;

/** Something of one colour in one light goes all round: a margin, or a table around a sheet that was not found. */
export function isFramed(seen: Seen): boolean {
  const sides = sidesOf(seen);
  const [first] = sides;
  if (first === undefined || sides.length < 4 || !sides.every((side) => alike(side, first))) return false;
  const ring = weighed(seen, (at) => (seen.ring[at] === 0 ? 0 : 1));
  const surface = paperSurface(ring, 2);
  return surface !== undefined && median([...overOf(ring, surface).map(Math.abs)]) < SIDE.stray;
}

/** The paper of a margin along the sides named. */
function along(
  seen: Seen,
  sides: readonly number[],
): { readonly paper?: Paper; readonly holding: readonly number[] } {
  const isRing = (at: number): boolean => sides.includes(seen.ring[at] as number);
  const ring = weighed(seen, (at) => (isRing(at) ? 1 : 0));
  // Two sides do not say how the light bends.
  const order: Order = sides.length > 2 ? 2 : 1;
  const first = paperSurface(ring, order);
  if (first === undefined) return { holding: [] };
  const overRing = overOf(ring, first);
  const onIt = (at: number): boolean => Math.abs(overRing[at] as number) < HOLDS.off;
  const red = kept(ring.red, onIt);
  if (red.length < 20) return { holding: [] };
  const ratios: [number, number] = [median(red), median(kept(ring.blue, onIt))];
  const near = (of: Seen, at: number, by: number): boolean =>
    Math.abs((of.red[at] as number) - ratios[0]) < by &&
    Math.abs((of.blue[at] as number) - ratios[1]) < 2 * by;
  const bare = (at: number): boolean => onIt(at) && near(ring, at, HOLDS.colour);
  const all = [0, 0, 0, 0, 0];
  const held = [0, 0, 0, 0, 0];
  for (const [at, side] of ring.ring.entries()) {
    all[side] = (all[side] as number) + 1;
    if (bare(at)) held[side] = (held[side] as number) + 1;
  }
  const holding = sides.filter((side) => (held[side] as number) >= HOLDS.share * (all[side] as number));
  const over = overOf(seen, first);
  const lighter = kept(over, (at) => (over[at] as number) > HOLDS.by).length / over.length;
  if (holding.length < sides.length || lighter > HOLDS.lighter || !isPlausible(ratios)) return { holding };
  // White paper inside the painting says how the light goes there, if it is as bare as the margin.
  const isBare = (at: number): boolean =>
    Math.abs(over[at] as number) < INSIDE.off && near(seen, at, INSIDE.colour);
  const white = weighed(seen, (at) => (isRing(at) ? 1 : isBare(at) ? INSIDE.weight : 0));
  const luminance = paperSurface(white, order, first) ?? first;
  const paper: Paper = {
    by: 'margin',
    sides: sides.length,
    light: {
      luminance,
      red: drift({ ...ring, height: ring.red }, ratios[0]),
      blue: drift({ ...ring, height: ring.blue }, ratios[1]),
    },
    ratios,
    grain: median(kept(overOf(ring, luminance).map(Math.abs), bare)),
  };
  return { paper, holding };
}

/** Paper by its margin; undefined where no two sides of the sheet have one. */
export function paperOfMargin(seen: Seen): Paper | undefined {
  const even = sidesOf(seen).filter(({ stray }) => stray < SIDE.stray);
  if (even.length < 2) return undefined;
  const lightest = even.reduce((best, side) => (side.height > best.height ? side : best));
  let sides: readonly number[] = even.filter((side) => alike(side, lightest)).map(({ side }) => side);
  while (sides.length >= 2) {
    const { paper, holding } = along(seen, sides);
    if (paper !== undefined) return paper;
    if (holding.length === sides.length) return undefined;
    sides = holding;
  }
  return undefined;
}
