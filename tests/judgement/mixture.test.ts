import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { labToXyz } from '../../src/colour/lab.js';
import { type ColourReading, readXyz } from '../../src/colour/reading.js';
import { whiteOf } from '../../src/colour/xyz.js';
import {
  brightBand,
  chromaMargin,
  type Goal,
  type Judged,
  judgeChroma,
  judgeHue,
  judgeValue,
  MODEL_ERROR,
  markOf,
  overall,
  type Reach,
  scoreStep,
} from '../../src/judgement/index.js';

const colour = (l: number, chroma: number, hue = 50): ColourReading =>
  readXyz(
    labToXyz(
      { l, a: chroma * Math.cos((hue * Math.PI) / 180), b: chroma * Math.sin((hue * Math.PI) / 180) },
      whiteOf('D65-2'),
    ),
  );

const START = colour(60, 60);
const BRIGHT: Goal = { value: [5.3, 6.3], aim: 'rich' };

/** A goal as it is judged, from the start above. */
const judged = (goal: Goal = BRIGHT, reach: Reach = { best: 60, dullest: 8 }): Judged => ({
  goal,
  start: START,
  reach,
});
/** In thousandths: drawn as a fraction outright most are next to nothing, and hardly one comes near a good mark. */
const unit = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);

describe('the mark', () => {
  test('is the published sum: 35 for value, 35 for chroma, 30 for both', () => {
    expect(markOf(1, 1, false)).toBe(100);
    expect(markOf(0, 1, false)).toBe(35);
    expect(markOf(1, 0, false)).toBe(35);
    expect(markOf(0.5, 0.5, false)).toBe(43);
    expect(markOf(1, 0.5, false)).toBe(68);
  });

  test('takes 8 for a paint that the painting does not have, and never below nothing', () => {
    expect(markOf(1, 1, true)).toBe(92);
    expect(markOf(0, 0, true)).toBe(0);
  });

  test('of 85 or more hides no fair part', () => {
    fc.assert(
      fc.property(unit, unit, (value, chroma) => {
        const mark = markOf(value, chroma, false);
        if (mark >= 85) expect([value, chroma]).toEqual([1, 1]);
        expect(overall(mark) === 'good').toBe(value === 1 && chroma === 1);
      }),
    );
  });

  test.each([
    [1, 0.99],
    [0.99, 1],
    [0.999, 0.999],
    [1, 0.9],
    [0.9, 1],
  ])('stops at 84 while a part is only fair: value %d, chroma %d', (value, chroma) => {
    // 35 v + 35 c + 30 v c would be 90 and more.
    expect(markOf(value, chroma, false)).toBe(84);
    expect(overall(markOf(value, chroma, false))).toBe('fair');
  });

  test('never falls when a part gets better', () => {
    fc.assert(
      fc.property(unit, unit, unit, (value, one, two) => {
        const [low, high] = [Math.min(one, two), Math.max(one, two)];
        expect(markOf(value, high, false)).toBeGreaterThanOrEqual(markOf(value, low, false));
        expect(markOf(high, value, false)).toBeGreaterThanOrEqual(markOf(low, value, false));
      }),
    );
  });
});

describe('value', () => {
  test('is good in the band, fair half a step outside, nothing a step outside', () => {
    expect(scoreStep(5, [4.5, 5.5], 0).score).toBe(1);
    expect(scoreStep(6, [4.5, 5.5], 0).score).toBeCloseTo(0.5, 12);
    expect(scoreStep(6.5, [4.5, 5.5], 0).score).toBeCloseTo(0, 12);
    expect(scoreStep(4, [4.5, 5.5], 0).score).toBeCloseTo(0.5, 12);
  });

  test('within the model’s error of the band is too close to call and costs nothing', () => {
    for (const evidence of ['measured', 'transferred', 'estimated'] as const) {
      const edge = START.step - 0.9 * MODEL_ERROR[evidence].step;
      const goal: Goal = { value: [edge - 1, edge], aim: 'rich' };
      const { result, score } = judgeValue(judged(goal), START, evidence);
      expect(result).toMatchObject({ verdict: 'good', tooCloseToCall: true });
      expect(score).toBe(1);
    }
  });

  test('does not jump at the end of the error', () => {
    const { step } = MODEL_ERROR.measured;
    const at = (beyond: number): number => {
      const edge = START.step - step - beyond;
      return judgeValue(judged({ value: [1, edge], aim: 'rich' }), START, 'measured').score;
    };
    expect(at(1e-6)).toBeGreaterThan(0.9999);
    expect(at(0.5)).toBeCloseTo(0.5, 9);
  });
});

describe('chroma that stays bright', () => {
  test('is asked on the shading line where the tray can hold it: C* 60 at L* 60 is 44.2 at L* 40', () => {
    // 60 · (40 + 16) / (60 + 16) = 44.21; the margin is 15 % of it.
    const [low] = brightBand(judged(BRIGHT, { best: 50, dullest: 8 }), colour(40, 20));
    expect(low).toBeCloseTo(0.85 * 44.21, 1);
  });

  test('asks no more than the tray can reach', () => {
    const [low] = brightBand(judged(BRIGHT, { best: 20, dullest: 8 }), colour(40, 20));
    expect(low).toBeCloseTo(20 - chromaMargin(20), 9);
  });

  test('asks three quarters of what the tray can reach where that is far above the line', () => {
    const [low] = brightBand(judged(BRIGHT, { best: 80, dullest: 8 }), colour(40, 20));
    expect(low).toBeCloseTo(0.85 * 60, 9);
  });

  test('a colour that lost half of what was asked scores nothing, and one that kept it scores all', () => {
    const dull = judgeChroma(judged(), colour(40, 15), 'measured');
    expect(dull).toMatchObject({ score: 0, result: { verdict: 'off' } });
    const kept = judgeChroma(judged(), colour(40, 44), 'measured');
    expect(kept).toMatchObject({ score: 1, result: { verdict: 'good' } });
  });

  test('more chroma never scores less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (c, more) => {
          const score = (chroma: number): number =>
            judgeChroma(judged(), colour(45, chroma), 'measured').score;
          expect(score(c + more)).toBeGreaterThanOrEqual(score(c) - 1e-9);
        },
      ),
    );
  });
});

describe('a chroma band', () => {
  const band = judged({ aim: 'dull', value: [4, 5], chroma: [20, 32] });
  test.each([
    [26, 'good'],
    [34, 'good'],
    [38, 'fair'],
    [60, 'off'],
    [14, 'fair'],
    [5, 'off'],
  ] as const)('C* %d in 20-32 is %s', (chroma, verdict) => {
    expect(judgeChroma(band, colour(50, chroma), 'measured').result.verdict).toBe(verdict);
  });
});

describe('hue', () => {
  const near = judged({ value: [4, 5], aim: 'rich', hue: { near: 'start', within: 20 } });
  test('is not judged where the aim is grey and no hue is asked, nor where the start has none to hold', () => {
    const neutral = judged({ value: [4, 5], aim: 'neutral', chroma: [0, 12] });
    expect(judgeHue(neutral, colour(50, 40, 200))).toBeUndefined();
    const fromGrey = { ...judged(), start: colour(60, 5) };
    expect(judgeHue(fromGrey, colour(50, 40, 200))).toBeUndefined();
  });
  test.each([
    ['shade', 25],
    ['rich', 40],
    ['dull', 25],
    ['distance', 30],
  ] as const)('of a %s is the start’s within %d degrees where the drill states no other', (aim, within) => {
    const goal: Goal = { value: [4, 5], aim };
    expect(judgeHue(judged(goal), colour(50, 40, 50 + within - 1))).toMatchObject({
      score: 1,
      result: { verdict: 'good', asked: { within } },
    });
    expect(judgeHue(judged(goal), colour(50, 40, 200))?.score).toBe(0);
  });
  test('fades over two margins of 15 degrees', () => {
    expect(judgeHue(near, colour(50, 40, 65))?.score).toBe(1);
    expect(judgeHue(near, colour(50, 40, 85))?.score).toBeCloseTo(0.5, 2);
    expect(judgeHue(near, colour(50, 40, 170))?.score).toBe(0);
  });
  test('a grey has none to miss, unless its lean is the question', () => {
    expect(judgeHue(near, colour(50, 3, 230))?.score).toBe(1);
    const lean = judged({ value: [4, 5], aim: 'lean', chroma: [3, 14], hue: { near: 55, within: 50 } });
    expect(judgeHue(lean, colour(50, 4, 230))?.score).toBe(0);
  });
});
