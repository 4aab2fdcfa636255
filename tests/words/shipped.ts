/** Grades of the shipped drills for tests of what is said: every answer where they are few, else seeded ones. */
import { seededDraw } from '../../src/chance/draw.js';
import type { Drill } from '../../src/drills/kinds/index.js';
import { randomAnswer } from '../../src/drills/random-answer.js';
import type { Answer, Grade } from '../../src/drills/types.js';
import type { Finding } from '../../src/words/tell.js';
import type { Voice } from '../../src/words/voice.js';
import { casesOf } from '../cases.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf } from '../studio.js';

export const BLACK_FIRST: Voice = { scale: 'black-first', spoken: false };
export const HEARD: Voice = { scale: 'paper-first', spoken: true };
export const HEARD_BLACK_FIRST: Voice = { scale: 'black-first', spoken: true };

/** Most answers that are tried of one drill. */
const MOST = casesOf(200, 40);

function answersOf(drill: Drill): readonly Answer[] {
  const fields = kindOf(drill).fields(drill);
  const count = fields.reduce((product, { options }) => product * options.length, 1);
  if (count > MOST) {
    const draw = seededDraw(11);
    return [kindOf(drill).best(drill), ...Array.from({ length: MOST }, () => randomAnswer(fields, draw))];
  }
  return fields.reduce<Answer[]>(
    (answers, { id, options }) =>
      answers.flatMap((answer) => options.map((option) => ({ ...answer, [id]: option.id }))),
    [{}],
  );
}

export interface Graded {
  readonly drill: Drill;
  readonly answer: Answer;
  readonly where: string;
  readonly grade: Grade;
}

/** @param kinds the kinds of drill; all where none is named */
export function shippedGrades(...kinds: readonly Drill['kind'][]): Graded[] {
  return SHIPPED_DRILLS.filter(({ kind }) => kinds.length === 0 || kinds.includes(kind)).flatMap((drill) =>
    answersOf(drill).map((answer) => ({
      drill,
      answer,
      where: `${drill.id} ${Object.values(answer).join(' ')}`,
      grade: kindOf(drill).grade(drill, answer),
    })),
  );
}

/** The findings of one id with where they stand. */
export function found<Id extends Finding['id']>(
  graded: readonly Graded[],
  id: Id,
): (Graded & { readonly finding: Finding & { id: Id } })[] {
  return graded.flatMap((one) =>
    one.grade.told
      .filter((finding): finding is Finding & { id: Id } => finding.id === id)
      .map((finding) => ({ ...one, finding })),
  );
}

/** Where a claim does not hold. */
export const broken = <T extends { readonly where: string }>(
  list: readonly T[],
  holds: (one: T) => boolean,
): string[] => list.filter((one) => !holds(one)).map(({ where }) => where);
