/** Drills as practice wants them: within a box, and by what can be guessed. */
import { countAnswers } from '../drills/answers.js';
import { type Drill, kindOf } from '../drills/kinds/index.js';
import { paintsIn } from '../drills/paint-names.js';
import type { Studio } from '../paints/index.js';
import type { DrillRef } from '../practice/index.js';

/** Drills that can be done with the paints of a palette, and the worked cases, in which somebody else has mixed. */
export function drillsWithin(drills: readonly Drill[], palette: readonly string[]): Drill[] {
  const box = new Set(palette);
  return drills.filter((drill) => drill.kind === 'worked' || paintsIn(drill).every((id) => box.has(id)));
}

/** Chance, 0-1, that a blind choice is good, where the answers are few enough to know it at a glance. */
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
      ...(drill.kind === 'worked' ? { isWorked: true as const } : {}),
    };
  });
}
