/** The mistaken idea behind an answer: found by asking which one change would have mended it. */
import {
  COHESION_COST,
  chromaAsked,
  GOOD_MARK,
  scoreColour,
  type Verdict,
} from '../../../judgement/index.js';
import { once, type Studio } from '../../../paints/index.js';
import { seeAlone } from '../../../washes/index.js';
import { type Choice, type How, howsOf } from './choice.js';
import { isMoreOfTheSame } from './label.js';
import type { MixDrill } from './schema.js';
import { seatOf } from './seat.js';
import { isNewPaint, type Outcome, ratingOf, type Solved, solved, triedLines } from './solve.js';

/** Verdicts on the parts of an answer. */
export interface Verdicts {
  readonly value: Verdict;
  readonly chroma: Verdict;
  readonly hue: Verdict;
}

/** A choice with its mark. */
export interface Rated {
  readonly choice: Choice;
  readonly mark: number;
}

const ratedIn = once((_studio, _drill: MixDrill) => new Map<string, readonly Rated[]>());

/** Every answer with this second paint, marked; once for each drill. */
export function withPaint(studio: Studio, drill: MixDrill, second: string): readonly Rated[] {
  const ratedOf = ratedIn(studio, drill);
  const rated = ratedOf.get(second) ?? rate(studio, drill, second);
  ratedOf.set(second, rated);
  return rated;
}

function rate(studio: Studio, drill: MixDrill, second: string): Rated[] {
  const known = solved(studio, drill);
  const rating = ratingOf(studio, drill, second);
  const hows = howsOf(drill);
  return triedLines(studio, { ...drill, tray: [second] }).flatMap(({ line, trial }) =>
    hows
      .filter(({ way, strength }) => way === line.way && strength === line.strength)
      .map((how) => ({
        choice: { second, how, thin: line.thin },
        mark: scoreColour(known, trial([how.amount]), rating).mark,
      })),
  );
}

/** The one with the highest mark; of equals the first. */
export function highest(rated: readonly Rated[]): Rated | undefined {
  return rated.reduce<Rated | undefined>(
    (top, next) => (top === undefined || next.mark > top.mark ? next : top),
    undefined,
  );
}

/** Of every second paint the answer that comes nearest to good without being so: the amount mended as far as that paint lets it. */
export function temptingChoices(studio: Studio, drill: MixDrill): Choice[] {
  return drill.tray.flatMap((id) => {
    const wrong = withPaint(studio, drill, id).filter(({ mark }) => mark < GOOD_MARK);
    const nearest = highest(wrong);
    return nearest === undefined ? [] : [nearest.choice];
  });
}

/** True when the paint by itself, as thick as it goes, stays lighter than the goal. */
function isTooPale(studio: Studio, drill: MixDrill, id: string): boolean {
  return seeAlone(studio, id, 1).colour.step < drill.goal.value[0];
}

/** A grey is tipped by proportion; another colour has gone too far round. */
const hueIdea = ({ goal }: MixDrill): string => (goal.aim === 'lean' ? 'wrong-lean' : 'hue-slipped');

/** The idea that explains a paint which cannot do it, whatever the amount. */
function paintIdea(
  studio: Studio,
  drill: MixDrill,
  known: Solved,
  { choice, seen }: Outcome,
  verdicts: Verdicts,
): string {
  const { place } = seatOf(studio, drill.start, choice.second);
  const { colour } = seen;
  const asked = chromaAsked(known, colour);
  if (verdicts.chroma !== 'good' && place === 'white') return 'took-a-white';
  if (verdicts.chroma !== 'good' && colour.chroma < asked[0]) {
    if (place === 'black') return 'took-a-neutral';
    return place === 'across' || place === 'between' ? 'went-across' : 'dull-neighbour';
  }
  if (verdicts.chroma !== 'good' && drill.goal.aim === 'shade') return 'shade-glows';
  if (verdicts.chroma !== 'good') {
    return place === 'around' || place === 'own' ? 'stayed-near' : 'wrong-partner';
  }
  if (verdicts.hue !== 'good') return hueIdea(drill);
  if (colour.step > drill.goal.value[1]) return 'too-dark';
  return isTooPale(studio, drill, choice.second) ? 'paint-too-pale' : 'too-light';
}

/** More paint in the better of two: the same way at a higher amount, or stronger strokes. */
const isMore = (better: How, than: How): boolean =>
  better.amount * (better.strength || 1) > than.amount * (than.strength || 1);

/** The idea that explains the right paint in the wrong amount, water or way. */
function handlingIdea(
  drill: MixDrill,
  choice: Choice,
  better: Choice,
  verdicts: Verdicts,
  step: number,
): string {
  const lightOrDark = step < drill.goal.value[0] ? 'too-light' : 'too-dark';
  if (better.how.way !== choice.how.way) return 'wrong-way';
  if (verdicts.value === 'good' && verdicts.chroma === 'good' && verdicts.hue !== 'good')
    return hueIdea(drill);
  if (better.thin !== choice.thin && verdicts.value !== 'good') return lightOrDark;
  if (better.how.id !== choice.how.id && !isMoreOfTheSame(drill, choice))
    return isMore(better.how, choice.how) ? 'too-little' : 'too-much';
  return lightOrDark;
}

/** The mistake of an answer, or undefined for a good one. */
export function mistakeOf(
  studio: Studio,
  drill: MixDrill,
  outcome: Outcome,
  known: Solved,
  verdicts: Verdicts,
): string | undefined {
  const { choice, seen } = outcome;
  const isNew = isNewPaint(drill, choice.second);
  if (Object.values(verdicts).every((verdict) => verdict === 'good'))
    return isNew && known.best.mark === 100 ? 'brought-a-new-paint' : undefined;
  const rated = withPaint(studio, drill, choice.second);
  const cost = isNew ? COHESION_COST : 0;
  // The nearest change first: the amount, then the water, then the way.
  const nearest = [
    rated.filter((one) => one.choice.how.way === choice.how.way && one.choice.thin === choice.thin),
    rated.filter((one) => one.choice.how.way === choice.how.way),
    rated,
  ]
    .map(highest)
    .find((one) => one !== undefined && one.mark >= GOOD_MARK - cost);
  return nearest === undefined
    ? paintIdea(studio, drill, known, outcome, verdicts)
    : handlingIdea(drill, choice, nearest.choice, verdicts, seen.colour.step);
}
