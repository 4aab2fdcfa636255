/** The best that a drill allows: every answer tried, then the amount refined between the touches. */
import { type ColourReading, readColour } from '../../colour/reading.js';
import { evidenceOf } from '../../pigments/index.js';
import { allChoices, type Choice, type Outcome, outcomeOf, recipeReflectance } from './candidates.js';
import { type MixDrill, touchRatio } from './schema.js';
import { judgeChroma, judgeHue, judgeValue, markOf, type Reach } from './score.js';

/** Steps between two neighbouring touches in the first pass, evenly in the logarithm. */
const STEPS_PER_TOUCH = 4;
/** Rounds of golden section: narrows a quarter touch to a thousandth of it. */
const ROUNDS = 14;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** An outcome with its scores. */
export interface Scored {
  readonly outcome: Outcome;
  readonly mark: number;
  /** Finer than the mark: which of two full marks is the better answer. */
  readonly merit: number;
}

/** All that grading needs to know of a drill; made once. */
export interface Solved {
  readonly start: ColourReading;
  readonly reach: Reach;
  readonly best: Scored;
}

/** True when a choice brings in a paint that the painting does not have. */
export function isNewPaint(drill: MixDrill, second: string): boolean {
  return drill.painting !== undefined && !drill.painting.includes(second) && !(second in drill.start.paints);
}

/** Marks one outcome. */
export function scoreOutcome(drill: MixDrill, start: ColourReading, outcome: Outcome, reach: Reach): Scored {
  const evidence = evidenceOf(outcome.loads);
  const value = judgeValue(start, outcome.colour, drill, evidence);
  const chroma = judgeChroma(start, outcome.colour, drill, evidence, reach);
  const hue = judgeHue(start, outcome.colour, drill);
  const mark = markOf(
    value.score,
    chroma.score * (hue?.score ?? 1),
    isNewPaint(drill, outcome.choice.second),
  );
  return { outcome, mark, merit: mark + meritOf(drill, outcome.colour) };
}

/** Below one mark: brighter is better where bright is asked, else nearer the middle of both bands. */
function meritOf(drill: MixDrill, { step, chroma }: ColourReading): number {
  const { value, chroma: asked } = drill.goal;
  const offCentre = (x: number, [low, high]: readonly [number, number]): number =>
    Math.min(1, Math.abs(x - (low + high) / 2) / (high - low));
  const centred = 1 - offCentre(step, value);
  return asked === 'bright'
    ? 0.8 * Math.min(1, chroma / 120) + 0.1 * centred
    : 0.45 * (centred + 1 - offCentre(chroma, asked));
}

function inBand(drill: MixDrill, start: ColourReading, { colour }: Outcome): boolean {
  const [light, dark] = drill.goal.value;
  return (
    colour.step >= light && colour.step <= dark && judgeHue(start, colour, drill)?.result.verdict !== 'off'
  );
}

/** Amounts of the first pass: the whole range that the drill opens, in even steps of the logarithm. */
function fineRatios(drill: MixDrill): number[] {
  const logs = drill.amounts.map((touch) => Math.log2(touchRatio(touch)));
  const low = Math.min(...logs);
  const high = Math.max(...logs);
  const count = Math.round((high - low) * STEPS_PER_TOUCH);
  return Array.from(
    { length: count + 1 },
    (_, index) => 2 ** (low + (count === 0 ? 0 : ((high - low) * index) / count)),
  );
}

/** Most chroma near a choice, staying in the value band: golden section on the logarithm of the amount. */
function refineChroma(drill: MixDrill, start: ColourReading, choice: Choice): number {
  const height = (log: number): number => {
    const outcome = outcomeOf(drill.start, { ...choice, ratio: 2 ** log });
    return inBand(drill, start, outcome) ? outcome.colour.chroma : -1;
  };
  const logs = drill.amounts.map((touch) => Math.log2(touchRatio(touch)));
  const centre = Math.log2(choice.ratio);
  let low = Math.max(Math.min(...logs), centre - 1 / STEPS_PER_TOUCH);
  let high = Math.min(Math.max(...logs), centre + 1 / STEPS_PER_TOUCH);
  let best = height(centre);
  for (let round = 0; round < ROUNDS && high > low; round++) {
    const left = high - GOLDEN * (high - low);
    const right = low + GOLDEN * (high - low);
    const atLeft = height(left);
    const atRight = height(right);
    best = Math.max(best, atLeft, atRight);
    // Outside the band both are -1: keep the side of the centre, which is inside.
    if (atLeft > atRight || (atLeft === atRight && centre < (low + high) / 2)) high = right;
    else low = left;
  }
  return best;
}

/** What can be reached in the value band; the whole tray when nothing lies in it. */
function reachOf(drill: MixDrill, start: ColourReading): Reach {
  let best: Outcome | undefined;
  let dullest = Number.POSITIVE_INFINITY;
  for (const choice of allChoices(drill, fineRatios(drill))) {
    const outcome = outcomeOf(drill.start, choice);
    if (!inBand(drill, start, outcome)) continue;
    dullest = Math.min(dullest, outcome.colour.chroma);
    if (best === undefined || outcome.colour.chroma > best.colour.chroma) best = outcome;
  }
  if (best === undefined) return { best: start.chroma, dullest: 0 };
  return { best: refineChroma(drill, start, best.choice), dullest };
}

/** Finds the best answer on the drill's own scale of touches, and what the tray can reach between them. */
export function solve(drill: MixDrill): Solved {
  const start = readColour(recipeReflectance(drill.start));
  const reach = reachOf(drill, start);
  let best: Scored | undefined;
  for (const choice of allChoices(drill, drill.amounts.map(touchRatio))) {
    const scored = scoreOutcome(drill, start, outcomeOf(drill.start, choice), reach);
    if (best === undefined || scored.merit > best.merit) best = scored;
  }
  if (best === undefined) throw new RangeError(`drill ${drill.id} allows no answer`);
  return {
    start,
    reach: {
      ...reach,
      best: Math.max(reach.best, best.outcome.colour.chroma * Number(inBand(drill, start, best.outcome))),
    },
    best,
  };
}

const SOLVED = new WeakMap<MixDrill, Solved>();

/** As {@link solve}, once for each drill. */
export function solved(drill: MixDrill): Solved {
  let known = SOLVED.get(drill);
  if (known === undefined) {
    known = solve(drill);
    SOLVED.set(drill, known);
  }
  return known;
}

/** The most that a random choice, its amount anywhere between the touches, beats the reachable chroma in the value band; C*. */
export function challenge(drill: MixDrill, draw: (most: number) => number, tries: number): number {
  const { start, reach } = solved(drill);
  const logs = drill.amounts.map((touch) => Math.log2(touchRatio(touch)));
  const low = Math.min(...logs);
  const span = Math.max(...logs) - low;
  let beaten = 0;
  for (let count = 0; count < tries; count++) {
    const choice: Choice = {
      second: drill.tray[draw(drill.tray.length - 1)] as string,
      way: drill.ways[draw(drill.ways.length - 1)] as Choice['way'],
      strength: drill.strengths[draw(drill.strengths.length - 1)] as number,
      ratio: 2 ** (low + (span * draw(9999)) / 9999),
    };
    const outcome = outcomeOf(drill.start, choice);
    if (inBand(drill, start, outcome)) beaten = Math.max(beaten, outcome.colour.chroma - reach.best);
  }
  return beaten;
}
