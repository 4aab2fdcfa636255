/** Two sittings that are too much alike. */
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/drills/types.js';
import type { Sitting } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { kindOf } from '../studio.js';
import { bestAnswers, sittingOf, someClass, someHandout } from './fixture.js';

const handout = someHandout(12);
const best = bestAnswers(handout);

/** A wrong answer to a question, the n-th of them. */
function wrong(index: number, n: number): Answer {
  const { drill } = handout.questions[index] as (typeof handout.questions)[number];
  const [second, amount] = kindOf(drill).fields(drill);
  const found = (second?.options ?? []).flatMap((paint) =>
    (amount?.options ?? [])
      .map((option) => ({ [second?.id ?? '']: paint.id, [amount?.id ?? '']: option.id }))
      .filter((answer) => kindOf(drill).grade(drill, answer).mark < 85),
  );
  return found[n] as Answer;
}

const doubts = (sittings: readonly Sitting[]): Record<string, readonly string[]> =>
  Object.fromEntries(
    markClass(
      handout,
      sittings.map((sitting) => ({ file: `${sitting.name}.json`, sitting })),
    ).students.map((student) => [student.name, student.doubts]),
  );

/** A class of ten that is right in everything. */
const able = Array.from({ length: 10 }, (_, index) => sittingOf(handout, `Able ${index}`, best));

describe('sittings that are alike', () => {
  it('names equal wrong answers with their chance: (k + 1) / (n + 2) each, k of n others gave it too', () => {
    const shared = best.map((answer, index) => (index < 4 ? wrong(index, 0) : answer));
    const said = doubts([sittingOf(handout, 'Ann', shared), sittingOf(handout, 'Ben', shared), ...able]);
    // Of the ten others nobody gave them: (1/12)^4 = 1/20736, among 12 · 11 / 2 = 66 pairs 1/314; two figures are shown.
    expect(said['Ann']).toEqual([
      'the same answers as Ben, 4 of them not good: by chance 1 in 21,000 for two students, for any of the 66 pairs of this class 1 in 310',
    ]);
    expect(said['Ben']?.[0]).toMatch(/^the same answers as Ann, 4 of them not good/);
    expect(said['Able 0']).toEqual([]);
    // When five of the ten others make one of the mistakes too, that one says little: (1/12)^3 · 6/12.
    const half = able.map((sitting, index) =>
      index < 5
        ? sittingOf(handout, sitting.name, [wrong(0, 0), wrong(1, 1 + index), ...best.slice(2)])
        : sitting,
    );
    const less = doubts([sittingOf(handout, 'Ann', shared), sittingOf(handout, 'Ben', shared), ...half]);
    expect(less['Ann']?.[0]).toContain('by chance 1 in 3,500 for two students');
  });

  it('accuses nobody who is right, nor a pair in a class of two for one mistake', () => {
    expect(Object.values(doubts(able)).flat()).toEqual([]);
    const one = best.map((answer, index) => (index === 0 ? wrong(0, 0) : answer));
    expect(doubts([sittingOf(handout, 'Ann', one), sittingOf(handout, 'Ben', one)])['Ann']).toEqual([]);
  });

  it('calls equal times a copy, whatever was answered', () => {
    const own = sittingOf(handout, 'Ann', best);
    const said = doubts([own, { ...own, name: 'Ben' }, { ...own, name: 'Cai' }, ...able]);
    expect(said['Cai']).toEqual([
      'every time is that of Ann and Ben, to the millisecond: one file is a copy of the other',
    ]);
    expect(said['Able 3']).toEqual([]);
  });

  it('finds nothing in classes that answered on their own', () => {
    for (let seed = 1; seed <= 10; seed++)
      expect(Object.values(doubts(someClass(handout, 30, seed))).flat()).toEqual([]);
  });
});
