/** Several laid passages compared by one criterion. */
import type { Evidence } from '../../paints/index.js';
import { type Context, type CriterionId, criterionOf } from './criteria.js';
import { type Seen, seeLaid } from './predict.js';
import { ACROSS_DEG, angleBetween, NEAR_DEG, NEUTRAL_CHROMA } from './reasons.js';
import type { Laid } from './types.js';

/** One of the things compared. */
export interface Rated {
  readonly id: string;
  readonly label: string;
  readonly seen: Seen;
  readonly score: number;
}

/** All of them, best first, and what the model can tell apart. */
export interface Comparison {
  readonly rated: readonly Rated[];
  readonly tolerance: number;
  readonly evidence: Evidence;
}

const WEAKNESS: readonly Evidence[] = ['measured', 'transferred', 'estimated'];

/** Compares; ties keep the order given, so that the best is the same on every machine. */
export function compare(
  items: readonly { readonly id: string; readonly label: string; readonly laid: Laid }[],
  by: CriterionId,
  context: Context,
): Comparison {
  const criterion = criterionOf(by);
  const rated = items
    .map(({ id, label, laid }) => {
      const seen = seeLaid(laid);
      return { id, label, seen, score: criterion.score(seen, context) };
    })
    .sort((a, b) => b.score - a.score);
  const evidence = rated.reduce<Evidence>(
    (weakest, { seen }) =>
      WEAKNESS.indexOf(seen.evidence) > WEAKNESS.indexOf(weakest) ? seen.evidence : weakest,
    'measured',
  );
  return { rated, tolerance: criterion.tolerance(evidence), evidence };
}

/** The mistaken idea behind a wrong pick: what the paints show, else what the criterion asks. */
export function ideaBehind(picked: Rated, by: CriterionId): string {
  const { laid } = picked.seen;
  if ('layers' in laid) return 'upper-film';
  const wantsColour = by === 'most-chroma' || by === 'keeps-colour';
  const wash = 'strokes' in laid ? undefined : laid;
  const [first, second] = wash === undefined ? [] : Object.keys(wash.paints);
  if (wash !== undefined && first !== undefined && second !== undefined) {
    const angle = angleBetween(first, second, wash.strength);
    if (wantsColour && angle === undefined) return 'took-a-neutral';
    if (wantsColour && angle !== undefined && Math.abs(angle) >= ACROSS_DEG) return 'went-across';
    if (by === 'greyest' && angle !== undefined && Math.abs(angle) <= NEAR_DEG) return 'stayed-near';
    if (by === 'greyest' && picked.seen.colour.chroma > NEUTRAL_CHROMA) return 'dull-not-neutral';
  }
  return criterionOf(by).idea;
}
