/** Proves that a drill can be solved, that a tempting mistake costs, and that luck does not beat the best answer. */

import { type Draw, seededDraw } from '../chance/draw.js';
import { BETWEEN_ROOM, GOOD_MARK, MOST_LUCK, POOR_MARK } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import { countAnswers } from './answers.js';
import { type Drill, kindOf, markOf } from './kinds/index.js';
import { answerKey, type DrillLook, lookAt } from './look.js';
import { randomAnswer } from './random-answer.js';
import { twinOf } from './twins.js';
import type { Answer, Field, Grade } from './types.js';

/** Random answers tried on each drill. */
const RANDOM_ANSWERS = 500;

/** What the checker found for one drill; no faults means that it may ship. */
export interface DrillCheck {
  readonly id: string;
  readonly family: string;
  readonly level: number;
  readonly kind: Drill['kind'];
  /** What it shows, its best answer and the wrong ones that tempt. */
  readonly look: DrillLook;
  /** Share of random answers with a good mark, 0-1. */
  readonly luck: number;
  readonly faults: readonly string[];
}

/** Most luck that a drill may leave: with two answers open one in two is unavoidable. */
function mostLuck(fields: readonly Field[]): number {
  return countAnswers(fields) <= 2 ? MOST_LUCK.two : MOST_LUCK.many;
}

/** What is asked has to be reached: a best answer that only counts for being too close to call lies outside its own band. */
function reachFaults({ value, chroma }: Grade): string[] {
  const said = { value, chroma };
  return (['value', 'chroma'] as const).flatMap((part) => {
    const result = said[part];
    if (result === undefined || !result.tooCloseToCall) return [];
    const [low, high] = result.asked.map((bound) => bound.toFixed(1));
    return [`the ${part} of the best answer, ${result.after.toFixed(1)}, lies outside ${low} to ${high}`];
  });
}

/** Checks one drill. @param seed of the random answers */
export function checkDrill(studio: Studio, drill: Drill, seed = 1): DrillCheck {
  const kind = kindOf(studio, drill);
  const fields = kind.fields(drill);
  const look = lookAt(studio, drill);
  const bestMark = look.best.grade.mark;
  const trapMark = look.worst.grade.mark;
  const draw: Draw = seededDraw(seed);
  // Small drills draw the same answer many times over.
  const marks = new Map<string, number>();
  const markedOnce = (answer: Answer): number => {
    const key = answerKey(fields, answer);
    let mark = marks.get(key);
    if (mark === undefined) {
      mark = markOf(studio, drill, answer);
      marks.set(key, mark);
    }
    return mark;
  };
  let luckiest = 0;
  let good = 0;
  for (let count = 0; count < RANDOM_ANSWERS; count++) {
    const mark = markedOnce(randomAnswer(fields, draw));
    luckiest = Math.max(luckiest, mark);
    if (mark >= GOOD_MARK) good++;
  }
  const luck = good / RANDOM_ANSWERS;
  const beaten = kind.challenge?.(drill, draw, RANDOM_ANSWERS) ?? 0;
  const faults = [
    ...(kind.faults?.(drill) ?? []),
    ...reachFaults(look.best.grade),
    bestMark < 100
      ? `the best answer marks ${bestMark}, not 100: the goal cannot be reached with this tray`
      : '',
    trapMark >= POOR_MARK
      ? `every answer one choice away from the best marks ${trapMark} or more: nothing tempts`
      : '',
    luckiest > bestMark ? `a random answer marks ${luckiest}, above the best` : '',
    beaten > BETWEEN_ROOM ? `an amount between the touches beats the best by ${beaten.toFixed(2)}` : '',
    luck > mostLuck(fields) ? `${Math.round(luck * 100)} % of random answers mark well: too easy` : '',
  ].filter((fault) => fault !== '');
  return {
    id: drill.id,
    family: drill.family,
    level: drill.level,
    kind: drill.kind,
    look,
    luck,
    faults,
  };
}

/** Checks drills that are shipped together: each by itself, and none may be the decision of another. */
export function checkDrills(studio: Studio, drills: readonly Drill[]): DrillCheck[] {
  return drills.map((drill) => {
    const check = checkDrill(studio, drill);
    const twin = twinOf(studio, drill, drills);
    return twin === undefined
      ? check
      : { ...check, faults: [...check.faults, `the same decision as ${twin}`] };
  });
}
