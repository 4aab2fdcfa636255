/** What each aim asks of a made mixture, and the goal that is set around it. */
import { shadingLine } from '../../colour/chroma.js';
import { hueDifference } from '../../colour/lab.js';
import type { ColourReading } from '../../colour/reading.js';
import {
  type Aim,
  chromaMargin,
  type Goal,
  HUE_BOUND_DEG,
  LEAST_BAND,
  MODEL_ERROR,
} from '../../judgement/index.js';

/** Half the narrowest band of chroma; amounts of weaker evidence lie far enough apart for it, too. */
export const HALF_CHROMA = LEAST_BAND.measured.chroma;

/** A band of one step around a value, to a tenth of a step. */
function valueAround(step: number): [number, number] {
  const low = Math.max(0.5, Math.min(9.5, Math.round((step - 0.5) * 10) / 10));
  return [low, Math.round((low + 1) * 10) / 10];
}

/** A band around a chroma, in whole numbers. */
export function chromaAround(chroma: number, half: number): [number, number] {
  const low = Math.max(0, Math.round(chroma - half));
  return [low, Math.max(low + 2 * half, Math.round(chroma + half))];
}

/** Middle of the warm and of the cool side of the wheel, degrees. */
const LEANS = [55, 235] as const;

function nearestLean(hue: number): number {
  const [warm, cool] = LEANS;
  return Math.abs(hueDifference(warm, hue)) <= Math.abs(hueDifference(cool, hue)) ? warm : cool;
}

const turned = (one: ColourReading, other: ColourReading): number =>
  Math.abs(hueDifference(one.hue, other.hue));
const lineAt = (start: ColourReading, colour: ColourReading): number =>
  shadingLine(start.chroma, start.lab.l, colour.lab.l);

/** Where a value is to be held: how far a mixture may lie from it, steps; the band is half a step each way. */
const HELD_STEP = 0.4;
/** How far the best answer of a drill may lie from a value that is to be held, steps. */
export const MOST_HELD_STEP = 0.6;
/** Where a grey that leans ends and a dull colour begins, C*; the side is asked by its hue. */
const LEAN_END = 14;
/** Step from which a colour can be called a rich dark of anything. */
const RICH_STEP = 4;
/** A colour dulled is still one: at least this C*, and from `least` to `most` of the start's. */
const DULLED = { chroma: 12, least: 0.3, most: 0.65 } as const;

const isDulled = (start: ColourReading, { chroma }: ColourReading): boolean =>
  chroma >= Math.max(DULLED.chroma, DULLED.least * start.chroma) && chroma <= DULLED.most * start.chroma;

/** Whether a mixture is what an aim means; inside the bounds of judgement, so that its neighbours on the scale are too. */
export const IS_AIM: Readonly<Record<Aim, (start: ColourReading, colour: ColourReading) => boolean>> = {
  shade: (start, colour) => {
    const line = lineAt(start, colour);
    return (
      colour.step >= start.step + 0.9 &&
      Math.abs(colour.chroma - line) <= 0.7 * chromaMargin(line) &&
      turned(start, colour) <= 20
    );
  },
  rich: (start, colour) =>
    colour.step >= Math.max(RICH_STEP, start.step + 1.1) &&
    colour.chroma >= 0.95 * lineAt(start, colour) &&
    turned(start, colour) <= 35,
  dull: (start, colour) =>
    Math.abs(colour.step - start.step) <= HELD_STEP && isDulled(start, colour) && turned(start, colour) <= 20,
  distance: (start, colour) =>
    colour.step <= start.step - 0.5 &&
    colour.step >= start.step - 2.2 &&
    isDulled(start, colour) &&
    turned(start, colour) <= 25,
  neutral: (_start, { chroma }) => chroma <= 6,
  lean: (start, { step, chroma, hue }) =>
    Math.abs(step - start.step) <= HELD_STEP &&
    chroma >= 5 &&
    chroma <= 12 &&
    Math.abs(hueDifference(nearestLean(hue), hue)) <= 40,
};

/** The goal of an aim around a mixture. */
export function goalOf(aim: Aim, start: ColourReading, colour: ColourReading): Goal {
  const value = valueAround(aim === 'dull' || aim === 'lean' ? start.step : colour.step);
  switch (aim) {
    case 'shade':
    case 'rich':
      return { aim, value };
    case 'neutral':
      return { aim, value, chroma: [0, HALF_CHROMA] };
    case 'lean':
      return {
        aim,
        value,
        chroma: [0, LEAN_END],
        hue: { near: nearestLean(colour.hue), within: 50 },
      };
    default:
      return { aim, value, chroma: chromaAround(colour.chroma, HALF_CHROMA) };
  }
}

/** Whether a colour would do for a goal, roughly: what the checker then judges in full. */
export function meets(goal: Goal, start: ColourReading, colour: ColourReading): boolean {
  const [light, dark] = goal.value;
  const room = MODEL_ERROR.measured;
  if (colour.step < light - room.step || colour.step > dark + room.step) return false;
  if (goal.chroma === undefined) return IS_AIM[goal.aim](start, colour);
  const [dull, strong] = goal.chroma;
  if (colour.chroma < dull - room.chroma || colour.chroma > strong + room.chroma) return false;
  const within = HUE_BOUND_DEG[goal.aim];
  return within === undefined || turned(start, colour) <= within;
}
