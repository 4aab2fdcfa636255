/** What an aim asks of a recipe: the goal, and how good a colour is by it. */

import { shadingLine } from '../colour/chroma.js';
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
  outside,
  RECIPE,
  scoreColour,
} from '../judgement/index.js';
import { type Evidence, evidenceOf, paintOf, type Studio } from '../paints/index.js';
import type { FirstWash, Line, Merit, Way } from '../washes/index.js';
import type { Edge, RecipeAim } from './types.js';

/** Steps darker where none are asked. */
export const USUAL_DARKER: Readonly<Record<RecipeAim, number>> = { shade: 1, rich: 1, dull: 0, distance: -1 };

/**
 * The goal of an aim for a wash.
 * @param darker painter's steps, negative for lighter
 * @throws InputError where the aim contradicts the steps, or the wash has no colour to dull
 */
export function goalFor(aim: RecipeAim, darker: number, start: ColourReading): Goal {
  if (aim === 'shade' && darker < LEAST_MOVE.shade)
    throw new InputError(`a shade is darker than its start: ask for ${LEAST_MOVE.shade} steps or more`);
  if (aim === 'distance' && darker > -LEAST_MOVE.distance)
    throw new InputError(
      `a distance is lighter than its start: ask for ${LEAST_MOVE.distance} steps or more`,
    );
  const step = start.step + darker;
  const value = [step - RECIPE.value, step + RECIPE.value] as const;
  if (aim === 'shade' || aim === 'rich') return { aim, value };
  if (start.chroma < CHROMATIC_START)
    throw new InputError(
      `the wash is nearly grey already (C* ${start.chroma.toFixed(0)}): there is no colour to dull`,
    );
  const [low, high] = RECIPE.dulled;
  return { aim, value, chroma: [low * start.chroma, high * start.chroma] };
}

/** Degrees that a hue lies outside what is asked; 0 where none is. */
function hueOutside(judged: Pick<Judged, 'goal' | 'start'>, { hue }: ColourReading): number {
  const asked = hueAsked(judged);
  return asked === undefined ? 0 : Math.max(0, Math.abs(hueDifference(asked.near, hue)) - asked.within);
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

/** The mark before rounding, and what tells equal marks apart. */
export function goalMerit(studio: Studio, first: FirstWash, judged: Judged): Merit {
  const grades = new Map<Line, Evidence>();
  const own = Object.keys(first.paints).map((id) => paintOf(studio, id));
  const evidence = (line: Line): Evidence => {
    let grade = grades.get(line);
    if (grade === undefined) {
      grade = evidenceOf([...own, ...line.ids.map((id) => paintOf(studio, id))]);
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
    const { exact, mark, merit } = scoreColour(judged, colour, { evidence: evidence(line), isNew: false });
    const fine = FINE.share * (merit - mark);
    return (
      exact + (judged.goal.aim === 'rich' ? brightened(colour) + Math.min(0, fine) : fine - turned(colour))
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
  const { goal, start } = judged;
  const { step, chroma } = best;
  const shade = shadingLine(start.chroma, start.lab.l, best.lab.l);
  const isShort = goal.aim === 'rich' && chroma < KEPT_LINE * shade;
  if (isGood && !isShort) return undefined;
  const beyond = (x: number, [low, high]: readonly [number, number]): number =>
    x < low ? x - low : x > high ? x - high : 0;
  return {
    kind: 'goal',
    steps: beyond(step, goal.value),
    chroma: beyond(chroma, asked),
    hueDeg: hueOutside(judged, best),
    ...(isShort ? { shadeChroma: shade } : {}),
  };
}
