/** A practice plan turned into a set: the planned families, as many drills of each as the plan says. */
import { seedOf } from '../chance/draw.js';
import { chooseSet, type Pick, type SetRequest } from '../practice/index.js';
import type { PracticePlan } from '../quiz/plan.js';

/** Most drills of one planned set. */
const MOST = 200;

/** Picks for the whole plan, family by family in the plan's order. */
export function planPicks(plan: PracticePlan, request: Omit<SetRequest, 'count' | 'family'>): Pick[] {
  const picks = plan.families.flatMap(({ family, drills, level }, index): Pick[] => {
    const seed = seedOf(request.seed, index);
    return chooseSet({ ...request, family, count: drills, seed, ...(level !== undefined && { level }) });
  });
  return picks.slice(0, MOST);
}
