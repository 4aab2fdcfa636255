/**
 * The five to eight masses of a painting: what is alike in colour and lies together is one. k-means (ml-kmeans, kmeans++ from a fixed seed)
 * on some of its cells, each cell then to the nearest middle, specks to what is around them, and what is alike or small joined.
 * A painting of fewer colours has fewer masses: a bare sheet has one.
 */
import { kmeans } from 'ml-kmeans';
import { labToXyz, readXyz, whiteOf } from '../../colour/index.js';
import type { Likeness, Mass } from '../types.js';
import { depthsOf, despeckled } from './labels.js';
import { type Cells, shrunk } from './photograph.js';

/** Middles to begin with, and the most masses that are kept. */
const BEGIN = 11;
const MOST = 8;
/** Cells along the longer side: where a mass ends is not known to the pixel. */
const CELLS = 240;
/** Cells that the middles are found among, and how many of these kmeans++ chooses its first among. */
const SAMPLE = 1400;
const FIRST = 4;
/** Half the side of the window that a cell is outvoted in, for each round. */
const REACHES = [1, 2];
/** What the whole side of the painting weighs against L*, a*, b*. */
const PLACE = 26;
/** Value is what holds a mass together first. */
const COLOUR = 0.8;
/** Share of the painting under which a mass joins another. */
const LEAST = 0.02;
/** Masses this near (L*, and a* and b* as they are weighed) are one, if they touch; anywhere, if they are nearer still. */
const ALIKE = { touching: 6, anywhere: 2.5 } as const;
/** Cells from its border on that are left out of the colour of a mass: lens, JPEG and brush mix them with what lies beside. */
const EDGE = 3;
const SEED = 20;

/** Masses, and the mass of each cell. */
export interface Masses {
  readonly masses: readonly Mass[];
  readonly cells: { readonly width: number; readonly height: number; readonly massAt: Uint8Array };
}

interface Sums {
  count: number;
  l: number;
  a: number;
  b: number;
}

const colourGap = (one: Sums, other: Sums): number =>
  Math.hypot(
    one.l / one.count - other.l / other.count,
    COLOUR * (one.a / one.count - other.a / other.count),
    COLOUR * (one.b / one.count - other.b / other.count),
  );

function middles({ width, height, light: lab }: Cells): number[][] {
  const apart = Math.max(1, Math.sqrt((width * height) / SAMPLE));
  const points: number[][] = [];
  for (let y = apart / 2; y < height; y += apart)
    for (let x = apart / 2; x < width; x += apart) {
      const at = 3 * ((y | 0) * width + (x | 0));
      points.push([
        lab[at] as number,
        COLOUR * (lab[at + 1] as number),
        COLOUR * (lab[at + 2] as number),
        (PLACE * x) / width,
        (PLACE * y) / height,
      ]);
    }
  const count = Math.min(BEGIN, points.length);
  const some = points.length > FIRST * BEGIN ? points.filter((_, at) => at % FIRST === 0) : points;
  const first = kmeans(some, count, { seed: SEED, maxIterations: 30, tolerance: 1e-2 }).centroids;
  return kmeans(points, count, { initialization: first, maxIterations: 30, tolerance: 1e-2 }).centroids;
}

/** The nearest middle of each cell. */
function assigned({ width, height, light: lab }: Cells, centres: readonly (readonly number[])[]): Uint8Array {
  const out = new Uint8Array(width * height);
  const flat = Float64Array.from(centres.flat());
  for (let y = 0, at = 0; y < height; y++) {
    const py = (PLACE * (y + 0.5)) / height;
    for (let x = 0; x < width; x++, at++) {
      const px = (PLACE * (x + 0.5)) / width;
      const l = lab[3 * at] as number;
      const a = COLOUR * (lab[3 * at + 1] as number);
      const b = COLOUR * (lab[3 * at + 2] as number);
      let best = 0;
      let least = Number.POSITIVE_INFINITY;
      for (let k = 0, c = 0; c < flat.length; k++, c += 5) {
        const dl = l - (flat[c] as number);
        const da = a - (flat[c + 1] as number);
        const db = b - (flat[c + 2] as number);
        const dx = px - (flat[c + 3] as number);
        const dy = py - (flat[c + 4] as number);
        const gap = dl * dl + da * da + db * db + dx * dx + dy * dy;
        if (gap < least) {
          least = gap;
          best = k;
        }
      }
      out[at] = best;
    }
  }
  return out;
}

/** Sums over each label. @param least how deep a cell must lie to count, for each label, where depths are given */
function sumsOf(
  { light: lab }: Cells,
  labels: Uint8Array,
  count: number,
  depth?: Uint16Array,
  least?: readonly number[],
): Sums[] {
  const sums = Array.from({ length: count }, (): Sums => ({ count: 0, l: 0, a: 0, b: 0 }));
  for (let at = 0; at < labels.length; at++) {
    const label = labels[at] as number;
    if (depth !== undefined && (depth[at] as number) < (least?.[label] ?? 0)) continue;
    const own = sums[label] as Sums;
    own.count++;
    own.l += lab[3 * at] as number;
    own.a += lab[3 * at + 1] as number;
    own.b += lab[3 * at + 2] as number;
  }
  return sums;
}

/** Which pairs touch, as a matrix of lengths. */
function touching(labels: Uint8Array, width: number, count: number): Uint32Array {
  const out = new Uint32Array(count * count);
  const meet = (here: number, there: number): void => {
    const pair = Math.min(here, there) * count + Math.max(here, there);
    out[pair] = (out[pair] as number) + 1;
  };
  for (let at = 0; at < labels.length; at++) {
    const here = labels[at] as number;
    const right = (at + 1) % width === 0 ? here : (labels[at + 1] as number);
    const below = labels[at + width] ?? here;
    if (right !== here) meet(here, right);
    if (below !== here) meet(here, below);
  }
  return out;
}

/** Joins what is small, what is alike and what is too many. @returns where each label goes */
function joined(sums: Sums[], touch: Uint32Array, total: number): number[] {
  const count = sums.length;
  const into = sums.map((_, at) => at);
  const touches = (one: number, other: number): boolean =>
    (touch[Math.min(one, other) * count + Math.max(one, other)] as number) > 0;
  for (;;) {
    const live = into.flatMap((to, at) => (to === at && (sums[at] as Sums).count > 0 ? [at] : []));
    let best: { readonly from: number; readonly to: number; readonly cost: number } | undefined;
    for (const [k, one] of live.entries())
      for (const other of live.slice(k + 1)) {
        const [a, b] = [sums[one] as Sums, sums[other] as Sums];
        const gap = colourGap(a, b);
        const isSmall = Math.min(a.count, b.count) < LEAST * total;
        const isAlike = gap < (touches(one, other) ? ALIKE.touching : ALIKE.anywhere);
        if (!isSmall && !isAlike && live.length <= MOST) continue;
        // What Ward's method pays: the spread that joining adds.
        const cost = ((a.count * b.count) / (a.count + b.count)) * gap * gap * (touches(one, other) ? 1 : 2);
        if (best === undefined || cost < best.cost)
          best = a.count < b.count ? { from: one, to: other, cost } : { from: other, to: one, cost };
      }
    if (best === undefined) return into;
    const { from, to } = best;
    const [taken, grown] = [sums[from] as Sums, sums[to] as Sums];
    sums[to] = {
      count: grown.count + taken.count,
      l: grown.l + taken.l,
      a: grown.a + taken.a,
      b: grown.b + taken.b,
    };
    for (const [at, was] of into.entries()) if (was === from) into[at] = to;
    for (let k = 0; k < count; k++) {
      if (k === from || k === to || !touches(from, k)) continue;
      const pair = Math.min(to, k) * count + Math.max(to, k);
      touch[pair] = (touch[pair] as number) + 1;
    }
  }
}

/** The masses of a painting, the largest first. */
export function massesOf(likeness: Likeness): Masses {
  const cells = shrunk({ ...likeness, light: likeness.lab }, CELLS);
  const { width, height } = cells;
  const centres = middles(cells);
  const labels = despeckled(assigned(cells, centres), width, height, centres.length, REACHES);
  const sums = sumsOf(cells, labels, centres.length);
  const into = joined(sums, touching(labels, width, centres.length), labels.length);
  // What was joined has its sums in those that it joined.
  const counts = sums.map(({ count }, label) => (into[label] === label ? count : 0));
  const order = [...counts.keys()]
    .filter((label) => (counts[label] as number) > 0)
    .sort((one, other) => (counts[other] as number) - (counts[one] as number) || one - other);
  const place = Uint8Array.from(into, (label) => order.indexOf(label));
  const massAt = new Uint8Array(labels.length);
  for (let at = 0; at < massAt.length; at++) massAt[at] = place[labels[at] as number] as number;
  const { depth, deepest } = depthsOf(massAt, width, height, order.length);
  const least = deepest.map((at) => Math.min(EDGE, Math.ceil((depth[at] as number) / 2)));
  const inside = sumsOf(cells, massAt, order.length, depth, least);
  const white = whiteOf('D65-2');
  const masses = inside.map(({ count, l, a, b }, mass): Mass => {
    const at = deepest[mass] as number;
    return {
      x: ((at % width) + 0.5) / width,
      y: (Math.floor(at / width) + 0.5) / height,
      share: (counts[order[mass] as number] as number) / massAt.length,
      colour: readXyz(labToXyz({ l: l / count, a: a / count, b: b / count }, white)),
    };
  });
  return { masses, cells: { width, height, massAt } };
}

/** The mass of each pixel of a likeness. */
export function massOfPixels({ cells }: Masses, { width, height }: Likeness): Uint8Array {
  const out = new Uint8Array(width * height);
  for (let y = 0, at = 0; y < height; y++) {
    const row = Math.floor(((y + 0.5) * cells.height) / height) * cells.width;
    for (let x = 0; x < width; x++, at++)
      out[at] = cells.massAt[row + ((((x + 0.5) * cells.width) / width) | 0)] as number;
  }
  return out;
}
