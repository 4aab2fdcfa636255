import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../../../src/chance/draw.js';
import { checkDrill } from '../../../../src/drills/check.js';
import { mixKind as mixKindIn } from '../../../../src/drills/kinds/mix/index.js';
import type { MixDrill } from '../../../../src/drills/kinds/mix/schema.js';
import { challenge, solve, solved } from '../../../../src/drills/kinds/mix/solve.js';
import { neighbours } from '../../../../src/drills/look.js';
import type { Answer, Field } from '../../../../src/drills/types.js';
import { STUDIO } from '../../../studio.js';
import { roof, wide } from '../../sample.js';

const mixKind = mixKindIn(STUDIO);

function allAnswers(fields: readonly Field[]): Answer[] {
  return fields.reduce<Answer[]>(
    (answers, { id, options }) =>
      answers.flatMap((answer) => options.map((option) => ({ ...answer, [id]: option.id }))),
    [{}],
  );
}

const GOALS: readonly MixDrill['goal'][] = [
  { value: [5, 6], aim: 'rich' },
  { value: [7, 8], aim: 'rich' },
  { value: [4.5, 5.5], aim: 'dull', chroma: [20, 32] },
  { value: [6, 7], aim: 'neutral', chroma: [0, 8] },
  { value: [4.5, 5.5], aim: 'rich', hue: { near: 'start', within: 20 } },
];

describe('the best answer', () => {
  test.each(GOALS)('marks as high as any of all answers: %j', (goal) => {
    const drill = wide({ goal });
    const best = mixKind.grade(drill, mixKind.best(drill)).mark;
    const draw = seededDraw(3);
    const answers = allAnswers(mixKind.fields(drill));
    for (let count = 0; count < 150; count++) {
      const answer = answers[draw(answers.length - 1)] as Answer;
      expect(mixKind.grade(drill, answer).mark).toBeLessThanOrEqual(best);
    }
  });

  test.each(GOALS)('is not beaten by amounts between the touches: %j', (goal) => {
    expect(challenge(STUDIO, wide({ goal }), seededDraw(11), 3000)).toBeLessThan(0.05);
  });

  test('is the same each time', () => {
    const one = solve(STUDIO, wide());
    const two = solve(STUDIO, wide());
    expect(two.best.choice).toEqual(one.best.choice);
    expect(two.reach).toEqual(one.reach);
  });

  test('the brightest and the dullest of the tray hold every mixture in the value band', () => {
    const { reach } = solved(STUDIO, wide());
    expect(reach.best).toBeGreaterThan(reach.dullest);
    expect(reach.dullest).toBeGreaterThanOrEqual(0);
  });

  test('a value that no mixture has leaves the start’s own chroma as the measure, without a fault', () => {
    const drill = roof({ goal: { value: [9.5, 10.5], aim: 'rich' } });
    const { start, reach } = solved(STUDIO, drill);
    expect(reach).toEqual({ best: start.chroma, dullest: 0 });
    expect(checkDrill(STUDIO, drill).faults.join()).toContain('cannot be reached');
  });
});

describe('one choice away', () => {
  test('neighbours differ from the answer in one field', () => {
    const fields = mixKind.fields(roof());
    const best = mixKind.best(roof());
    const near = neighbours(fields, best);
    expect(near).toHaveLength(3 + 7);
    for (const answer of near) {
      expect(Object.keys(best).filter((key) => answer[key] !== best[key])).toHaveLength(1);
    }
  });
});
