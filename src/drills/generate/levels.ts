/** How much a drill leaves open at each level, so that the wanted answer stays among the choices. */

import { type Draw, shuffled } from '../../chance/draw.js';
import type { Way } from '../../paints/index.js';
import type { Choice } from '../mix/candidates.js';
import { type MixDrill, TOUCHES, type Touch, touchRatio } from '../mix/schema.js';

/** 1 worked - 5 cold. */
export type Level = 1 | 2 | 3 | 4 | 5;

/** Strengths of a wash that drills use, weakest first. */
export const STRENGTHS = [0.15, 0.2, 0.3, 0.45, 0.65, 0.9] as const;

/** What a level opens. */
export type Openings = Pick<MixDrill, 'amounts' | 'ways' | 'strengths'>;

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

function amountsAt(level: Level, touches: readonly Touch[], touch: Touch, asks: Asks, draw: Draw): Touch[] {
  if (asks === 'paint') {
    if (level <= 2) return [touch];
    return level === 3 ? around(touches, touch, 3) : [...touches];
  }
  if (level > 3) return [...touches];
  const size = level === 3 ? 4 : 2;
  const others = touches.filter((one) => Math.abs(touches.indexOf(one) - touches.indexOf(touch)) > 1);
  // Equal parts tempt most, where they are not the answer.
  const first = others.includes('1:1') ? '1:1' : others[0];
  const rest = shuffled(
    touches.filter((one) => one !== touch && one !== first),
    draw,
  );
  const chosen = [touch, ...(first === undefined ? [] : [first]), ...rest].slice(0, size);
  return touches.filter((one) => chosen.includes(one));
}

/**
 * Amounts, ways and strengths to open around a wanted choice.
 * @param least the smallest amount that may be opened; the wanted one is always at least that
 */
export function openingsAt(level: Level, wanted: Choice, least: Touch, asks: Asks, draw: Draw): Openings {
  const touches = TOUCHES.filter((touch) => touchRatio(touch) >= touchRatio(least));
  const touch = touches.find((one) => touchRatio(one) === wanted.ratio) ?? '1:1';
  const amounts = amountsAt(level, touches, touch, asks, draw);
  if (level <= 3) return { amounts, ways: [wanted.way], strengths: [wanted.strength] };
  const strengths = around(STRENGTHS as readonly number[], wanted.strength, 3);
  if (level === 4) return { amounts, ways: [wanted.way], strengths };
  const more = draw(1) === 0 ? ('glaze' as const) : ('strokes' as const);
  const ways: readonly Way[] = wanted.way === 'puddle' ? ['puddle', more] : ['puddle', wanted.way];
  return { amounts, ways, strengths };
}
