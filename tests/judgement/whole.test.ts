/** A whole colour against a goal: its hue, its mark, which of two full marks is the better, and when two are seen apart. */
import { describe, expect, test } from 'vitest';
import { labToXyz } from '../../src/colour/lab.js';
import { type ColourReading, readXyz } from '../../src/colour/reading.js';
import { whiteOf } from '../../src/colour/xyz.js';
import {
  type Goal,
  hueAsked,
  isSeenApart,
  type Judged,
  judgeHue,
  judgeValue,
  outside,
  overall,
  scoreColour,
  verdictOf,
} from '../../src/judgement/index.js';

const colour = (l: number, chroma: number, hue = 50): ColourReading => {
  const angle = (hue * Math.PI) / 180;
  return readXyz(labToXyz({ l, a: chroma * Math.cos(angle), b: chroma * Math.sin(angle) }, whiteOf('D65-2')));
};
const START = colour(60, 60);
const judged = (goal: Goal, start = START): Judged => ({ goal, start, reach: { best: 60, dullest: 8 } });
const SURE = { evidence: 'measured', isNew: false } as const;
/** A goal whose value is right in the middle for L* 40. */
const { step } = colour(40, 20);
const goal = (more: Omit<Goal, 'value'>): Goal => ({ value: [step - 0.6, step + 0.6], ...more });

describe('words for marks and scores', () => {
  test.each([
    [100, 'good'],
    [85, 'good'],
    [84, 'fair'],
    [55, 'fair'],
    [54, 'off'],
    [0, 'off'],
  ])('a mark of %d is %s', (mark, verdict) => expect(overall(mark)).toBe(verdict));

  test.each([
    [1, 'good'],
    [0.999, 'fair'],
    [0.5, 'fair'],
    [0.499, 'off'],
  ])('a part of %d is %s', (score, verdict) => expect(verdictOf(score)).toBe(verdict));

  test('a band counts to its edges, and outside it by the distance', () => {
    expect([2, 3, 5, 7, 9].map((x) => outside(x, [3, 7]))).toEqual([1, 0, 0, 0, 2]);
  });
});

describe('the hue asked', () => {
  test('is the drill’s own, an angle or the start’s, else the start’s within the bound of the aim', () => {
    const asked = (more: Omit<Goal, 'value'>, start = START) => hueAsked(judged(goal(more), start));
    expect(asked({ aim: 'lean', hue: { near: 200, within: 50 } })).toEqual({ near: 200, within: 50 });
    expect(asked({ aim: 'rich', hue: { near: 'start', within: 7 } })).toEqual({ near: START.hue, within: 7 });
    expect(asked({ aim: 'shade' })).toEqual({ near: START.hue, within: 25 });
    expect(asked({ aim: 'neutral' })).toBeUndefined();
    expect(asked({ aim: 'lean' })).toBeUndefined();
    expect(asked({ aim: 'shade' }, colour(60, 11.9))).toBeUndefined();
    expect(asked({ aim: 'shade' }, colour(60, 12.1))?.within).toBe(25);
  });

  test('is missed by the degrees turned, either way round, across the zero of the wheel too', () => {
    const lean = judged(goal({ aim: 'lean', hue: { near: 350, within: 20 } }));
    expect(judgeHue(lean, colour(40, 30, 25))?.result.turned).toBeCloseTo(35, 6);
    expect(judgeHue(lean, colour(40, 30, 25))?.score).toBeCloseTo(0.5, 6);
    expect(judgeHue(lean, colour(40, 30, 315))?.score).toBeCloseTo(0.5, 6);
    expect(judgeHue(lean, colour(40, 30, 10))?.score).toBeCloseTo(1, 6);
  });

  test('a grey has none to miss up to C* 5', () => {
    const rich = judged(goal({ aim: 'rich' }));
    expect(judgeHue(rich, colour(40, 4.9, 230))?.score).toBe(1);
    expect(judgeHue(rich, colour(40, 5.1, 230))?.score).toBe(0);
  });
});

describe('the mark of a colour', () => {
  const dull = judged(goal({ aim: 'dull', chroma: [20, 36] }));

  test('is 100 where all is as asked, 8 less with a paint that is new', () => {
    expect(scoreColour(dull, colour(40, 28), SURE).mark).toBe(100);
    expect(scoreColour(dull, colour(40, 28), { ...SURE, isNew: true }).mark).toBe(92);
  });

  test('takes chroma times hue: another hue costs what chroma earns', () => {
    // 25 degrees are held; 15 beyond is a half: 35 + 35 · 0.5 + 30 · 0.5.
    expect(scoreColour(dull, colour(40, 28, 90), SURE).mark).toBe(68);
    expect(scoreColour(dull, colour(40, 28, 130), SURE).mark).toBe(35);
    expect(
      scoreColour(judged(goal({ aim: 'neutral', chroma: [0, 36] })), colour(40, 28, 230), SURE).mark,
    ).toBe(100);
  });

  test('is the exact one rounded', () => {
    for (const chroma of [2, 5, 8, 40, 44]) {
      const { mark, exact } = scoreColour(dull, colour(40, chroma), SURE);
      expect(mark).toBe(Math.round(exact));
    }
  });

  test('allows more where less is known', () => {
    const off = colour(40, 42.5);
    const less = scoreColour(dull, off, SURE).mark;
    expect(less).toBeLessThan(100);
    expect(scoreColour(dull, off, { evidence: 'estimated', isNew: false }).mark).toBe(100);
  });
});

describe('of two full marks the better', () => {
  const merit = (of: Judged, one: ColourReading): number => {
    const { mark, merit: is } = scoreColour(of, one, SURE);
    expect(mark).toBe(100);
    return is;
  };

  test('is the brighter one where a rich colour is asked', () => {
    const rich = judged(goal({ aim: 'rich' }));
    expect(merit(rich, colour(40, 58))).toBeGreaterThan(merit(rich, colour(40, 50)));
    // Of two as bright the one in the middle of the value asked.
    expect(merit(rich, colour(40, 50))).toBeGreaterThan(merit(rich, colour(36, 50)));
    expect(merit(rich, colour(40, 50))).toBeGreaterThan(merit(rich, colour(44, 50)));
  });

  test('is the one nearer the shading line where a shade is', () => {
    const shade = judged(goal({ aim: 'shade' }));
    expect(merit(shade, colour(40, 44.2))).toBeGreaterThan(merit(shade, colour(40, 40)));
    expect(merit(shade, colour(40, 44.2))).toBeGreaterThan(merit(shade, colour(40, 48)));
    // Where the start is the most that is asked, the line lies near the top of the band and not in its middle.
    const slight = judged({ aim: 'shade', value: [START.step, START.step + 0.2] });
    expect(merit(slight, colour(59, 59))).toBeGreaterThan(merit(slight, colour(59, 55)));
  });

  test('is the one nearer the middle of the band where a band is asked, of a shade too', () => {
    for (const aim of ['dull', 'shade'] as const) {
      const band = judged(goal({ aim, chroma: [20, 36] }));
      expect(merit(band, colour(40, 28))).toBeGreaterThan(merit(band, colour(40, 33)));
      expect(merit(band, colour(40, 28))).toBeGreaterThan(merit(band, colour(40, 23)));
      expect(merit(band, colour(40, 28))).toBeGreaterThan(merit(band, colour(36, 28)));
    }
  });

  test('is the one inside: what only the error of the model lets in comes after all that are', () => {
    const band = judged(goal({ aim: 'dull', chroma: [20, 36] }));
    const outer = merit(band, colour(40, 36.1));
    expect(merit(band, colour(40, 35.9)) - outer).toBeGreaterThan(0.4);
    const value = judged({ aim: 'dull', chroma: [20, 36], value: [step + 0.05, step + 1.2] });
    expect(judgeValue(value, colour(40, 28), 'measured').result.tooCloseToCall).toBe(true);
    const inner = judged({ aim: 'dull', chroma: [20, 36], value: [step - 0.05, step + 1.1] });
    expect(merit(inner, colour(40, 28)) - merit(value, colour(40, 28))).toBeGreaterThan(0.4);
  });

  test('falls evenly: of what the middle has, half is left at the edges', () => {
    const band = judged(goal({ aim: 'dull', chroma: [20, 36] }));
    expect(merit(band, colour(40, 28)) - 100).toBeCloseTo(0.5, 3);
    expect(merit(band, colour(40, 35.999)) - 100).toBeCloseTo(0.375, 3);
    expect(merit(band, colour(40, 24)) - 100).toBeCloseTo(0.4375, 3);
    const edge = judged({ aim: 'dull', chroma: [20, 36], value: [step, step + 1] });
    expect(merit(edge, colour(40, 28)) - 100).toBeCloseTo(0.375, 3);
  });

  test('never makes up for a mark', () => {
    const band = judged(goal({ aim: 'dull', chroma: [20, 36] }));
    for (const chroma of [14, 20, 28, 36, 42]) {
      const { mark, merit: is } = scoreColour(band, colour(40, chroma), SURE);
      expect(Math.abs(is - mark)).toBeLessThanOrEqual(0.5);
    }
  });
});

describe('two colours are seen apart', () => {
  const of = (chroma: number, hue = 50, at = 5): ColourReading => ({ ...START, step: at, chroma, hue });

  test('by half a step', () => {
    expect(isSeenApart(of(40), of(40, 50, 5.5))).toBe(true);
    expect(isSeenApart(of(40), of(40, 50, 4.5))).toBe(true);
    expect(isSeenApart(of(40), of(40, 50, 5.4))).toBe(false);
  });

  test('by a third of the chroma, by ten in any case, never by less than five', () => {
    expect([isSeenApart(of(24), of(16)), isSeenApart(of(24), of(16.1))]).toEqual([true, false]);
    expect([isSeenApart(of(24), of(32)), isSeenApart(of(24), of(31.9))]).toEqual([true, false]);
    expect([isSeenApart(of(90), of(80)), isSeenApart(of(90), of(80.1))]).toEqual([true, false]);
    expect([isSeenApart(of(9), of(4)), isSeenApart(of(9), of(4.1))]).toEqual([true, false]);
  });

  test('by twenty degrees of hue, where both have one', () => {
    expect([isSeenApart(of(40), of(40, 70)), isSeenApart(of(40), of(40, 69.9))]).toEqual([true, false]);
    expect([isSeenApart(of(40), of(40, 30)), isSeenApart(of(40), of(40, 30.1))]).toEqual([true, false]);
    expect(isSeenApart(of(4.9), of(4.9, 230))).toBe(false);
    expect(isSeenApart(of(5), of(5, 230))).toBe(true);
    expect(isSeenApart(of(7), of(4.9, 230))).toBe(false);
  });
});
