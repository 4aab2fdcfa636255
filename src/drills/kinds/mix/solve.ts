/** The best that a drill allows: every answer tried, and what lies between the amounts found to a ten-thousandth. */
import type { ColourReading } from '../../../colour/reading.js';
import {
  chromaAsked,
  type Judged,
  judgeHue,
  type Reach,
  type Scored,
  scoreColour,
} from '../../../judgement/index.js';
import { type Evidence, evidenceOf, once, paintOf, type Studio } from '../../../paints/index.js';
import {
  amountsOf,
  bestOnScale,
  extremesAlong,
  type Line,
  linesOf,
  type Seen,
  seeLaid,
  type Trial,
  trialOf,
} from '../../../washes/index.js';
import { type Choice, choiceOfMixture, laidBy, openOf } from './choice.js';
import type { MixDrill } from './schema.js';

/** A choice and what it gives. */
export interface Outcome {
  readonly choice: Choice;
  readonly seen: Seen;
}

/** All that grading needs to know of a drill; made once. */
export interface Solved extends Judged {
  readonly best: Scored & Outcome;
}

/** The wash that the drill starts with. */
export function startOf(studio: Studio, { start }: MixDrill): Seen {
  return seeLaid(studio, start);
}

/** What a choice gives. */
export function outcomeOf(studio: Studio, drill: MixDrill, choice: Choice): Outcome {
  return { choice, seen: seeLaid(studio, laidBy(drill, choice)) };
}

/** True when a choice brings in a paint that the painting does not have. */
export function isNewPaint(drill: MixDrill, second: string): boolean {
  return drill.painting !== undefined && !drill.painting.includes(second) && !(second in drill.start.paints);
}

/** How a second paint is rated: the weakest evidence in a mixture with it, and whether it is new. */
export function ratingOf(
  studio: Studio,
  drill: MixDrill,
  second: string,
): { readonly evidence: Evidence; readonly isNew: boolean } {
  const ids = [...Object.keys(drill.start.paints), second];
  return { evidence: evidenceOf(ids.map((id) => paintOf(studio, id))), isNew: isNewPaint(drill, second) };
}

/** A line of the drill with the colours along it. */
export interface Tried {
  readonly line: Line;
  readonly second: string;
  readonly amounts: readonly number[];
  readonly trial: Trial;
}

/** Every line that the drill opens, made ready to try amounts on. */
export function triedLines(studio: Studio, drill: MixDrill): Tried[] {
  const open = openOf(drill);
  return linesOf(open).map((line) => ({
    line,
    second: line.ids[0] as string,
    amounts: amountsOf(open, line),
    trial: trialOf(studio, drill.start, line),
  }));
}

/** Chroma of a colour that reaches the value (and does not miss the hue); -1 for any other. */
function heightOf({ goal, start }: Pick<Judged, 'goal' | 'start'>, colour: ColourReading): number {
  const [light, dark] = goal.value;
  if (colour.step < light || colour.step > dark) return -1;
  return judgeHue({ goal, start }, colour)?.result.verdict === 'off' ? -1 : colour.chroma;
}

/** What can be reached in the value band; the start's own chroma when nothing lies in it. */
function reachOf(judged: Pick<Judged, 'goal' | 'start'>, lines: readonly Tried[]): Reach {
  let best = -1;
  let dullest = Number.POSITIVE_INFINITY;
  for (const { line, amounts, trial } of lines) {
    const height = (amount: number): number => heightOf(judged, trial([amount]));
    // Strokes are taken as they are offered: a share between two of them is another composition.
    const ranges =
      line.way === 'strokes'
        ? amounts.map((amount) => [amount, amount] as const)
        : [[amounts[0] as number, amounts.at(-1) as number] as const];
    for (const range of ranges) {
      const found = extremesAlong(height, range);
      if (found === undefined) continue;
      best = Math.max(best, found.most);
      dullest = Math.min(dullest, found.least);
    }
  }
  return best < 0 ? { best: judged.start.chroma, dullest: 0 } : { best, dullest };
}

/** True where the more chroma the better. */
function isOpenEnded(judged: Judged): boolean {
  return chromaAsked(judged, judged.start)[1] === Number.POSITIVE_INFINITY;
}

/** Finds the best answer on the drill's own scales, and what the tray can reach between them. */
export function solve(studio: Studio, drill: MixDrill): Solved {
  const { goal } = drill;
  const start = startOf(studio, drill).colour;
  const reach = reachOf({ goal, start }, triedLines(studio, drill));
  const judged: Judged = { goal, start, reach };
  const ratings = new Map(drill.tray.map((id) => [id, ratingOf(studio, drill, id)]));
  const score = (colour: ColourReading, second: string): Scored =>
    scoreColour(judged, colour, ratings.get(second) ?? ratingOf(studio, drill, second));
  const found = bestOnScale(
    studio,
    openOf(drill),
    (colour, { ids }) => score(colour, ids[0] as string).merit,
  );
  if (found === undefined) throw new RangeError(`drill ${drill.id} allows no answer`);
  const choice = choiceOfMixture(drill, found.mixture);
  return { ...judged, best: { ...score(found.colour, choice.second), ...outcomeOf(studio, drill, choice) } };
}

/** As {@link solve}, once for each drill. */
export const solved: (studio: Studio, drill: MixDrill) => Solved = once(solve);

/**
 * By how much a random choice, its amount anywhere between those shown, beats what the search found: in C* above the
 * brightest where bright is asked, in marks above the best answer else.
 * @param draw source of whole numbers 0 … most
 */
export function challenge(
  studio: Studio,
  drill: MixDrill,
  draw: (most: number) => number,
  tries: number,
): number {
  const known = solved(studio, drill);
  const lines = triedLines(studio, drill).filter(({ line }) => line.way !== 'strokes');
  if (lines.length === 0) return 0;
  let beaten = 0;
  for (let count = 0; count < tries; count++) {
    const { second, amounts, trial } = lines[draw(lines.length - 1)] as Tried;
    const [low, high] = [Math.log(amounts[0] as number), Math.log(amounts.at(-1) as number)];
    const colour = trial([Math.exp(low + ((high - low) * draw(1_000_000)) / 1_000_000)]);
    if (isOpenEnded(known)) {
      beaten = Math.max(beaten, heightOf(known, colour) - known.reach.best);
    } else {
      const { mark } = scoreColour(known, colour, ratingOf(studio, drill, second));
      beaten = Math.max(beaten, mark - known.best.mark);
    }
  }
  return beaten;
}
