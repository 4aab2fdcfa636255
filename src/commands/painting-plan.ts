/** A practice plan from the next steps of a painting. */
import { UsageError } from '../errors.js';
import type { Advice } from '../painting/index.js';
import type { PlannedFamily, PracticePlan } from '../quiz/plan.js';
import { sayFinding } from '../words/tell.js';
import type { Voice } from '../words/voice.js';

/** Drills of the first step, and of those after it. */
const DRILLS = [8, 6, 4] as const;

/**
 * The plan: the families of the steps in their order, with the step as its reason.
 * @param name of the painter
 * @param of what it was made from
 * @throws UsageError where nothing is to be practised
 */
export function planOfPainting(
  advice: readonly Advice[],
  { name, of }: { readonly name: string; readonly of: string },
  voice: Voice,
): PracticePlan {
  // The first step of a family is the one that is given as its reason.
  const firsts = advice.filter(({ family }, at) => advice.findIndex((each) => each.family === family) === at);
  const families = firsts.map(
    ({ family, finding }, at): PlannedFamily => ({
      family,
      drills: DRILLS[at] ?? DRILLS[2],
      why: sayFinding(finding, voice),
    }),
  );
  if (families.length === 0)
    throw new UsageError('nothing in this painting asks for practice, so there is no plan to write');
  return { name, quiz: of, families };
}
