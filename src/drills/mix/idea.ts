/** The mistaken idea behind an answer: found by asking which one change would have mended it. */
import { readColour } from '../../colour/reading.js';
import { loadsFromParts, predict } from '../../paints/index.js';
import type { Verdict } from '../types.js';
import { type Choice, type Line, linesOf, type Outcome, pigmentOf } from './candidates.js';
import { isMoreOfTheSame } from './label.js';
import { type MixDrill, touchRatio } from './schema.js';
import { COHESION_COST, GOOD_MARK } from './score.js';
import { evidenceWith, isNewPaint, type Solved, scoreColour } from './search.js';
import { trialOf } from './trial.js';
import { type Seat, seatOf } from './wheel.js';

/** Verdicts on the parts of an answer. */
export interface Verdicts {
  readonly value: Verdict;
  readonly chroma: Verdict;
  readonly hue: Verdict;
}

interface Rated {
  readonly choice: Choice;
  readonly mark: number;
}

/** Every answer with this second paint, marked. */
function withPaint(drill: MixDrill, { start, reach }: Solved, second: string): Rated[] {
  const rating = { evidence: evidenceWith(drill, second), isNew: isNewPaint(drill, second) };
  return linesOf({ ...drill, tray: [second] }).flatMap((line: Line) => {
    const trial = trialOf(drill.start, line);
    return drill.amounts.map((touch) => {
      const choice = { ...line, ratio: touchRatio(touch) };
      return { choice, mark: scoreColour(drill, start, trial(choice.ratio), rating, reach).mark };
    });
  });
}

function highest(rated: readonly Rated[]): Rated | undefined {
  return rated.reduce<Rated | undefined>(
    (top, next) => (top === undefined || next.mark > top.mark ? next : top),
    undefined,
  );
}

/** True when the paint by itself, as thick as it goes, stays lighter than the goal. */
function isTooPale(drill: MixDrill, id: string): boolean {
  const masstone = predict(loadsFromParts([{ pigment: pigmentOf(id), parts: 1 }], 1), 'puddle');
  return readColour(masstone).step < drill.goal.value[0];
}

/** The idea that explains a paint which cannot do it, whatever the amount. */
function paintIdea(
  drill: MixDrill,
  { choice, colour }: Outcome,
  { place }: Seat,
  verdicts: Verdicts,
): string {
  const asked = drill.goal.chroma;
  if (verdicts.chroma !== 'good' && (asked === 'bright' || colour.chroma < asked[0])) {
    if (place === 'black' || place === 'white') return 'took-a-neutral';
    return place === 'across' || place === 'quarter' ? 'went-across' : 'dull-neighbour';
  }
  if (verdicts.chroma !== 'good') {
    return place === 'neighbour' || place === 'own' ? 'stayed-near' : 'wrong-partner';
  }
  if (verdicts.hue !== 'good') return 'hue-slipped';
  if (colour.step > drill.goal.value[1]) return 'too-dark';
  return isTooPale(drill, choice.second) ? 'paint-too-pale' : 'too-light';
}

/** The idea that explains the right paint in the wrong amount, strength or way. */
function handlingIdea(
  drill: MixDrill,
  choice: Choice,
  better: Choice,
  verdicts: Verdicts,
  step: number,
): string {
  if (better.way !== choice.way) return 'wrong-way';
  if (verdicts.value === 'good' && verdicts.chroma === 'good' && verdicts.hue !== 'good') return 'wrong-lean';
  if (better.strength !== choice.strength && verdicts.value !== 'good')
    return step < drill.goal.value[0] ? 'too-light' : 'too-dark';
  if (better.ratio !== choice.ratio && !isMoreOfTheSame(drill, choice))
    return better.ratio < choice.ratio ? 'too-much' : 'too-little';
  return better.strength > choice.strength ? 'too-light' : 'too-dark';
}

/** @returns an id of `IDEAS`, or undefined for a good answer */
export function ideaOf(
  drill: MixDrill,
  outcome: Outcome,
  known: Solved,
  verdicts: Verdicts,
): string | undefined {
  const { choice, colour } = outcome;
  if (Object.values(verdicts).every((verdict) => verdict === 'good'))
    return isNewPaint(drill, choice.second) && known.best.mark === 100 ? 'brought-a-new-paint' : undefined;
  const rated = withPaint(drill, known, choice.second);
  const cost = isNewPaint(drill, choice.second) ? COHESION_COST : 0;
  // The nearest change first: the amount, then the strength, then the way.
  const nearest = [
    rated.filter((one) => one.choice.way === choice.way && one.choice.strength === choice.strength),
    rated.filter((one) => one.choice.way === choice.way),
    rated,
  ]
    .map(highest)
    .find((one) => one !== undefined && one.mark >= GOOD_MARK - cost);
  return nearest === undefined
    ? paintIdea(drill, outcome, seatOf(drill, choice.second), verdicts)
    : handlingIdea(drill, choice, nearest.choice, verdicts, colour.step);
}
