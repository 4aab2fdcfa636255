/** How much a drill leaves open at each level, so that the wanted answer stays among the choices. */
import type { Way } from '../../pigments/index.js';
import type { Choice } from '../mix/candidates.js';
import { type MixDrill, TOUCHES, type Touch, touchRatio } from '../mix/schema.js';
import type { Draw } from '../random-answer.js';

/** 1 worked - 5 cold. */
export type Level = 1 | 2 | 3 | 4 | 5;

/** One of a list, evenly. @throws RangeError for an empty list */
export function pick<T>(list: readonly T[], draw: Draw): T {
  if (list.length === 0) throw new RangeError('nothing to pick from');
  return list[draw(list.length - 1)] as T;
}

/** A list in random order (Fisher-Yates). */
export function shuffled<T>(list: readonly T[], draw: Draw): T[] {
  const out = [...list];
  for (let i = out.length - 1; i > 0; i--) {
    const j = draw(i);
    [out[i], out[j]] = [out[j] as T, out[i] as T];
  }
  return out;
}

/** Strengths of a wash that drills use, weakest first. */
export const STRENGTHS = [0.15, 0.2, 0.3, 0.45, 0.65, 0.9] as const;

/** What a level opens. */
export type Openings = Pick<MixDrill, 'amounts' | 'ways' | 'strengths'>;

/** Second paints in the tray at each level; a smaller palette gives fewer. */
export const TRAY_SIZE: Readonly<Record<Level, number>> = { 1: 2, 2: 2, 3: 4, 4: 3, 5: 6 };

/** Neighbours in a list around one of its items. */
function around<T>(list: readonly T[], item: T, count: number): T[] {
  const at = list.indexOf(item);
  const from = Math.max(0, Math.min(list.length - count, at - Math.floor(count / 2)));
  return list.slice(from, from + count);
}

/**
 * Amounts, ways and strengths to open around a wanted choice.
 * @param least the smallest amount that may be opened; the wanted one is always at least that
 */
export function openingsAt(level: Level, wanted: Choice, least: Touch, draw: Draw): Openings {
  const touches = TOUCHES.filter((touch) => touchRatio(touch) >= touchRatio(least));
  const touch = touches.find((one) => touchRatio(one) === wanted.ratio) ?? '1:1';
  const strength = wanted.strength;
  if (level <= 2) return { amounts: [touch], ways: [wanted.way], strengths: [strength] };
  if (level === 3) return { amounts: around(touches, touch, 3), ways: [wanted.way], strengths: [strength] };
  const strengths = around(STRENGTHS as readonly number[], strength, 3);
  if (level === 4) return { amounts: touches, ways: [wanted.way], strengths };
  const more = draw(1) === 0 ? ('glaze' as const) : ('strokes' as const);
  const ways: readonly Way[] = wanted.way === 'puddle' ? ['puddle', more] : ['puddle', wanted.way];
  return { amounts: touches, ways, strengths };
}
