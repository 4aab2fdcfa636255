/** How likely blind choices are to answer a drill well: what the record needs to tell knowledge from luck. */
import { seededDraw } from '../chance/draw.js';
import { GOOD_MARK } from '../judgement/index.js';
import { once, type Studio } from '../paints/index.js';
import { countAnswers, everyAnswer } from './answers.js';
import { type Drill, kindOf, markOf } from './kinds/index.js';
import { randomAnswer } from './random-answer.js';

/** Random answers that a drill's chance is counted on when it allows too many to try them all. */
const SAMPLE = 200;

/** Chance, 0-1, that blind choices answer a drill well: good answers over all of them, or over a fixed sample. Counted once a drill. */
export const chanceByGuessing: (studio: Studio, drill: Drill) => number = once(countChance);

function countChance(studio: Studio, drill: Drill): number {
  const fields = kindOf(studio, drill).fields(drill);
  const draw = seededDraw(1);
  const answers =
    countAnswers(fields) <= SAMPLE
      ? [...everyAnswer(fields)]
      : Array.from({ length: SAMPLE }, () => randomAnswer(fields, draw));
  return answers.filter((answer) => markOf(studio, drill, answer) >= GOOD_MARK).length / answers.length;
}
