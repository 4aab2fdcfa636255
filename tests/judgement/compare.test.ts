/** Comparing by one criterion: which of several is named, and what the difference is worth. */
import { describe, expect, test } from 'vitest';
import {
  type Context,
  CRITERION_IDS,
  type CriterionId,
  compare,
  criterionOf,
  ideaBehind,
  MODEL_ERROR,
  readingBy,
  tooNear,
} from '../../src/judgement/index.js';
import { type Laid, type Seen, seeLaid, seeWet } from '../../src/washes/index.js';
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

/** A passage of a colour given outright. */
const seen = (step: number, chroma: number, hue: number, l = 50): Seen => {
  const sound = seeLaid(STUDIO, alone('burnt-sienna'));
  return { ...sound, colour: { ...sound.colour, step, chroma, hue, lab: { ...sound.colour.lab, l } } };
};
const score = (by: CriterionId, one: Seen, context: Context = STUDIO_ONLY): number =>
  criterionOf(by).score(one, context);

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

describe('how far a colour leans', () => {
  test('is its whole chroma towards its own hue, none across, and against it on the other side', () => {
    for (const [by, hue] of [
      ['warmest', 55],
      ['coolest', 235],
      ['greenest', 150],
      ['most-violet', 315],
    ] as const) {
      expect(score(by, seen(5, 40, hue))).toBeCloseTo(40, 9);
      expect(score(by, seen(5, 40, hue + 60))).toBeCloseTo(20, 9);
      expect(score(by, seen(5, 40, hue - 60))).toBeCloseTo(20, 9);
      expect(score(by, seen(5, 40, hue + 90))).toBeCloseTo(0, 9);
      expect(score(by, seen(5, 40, hue + 180))).toBeCloseTo(-40, 9);
    }
  });
});

describe('keeping colour', () => {
  const start = { ...seen(4, 50, 40, 60).colour };

  test('is 1 on the shading line: C* 50 at L* 60 is 36.8 at L* 40 (Briggs, section 10.1)', () => {
    const context = { studio: STUDIO, start };
    expect(score('keeps-colour', seen(4, 50, 40, 60), context)).toBeCloseTo(1, 9);
    expect(score('keeps-colour', seen(6, 36.84, 40, 40), context)).toBeCloseTo(1, 3);
    expect(score('keeps-colour', seen(6, 18.42, 40, 40), context)).toBeCloseTo(0.5, 3);
  });

  test('says nothing where there is no start', () => {
    expect(score('keeps-colour', seen(6, 30, 40))).toBe(0);
  });

  test('stays a number where the start was a grey', () => {
    const context = { studio: STUDIO, start: { ...start, chroma: 0 } };
    expect(score('keeps-colour', seen(6, 30, 40), context)).toBeCloseTo(30, 9);
  });
});

describe('coming near a target', () => {
  const at = (target: NonNullable<Context['target']>): Context => ({ studio: STUDIO, target });

  test('there is no distance to the target itself, nor where none is set', () => {
    expect(score('nearest', seen(5, 40, 30), at({ step: 5, chroma: 40, hue: 30 }))).toBeCloseTo(0, 9);
    expect(score('nearest', seen(5, 40, 30))).toBeCloseTo(0, 9);
  });

  test('a step is ten of lightness, and only value counts where no more is asked', () => {
    expect(score('nearest', seen(6, 40, 30), at({ step: 5 }))).toBeCloseTo(-10, 9);
    expect(score('nearest', seen(4, 90, 200), at({ step: 5 }))).toBeCloseTo(-10, 9);
  });

  test('value, chroma and hue add up as the sides of a right angle', () => {
    expect(score('nearest', seen(5.3, 44, 30), at({ step: 5, chroma: 40 }))).toBeCloseTo(-5, 9);
    expect(score('nearest', seen(5.3, 44, 30), at({ step: 5, chroma: 40, hue: 30 }))).toBeCloseTo(-5, 9);
  });

  test('hue counts as the straight line between the two colours on the wheel', () => {
    // Two colours of C* 40 a right angle apart lie 40 times the root of 2 from each other.
    const apart = -40 * Math.SQRT2;
    expect(score('nearest', seen(5, 40, 120), at({ step: 5, chroma: 40, hue: 30 }))).toBeCloseTo(apart, 9);
    expect(score('nearest', seen(5, 40, 300), at({ step: 5, chroma: 40, hue: 30 }))).toBeCloseTo(apart, 9);
    expect(score('nearest', seen(5, 40, 210), at({ step: 5, chroma: 40, hue: 30 }))).toBeCloseTo(-80, 9);
  });
});

describe('drying', () => {
  test('loses what is there wet and gone when dry', () => {
    const one = seeLaid(STUDIO, alone('ultramarine-blue', 1));
    const wet = seeWet(STUDIO, one.laid).colour.chroma;
    expect(score('dries-most', one)).toBeCloseTo(wet - one.colour.chroma, 12);
    expect(readingBy('dries-most', one, STUDIO_ONLY).own).toBe(wet);
  });

  // B. MacEvoy, handprint.com, drying shift: dark and strong washes change most, pale ones hardly.
  test('takes more from a dark wash than from a pale one', () => {
    const laid = [item('pale', alone('ultramarine-blue', 0.1)), item('dark', alone('ultramarine-blue', 1))];
    expect(compare(laid, 'dries-most', STUDIO_ONLY).rated.map(({ id }) => id)).toEqual(['dark', 'pale']);
  });
});

describe('what is told of one', () => {
  test('is its value, its chroma, and the figure that it was compared by', () => {
    const one = seen(6, 33, 30);
    const reading = { step: 6, chroma: 33 };
    expect(readingBy('darkest', one, STUDIO_ONLY)).toEqual({ ...reading, own: 6 });
    expect(readingBy('lightest', one, STUDIO_ONLY)).toEqual({ ...reading, own: 6 });
    expect(readingBy('most-chroma', one, STUDIO_ONLY)).toEqual({ ...reading, own: 33 });
    expect(readingBy('greyest', one, STUDIO_ONLY)).toEqual({ ...reading, own: 33 });
    const target = { studio: STUDIO, target: { step: 5 } };
    expect(readingBy('nearest', one, target).own).toBeCloseTo(10, 9);
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
