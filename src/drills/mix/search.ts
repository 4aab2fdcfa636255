/** The best that a drill allows: every answer tried, and what lies between the touches found to a thousandth. */
import { type ColourReading, readColour } from '../../colour/reading.js';
import { type Evidence, evidenceOf } from '../../paints/index.js';
import {
  type Choice,
  type Line,
  linesOf,
  type Outcome,
  outcomeOf,
  pigmentOf,
  recipeReflectance,
} from './candidates.js';
import { type MixDrill, touchRatio } from './schema.js';
import { judgeChroma, judgeHue, judgeValue, markOf, type Reach } from './score.js';
import { type Trial, trialOf } from './trial.js';

/** Samples in each doubling of the amount. */
const STEPS_PER_TOUCH = 4;
/** Halvings: a quarter touch down to a ten-thousandth of one. */
const ROUNDS = 13;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** A colour with its mark. */
export interface Scored {
  readonly mark: number;
  /** Finer than the mark: which of two full marks is the better answer. */
  readonly merit: number;
}

/** All that grading needs to know of a drill; made once. */
export interface Solved {
  readonly start: ColourReading;
  readonly reach: Reach;
  readonly best: Scored & { readonly outcome: Outcome };
}

/** True when a choice brings in a paint that the painting does not have. */
export function isNewPaint(drill: MixDrill, second: string): boolean {
  return drill.painting !== undefined && !drill.painting.includes(second) && !(second in drill.start.paints);
}

/** The weakest evidence among the paints of a mixture with this second paint. */
export function evidenceWith(drill: MixDrill, second: string): Evidence {
  return evidenceOf(
    [...Object.keys(drill.start.paints), second].map((id) => ({ pigment: pigmentOf(id), load: 1 })),
  );
}

/** Marks one colour. */
export function scoreColour(
  drill: MixDrill,
  start: ColourReading,
  colour: ColourReading,
  second: { readonly evidence: Evidence; readonly isNew: boolean },
  reach: Reach,
): Scored {
  const value = judgeValue(start, colour, drill, second.evidence);
  const chroma = judgeChroma(start, colour, drill, second.evidence, reach);
  const hue = judgeHue(start, colour, drill);
  const mark = markOf(value.score, chroma.score * (hue?.score ?? 1), second.isNew);
  const onEdge = value.result.tooCloseToCall || chroma.result.tooCloseToCall ? 0.5 : 0;
  return { mark, merit: mark + 0.5 * centredness(drill, colour) - onEdge };
}

/** 0-1 within one mark: brighter is better where bright is asked, else nearer the middle of both bands. */
function centredness(drill: MixDrill, { step, chroma }: ColourReading): number {
  const { value, chroma: asked } = drill.goal;
  const off = (x: number, [low, high]: readonly [number, number]): number =>
    Math.min(1, Math.abs(x - (low + high) / 2) / (high - low));
  const centred = 1 - off(step, value);
  return asked === 'bright'
    ? 0.9 * Math.min(1, chroma / 120) + 0.1 * centred
    : 0.5 * (centred + 1 - off(chroma, asked));
}

/** The logarithms of the least and the most amount that the drill opens. */
function amountRange(drill: MixDrill): { readonly low: number; readonly high: number } {
  const logs = drill.amounts.map((touch) => Math.log2(touchRatio(touch)));
  return { low: Math.min(...logs), high: Math.max(...logs) };
}

/** Chroma of a colour that reaches the value (and does not miss the hue); -1 for any other. */
function heightOf(drill: MixDrill, start: ColourReading, colour: ColourReading): number {
  const [light, dark] = drill.goal.value;
  if (colour.step < light || colour.step > dark) return -1;
  return judgeHue(start, colour, drill)?.result.verdict === 'off' ? -1 : colour.chroma;
}

/** A sampled amount (its logarithm) and the height there. */
interface Sample {
  readonly log: number;
  readonly height: number;
}

type Height = (log: number) => number;

function sampled(height: Height, { low, high }: { low: number; high: number }): Sample[] {
  const count = Math.round((high - low) * STEPS_PER_TOUCH);
  return Array.from({ length: count + 1 }, (_, i) => {
    const log = count === 0 ? low : low + ((high - low) * i) / count;
    return { log, height: height(log) };
  });
}

/** The last amount inside the band between one that is inside and one that is not. */
function edge(height: Height, inside: number, beyond: number): Sample {
  let within = inside;
  let without = beyond;
  for (let round = 0; round < ROUNDS; round++) {
    const middle = (within + without) / 2;
    if (height(middle) >= 0) within = middle;
    else without = middle;
  }
  return { log: within, height: height(within) };
}

/** The stretches of a line inside the value band, each from edge to edge. */
function stretches(height: Height, samples: readonly Sample[]): Sample[][] {
  const found: Sample[][] = [];
  samples.forEach((here, i) => {
    if (here.height < 0) return;
    const before = samples[i - 1];
    const after = samples[i + 1];
    if (before === undefined) found.push([here]);
    else if (before.height < 0) found.push([edge(height, here.log, before.log), here]);
    else found.at(-1)?.push(here);
    if (after !== undefined && after.height < 0) found.at(-1)?.push(edge(height, here.log, after.log));
  });
  return found;
}

/** The greatest height between two amounts that bracket one peak: golden section. */
function peak(height: Height, from: number, to: number): number {
  let low = from;
  let high = to;
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  let atLeft = height(left);
  let atRight = height(right);
  for (let round = 0; round < ROUNDS; round++) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = height(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = height(right);
    }
  }
  return Math.max(atLeft, atRight);
}

function topOf(height: Height, stretch: readonly Sample[]): number {
  return stretch.reduce((top, here, i) => {
    const before = stretch[i - 1] ?? here;
    const after = stretch[i + 1] ?? here;
    const isPeak = here.height >= before.height && here.height >= after.height && before !== after;
    return Math.max(top, here.height, isPeak ? peak(height, before.log, after.log) : -1);
  }, -1);
}

/** What can be reached in the value band; the start's own chroma when nothing lies in it. */
function reachOf(drill: MixDrill, start: ColourReading, trials: readonly Trial[]): Reach {
  const range = amountRange(drill);
  let best = -1;
  let dullest = Number.POSITIVE_INFINITY;
  for (const trial of trials) {
    const height: Height = (log) => heightOf(drill, start, trial(2 ** log));
    for (const stretch of stretches(height, sampled(height, range))) {
      best = Math.max(best, topOf(height, stretch));
      dullest = stretch.reduce((least, sample) => Math.min(least, sample.height), dullest);
    }
  }
  return best < 0 ? { best: start.chroma, dullest: 0 } : { best, dullest };
}

/** Finds the best answer on the drill's own scale of touches, and what the tray can reach between them. */
export function solve(drill: MixDrill): Solved {
  const start = readColour(recipeReflectance(drill.start));
  const lines = linesOf(drill).map((line) => ({ line, trial: trialOf(drill.start, line) }));
  const reach = reachOf(
    drill,
    start,
    lines.map(({ trial }) => trial),
  );
  let best: { choice: Choice; scored: Scored } | undefined;
  for (const { line, trial } of lines) {
    const second = { evidence: evidenceWith(drill, line.second), isNew: isNewPaint(drill, line.second) };
    for (const touch of drill.amounts) {
      const ratio = touchRatio(touch);
      const scored = scoreColour(drill, start, trial(ratio), second, reach);
      if (best === undefined || scored.merit > best.scored.merit + 1e-9)
        best = { choice: { ...line, ratio }, scored };
    }
  }
  if (best === undefined) throw new RangeError(`drill ${drill.id} allows no answer`);
  return { start, reach, best: { ...best.scored, outcome: outcomeOf(drill.start, best.choice) } };
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

/**
 * By how much a random choice, its amount anywhere between the touches, beats what the search found: in C* above the
 * brightest where bright is asked, in marks above the best answer else.
 */
export function challenge(drill: MixDrill, draw: (most: number) => number, tries: number): number {
  const { start, reach, best } = solved(drill);
  const { low, high } = amountRange(drill);
  const lines: Line[] = linesOf(drill);
  let beaten = 0;
  for (let count = 0; count < tries; count++) {
    const line = lines[draw(lines.length - 1)] as Line;
    const colour = outcomeOf(drill.start, {
      ...line,
      ratio: 2 ** (low + ((high - low) * draw(9999)) / 9999),
    }).colour;
    if (drill.goal.chroma === 'bright') {
      beaten = Math.max(beaten, heightOf(drill, start, colour) - reach.best);
    } else {
      const second = { evidence: evidenceWith(drill, line.second), isNew: isNewPaint(drill, line.second) };
      beaten = Math.max(beaten, scoreColour(drill, start, colour, second, reach).mark - best.mark);
    }
  }
  return beaten;
}
