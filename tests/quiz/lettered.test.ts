import { chiSquaredDistributionTable } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { countAnswers } from '../../src/drills/answers.js';
import { type Drill, markOf } from '../../src/drills/kinds/index.js';
import { answerKey } from '../../src/drills/look.js';
import { GOOD_MARK } from '../../src/judgement/index.js';
import { inDrawnOrder } from '../../src/quiz/drawn-order.js';
import { letteredAnswers, MOST_LETTERS } from '../../src/quiz/lettered.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';
import { everyKindHandout } from './fixture.js';

const { drills } = everyKindHandout();
const shipped = SHIPPED_DRILLS;

describe('lettered answers', () => {
  it.each(drills.map((drill) => [`${drill.kind} ${drill.id}`, drill] as const))('%s', (_, drill) => {
    const fields = kindOf(drill).fields(drill);
    const lettered = letteredAnswers(STUDIO, drill, 42);
    const all = countAnswers(fields);
    expect(lettered.length).toBeGreaterThanOrEqual(2);
    expect(lettered.length).toBeLessThanOrEqual(MOST_LETTERS);
    if (all <= MOST_LETTERS) expect(lettered).toHaveLength(all);
    expect(lettered.map(({ letter }) => letter).join('')).toBe('ABCDEF'.slice(0, lettered.length));
    expect(new Set(lettered.map(({ answer }) => answerKey(fields, answer))).size).toBe(lettered.length);
    expect(new Set(lettered.map(({ label }) => label)).size).toBe(lettered.length);
    const marks = lettered.map(({ answer }) => markOf(STUDIO, drill, answer));
    expect(Math.max(...marks)).toBe(markOf(STUDIO, drill, kindOf(drill).best(drill)));
    // Of chosen ones a single letter is right, so that a class is not split over two that are.
    if (all > MOST_LETTERS) expect(marks.filter((mark) => mark >= GOOD_MARK)).toHaveLength(1);
  });

  it('are the same for a seed and stand elsewhere for another', () => {
    const order = (drill: Drill, seed: number): string =>
      letteredAnswers(STUDIO, drill, seed)
        .map(({ label }) => label)
        .join('; ');
    const long = drills.filter((drill) => countAnswers(kindOf(drill).fields(drill)) > MOST_LETTERS);
    for (const drill of long) expect(order(drill, 1)).toBe(order(drill, 1));
    expect(long.filter((drill) => order(drill, 1) !== order(drill, 2)).length).toBeGreaterThan(
      long.length / 2,
    );
  });

  // A chi-square test of even places, 5 degrees of freedom: 20.5 is passed once in a thousand (NIST/SEMATECH handbook, table 1.3.6.7.4).
  it('hide the best in every place alike', () => {
    const six = drills.filter(
      (drill) => letteredAnswers(STUDIO, drill, 1).length === MOST_LETTERS && drill.kind !== 'mix',
    );
    const long = six.filter((drill) => countAnswers(kindOf(drill).fields(drill)) > MOST_LETTERS).slice(0, 4);
    const places = long.flatMap((drill) => {
      const fields = kindOf(drill).fields(drill);
      const best = answerKey(fields, kindOf(drill).best(drill));
      return Array.from({ length: 60 }, (_, seed) =>
        letteredAnswers(STUDIO, drill, seed).findIndex(({ answer }) => answerKey(fields, answer) === best),
      );
    });
    expect(places.length).toBe(240);
    const expected = places.length / MOST_LETTERS;
    const square = Array.from({ length: MOST_LETTERS }, (_, place) => {
      const count = places.filter((each) => each === place).length;
      return (count - expected) ** 2 / expected;
    }).reduce((sum, each) => sum + each, 0);
    expect(square).toBeLessThan(20.5);
  });

  // Upper 0.5 % points of chi-square, as simple-statistics 7.12.1 has them in its table.
  it('of a handout as it is written hide the best of every shipped drill in every place alike', () => {
    const upper = new Map(
      Object.entries(chiSquaredDistributionTable).map(([freedom, points]) => [
        Number(freedom),
        points[0.005],
      ]),
    );
    const passed = (seeds: readonly number[], order: (drill: Drill, seed: number) => Drill) => {
      const counts = new Map<number, number[]>();
      for (const written of shipped)
        for (const seed of seeds) {
          const drill = order(written, seed);
          const fields = kindOf(drill).fields(drill);
          const isDrawn =
            fields.some(({ shape }) => shape === 'list') && kindOf(drill).reordered !== undefined;
          if (!isDrawn || countAnswers(fields) > MOST_LETTERS) continue;
          const lettered = letteredAnswers(STUDIO, drill, seed);
          const best = answerKey(fields, kindOf(drill).best(drill));
          const place = lettered.findIndex(({ answer }) => answerKey(fields, answer) === best);
          const places = counts.get(lettered.length) ?? lettered.map(() => 0);
          counts.set(lettered.length, places.with(place, (places[place] ?? 0) + 1));
        }
      const all = [...counts.values()];
      const squares = all.map((places) => {
        const even = places.reduce((sum, each) => sum + each, 0) / places.length;
        return places.reduce((sum, each) => sum + (each - even) ** 2 / even, 0);
      });
      const freedom = all.reduce((sum, places) => sum + places.length - 1, 0);
      const square = squares.reduce((sum, each) => sum + each, 0);
      return { square, bound: upper.get(freedom) ?? 0, all };
    };
    const drawn = passed([1, 2], (drill, seed) => inDrawnOrder(STUDIO, drill, seed));
    expect(drawn.square).toBeLessThan(drawn.bound);
    expect(drawn.all.length).toBeGreaterThanOrEqual(4);
    const asShipped = passed([1], (drill) => drill);
    expect(asShipped.square).toBeGreaterThan(asShipped.bound);
  });

  it('of a handout as it is written keep an order of value, and what each answer marks', () => {
    const moved = shipped.filter((written) => {
      const fields = kindOf(written).fields(written);
      if (countAnswers(fields) > MOST_LETTERS) return false;
      const drill = inDrawnOrder(STUDIO, written, 5);
      const labelled = (one: Drill) =>
        letteredAnswers(STUDIO, one, 5).map(({ label, answer }) => `${label} ${markOf(STUDIO, one, answer)}`);
      const [now, before] = [labelled(drill), labelled(written)];
      expect([...now].sort()).toEqual([...before].sort());
      const isMoved = now.join() !== before.join();
      if (isMoved) expect(fields.some(({ shape }) => shape === 'list')).toBe(true);
      return isMoved;
    });
    expect(moved.length).toBeGreaterThan(40);
  });

  it('do not give the best away by what most of them agree on', () => {
    let tried = 0;
    for (const drill of drills) {
      const fields = kindOf(drill).fields(drill);
      if (fields.length < 2 || countAnswers(fields) <= MOST_LETTERS) continue;
      const lettered = letteredAnswers(STUDIO, drill, 42);
      const best = kindOf(drill).best(drill);
      // Reader without a brush: the option that most answers share; a tie tells nothing.
      const isTold = (id: string): boolean => {
        const count = (option: string | undefined) =>
          lettered.filter(({ answer }) => answer[id] === option).length;
        return lettered.every(({ answer }) => answer[id] === best[id] || count(answer[id]) < count(best[id]));
      };
      const [first] = fields;
      const isMixture = kindOf(drill).tempting !== undefined && first !== undefined;
      // Of a mixture the paint must not be told, of the others not all rows together.
      const told = isMixture ? isTold(first.id) : fields.every(({ id }) => isTold(id));
      expect(told, drill.id).toBe(false);
      tried += 1;
    }
    expect(tried).toBeGreaterThan(15);
  });
});
