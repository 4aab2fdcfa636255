/** What an aim asks of a recipe: the goal, and how good a colour is by it. */

import { shadingLine } from '../colour/chroma.js';
import { deltaE00 } from '../colour/difference.js';
import { hueDifference } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import { InputError } from '../errors.js';
import {
  CHROMATIC_START,
  type Goal,
  hueAsked,
  type Judged,
  KEPT_LINE,
  LEAST_MOVE,
  NO_HUE_CHROMA,
  outside,
  RECIPE,
  scoreColour,
} from '../judgement/index.js';
import { type Evidence, evidenceOf, paintOf, type Studio } from '../paints/index.js';
import { type FirstWash, type Line, type Merit, seeLaid, type Way } from '../washes/index.js';
import type { Edge, RecipeAim } from './types.js';

/** Steps darker where none are asked. */
export const USUAL_DARKER: Readonly<Record<RecipeAim, number>> = { shade: 1, rich: 1, dull: 0, distance: -1 };

/** The painter's scale: paper and the darkest, steps. */
const SCALE = { paper: 1, darkest: 10 } as const;

/** Whether a step lies on the painter's scale. */
export const isOnScale = (step: number): boolean => step >= SCALE.paper && step <= SCALE.darkest;

/** One line that says how far a wash can be asked darker or lighter. */
function beyondScale({ step }: ColourReading, darker: number): string {
  const [most, word] = darker > 0 ? [SCALE.darkest - step, 'darker'] : [step - SCALE.paper, 'lighter'];
  const can = Math.max(0, Math.floor(10 * most) / 10).toFixed(1);
  return `that is beyond the scale of values: this wash can be asked at most ${can} steps ${word}`;
}

/**
 * The goal of an aim for a wash.
 * @param darker painter's steps, negative for lighter
 * @throws InputError where the aim contradicts the steps, the steps leave the scale, or the wash has no colour to dull
 */
export function goalFor(aim: RecipeAim, darker: number, start: ColourReading): Goal {
  if (aim === 'shade' && darker < LEAST_MOVE.shade)
    throw new InputError(`a shade is darker than its start: ask for ${LEAST_MOVE.shade} steps or more`);
  if (aim === 'distance' && darker > -LEAST_MOVE.distance)
    throw new InputError(
      `a distance is lighter than its start: ask for ${LEAST_MOVE.distance} steps or more`,
    );
  const step = start.step + darker;
  if (!isOnScale(step)) throw new InputError(beyondScale(start, darker));
  const value = [step - RECIPE.value, step + RECIPE.value] as const;
  if (aim === 'shade' || aim === 'rich') return { aim, value };
  if (start.chroma < CHROMATIC_START)
    throw new InputError(
      `the wash is nearly grey already (chroma ${start.chroma.toFixed(0)}): there is no colour to dull`,
    );
  const [low, high] = RECIPE.dulled;
  return { aim, value, chroma: [low * start.chroma, high * start.chroma] };
}

/** Degrees that a hue lies outside what is asked; 0 where none is. @param room degrees that it is to lie inside */
function hueOutside(judged: Pick<Judged, 'goal' | 'start'>, { hue }: ColourReading, room = 0): number {
  const asked = hueAsked(judged);
  return asked === undefined
    ? 0
    : Math.max(0, Math.abs(hueDifference(asked.near, hue)) + room - asked.within);
}

/** Marks that each further paint has to be worth. */
const PAINT_COST = 0.08;
/** Marks for a doubling of the water: of two equal puddles the one that wastes less. */
const WATER_COST = 0.01;
/** Marks, or CIEDE2000, that a way has to be worth: of equal ones the plainer. */
export const WAY_COST: Readonly<Record<Way, number>> = { puddle: 0, glaze: 0.02, strokes: 0.04 };
/**
 * Where the more chroma the better: marks for a unit of C*, and for lying at the edge of the value asked. So little that a paint more has
 * to bring 16 C*: beyond what counts as rich, a wash that is painted over with the brightest is another colour, not a better answer.
 */
const BRIGHT = { chroma: 0.005, offValue: 0.1 } as const;

/** Of what tells equal marks apart in judging, so much counts; and marks for a hue at the edge of what is asked, where it is to hold. */
const FINE = { share: 0.5, hue: 0.1 } as const;

/**
 * Marks for each step, for each C* and for each of the first five degrees of hue, outside the band that is told or below what counts as rich, beside what the mark takes: a recipe lies in it where any can,
 * and where none can the nearest value goes before chroma. `room`: so far inside, as amounts are rounded.
 */
const OUTSIDE = { step: 600, chroma: 2, hueDeg: 1, room: { step: 0.01, chroma: 0.2, hueDeg: 0.2 } } as const;
/** Marks for what is not seen to change the wash, at no change at all. */
const UNSEEN = 100;

/** C* below which a rich colour has less than a mere shade keeps. */
const leastRich = (start: ColourReading, { lab }: ColourReading): number =>
  KEPT_LINE * shadingLine(start.chroma, start.lab.l, lab.l);

/** Marks for what lies outside the band of a goal. */
function outsideCost(judged: Judged, colour: ColourReading): number {
  const { goal, start } = judged;
  const { aim, value, chroma } = goal;
  const inner = ([low, high]: readonly [number, number], room: number) => [low + room, high - room] as const;
  const short = aim === 'rich' ? Math.max(0, leastRich(start, colour) - colour.chroma) : 0;
  const off = chroma === undefined ? short : outside(colour.chroma, inner(chroma, OUTSIDE.room.chroma));
  const turned = colour.chroma < NO_HUE_CHROMA ? 0 : hueOutside(judged, colour, OUTSIDE.room.hueDeg);
  return (
    OUTSIDE.step * outside(colour.step, inner(value, OUTSIDE.room.step)) +
    OUTSIDE.chroma * off +
    OUTSIDE.hueDeg * Math.min(5, turned)
  );
}

/** True within the bands that are told. */
const isWithin = ({ value, chroma }: Goal, colour: ColourReading): boolean =>
  outside(colour.step, value) === 0 && (chroma === undefined || outside(colour.chroma, chroma) === 0);

/** True where anyone sees that a wash was changed. */
export const isChange = (start: ColourReading, colour: ColourReading): boolean =>
  deltaE00(start.lab, colour.lab) > RECIPE.reached;

/** Marks for leaving the wash as it is. */
function unseenCost(start: ColourReading, colour: ColourReading): number {
  if (Math.abs(start.step - colour.step) > RECIPE.value) return 0;
  return UNSEEN * Math.max(0, 1 - deltaE00(start.lab, colour.lab) / (2 * RECIPE.reached));
}

/** Cost of what a mixture takes, in marks. */
export function costOf({ ids, last, way }: Line, amounts: readonly number[]): number {
  const water = last === 'water' ? Math.log2(amounts[ids.length] ?? 1) : 0;
  return PAINT_COST * ids.length + WATER_COST * water + WAY_COST[way];
}

/** Brightest first within value and hue: what a rich colour is measured by. */
export const brightness =
  (judged: Pick<Judged, 'goal' | 'start'>): Merit =>
  (colour) =>
    colour.chroma - 100 * outside(colour.step, judged.goal.value) - 5 * hueOutside(judged, colour);

/**
 * Strokes mix in the eye where they are near in value; a light and a dark far apart stay spots, and no painter turns a form with them.
 * Beyond so many steps between the lightest and the darkest, marks for each. Common practice, no source.
 */
const STROKES_APART = { steps: 3, perStep: 6 } as const;

/** Marks for strokes that lie too far apart in value. */
function apartCost(studio: Studio, first: FirstWash, { ids, strength }: Line): number {
  const washes = [first, ...ids.map((id) => ({ paints: { [id]: 1 }, strength }))];
  const steps = washes.map((wash) => seeLaid(studio, { ...wash }).colour.step);
  const apart = Math.max(...steps) - Math.min(...steps);
  return STROKES_APART.perStep * Math.max(0, apart - STROKES_APART.steps);
}

/** The mark before rounding, and what tells equal marks apart. */
export function goalMerit(studio: Studio, first: FirstWash, judged: Judged): Merit {
  const grades = new Map<Line, { readonly evidence: Evidence; readonly apart: number }>();
  const own = Object.keys(first.paints).map((id) => paintOf(studio, id));
  const graded = (line: Line) => {
    let grade = grades.get(line);
    if (grade === undefined) {
      const evidence = evidenceOf([...own, ...line.ids.map((id) => paintOf(studio, id))]);
      grade = { evidence, apart: line.way === 'strokes' ? apartCost(studio, first, line) : 0 };
      grades.set(line, grade);
    }
    return grade;
  };
  const [light, dark] = judged.goal.value;
  const brightened = ({ chroma, step }: ColourReading): number =>
    BRIGHT.chroma * chroma -
    BRIGHT.offValue * Math.min(1, Math.abs(2 * step - light - dark) / (dark - light));
  const hue = hueAsked(judged);
  const turned = (colour: ColourReading): number =>
    hue === undefined
      ? 0
      : FINE.hue * Math.min(1, Math.abs(hueDifference(hue.near, colour.hue)) / hue.within);
  return (colour, line) => {
    const { evidence, apart } = graded(line);
    const { exact, mark, merit } = scoreColour(judged, colour, { evidence, isNew: false });
    const fine = FINE.share * (merit - mark);
    const off = outsideCost(judged, colour) + unseenCost(judged.start, colour) + apart;
    return (
      exact -
      off +
      (judged.goal.aim === 'rich' ? brightened(colour) + Math.min(0, fine) : fine - turned(colour))
    );
  };
}

/** What the best recipe still misses; undefined where it misses nothing. @param asked C* that was asked at its value */
export function goalEdge(
  judged: Judged,
  best: ColourReading,
  asked: readonly [number, number],
  isGood: boolean,
): Edge | undefined {
  const { goal, start, reach } = judged;
  const { step, chroma } = best;
  const shade = shadingLine(start.chroma, start.lab.l, best.lab.l);
  const isShort = goal.aim === 'rich' && chroma < leastRich(start, best);
  if (isGood && !isShort && isWithin(goal, best)) return undefined;
  const beyond = (x: number, [low, high]: readonly [number, number]): number =>
    x < low ? x - low : x > high ? x - high : 0;
  return {
    kind: 'goal',
    steps: beyond(step, goal.value),
    chroma: beyond(chroma, asked),
    // A grey is off in no hue.
    hueDeg: chroma < NO_HUE_CHROMA ? 0 : hueOutside(judged, best),
    ...(isShort ? { short: { brightest: Math.max(chroma, reach.best), shade } } : {}),
  };
}
