/** Comparing by one criterion: which of several is named, what is too near to ask, and the idea behind a wrong pick. */
import { describe, expect, test } from 'vitest';
import {
  type Context,
  CRITERION_IDS,
  type CriterionId,
  compare,
  criterionOf,
  ideaBehind,
  MODEL_ERROR,
  tooNear,
} from '../../src/judgement/index.js';
import { type Laid, seeLaid } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const STUDIO_ONLY: Context = { studio: STUDIO };
const alone = (id: string, strength = 0.5): Laid => ({ paints: { [id]: 1 }, strength });
const item = (id: string, laid: Laid = alone(id)) => ({ id, label: id, laid });
const order = (by: CriterionId, ids: readonly string[], context = STUDIO_ONLY): string[] =>
  compare(
    ids.map((id) => item(id)),
    by,
    context,
  ).rated.map(({ id }) => id);

describe('which of several', () => {
  const SIX = [
    'cadmium-red',
    'cadmium-yellow',
    'cadmium-orange',
    'ultramarine-blue',
    'viridian',
    'dioxazine-violet',
  ];

  // Common practice, no source: what every painter says of these.
  test.each([
    ['warmest', 'cadmium-orange'],
    ['lightest', 'cadmium-yellow'],
    ['darkest', 'dioxazine-violet'],
  ] as const)('%s is %s', (by, id) => {
    expect(order(by, SIX)[0]).toBe(id);
  });

  test('viridian is greener than red, blue or violet, and a violet more violet than red, orange or green', () => {
    const [red, , orange, blue, green, violet] = SIX as [string, string, string, string, string, string];
    expect(order('greenest', [red, orange, blue, green, violet])[0]).toBe(green);
    expect(order('most-violet', [red, orange, green, violet])[0]).toBe(violet);
  });

  test('a blue is cooler than a red or an orange, and black is greyer than any of them', () => {
    expect(order('coolest', ['cadmium-red', 'cerulean-blue', 'cadmium-orange'])[0]).toBe('cerulean-blue');
    expect(order('greyest', [...SIX, 'ivory-black'])[0]).toBe('ivory-black');
    expect(order('most-chroma', [...SIX, 'ivory-black']).at(-1)).toBe('ivory-black');
  });

  test('the other end of the same scale turns the order round', () => {
    expect(order('lightest', SIX)).toEqual(order('darkest', SIX).toReversed());
    expect(order('greyest', SIX)).toEqual(order('most-chroma', SIX).toReversed());
  });

  test('what is alike keeps the order given', () => {
    const laid = alone('burnt-sienna');
    for (const by of CRITERION_IDS) {
      const context = {
        studio: STUDIO,
        start: seeLaid(STUDIO, laid).colour,
        target: { step: 5, chroma: 30, hue: 50 },
      };
      const { rated } = compare([item('b', laid), item('a', laid), item('c', laid)], by, context);
      expect(rated.map(({ id }) => id)).toEqual(['b', 'a', 'c']);
    }
  });
});

describe('too near to ask', () => {
  test('is what the model cannot tell or nobody sees, whichever is more; less is known of a guess', () => {
    for (const by of CRITERION_IDS) {
      const { tolerance, seen: eye = 0 } = criterionOf(by);
      expect(tolerance('measured')).toBeGreaterThan(0);
      expect(tolerance('estimated')).toBeGreaterThan(tolerance('measured'));
      const { apart } = compare([item('burnt-sienna')], by, STUDIO_ONLY);
      expect(apart).toBeGreaterThanOrEqual(eye);
      expect(apart).toBeGreaterThanOrEqual(tolerance('measured'));
    }
  });

  test('in value a half step, though the model knows it better', () => {
    const { tolerance, apart } = compare([item('burnt-sienna')], 'darkest', STUDIO_ONLY);
    expect(tolerance).toBe(MODEL_ERROR.measured.step);
    expect(apart).toBe(0.5);
    expect(compare([item('burnt-sienna')], 'most-chroma', STUDIO_ONLY).apart).toBe(
      MODEL_ERROR.measured.chroma,
    );
  });

  test('goes by the paint that is known least', () => {
    const guessed = STUDIO.paints.find(({ evidence }) => evidence === 'estimated')?.id as string;
    const both = compare([item('burnt-sienna'), item(guessed)], 'darkest', STUDIO_ONLY);
    expect(both.evidence).toBe('estimated');
    expect(both.tolerance).toBe(MODEL_ERROR.estimated.step);
  });

  test('are neighbours in order, each pair once, the better first', () => {
    const strengths = [0.5, 0.1, 0.49, 0.102];
    const comparison = compare(
      strengths.map((strength) => item(`at ${strength}`, alone('burnt-sienna', strength))),
      'darkest',
      STUDIO_ONLY,
    );
    expect(tooNear(comparison).map((pair) => pair.map(({ id }) => id))).toEqual([
      ['at 0.5', 'at 0.49'],
      ['at 0.102', 'at 0.1'],
    ]);
    const [best, next] = comparison.rated;
    const gap = (best?.score ?? 0) - (next?.score ?? 0);
    expect(tooNear({ ...comparison, apart: gap })).not.toContainEqual([best, next]);
    expect(tooNear({ ...comparison, apart: 0 })).toEqual([]);
  });
});

describe('the idea behind a wrong pick', () => {
  const mixed = (one: string, other: string): Laid => ({ paints: { [one]: 3, [other]: 1 }, strength: 0.4 });
  const idea = (laid: Laid, by: CriterionId): string => {
    const [picked] = compare([item('it', laid)], by, STUDIO_ONLY).rated;
    if (picked === undefined) throw new Error('nothing compared');
    return ideaBehind(STUDIO_ONLY, picked, by);
  };

  test.each(['most-chroma', 'keeps-colour'] as const)('%s: the second paint took the colour', (by) => {
    expect(idea(mixed('burnt-sienna', 'ivory-black'), by)).toBe('took-a-neutral');
    expect(idea(mixed('ivory-black', 'burnt-sienna'), by)).toBe('took-a-neutral');
    expect(idea(mixed('burnt-sienna', 'chinese-white'), by)).toBe('took-a-white');
    expect(idea(mixed('chinese-white', 'burnt-sienna'), by)).toBe('took-a-white');
    expect(idea(mixed('burnt-sienna', 'ultramarine-blue'), by)).toBe('went-across');
    // Around: the colour was kept, so the paints show nothing.
    expect(idea(mixed('burnt-sienna', 'cadmium-red'), by)).toBe('lost-chroma');
    expect(idea(alone('burnt-sienna'), by)).toBe('lost-chroma');
  });

  test('counts a paint that was stirred in afterwards', () => {
    const stirred = { paints: { 'burnt-sienna': 1 }, strength: 0.4, add: { 'ultramarine-blue': 0.5 } };
    expect(idea(stirred, 'most-chroma')).toBe('went-across');
  });

  test('greyest: it stayed near, or made another colour instead of a grey', () => {
    expect(idea(mixed('burnt-sienna', 'cadmium-red'), 'greyest')).toBe('stayed-near');
    expect(idea(mixed('cadmium-yellow', 'cerulean-blue'), 'greyest')).toBe('dull-not-neutral');
    // A grey that another one beats is no colour made instead.
    const greys = [0.5, 1, 2, 3, 4].map((blue) =>
      item(`${blue}`, { paints: { 'burnt-sienna': 1, 'ultramarine-blue': blue }, strength: 0.4 }),
    );
    const [grey] = compare(greys, 'greyest', STUDIO_ONLY).rated;
    expect(grey?.reading.chroma).toBeLessThan(12);
    expect(idea(grey?.seen.laid as Laid, 'greyest')).toBe('stayed-near');
    expect(idea(alone('cadmium-red'), 'greyest')).toBe('stayed-near');
  });

  test('of films over each other it is the upper one, of strokes what was asked', () => {
    const wash = { paints: { 'burnt-sienna': 1 }, strength: 0.4 };
    expect(idea({ layers: [wash, wash] }, 'darkest')).toBe('upper-film');
    expect(idea({ strokes: [{ ...wash, share: 1 }] }, 'most-chroma')).toBe('lost-chroma');
  });

  test('of value it is a value misread, whatever the paints', () => {
    expect(idea(mixed('burnt-sienna', 'ultramarine-blue'), 'darkest')).toBe('misread-value');
    expect(idea(mixed('burnt-sienna', 'ivory-black'), 'lightest')).toBe('misread-value');
  });
});
