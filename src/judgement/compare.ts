/** Several laid passages compared by one criterion. */
import { type Evidence, evidenceOf } from '../paints/index.js';
import { type Laid, type Seen, seeLaid } from '../washes/index.js';
import { type Context, type CriterionId, type CriterionReading, criterionOf, readingBy } from './criteria.js';
import { relationOf } from './relation.js';
import { NEUTRAL_CHROMA, WHITE_STEP } from './table.js';

/** One of the things compared. */
export interface Rated {
  readonly id: string;
  readonly label: string;
  readonly seen: Seen;
  readonly score: number;
  /** What is told of it. */
  readonly reading: CriterionReading;
}

/** All of them, best first, and what the model can tell apart. */
export interface Comparison {
  readonly rated: readonly Rated[];
  readonly tolerance: number;
  /** The least difference that a question may rest on: what the model can tell and an eye can see. */
  readonly apart: number;
  readonly evidence: Evidence;
}

/** Compares; ties keep the order given, so that the best is the same on every machine. */
export function compare(
  items: readonly { readonly id: string; readonly label: string; readonly laid: Laid }[],
  by: CriterionId,
  context: Context,
): Comparison {
  const criterion = criterionOf(by);
  const rated = items
    .map(({ id, label, laid }) => {
      const seen = seeLaid(context.studio, laid);
      return {
        id,
        label,
        seen,
        score: criterion.score(seen, context),
        reading: readingBy(by, seen, context),
      };
    })
    .sort((a, b) => b.score - a.score);
  const evidence = evidenceOf(rated.map(({ seen }) => seen));
  const tolerance = criterion.tolerance(evidence);
  return { rated, tolerance, apart: Math.max(tolerance, criterion.seen ?? 0), evidence };
}

/** Neighbours, best first, that lie nearer than a question may rest on. */
export function tooNear({ rated, apart }: Comparison): readonly (readonly [Rated, Rated])[] {
  return rated.slice(1).flatMap((worse, index): (readonly [Rated, Rated])[] => {
    const better = rated[index] as Rated;
    return better.score - worse.score < apart ? [[better, worse]] : [];
  });
}

/** The mistaken idea behind a wrong pick: what the paints show, else what the criterion asks. */
export function ideaBehind({ studio }: Context, picked: Rated, by: CriterionId): string {
  const { laid } = picked.seen;
  if ('layers' in laid) return 'upper-film';
  const wantsColour = by === 'most-chroma' || by === 'keeps-colour';
  const ids = 'strokes' in laid ? [] : [...Object.keys(laid.paints), ...Object.keys(laid.add ?? {})];
  const [first, second] = ids;
  if (first !== undefined && second !== undefined) {
    const { kind, ends } = relationOf(studio, { [first]: 1 }, second);
    if (wantsColour && kind === 'neutral') {
      const neutral = ends[1].chroma < NEUTRAL_CHROMA ? ends[1] : ends[0];
      return neutral.step < WHITE_STEP ? 'took-a-white' : 'took-a-neutral';
    }
    if (wantsColour && kind === 'across') return 'went-across';
    if (by === 'greyest' && kind === 'around') return 'stayed-near';
    if (by === 'greyest' && picked.seen.colour.chroma > NEUTRAL_CHROMA) return 'dull-not-neutral';
  }
  return criterionOf(by).idea;
}
