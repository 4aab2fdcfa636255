/** What is open to a recipe: paints, ways and the scales that the search starts from. */
import type { FirstWash, Open, StrokeAmount, Way } from '../washes/index.js';
import type { Means } from './types.js';

/** Most paints in one recipe. */
export const MOST_PAINTS = 3;

/** Stirred in: parts to one part of the paint of the wash. */
const RATIOS = [1 / 32, 1 / 4, 2];
/** Water after stirring, one part in so many. */
const WATERS = [1, 3, 10];
/** Strengths of a glaze. */
const GLAZES = [0.03, 0.12, 0.5];
/** Share of the paper in strokes. */
const SHARES = [0.1, 0.25, 0.5];
/** Strengths of strokes beside a wash that is there. */
const STROKES = [0.15, 0.3, 0.6, 1];
/** Made up from nothing: in strengths to one of the first paint, and the strength of the whole. */
const BALANCES = [1 / 32, 1, 32];
const STRENGTHS = [0.015, 0.12, 1];

const strokesAt = (strengths: readonly number[]): StrokeAmount[] =>
  strengths.flatMap((strength) => SHARES.map((share) => ({ share, strength })));

function waysOf(ways: readonly Way[], ratios: readonly number[], strokes: readonly StrokeAmount[]) {
  const has = (way: Way): boolean => ways.includes(way);
  return {
    ratios: has('puddle') ? ratios : [],
    glazes: has('glaze') ? GLAZES : [],
    strokes: has('strokes') ? strokes : [],
    thins: [1],
  };
}

/** From a wash that is there: what may be brought to it, its own paints as well. */
export function openFrom(first: FirstWash, { paints, ways, mostPaints = MOST_PAINTS }: Means): Open[] {
  const own = Object.keys(first.paints);
  const tray = [...new Set([...own, ...paints])];
  const mostNew = mostPaints - own.length;
  return [{ first, tray, most: 2, mostNew, ...waysOf(ways, RATIOS, strokesAt(STROKES)), waters: WATERS }];
}

/** From nothing: puddles of up to three paints; glazes and strokes of two, each way round. */
export function openFromNothing({ paints, ways, mostPaints = MOST_PAINTS }: Means): Open[] {
  return paints.flatMap((id, at): Open[] => {
    const first = { paints: { [id]: 1 }, strength: 1 };
    const made = waysOf(ways, BALANCES, strokesAt([1]));
    const later = paints.slice(at + 1);
    const one = { first, strengths: STRENGTHS };
    return [
      {
        ...one,
        ...made,
        tray: later,
        most: later.length === 0 ? 0 : ((mostPaints - 1) as 0 | 1 | 2),
        glazes: [],
        strokes: [],
      },
      { ...one, ...made, tray: paints.filter((other) => other !== id), most: 1, ratios: [], strokes: [] },
      { ...one, ...made, tray: later, most: 1, ratios: [], glazes: [] },
    ];
  });
}
