/**
 * Today's set: what is weak, new and due, in an order that mixes look-alikes, at a difficulty near the learner.
 * The same standing, time and seed give the same set on every machine.
 */
import { seededDraw } from '../chance/draw.js';
import { arrange } from './arrange.js';
import { type Drawn, DrillDrawer, type Source } from './draw-drill.js';
import type { Feedback } from './feedback.js';
import { feedbackFor } from './feedback.js';
import type { FamilyNeed, Reason } from './need.js';
import { familyNeeds, WEAK_BELOW } from './need.js';
import { shareOut } from './shares.js';

export interface SetRequest extends Source {
  /** How many drills, 1-500. */
  readonly count: number;
  /** Practise this family alone. */
  readonly family?: string;
  /** Practise at this level, 1-5, whatever the learner's own. */
  readonly level?: number;
}

/** One drill of a set. */
export interface Pick extends Drawn {
  readonly family: string;
  readonly reason: Reason | 'placing' | 'mend';
  readonly feedback: Feedback;
  /** The mistaken idea that it is to mend. */
  readonly idea?: string;
}

/** Whether the first drill of a family in a set is a worked case: the family begins at level 1, or fails. */
const opensWorked = ({ level, reason, recent }: FamilyNeed): boolean =>
  (reason === 'new' && level === 1) || (reason === 'weak' && recent < WEAK_BELOW);

/** The level of the other drills: at level 1 the learner decides in between, unless the family fails. */
const shownLevel = ({ level, reason }: FamilyNeed): number => (level > 1 || reason === 'weak' ? level : 2);

/** The next drill of a family; of worked cases a failing family is given only one not seen for a while. */
function drawNext(drawer: DrillDrawer, need: FamilyNeed, isFirst: boolean): Drawn | undefined {
  const { id } = need.family;
  const worked = isFirst && opensWorked(need) ? drawer.worked(id) : undefined;
  return worked ?? drawer.drill(id, isFirst && need.reason === 'new' ? need.level : shownLevel(need));
}

/**
 * Chooses a set. It is shorter than asked only when there is nothing else left than the drill just done.
 * @throws RangeError when the count or the level is out of range or the family is unknown
 */
export function chooseSet(request: SetRequest): Pick[] {
  const { standing, families, now, seed, count, family: only, level: asked } = request;
  if (!Number.isInteger(count) || count < 1 || count > 500)
    throw new RangeError(`count is ${count}; a set has 1 to 500 drills`);
  if (only !== undefined && !families.some(({ id }) => id === only))
    throw new RangeError(`there is no family called ${only}`);
  if (asked !== undefined && ![1, 2, 3, 4, 5].includes(asked))
    throw new RangeError(`level is ${asked}; levels are 1 to 5`);
  const draw = seededDraw(seed);
  const drawer = new DrillDrawer(request, draw);
  const chosen = familyNeeds(standing, families, now.getTime()).filter(
    ({ family: { id } }) => drawer.has(id, asked) && (only === undefined || id === only),
  );
  const [first] = chosen;
  if (first === undefined) return [];
  const order =
    only === undefined ? arrange(shareOut(chosen, count), draw) : Array.from({ length: count }, () => first);

  const given = new Set<string>();
  return order.flatMap((need): Pick[] => {
    const { id } = need.family;
    const drawn = asked === undefined ? drawNext(drawer, need, !given.has(id)) : drawer.drill(id, asked);
    if (drawn === undefined) return [];
    given.add(id);
    return [{ ...drawn, family: id, reason: need.reason, feedback: feedbackFor(drawn.level) }];
  });
}
