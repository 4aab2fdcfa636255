/** The shorter ways to the ideas of a drill against grading every one of its answers. */
import { describe, expect, it } from 'vitest';
import { countAnswers, everyAnswer } from '../../src/drills/answers.js';
import { ideasIn } from '../../src/drills/ideas-in.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';

/** Proves it for the shipped drills that have at most so many answers. */
export function proveIdeas(mostAnswers: number): void {
  const drills = SHIPPED_DRILLS.filter(
    (drill) => kindOf(drill).ideas !== undefined && countAnswers(kindOf(drill).fields(drill)) <= mostAnswers,
  );

  describe('the ideas that a drill can show', () => {
    it.each(drills.map((drill) => [drill.id, drill] as const))(
      '%s: as its answers, all graded',
      (_id, drill) => {
        const kind = kindOf(drill);
        const answers = [...everyAnswer(kind.fields(drill))];
        const shown = answers.flatMap((answer) => kind.grade(drill, answer).idea ?? []);
        expect([...ideasIn(STUDIO, drill)].sort()).toEqual([...new Set(shown)].sort());
      },
    );

    it('every kind that has a shorter way is met', () => {
      expect(new Set(drills.map(({ kind }) => kind))).toEqual(
        new Set(['washes', 'sort-values', 'shadow-values']),
      );
    });
  });
}
