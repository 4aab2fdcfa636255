/** How much a drill leaves open at each level, so that the wanted answer stays among the choices. */
import { type Draw, shuffled } from '../../chance/draw.js';
import type { Evidence } from '../../paints/index.js';
import type { Choice } from '../kinds/mix/choice.js';
import { type MixDrill, type Touch, touchRatio, USUAL_TOUCHES } from '../kinds/mix/schema.js';

/** 1 worked - 5 cold. */
export type Level = 1 | 2 | 3 | 4 | 5;

/** Strengths of a glaze that made drills use, weakest first; a stronger film is a coat. */
export const GLAZES: readonly number[] = [0.05, 0.1, 0.2, 0.4, 0.6];
/** Water that made drills open: none, thinned to a half, to a quarter. */
export const THINS: readonly number[] = [1, 2, 4];

/** What a level opens. */
export type Openings = Pick<MixDrill, 'amounts' | 'glazes' | 'strokes' | 'thins'>;

/** What a family asks first: which second paint, or how much of a given one. */
export type Asks = 'paint' | 'amount';

/** Second paints in the tray at each level; a smaller palette gives fewer. */
export const TRAY_SIZE: Readonly<Record<Asks, Readonly<Record<Level, number>>>> = {
  paint: { 1: 2, 2: 2, 3: 4, 4: 3, 5: 6 },
  amount: { 1: 1, 2: 1, 3: 1, 4: 2, 5: 3 },
};

/** A stretch of a list that holds one of its items. */
function around<T>(list: readonly T[], item: T, count: number): T[] {
  const at = list.indexOf(item);
  const from = Math.max(0, Math.min(list.length - count, at - Math.floor(count / 2)));
  return list.slice(from, from + count);
}

/**
 * Amounts that may be told apart round a wanted one: all of them where the paints are measured; else every other one, for
 * a strength known to a factor of two tells amounts apart by a factor of four.
 */
export function touchesRound(wanted: Touch, least: Touch, evidence: Evidence): readonly Touch[] {
  const usual = USUAL_TOUCHES;
  const parity = usual.indexOf(wanted) % 2;
  return usual.filter(
    (touch, at) => touchRatio(touch) >= touchRatio(least) && (evidence === 'measured' || at % 2 === parity),
  );
}

function amountsAt(level: Level, touches: readonly Touch[], touch: Touch, asks: Asks, draw: Draw): Touch[] {
  if (asks === 'paint') {
    if (level <= 2) return [touch];
    return level === 3 ? around(touches, touch, 3) : [...touches];
  }
  if (level > 3) return [...touches];
  const size = level === 3 ? 4 : 3;
  // One that is too little stands beside it, where there is one that fails to the eye.
  const less = touches.filter((one) => touchRatio(one) <= touchRatio(touch) / 4).at(-1);
  const others = touches.filter((one) => Math.abs(touches.indexOf(one) - touches.indexOf(touch)) > 1);
  // Equal parts tempt most, where they are not the answer.
  const first = others.includes('1:1') ? '1:1' : others[0];
  const rest = shuffled(
    touches.filter((one) => one !== touch && one !== first),
    draw,
  );
  const known = [touch, less, first].filter((one) => one !== undefined);
  const chosen = [...new Set([...known, ...rest])].slice(0, size);
  return touches.filter((one) => chosen.includes(one));
}

/** What is open of a scale of numbers at a level: the wanted one, a few round it, or all. */
function scaleAt(level: Level, scale: readonly number[], wanted: number, asks: Asks): number[] {
  if (asks === 'paint' && level <= 2) return [wanted];
  return level <= 3 ? around(scale, wanted, 3) : [...scale];
}

/**
 * Amounts, ways and water to open around a wanted choice.
 * @param least the smallest amount that may be opened; the wanted one is always at least that
 */
export function openingsAt(
  level: Level,
  { how, thin }: Choice,
  rules: { readonly least: Touch; readonly asks: Asks; readonly evidence: Evidence },
  draw: Draw,
): Openings {
  const { least, asks, evidence } = rules;
  const closed: Openings = { amounts: [], glazes: [], strokes: [], thins: [1] };
  if (how.way === 'glaze') {
    const glazes = scaleAt(level, GLAZES, how.amount, asks);
    return level < 5 ? { ...closed, glazes } : { ...closed, glazes, amounts: ['1:4', '1:1'] };
  }
  const touch = how.id as Touch;
  const amounts = amountsAt(level, touchesRound(touch, least, evidence), touch, asks, draw);
  if (level <= 3) return { ...closed, amounts, thins: [thin] };
  if (level === 5 && thin === 1 && draw(1) === 0) return { ...closed, amounts, glazes: [0.1, 0.4] };
  return { ...closed, amounts, thins: [...THINS] };
}
