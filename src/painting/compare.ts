/** Two photographs of one painting, before and after: what moved, and whether what was darkened kept its colour. */
import { shadingLine } from '../colour/chroma.js';
import { labToXyz } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import { readXyz } from '../colour/reading.js';
import { whiteOf } from '../colour/xyz.js';
import { CHROMATIC_START, KEPT_LINE } from '../judgement/index.js';
import { type Finding, tell } from '../words/tell.js';
import { nameOf } from './name.js';
import { COMPARED } from './table.js';
import type { Likeness, PaintingReading } from './types.js';

/** A mass of the painting as it was, and what lies there now. */
export interface Moved {
  /** Index of the mass in the reading before. */
  readonly mass: number;
  readonly before: ColourReading;
  readonly after: ColourReading;
  /** C* as a share of the shading line at the new value, where the mass grew darker and had colour to keep. */
  readonly kept?: number;
}

export type Verdict = 'wider' | 'as wide' | 'narrower';

export interface Comparison {
  /** Whether the two are framed alike, so that places can be compared. */
  readonly aligned: boolean;
  readonly verdict: Verdict;
  /** Masses that changed, the most changed first; none where they are not aligned. */
  readonly moved: readonly Moved[];
  /** Of all that was darkened and had colour, by share; undefined where nothing was. */
  readonly kept?: number;
}

/** Points across and down at which the two are held against each other. */
const POINTS = 64;

/** How far one lies from the other, in shares of a side. */
interface Shift {
  readonly dx: number;
  readonly dy: number;
}

const at = ({ width, height }: Likeness, x: number, y: number): number => {
  const column = Math.min(width - 1, Math.max(0, Math.floor(x * width)));
  return Math.min(height - 1, Math.max(0, Math.floor(y * height))) * width + column;
};

/** Correlation of the values of two likenesses, the second shifted; 0 where one of them is even. */
function correlation(one: Likeness, other: Likeness, { dx, dy }: Shift): number {
  let [sumA, sumB, squareA, squareB, product, count] = [0, 0, 0, 0, 0, 0];
  for (let row = 0; row < POINTS; row++)
    for (let column = 0; column < POINTS; column++) {
      const [x, y] = [(column + 0.5) / POINTS, (row + 0.5) / POINTS];
      if (x + dx < 0 || x + dx >= 1 || y + dy < 0 || y + dy >= 1) continue;
      const a = one.value[at(one, x, y)] as number;
      const b = other.value[at(other, x + dx, y + dy)] as number;
      sumA += a;
      sumB += b;
      squareA += a * a;
      squareB += b * b;
      product += a * b;
      count++;
    }
  const spread = (squareA - sumA ** 2 / count) * (squareB - sumB ** 2 / count);
  return spread <= 1e-9 ? 0 : (product - (sumA * sumB) / count) / Math.sqrt(spread);
}

/** The small shift at which the two agree best, or undefined where they are not framed alike. */
function alignment(one: Likeness, other: Likeness): Shift | undefined {
  const shape = one.width / one.height / (other.width / other.height);
  if (Math.max(shape, 1 / shape) > COMPARED.shape) return undefined;
  let best: Shift & { readonly fit: number } = {
    dx: 0,
    dy: 0,
    fit: correlation(one, other, { dx: 0, dy: 0 }),
  };
  const steps = [-1, -0.5, 0, 0.5, 1].map((part) => part * COMPARED.shift);
  for (const dx of steps)
    for (const dy of steps) {
      const fit = correlation(one, other, { dx, dy });
      if (fit > best.fit) best = { dx, dy, fit };
    }
  return best.fit >= COMPARED.alike ? best : undefined;
}

/** The mean colour of a mass of one likeness where it lies in the other; undefined where it is shifted out. */
function colourThere({ likeness, massAt }: PaintingReading, mass: number, other: Likeness, by: Shift) {
  const sum = { l: 0, a: 0, b: 0 };
  let count = 0;
  for (let row = 0; row < likeness.height; row++)
    for (let column = 0; column < likeness.width; column++) {
      if (massAt[row * likeness.width + column] !== mass) continue;
      const [x, y] = [(column + 0.5) / likeness.width + by.dx, (row + 0.5) / likeness.height + by.dy];
      if (x < 0 || x >= 1 || y < 0 || y >= 1) continue;
      const index = 3 * at(other, x, y);
      sum.l += other.lab[index] as number;
      sum.a += other.lab[index + 1] as number;
      sum.b += other.lab[index + 2] as number;
      count++;
    }
  if (count === 0) return undefined;
  const lab = { l: sum.l / count, a: sum.a / count, b: sum.b / count };
  return readXyz(labToXyz(lab, whiteOf('D65-2')));
}

function movedOf(mass: number, before: ColourReading, after: ColourReading): Moved {
  const darkened = after.step - before.step >= COMPARED.steps && before.chroma >= CHROMATIC_START;
  const line = shadingLine(before.chroma, before.lab.l, after.lab.l);
  return { mass, before, after, ...(darkened ? { kept: after.chroma / Math.max(1, line) } : {}) };
}

const hasMoved = ({ before, after }: Moved): boolean =>
  Math.abs(after.step - before.step) >= COMPARED.steps ||
  Math.hypot(after.lab.a - before.lab.a, after.lab.b - before.lab.b) >= COMPARED.chroma;

const sizeOf = ({ before, after }: Moved): number =>
  Math.hypot(after.lab.l - before.lab.l, after.lab.a - before.lab.a, after.lab.b - before.lab.b);

const widthOf = ({ range: { light, dark } }: PaintingReading): number => dark - light;

function verdictOf(before: PaintingReading, after: PaintingReading): Verdict {
  const wider = widthOf(after) - widthOf(before);
  if (Math.abs(wider) < COMPARED.wider) return 'as wide';
  return wider > 0 ? 'wider' : 'narrower';
}

/** Holds a painting against what it was. */
export function compared(before: PaintingReading, after: PaintingReading): Comparison {
  const shift = alignment(before.likeness, after.likeness);
  const verdict = verdictOf(before, after);
  if (shift === undefined) return { aligned: false, verdict, moved: [] };
  const moved = before.masses
    .flatMap(({ colour }, mass) => {
      const there = colourThere(before, mass, after.likeness, shift);
      return there === undefined ? [] : [movedOf(mass, colour, there)];
    })
    .filter(hasMoved)
    .sort((one, other) => sizeOf(other) - sizeOf(one));
  const judged = moved.flatMap(({ mass, kept }) =>
    kept === undefined ? [] : [{ kept, share: before.masses[mass]?.share ?? 0 }],
  );
  const whole = judged.reduce((sum, { share }) => sum + share, 0);
  const kept = judged.reduce((sum, one) => sum + one.kept * one.share, 0) / whole;
  return { aligned: true, verdict, moved, ...(whole > 0 ? { kept } : {}) };
}

const VERDICTS = {
  wider: 'painting-wider',
  'as wide': 'painting-as-wide',
  narrower: 'painting-narrower',
} as const satisfies Record<Verdict, Finding['id']>;

/** What is said of the two: the range, the colour of what was darkened, then each mass that moved. */
export function comparisonTold(
  before: PaintingReading,
  after: PaintingReading,
  { aligned, verdict, moved, kept }: Comparison,
): Finding[] {
  const ends = ({ range: { light, dark } }: PaintingReading) => [light, dark] as const;
  const colour =
    kept === undefined
      ? tell('painting-nothing-darkened', {})
      : tell(kept >= KEPT_LINE ? 'painting-kept' : 'painting-dulled', { kept });
  return [
    tell(VERDICTS[verdict], { before: ends(before), after: ends(after) }),
    ...(aligned ? [colour] : [tell('painting-unlike', {})]),
    ...moved.map(({ mass, before: was, after: is, kept: share }) =>
      tell('painting-moved', {
        mass: nameOf(before.masses, mass),
        steps: [was.step, is.step],
        chroma: [was.chroma, is.chroma],
        kept: share,
      }),
    ),
  ];
}
