/** The scales that colours are compared by: how far one leans, what it keeps, how near it comes, what drying takes; and what is told of it. */
import { describe, expect, test } from 'vitest';
import {
  type Context,
  type CriterionId,
  compare,
  criterionOf,
  readingBy,
} from '../../src/judgement/index.js';
import { type Laid, type Seen, seeLaid, seeWet } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const STUDIO_ONLY: Context = { studio: STUDIO };
const alone = (id: string, strength = 0.5): Laid => ({ paints: { [id]: 1 }, strength });
const item = (id: string, laid: Laid = alone(id)) => ({ id, label: id, laid });

/** A passage of a colour given outright. */
const seen = (step: number, chroma: number, hue: number, l = 50): Seen => {
  const sound = seeLaid(STUDIO, alone('burnt-sienna'));
  return { ...sound, colour: { ...sound.colour, step, chroma, hue, lab: { ...sound.colour.lab, l } } };
};
const score = (by: CriterionId, one: Seen, context: Context = STUDIO_ONLY): number =>
  criterionOf(by).score(one, context);

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
