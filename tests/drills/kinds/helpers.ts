import { parseDrillFile } from '../../../src/drills/format.js';
import type { Drill } from '../../../src/drills/kinds/index.js';
import { neighbours } from '../../../src/drills/look.js';
import type { Answer, Grade } from '../../../src/drills/types.js';
import { kindOf, STUDIO } from '../../studio.js';

/** One drill from the YAML of its own lines; id, level, title and scene are filled in. */
export function drillOf(kind: string, lines: string, family = 'around-across'): Drill {
  const body = lines
    .trim()
    .split('\n')
    .map((line) => `    ${line}`)
    .join('\n');
  const text = `format: 1\nfamily: ${family}\ndrills:\n  - id: sample\n    level: 3\n    kind: ${kind}\n    title: Sample\n    scene: A sample.\n${body}\n`;
  return parseDrillFile(STUDIO, text, 'sample.yaml')[0] as Drill;
}

/** Grades an answer; what is not said is taken from the best one. */
export function gradeOf(drill: Drill, answer: Answer = {}): Grade {
  const kind = kindOf(drill);
  return kind.grade(drill, { ...kind.best(drill), ...answer });
}

/** Every answer one choice away from the best, with its grade. */
export function nearMisses(drill: Drill): { readonly answer: Answer; readonly grade: Grade }[] {
  const kind = kindOf(drill);
  return neighbours(kind.fields(drill), kind.best(drill)).map((answer) => ({
    answer,
    grade: kind.grade(drill, answer),
  }));
}
