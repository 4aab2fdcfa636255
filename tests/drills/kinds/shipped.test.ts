import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../../src/chance/draw.js';
import type { Drill } from '../../../src/drills/kinds/index.js';
import { randomAnswer } from '../../../src/drills/random-answer.js';
import type { Answer, Grade } from '../../../src/drills/types.js';
import { InputError } from '../../../src/errors.js';
import { IDEAS } from '../../../src/words/ideas.js';
import { SHIPPED_DRILLS } from '../../exercises.js';
import { kindOf, said } from '../../studio.js';
import { nearMisses } from './helpers.js';

const FAMILIES = [
  'one-paint-ladder',
  'three-values',
  'light-and-shadow',
  'shade-chroma',
  'around-across',
  'ways-of-applying',
  'layer-order',
  'wet-and-dry',
  'diagnosis',
];
const ALL = SHIPPED_DRILLS;
const DRILLS = ALL.filter(({ kind }) => kind !== 'mix');
const KINDS = [...new Set(DRILLS.map(({ kind }) => kind))].sort();

/** A sample of each kind, first of every level. */
const SAMPLES = KINDS.flatMap((kind) =>
  [1, 2, 3, 4, 5].flatMap((level) =>
    DRILLS.filter((drill) => drill.kind === kind && drill.level === level).slice(0, 1),
  ),
);

function textsOf(grade: Grade): string[] {
  const { best, swatches } = grade;
  return [...said(grade), best.label, ...swatches.map(({ label }) => label)];
}

describe('the nine families of these kinds', () => {
  test.each(FAMILIES)('%s has at least eight drills, all five levels, worked ones first', (family) => {
    const own = ALL.filter((drill) => drill.family === family);
    expect(own.length).toBeGreaterThanOrEqual(8);
    expect([...new Set(own.map(({ level }) => level))].sort()).toEqual([1, 2, 3, 4, 5]);
    expect(own.filter(({ level, kind }) => level === 1 && kind !== 'worked').map(({ id }) => id)).toEqual([]);
  });

  test('no scene holds what we leave out', () => {
    const words = /\b(dog|cat|pet|puppy|kitten|porch|brand)s?\b/i;
    expect(ALL.filter(({ scene, title }) => words.test(`${scene} ${title}`)).map(({ id }) => id)).toEqual([]);
  });
});

describe.each(KINDS)('kind %s', (kind) => {
  const own = DRILLS.filter((drill) => drill.kind === kind);

  test('the best answer marks 100, shows no mistaken idea and is what the grade names', () => {
    for (const drill of own) {
      const best = kindOf(drill).best(drill);
      const grade = kindOf(drill).grade(drill, best);
      expect(grade, drill.id).toMatchObject({ mark: 100, verdict: 'good' });
      expect(grade.idea, drill.id).toBeUndefined();
      expect(grade.best, drill.id).toMatchObject({ answer: best, mark: 100 });
    }
  });

  test('every wrong answer is explained in words, with an idea and a better choice', () => {
    for (const drill of own) {
      for (const { answer, grade } of nearMisses(drill)) {
        const where = `${drill.id} ${JSON.stringify(answer)}`;
        expect(Number.isInteger(grade.mark) && grade.mark >= 0 && grade.mark <= 100, where).toBe(true);
        expect(said(grade).length, where).toBeGreaterThanOrEqual(2);
        expect(
          textsOf(grade).filter((text) => /undefined|NaN|Infinity|\[object|-0\.0/.test(text)),
          where,
        ).toEqual([]);
        if (grade.mark < 55) {
          const idea = IDEAS.get(grade.idea ?? '');
          expect(idea, `${where}: ${grade.idea}`).toBeDefined();
          // The lesson of the idea, or what would have mended this very answer.
          expect(
            grade.told.some(({ id }) =>
              ['advice', 'advice-water', 'change', 'drying-expect-less'].includes(id),
            ),
            where,
          ).toBe(true);
        }
      }
    }
  });

  test('labels fit a line of choices; ids are distinct; questions name their goal', () => {
    for (const drill of own) {
      const fields = kindOf(drill).fields(drill);
      expect(kindOf(drill).goalLines(drill).length, drill.id).toBeGreaterThan(0);
      for (const { id, label, options } of fields) {
        expect(label.length, `${drill.id} ${id}`).toBeLessThanOrEqual(60);
        expect(options.length, `${drill.id} ${id}`).toBeGreaterThanOrEqual(2);
        expect(new Set(options.map((option) => option.id)).size, `${drill.id} ${id}`).toBe(options.length);
        expect(
          options.filter((option) => option.label.length > 60),
          `${drill.id} ${id}`,
        ).toEqual([]);
      }
    }
  });
});

describe.each(SAMPLES.map((drill) => [drill.id, drill] as const))('%s', (_id, drill: Drill) => {
  const kind = kindOf(drill);
  const fields = kind.fields(drill);

  test('grades alike after a trip through JSON', () => {
    const copy = JSON.parse(JSON.stringify(drill)) as Drill;
    const draw = seededDraw(3);
    for (let count = 0; count < 20; count++) {
      const answer = randomAnswer(fields, draw);
      expect(kind.grade(copy, answer)).toEqual(kind.grade(drill, answer));
    }
    expect(kind.best(copy)).toEqual(kind.best(drill));
  });

  test('any answer is graded or refused with an InputError, never anything else', () => {
    const ids = fields.map(({ id }) => id);
    const options = fields.flatMap(({ options: list }) => list.map(({ id }) => id));
    const key = fc.oneof(fc.constantFrom(...ids, '__proto__', 'constructor', 'toString'), fc.string());
    const value = fc.oneof(fc.constantFrom(...options), fc.string());
    const complete = fc.record(
      Object.fromEntries(
        fields.map((field) => [field.id, fc.constantFrom(...field.options.map(({ id }) => id))]),
      ),
    );
    const odd = fc.dictionary(key, value);
    fc.assert(
      fc.property(fc.oneof(complete, odd), (answer) => {
        try {
          const { mark } = kind.grade(drill, answer as Answer);
          expect(mark).toBeGreaterThanOrEqual(0);
          expect(mark).toBeLessThanOrEqual(100);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          expect((error as Error).message).not.toMatch(/\n/);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  test('an empty answer is refused with what is missing', () => {
    expect(() => kind.grade(drill, {})).toThrow(/is not chosen; it takes one of: /);
  });
});
