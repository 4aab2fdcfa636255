/** The shipped drills of a kind and the answers that what is said is held to. */
import { seededDraw } from '../../src/chance/draw.js';
import type { Drill } from '../../src/drills/kinds/index.js';
import { randomAnswer } from '../../src/drills/random-answer.js';
import type { Answer, Grade } from '../../src/drills/types.js';
import { sayFinding } from '../../src/words/tell.js';
import type { Voice } from '../../src/words/voice.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf } from '../studio.js';

export const SHIPPED = SHIPPED_DRILLS;

/** Every way a learner is spoken to. */
export const VOICES: readonly Voice[] = [
  { scale: 'paper-first', spoken: false },
  { scale: 'black-first', spoken: false },
  { scale: 'paper-first', spoken: true },
  { scale: 'black-first', spoken: true },
];

const MOST = 200;

/** All answers of a drill where there are fewer than 200, else 200 drawn from a seed, and the best. */
export function answersOf(drill: Drill): Answer[] {
  const kind = kindOf(drill);
  const fields = kind.fields(drill);
  const count = fields.reduce((product, { options }) => product * options.length, 1);
  if (count >= MOST) {
    const draw = seededDraw(7);
    return [kind.best(drill), ...Array.from({ length: MOST }, () => randomAnswer(fields, draw))];
  }
  return fields.reduce<Answer[]>(
    (answers, { id, options }) =>
      answers.flatMap((answer) => options.map((option) => ({ ...answer, [id]: option.id }))),
    [{}],
  );
}

export type OfKind<K extends Drill['kind']> = Extract<Drill, { kind: K }>;

export const drillsOf = <K extends Drill['kind']>(kind: K): OfKind<K>[] =>
  SHIPPED.filter((drill): drill is OfKind<K> => drill.kind === kind);

interface Case<K extends Drill['kind']> {
  readonly drill: OfKind<K>;
  readonly answer: Answer;
  readonly grade: Grade;
}

/** What is wrong over all shipped drills of a kind and the answers tried, each with where it is. */
export function faultsIn<K extends Drill['kind']>(
  kind: K,
  faultsOf: (one: Case<K>) => readonly string[],
): string[] {
  return drillsOf(kind).flatMap((drill) =>
    answersOf(drill).flatMap((answer) =>
      faultsOf({ drill, answer, grade: kindOf(drill).grade(drill, answer) }).map(
        (fault) => `${drill.id} ${Object.values(answer).join(' ')}: ${fault}`,
      ),
    ),
  );
}

type Figures = Readonly<Record<string, unknown>>;

/** The figures of the findings of that id, and their sentence in painter's steps. */
export function foundIn<F = Figures>(
  { told }: Pick<Grade, 'told'>,
  id: string,
): { readonly figures: F; readonly text: string; readonly onBlackFirst: string }[] {
  return told
    .filter((finding) => finding.id === id)
    .map((finding) => ({
      figures: finding.figures as F,
      text: sayFinding(finding, { scale: 'paper-first', spoken: false }),
      onBlackFirst: sayFinding(finding, { scale: 'black-first', spoken: false }),
    }));
}
