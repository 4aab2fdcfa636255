/** What each family of mix drills asks of a start, of a mixture and of the tray, and the goal of each aim. */
import { shadingLine } from '../../colour/chroma.js';
import { hueDifference } from '../../colour/lab.js';
import type { ColourReading } from '../../colour/reading.js';
import {
  type Aim,
  chromaMargin,
  DEEP_STEP,
  type Goal,
  HUE_BOUND_DEG,
  LEAST_BAND,
  MODEL_ERROR,
} from '../../judgement/index.js';
import type { Pigment } from '../../paints/index.js';
import type { Way } from '../../washes/index.js';
import type { Choice } from '../kinds/mix/choice.js';
import type { Touch } from '../kinds/mix/schema.js';
import type { Place } from '../kinds/mix/seat.js';
import type { Asks } from './levels.js';

/** A paint of the palette beside the start. */
export interface Partner {
  readonly pigment: Pigment;
  readonly place: Place;
  /** Alone, at the strength that its place is told at. */
  readonly alone: ColourReading;
}

/** A mixture that a plan may ask for. */
export interface Candidate {
  readonly choice: Choice;
  readonly partner: Partner;
  readonly colour: ColourReading;
}

/** What a family asks of its plans. */
export interface PlanRules {
  readonly asks: Asks;
  /** Aims that its drills have. */
  readonly aims: readonly Aim[];
  /** Strengths of the start. */
  readonly strengths: readonly number[];
  readonly start: (colour: ColourReading) => boolean;
  /** May this paint be there at all, in the first wash or in the tray? */
  readonly allows?: (pigment: Pigment) => boolean;
  /** May this paint be the answer? */
  readonly serves: (partner: Partner, start: ColourReading, first: readonly Pigment[]) => boolean;
  /** Is this mixture worth asking for, beside what its aim wants? */
  readonly worth?: (candidate: Candidate) => boolean;
  /** Where a family asks for more or less than the aim does by itself. */
  readonly goal?: (start: ColourReading, colour: ColourReading, aim: Aim) => Partial<Goal>;
  /** Must this paint be in the tray to tempt? */
  readonly tempts: (partner: Partner) => boolean;
  /** May this paint not reach the goal, lest the drill teach the opposite? */
  readonly mustFail: (partner: Partner) => boolean;
  readonly least: Touch;
  readonly ways: readonly Way[];
}

/** Half the narrowest band of chroma; amounts of weaker evidence lie far enough apart for it, too. */
const HALF_CHROMA = LEAST_BAND.measured.chroma;

/** A band of one step around a value, to a tenth of a step. */
export function valueAround(step: number): [number, number] {
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
    colour.step >= start.step + 1.1 &&
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
    Math.abs(step - start.step) <= 1 &&
    chroma >= 5 &&
    chroma <= 12 &&
    Math.abs(hueDifference(nearestLean(hue), hue)) <= 40,
};

/** The goal of an aim around a mixture. */
export function goalOf(aim: Aim, start: ColourReading, colour: ColourReading): Goal {
  const value = valueAround(aim === 'dull' ? start.step : colour.step);
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
        chroma: [3, 3 + 2 * HALF_CHROMA],
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

/** True when a paint holds a black: one of its Colour Index names is a pigment black. */
export function holdsBlack({ ci }: Pigment): boolean {
  return ci.some((name) => name.startsWith('PBk'));
}

/** Natural and synthetic iron oxides and hydroxides: the earths. */
const EARTHS = /^(PBr7|PY42|PY43|PR101|PR102|PG23)$/;

/** How many times stronger a paint stains than the weakest of the first wash; never an earth, never a strength only assumed. */
function isStrong(pigment: Pigment, first: readonly Pigment[]): boolean {
  return (
    first.every(
      ({ fullStrength, strengthEvidence }) =>
        strengthEvidence !== 'assumed' && fullStrength >= 2 * pigment.fullStrength,
    ) &&
    pigment.strengthEvidence !== 'assumed' &&
    !pigment.ci.some((name) => EARTHS.test(name))
  );
}

const isFar = ({ place }: Partner): boolean => place === 'across' || place === 'black';
const isNear = ({ place }: Partner): boolean => place === 'around' || place === 'own';

/** The rules of each family that is made of mix drills. */
export const MIX_RULES: Readonly<Record<string, PlanRules>> = {
  'darken-bright': {
    asks: 'paint',
    aims: ['shade', 'rich'],
    strengths: [0.1, 0.15, 0.2, 0.3],
    start: ({ chroma, step }) => chroma >= 28 && step <= 6,
    serves: (partner, start) =>
      (isNear(partner) || partner.place === 'between') &&
      (partner.place === 'own' || partner.alone.step >= start.step + 0.3),
    worth: ({ colour }) => colour.chroma >= 12,
    tempts: isFar,
    mustFail: isFar,
    least: '1:8',
    ways: ['puddle', 'glaze'],
  },
  'dull-on-purpose': {
    asks: 'paint',
    aims: ['dull', 'distance'],
    strengths: [0.15, 0.2, 0.3, 0.45],
    start: ({ chroma }) => chroma >= 30,
    serves: ({ place }) => place === 'across' || place === 'between',
    tempts: isNear,
    mustFail: isNear,
    least: '1:32',
    ways: ['puddle'],
  },
  neutraliser: {
    asks: 'paint',
    aims: ['neutral'],
    strengths: [0.2, 0.3, 0.45],
    start: ({ chroma }) => chroma >= 25,
    allows: (pigment) => !holdsBlack(pigment),
    serves: ({ place }) => place !== 'white' && place !== 'own',
    worth: ({ colour }) => colour.step < DEEP_STEP,
    mustFail: () => false,
    tempts: ({ place }) => place === 'between' || place === 'across' || place === 'around',
    least: '1:32',
    ways: ['puddle'],
  },
  'grey-lean': {
    asks: 'amount',
    aims: ['lean'],
    strengths: [0.15, 0.2, 0.3, 0.45],
    start: ({ chroma }) => chroma >= 25,
    serves: ({ place }) => place === 'across' || place === 'between',
    mustFail: () => false,
    tempts: ({ place }) => place !== 'own' && place !== 'white',
    least: '1:32',
    ways: ['puddle'],
  },
  'deep-dark': {
    asks: 'paint',
    aims: ['neutral', 'rich'],
    strengths: [0.3, 0.45, 0.65, 0.9],
    start: ({ chroma, step }) => chroma >= 25 && step >= 4,
    allows: (pigment) => !holdsBlack(pigment),
    serves: ({ place }) => place !== 'white' && place !== 'own',
    worth: ({ colour }) => colour.step >= 8,
    goal: (_start, colour, aim) => ({
      value: [Math.min(8, Math.round((colour.step - 0.3) * 10) / 10), 10.5],
      ...(aim === 'neutral' ? { chroma: [0, 2 * HALF_CHROMA] as const } : {}),
    }),
    mustFail: () => false,
    tempts: ({ place }) => place === 'around' || place === 'between' || place === 'white',
    least: '1:32',
    ways: ['puddle', 'glaze'],
  },
  'tinting-strength': {
    asks: 'amount',
    aims: ['rich', 'dull'],
    strengths: [0.15, 0.2, 0.3],
    start: ({ chroma }) => chroma >= 20,
    serves: ({ place, pigment }, _start, first) =>
      place !== 'own' && place !== 'white' && isStrong(pigment, first),
    worth: ({ choice, colour }) => choice.how.amount <= 0.25 && colour.chroma >= 12,
    goal: (_start, colour) => ({
      chroma: chromaAround(colour.chroma, Math.max(HALF_CHROMA, Math.round(0.2 * colour.chroma))),
      hue: { near: Math.round(colour.hue) % 360, within: 15 },
    }),
    tempts: () => true,
    mustFail: () => false,
    least: '1:32',
    ways: ['puddle'],
  },
};
