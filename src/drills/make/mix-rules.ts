/** What each family of mix drills asks of a start, of a mixture and of the tray. */
import type { ColourReading } from '../../colour/reading.js';
import { type Aim, DEEP_STEP, type Goal } from '../../judgement/index.js';
import { type Pigment, paintOf, type Studio } from '../../paints/index.js';
import type { Way } from '../../washes/index.js';
import type { Choice } from '../kinds/mix/choice.js';
import { type Touch, touchRatio } from '../kinds/mix/schema.js';
import type { Place } from '../kinds/mix/seat.js';
import { chromaAround, HALF_CHROMA } from './aims.js';
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
  /** Strengths of the start; none so thick that no glaze goes over it. */
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
  readonly mustFail: (partner: Partner, first: readonly Pigment[]) => boolean;
  readonly least: Touch;
  readonly ways: readonly Way[];
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
    !isLightCover(pigment) &&
    !pigment.ci.some((name) => EARTHS.test(name))
  );
}

/** Light pigments that cover: cadmiums, titanates and whites; no dark is made with them. Common practice, no source. */
const LIGHT_COVER = /^(PR108|PY35|PY37|PO20|PY53|PBr24|PW\d+)$/;

/** True when a paint holds a light pigment that covers. */
const isLightCover = ({ ci }: Pigment): boolean => ci.some((name) => LIGHT_COVER.test(name));

export const isBetween = (hue: number, [from, to]: readonly [number, number]): boolean =>
  (hue - from + 360) % 360 <= to - from;
/** Hues, CIELAB degrees; common practice, no source. */
const BLUES = [225, 310] as const;
const CRIMSONS = [310, 390] as const;

/**
 * A wash and a partner that are a violet to every painter, and no lesson in greying. By hue, so that it is wider than the pairs of
 * pigments that `isVioletPair` knows.
 */
const makesViolet = ({ alone }: Partner, { hue }: ColourReading): boolean =>
  (isBetween(hue, BLUES) && isBetween(alone.hue, CRIMSONS)) ||
  (isBetween(hue, CRIMSONS) && isBetween(alone.hue, BLUES));

const CRIMSON_CI = /^(PR83|PR122|PR176|PR177|PR264|PV19)$/;
const BLUE_CI = /^PB\d/;
/**
 * A crimson and a blue by their pigments: a violet to every painter. Predicted they come out bluer, so that no drill names
 * their mixture by its hue. A paint without an index name is not known by it. Common practice, no source.
 */
export function isVioletPair(studio: Studio, one: string, other: string): boolean {
  const holds = (id: string, names: RegExp): boolean =>
    paintOf(studio, id).ci.some((name) => names.test(name));
  return (
    (holds(one, CRIMSON_CI) && holds(other, BLUE_CI)) || (holds(other, CRIMSON_CI) && holds(one, BLUE_CI))
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
    serves: (partner, start) =>
      (partner.place === 'across' || partner.place === 'between') && !makesViolet(partner, start),
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
    strengths: [0.65, 0.8],
    start: ({ chroma, step }) => chroma >= 25 && step >= 4,
    allows: (pigment) => !holdsBlack(pigment) && !isLightCover(pigment),
    serves: ({ place, pigment }) => place !== 'white' && place !== 'own' && !isLightCover(pigment),
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
    serves: (partner, start, first) =>
      partner.place !== 'own' &&
      partner.place !== 'white' &&
      !makesViolet(partner, start) &&
      isStrong(partner.pigment, first),
    // Not the least amount of all: one that is too small has to be there to fail.
    worth: ({ choice, colour }) =>
      choice.how.amount <= 0.25 && choice.how.amount > touchRatio('1:32') && colour.chroma >= 12,
    goal: (_start, colour) => ({
      chroma: chromaAround(colour.chroma, Math.max(HALF_CHROMA, Math.round(0.2 * colour.chroma))),
    }),
    tempts: () => true,
    // Else a weaker paint could be the best answer to a question about the strong one.
    mustFail: ({ pigment }, first) => !isStrong(pigment, first),
    least: '1:32',
    ways: ['puddle'],
  },
};
