/** A picture with what a drill lays in it: the start where the scene says it lies, the passage open or with an answer in it. */
import { type Drill, kindOf } from '../drills/kinds/index.js';
import { choiceOf, laidBy } from '../drills/kinds/mix/choice.js';
import { STARTS } from '../drills/look.js';
import type { Answer } from '../drills/types.js';
import type { Studio } from '../paints/index.js';
import { type Painted, painted } from './covering.js';
import type { Covering, Picture, Reflecting } from './types.js';
import { liesIn } from './where.js';

/** What lies there before anything is chosen; undefined where a drill changes no colour. */
function startOf(studio: Studio, drill: Drill): Covering | undefined {
  if (drill.kind === 'mix') return drill.start;
  return kindOf(studio, drill)
    .given(drill)
    .find(({ label }) => STARTS.includes(label));
}

/** What an answer lays; undefined where it gives no colour. */
function laidByAnswer(studio: Studio, drill: Drill, answer: Answer): Covering | undefined {
  if (drill.kind === 'mix') return laidBy(drill, choiceOf(studio, drill, answer));
  const { swatches } = kindOf(studio, drill).grade(drill, answer);
  return swatches.find(({ label }): boolean => /^yours(,|$)/.test(label)) satisfies Reflecting | undefined;
}

/**
 * The picture of a drill. Where the drill changes no colour it is the picture as it is; else its start lies in one area, and the
 * passage is open until there is an answer.
 * @throws RangeError when the answer does not fit the drill
 */
export function sceneOf(studio: Studio, picture: Picture, drill: Drill, answer?: Answer): Painted {
  const start = startOf(studio, drill);
  if (start === undefined) return painted(studio, picture);
  const lies = liesIn(picture, drill);
  const passage = answer === undefined ? 'open' : (laidByAnswer(studio, drill, answer) ?? 'open');
  return painted(studio, picture, { [lies.start]: start, [lies.passage]: passage });
}
