/** How far a reading is to be believed: every doubt a figure beyond a bound, the worst of them the trust. */

import { applied, SRGB_TO_D65 } from '../../colour/adapt.js';
import { xyzToLab } from '../../colour/index.js';
import { whiteOf } from '../../colour/xyz.js';
import type { Doubt, DoubtId, PaintingReading, Trust } from '../types.js';
import type { Paper } from './paper.js';
import { LUMINANCE } from './photograph.js';
import type { Sheet } from './sheet.js';
import type { White } from './white.js';

/** Bounds beyond which trust is fair, and low. Ours, set on simulated photographs (tests/painting). */
const BOUNDS = {
  /** Share of bare paper at the top of the file: what is lighter than it can hold is cut. */
  clipped: [0.05, 0.3],
  /** C* of the white before it was brought to the paper's. */
  cast: [35, 70],
  /** Most light on the painting over least. */
  uneven: [1.5, 2.5],
  /** Middle distance of bare paper from the smooth light, as a share: a shadow with an edge, a crumpled sheet. */
  rough: [0.03, 0.06],
  /** Luminance of paper, under: the darks are noise. */
  dim: [0.22, 0.13],
  /** Pixels of the photograph on the painting, under. */
  pixels: [60_000, 20_000],
  /** Width of the sheet's edge, as a share of its longer side, over. */
  soft: [0.015, 0.03],
  /** Steepest edge of the painting, where no edge of a sheet is seen, under. */
  steepest: [0.16, 0.08],
  /** Share of the painting lighter than its white, over. */
  lighter: [0.02, 0.1],
} as const;

/** What trust is made of. */
export interface Evidence {
  readonly white: Omit<White, 'at'>;
  readonly paper: Paper | undefined;
  readonly sheet: Sheet | undefined;
  /** Share of the bare pixels with a channel at the top of the file; undefined where none is bare. */
  readonly clipped: number | undefined;
  /** Luminance of paper in the photograph where there is most light. */
  readonly level: number;
  /** Most light on the painting over least. */
  readonly uneven: number;
  /** Pixels of the photograph on the painting. */
  readonly pixels: number;
  /** Longer side of the sheet, pixels of the photograph. */
  readonly side: number;
  /** Share of the painting that is bare paper, and that is lighter than its white. */
  readonly bare: number;
  readonly lighter: number;
  /** Sides of the painting, of four, that have no margin though the sheet ends at the photograph's. */
  readonly cutSides: number;
  /** A sheet was found, or something of one colour goes all round: there ought to be a margin. */
  readonly framed: boolean;
  /** Steepest change of value over two pixels of the likeness, as a share of the range in use; undefined where next to nothing is in use. */
  readonly steepest: number | undefined;
}

const beyond = (
  id: DoubtId,
  figure: number,
  [fair, low]: readonly [number, number],
  name: string,
): Doubt[] => {
  const over = low > fair ? (bound: number) => figure > bound : (bound: number) => figure < bound;
  if (!over(fair)) return [];
  return [{ id, trust: over(low) ? 'low' : 'fair', figures: { [name]: figure } }];
};

/** C* of a white as sRGB has it, its luminance made that of paper. */
function castOf([r, g, b]: readonly [number, number, number]): number {
  const y = LUMINANCE[0] * r + LUMINANCE[1] * g + LUMINANCE[2] * b;
  const [x, yy, z] = applied(SRGB_TO_D65, (0.86 * r) / y, (0.86 * g) / y, (0.86 * b) / y);
  const { a, b: yellow } = xyzToLab({ x, y: yy, z }, whiteOf('D65-2'));
  return Math.hypot(a, yellow);
}

/** What takes from the trust, the worst first. */
export function doubtsOf(evidence: Evidence): Doubt[] {
  const {
    white,
    paper,
    sheet,
    clipped,
    level,
    uneven,
    pixels,
    side,
    bare,
    lighter,
    cutSides,
    framed,
    steepest,
  } = evidence;
  const doubts: Doubt[] = [];
  if (white.by === 'file') doubts.push({ id: 'no-white', trust: 'low' });
  if (white.by === 'place' || (white.by === 'margin' && (paper?.sides ?? 0) < 3))
    doubts.push({ id: 'white-guessed', trust: 'fair' });
  // On a sheet that lies on a table the margin is what tells the painting from the rest.
  if (paper === undefined ? white.by === 'hand' : paper.sides < 3)
    doubts.push({ id: 'light-unknown', trust: framed && paper?.by !== 'margin' ? 'low' : 'fair' });
  if (clipped !== undefined) doubts.push(...beyond('white-clipped', clipped, BOUNDS.clipped, 'share'));
  if (white.by !== 'file') {
    doubts.push(...beyond('strong-cast', castOf(white.light), BOUNDS.cast, 'chroma'));
    doubts.push(...beyond('dim', level, BOUNDS.dim, 'level'));
  }
  doubts.push(...beyond('uneven-light', uneven, BOUNDS.uneven, 'ratio'));
  if (paper?.by === 'margin') doubts.push(...beyond('rough-light', paper.grain, BOUNDS.rough, 'share'));
  doubts.push(...beyond('few-pixels', pixels, BOUNDS.pixels, 'pixels'));
  if (sheet !== undefined) {
    const softness = Math.max(...sheet.sides.map((one) => one.softness)) / side;
    doubts.push(...beyond('soft', softness, BOUNDS.soft, 'share'));
  } else if (steepest !== undefined) doubts.push(...beyond('soft', steepest, BOUNDS.steepest, 'share'));
  doubts.push(...beyond('lighter-than-white', lighter, BOUNDS.lighter, 'share'));
  if (bare > 0.985) doubts.push({ id: 'bare', trust: 'low', figures: { share: bare } });
  if (cutSides > 0) doubts.push({ id: 'cut-off', trust: 'fair', figures: { sides: cutSides } });
  return doubts.sort((one, other) => Number(other.trust === 'low') - Number(one.trust === 'low'));
}

/** The worst of the doubts; two that are fair do not make one that is low. */
export function trustOf(doubts: PaintingReading['doubts']): Trust {
  if (doubts.some(({ trust }) => trust === 'low')) return 'low';
  return doubts.length > 0 ? 'fair' : 'good';
}
