/** Practice plans made from what was marked, and files that are none. */
import { describe, expect, it } from 'vitest';
import { markClass } from '../../src/quiz/class.js';
import { parsePlan, planText } from '../../src/quiz/plan.js';
import { planFor } from '../../src/quiz/plan-from-results.js';
import { ACROSS, bestAnswers, sittingOf, someHandout, submit } from './fixture.js';

const handout = someHandout(4);
const best = bestAnswers(handout);

describe('practice plans', () => {
  it('name the weak families, weakest first, and read back as written', () => {
    const { students } = markClass(handout, [
      submit(sittingOf(handout, 'Ann', [best[0], ACROSS, best[2], ACROSS])),
      submit(sittingOf(handout, 'Ben', best)),
      submit(sittingOf(handout, 'Cai', [])),
    ]);
    const [ann, ben, cai] = students.map((student) => planFor(handout, student));
    const dull = ((students[0]?.marks[1]?.mark ?? 0) + (students[0]?.marks[3]?.mark ?? 0)) / 2;
    expect(dull).toBeLessThan(85);
    expect(ann?.families.map(({ family }) => family)).toEqual(['dull-on-purpose']);
    expect(ben?.families).toHaveLength(1);
    expect(ben?.families[0]?.drills).toBe(2);
    expect(cai?.families.map(({ drills }) => drills)).toEqual([8, 8]);
    expect(cai?.families[0]?.why).toBe('0 of 100 over 2 questions, 2 left open.');
    for (const plan of [ann, ben, cai]) expect(parsePlan(planText(plan as never), 'p.yaml')).toEqual(plan);
  });

  it('refuse what is not a plan', () => {
    const text = planText({
      name: 'Ann',
      quiz: 'Week 3',
      families: [{ family: 'darken-bright', drills: 3, why: 'x' }],
    });
    expect(() => parsePlan(text.replace('darken-bright', 'darken-brigth'), 'p.yaml')).toThrow(
      /^p\.yaml:\d+: families\.0\.family: no family is called "darken-brigth"\. Did you mean darken-bright\?/,
    );
    expect(() => parsePlan(text.replace('drills: 3', 'drills: 300'), 'p.yaml')).toThrow(/drills is 1 to 60/);
    expect(() => parsePlan(text.replace('why: x', 'why: x\n    __proto__: 1'), 'p.yaml')).toThrow(
      /not a known key/,
    );
  });
});
