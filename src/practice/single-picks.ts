/** Drills chosen one by one: the next decision of the placing round, and one drill for each mistake to mend. */
import { pick, seededDraw, seedOf } from '../chance/draw.js';
import { DrillDrawer, type Source } from './draw-drill.js';
import type { Mistake } from './mistakes.js';
import { placementOf } from './placing.js';
import type { Pick } from './set.js';

/**
 * The next decision of the placing round: another family each time, at the level that the estimate asks for.
 * @returns undefined when the round is over, or when there is no drill
 */
export function nextPlacing(source: Source): Pick | undefined {
  const { placing } = source.standing;
  const { nextLevel } = placementOf(placing);
  if (nextLevel === undefined) return undefined;
  const draw = seededDraw(seedOf(source.seed, placing.length));
  const drawer = new DrillDrawer(source, draw);
  const open = source.families.filter(({ id }) => drawer.has(id, nextLevel));
  const unmet = open.filter(({ id }) => !placing.some(({ family }) => family === id));
  const from = unmet.length > 0 ? unmet : open;
  if (from.length === 0) return undefined;
  const family = pick(from, draw).id;
  const drawn = drawer.drill(family, nextLevel);
  return drawn && { ...drawn, family, reason: 'placing', feedback: 'each' };
}

/**
 * One drill for each mistake, of the family and at the level that it was made in.
 * @param shows whether a written drill can show a mistake at all; all can when absent
 */
export function chooseMend(
  source: Source,
  mistakes: readonly Mistake[],
  shows: (drill: string, mistake: Mistake) => boolean = () => true,
): Pick[] {
  const draw = seededDraw(source.seed);
  const taken = new Set<string>();
  return mistakes.flatMap((mistake): Pick[] => {
    const { family, level } = mistake;
    const drills = source.drills.filter(
      (drill) =>
        drill.family === family && drill.level === level && !taken.has(drill.id) && shows(drill.id, mistake),
    );
    const drawn = new DrillDrawer({ ...source, drills }, draw).drill(family, level);
    if (drawn === undefined) return [];
    if (drawn.drill !== undefined) taken.add(drawn.drill);
    return [{ ...drawn, family, reason: 'mend', feedback: 'each', idea: mistake.idea }];
  });
}
