/** What is said of a mixture: what is asked, and what an answer became, beside the rows of value, chroma and hue. */
import { hueName } from '../../../colour/hue.js';
import { hueDifference } from '../../../colour/lab.js';
import { colourInWords } from '../../../colour/words.js';
import {
  COHESION_COST,
  DEEP_STEP,
  GOOD_MARK,
  hueAsked,
  NEUTRAL_CHROMA,
  scoreColour,
} from '../../../judgement/index.js';
import { paintOf, type Studio } from '../../../paints/index.js';
import { hueBeyond } from '../../../words/judged.js';
import type { Change } from '../../../words/sentences/advice.js';
import type { Wanted } from '../../../words/sentences/mix.js';
import { type Finding, fitted, tell } from '../../../words/tell.js';
import { choiceLabel, firstWords, fixedParts, fullLabel } from './label.js';
import { mixReason } from './reason.js';
import type { MixDrill } from './schema.js';
import { isNewPaint, type Outcome, ratingOf, type Solved, solved } from './solve.js';

/** Degrees from which a hue asked is another than the start's. */
const TURN_DEG = 9;

/** What is wanted: of a deep dark and of a colour that turns not what the aim says of greys and of darkening. */
function wanted({ start, goal }: Solved): Wanted {
  const { aim, value, chroma, hue } = goal;
  const isDark = (value[0] + value[1]) / 2 >= DEEP_STEP;
  if (isDark && (aim === 'neutral' || aim === 'lean')) return `${aim}-dark`;
  const turns = typeof hue?.near === 'number' && Math.abs(hueDifference(start.hue, hue.near)) > TURN_DEG;
  if (aim !== 'rich' || chroma === undefined || !turns) return aim;
  return hueName(start.hue) === hueName(hue.near as number) ? 'turned-hue' : 'another-hue';
}

/** What is asked, one line each. */
export function mixGoal(studio: Studio, drill: MixDrill): Finding[] {
  const known = solved(studio, drill);
  const { goal, painting } = drill;
  const hue = hueAsked(known);
  const fixed = fixedParts(studio, drill);
  return [
    tell('mix-first', { wash: firstWords(studio, drill), wanted: wanted(known) }),
    tell('mix-value', { from: known.start.step, band: goal.value }),
    tell('mix-chroma', { from: known.start.chroma, band: goal.chroma, aim: goal.aim }),
    ...(hue === undefined ? [] : [hueGoal(known, hue)]),
    ...(painting === undefined
      ? []
      : [
          tell('mix-painting', {
            names: painting.map((id) => paintOf(studio, id).name),
            cost: COHESION_COST,
          }),
        ]),
    ...(fixed.length === 0 ? [] : [tell('mix-fixed', { parts: fixed })]),
  ];
}

function hueGoal(
  { start, goal }: Solved,
  { near, within }: NonNullable<ReturnType<typeof hueAsked>>,
): Finding {
  const asked = { hue: hueName(near), near, within };
  if (goal.aim === 'lean' || start.chroma < NEUTRAL_CHROMA)
    return tell('mix-hue', { ...asked, as: 'towards' });
  if (Math.abs(hueDifference(start.hue, near)) < 0.5) return tell('mix-hue', { ...asked, as: 'held' });
  return tell('mix-hue', {
    ...asked,
    as: 'turned',
    from: { hue: hueName(start.hue), at: start.hue },
    beyond: hueBeyond(start.hue, near),
  });
}

/** What grading found, for the words. */
export interface Graded {
  readonly drill: MixDrill;
  readonly outcome: Outcome;
  readonly solved: Solved;
  /** The mistaken idea that the answer shows, and what would have mended it. */
  readonly idea: string | undefined;
  readonly change: Change | undefined;
  readonly mark: number;
}

/** What a paint new to the painting took from the mark. */
function apart(studio: Studio, { drill, outcome, solved: known, mark }: Graded): Finding | undefined {
  const { second } = outcome.choice;
  if (!isNewPaint(drill, second)) return undefined;
  const rating = { ...ratingOf(studio, drill, second), isNew: false };
  const cost = scoreColour(known, outcome.seen.colour, rating).mark - mark;
  return tell('mix-apart', { name: paintOf(studio, second).name, cost });
}

function better(studio: Studio, { drill, outcome, solved: known, mark }: Graded): Finding {
  const { best } = known;
  const label = choiceLabel(studio, drill, best.choice);
  if (choiceLabel(studio, drill, outcome.choice) === label) return tell('mix-best', {});
  if (mark >= best.mark) return tell('mix-as-good', { label });
  const { step, chroma } = best.seen.colour;
  const isOwn = isNewPaint(drill, outcome.choice.second) && !isNewPaint(drill, best.choice.second);
  return tell('mix-better', { label, step, chroma, isOwn, wasGood: mark >= GOOD_MARK });
}

/** What to try next; nothing where the answer is the best there is. */
function advice({ solved: known, idea, change, mark }: Graded): Finding | undefined {
  if (change !== undefined) return tell('change', change);
  return idea === undefined || mark >= known.best.mark ? undefined : tell('advice', { idea });
}

/** In the order: what it is now, why, cohesion, what is better, what to try next. */
export function mixTold(studio: Studio, graded: Graded): Finding[] {
  const { drill, outcome, change } = graded;
  const { choice, seen } = outcome;
  // Where the colour itself failed, the reason why is worth more than what the new paint cost.
  const [reasonRank, apartRank] = change === undefined ? [2, 1] : [1, 2];
  const reason = mixReason(studio, drill, outcome);
  const told = (label: string): Finding[] =>
    fitted([
      [0, tell('mix-now', { label, colour: colourInWords(seen.colour.lab) })],
      [reasonRank, reason],
      [apartRank, apart(studio, graded)],
      [0, better(studio, graded)],
      [0, advice(graded)],
    ]);
  const full = told(fullLabel(studio, drill, choice));
  // Where the amount in full leaves the reason no room, the touch says it.
  const isWhole = reason === undefined || full.includes(reason);
  return isWhole ? full : told(choiceLabel(studio, drill, choice));
}
