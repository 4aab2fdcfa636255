/** What the learner's commands share: families and drills as practice wants them, and the flags of the profile. */
import { seededDraw } from '../chance/draw.js';
import { countAnswers } from '../drills/answers.js';
import { type Drill, kindOf, markOf } from '../drills/kinds/index.js';
import { paintsIn } from '../drills/paint-names.js';
import { randomAnswer } from '../drills/random-answer.js';
import type { Answer, Field } from '../drills/types.js';
import { UsageError } from '../errors.js';
import { GOOD_MARK } from '../judgement/index.js';
import { findPalette, once, type Studio } from '../paints/index.js';
import type { DrillRef } from '../practice/index.js';
import { didYouMean } from '../text/nearest.js';

/** Drills that can be done with the paints of a palette. */
export function drillsWithin(drills: readonly Drill[], palette: readonly string[]): Drill[] {
  const box = new Set(palette);
  return drills.filter((drill) => paintsIn(drill).every((id) => box.has(id)));
}

/** Paints of a palette by id. @throws UsageError with the nearest ids */
export function palettePaints(studio: Studio, id: string): readonly string[] {
  const palette = findPalette(studio, id);
  if (palette !== undefined) return palette.pigments;
  const ids = studio.palettes.map((known) => known.id);
  throw new UsageError(
    `no palette is called "${id.slice(0, 60)}".${didYouMean(id, ids)} There are: ${ids.join(', ')}`,
  );
}

/** Random answers that a drill's chance is counted on when it allows too many to try them all. */
const SAMPLE = 200;

function* everyAnswer([field, ...rest]: readonly Field[]): Generator<Answer> {
  if (field === undefined) {
    yield {};
    return;
  }
  for (const answer of everyAnswer(rest))
    for (const { id } of field.options) yield { [field.id]: id, ...answer };
}

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

/** As {@link chanceByGuessing} where the answers are few enough to know it at a glance. */
function guessOf(studio: Studio, drill: Drill): number | undefined {
  const answers = countAnswers(kindOf(studio, drill).fields(drill));
  return answers <= 4 ? 1 / answers : undefined;
}

/** Drills as practice wants them. */
export function drillRefs(studio: Studio, drills: readonly Drill[]): DrillRef[] {
  return drills.map((drill) => {
    const guess = guessOf(studio, drill);
    return {
      id: drill.id,
      family: drill.family,
      level: drill.level,
      ...(guess === undefined ? {} : { guess }),
    };
  });
}
