/**
 * The order of families within a set. Families that look alike come next to each other, since telling them apart is
 * the skill (M. Birnbaum et al. 2013; M. Brunmair and T. Richter 2019); no family twice running where another is left;
 * a family that is new keeps its first two together (blocks help to find what its cases share: P. Carvalho and R.
 * Goldstone 2014).
 */
import { type Draw, fraction } from '../chance/draw.js';
import type { FamilyNeed } from './need.js';

/** A family and how many drills of the set it gets. */
export interface Share {
  readonly need: FamilyNeed;
  slots: number;
}

/** Level from which look-alike families are interleaved. */
const INTERLEAVE_FROM = 3;

/** Whether two families are easily taken for each other, and both far enough on to be told apart. */
export function isPair(a: FamilyNeed, b: FamilyNeed): boolean {
  const named =
    a.family.lookAlike?.includes(b.family.id) === true || b.family.lookAlike?.includes(a.family.id) === true;
  return named && a.level >= INTERLEAVE_FROM && b.level >= INTERLEAVE_FROM;
}

/** The families of a set in order, each as often as it has slots. */
export function arrange(shares: readonly Share[], draw: Draw): FamilyNeed[] {
  const left = shares.filter(({ slots }) => slots > 0).map((share) => ({ ...share }));
  let open = left.reduce((sum, { slots }) => sum + slots, 0);
  const order: FamilyNeed[] = [];
  while (open > 0) {
    const last = order.at(-1);
    const startsBlock = last?.reason === 'new' && order.filter((need) => need === last).length === 1;
    const rated = left
      .filter(({ slots }) => slots > 0)
      .map((share) => {
        const isSame = share.need === last;
        let score = fraction(draw) * 0.3 + share.slots / open;
        if (isSame) score += startsBlock ? 10 : -10;
        // More than half of what is left: placed now, or its last ones would stand together.
        if (!isSame && share.slots * 2 > open) score += 5;
        if (last !== undefined && !isSame && isPair(last, share.need)) score += 1;
        return { share, score };
      });
    const best = rated.reduce((a, b) => (b.score > a.score ? b : a));
    best.share.slots -= 1;
    open -= 1;
    order.push(best.share.need);
  }
  return order;
}
