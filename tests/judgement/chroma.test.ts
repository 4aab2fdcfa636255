/** The chroma of a colour against a goal: what README.md of judgement promises of shades, of dulling and of the margin. */
import { describe, expect, test } from 'vitest';
import { labToXyz } from '../../src/colour/lab.js';
import { type ColourReading, readXyz } from '../../src/colour/reading.js';
import { whiteOf } from '../../src/colour/xyz.js';
import {
  aroundChroma,
  chromaAsked,
  chromaMargin,
  type Goal,
  type Judged,
  judgeChroma,
  scoreChroma,
} from '../../src/judgement/index.js';

const colour = (l: number, chroma: number, hue = 50): ColourReading => {
  const angle = (hue * Math.PI) / 180;
  return readXyz(labToXyz({ l, a: chroma * Math.cos(angle), b: chroma * Math.sin(angle) }, whiteOf('D65-2')));
};
const START = colour(60, 60);
const judged = (goal: Goal, start = START): Judged => ({ goal, start, reach: { best: 60, dullest: 8 } });
/** A goal whose value is right in the middle for L* 40. */
const { step } = colour(40, 20);
const goal = (more: Omit<Goal, 'value'>): Goal => ({ value: [step - 0.6, step + 0.6], ...more });

describe('the margin of chroma', () => {
  test('is five, or 15 % where that is more', () => {
    expect(chromaMargin(10)).toBe(5);
    expect(chromaMargin(100 / 3)).toBeCloseTo(5, 9);
    expect(chromaMargin(60)).toBeCloseTo(9, 9);
    expect(aroundChroma(60)).toEqual([51, 69]);
    expect(aroundChroma(3)).toEqual([0, 8]);
  });

  test('is that of the bound that was missed; a band without end has no upper one to miss', () => {
    const { measured } = { measured: 5.2 };
    expect(scoreChroma(60 - measured - 9, [60, 80], 'measured').score).toBeCloseTo(0.5, 9);
    expect(scoreChroma(80 + measured + 12, [60, 80], 'measured').score).toBeCloseTo(0.5, 9);
    expect(scoreChroma(140, [60, Number.POSITIVE_INFINITY], 'measured')).toEqual({
      score: 1,
      tooCloseToCall: false,
    });
  });
});

describe('a shade', () => {
  const shade = judged(goal({ aim: 'shade' }));
  // 60 · (40 + 16) / (60 + 16) = 44.21 (Briggs, section 10.1)
  const LINE = 44.21;

  test('is asked round the shading line', () => {
    const [low, high] = chromaAsked(shade, colour(40, 20));
    expect(low).toBeCloseTo(0.85 * LINE, 1);
    expect(high).toBeCloseTo(1.15 * LINE, 1);
  });

  test('is never asked above the chroma that it starts from: with less light nothing gets stronger', () => {
    const [low, high] = chromaAsked(shade, colour(59, 20));
    expect(low).toBeCloseTo(0.85 * 59.2, 1);
    expect(high).toBeCloseTo(60, 9);
    // A lighter one lies on the line above its start, and no higher.
    const [, light] = chromaAsked(shade, colour(70, 20));
    expect(light).toBeCloseTo((60 * 86) / 76, 9);
  });

  test('glows when it is too strong, and is mud when it is too weak', () => {
    const verdict = (chroma: number) => judgeChroma(shade, colour(40, chroma), 'measured').result.verdict;
    expect([20, 44, 70].map(verdict)).toEqual(['off', 'good', 'off']);
  });

  test('keeps a chroma that the drill states instead', () => {
    expect(chromaAsked(judged(goal({ aim: 'shade', chroma: [10, 30] })), colour(40, 20))).toEqual([10, 30]);
  });
});

describe('a colour that was to be dulled', () => {
  test.each(['dull', 'distance', 'neutral'] as const)('%s: a quarter at most where it was not', (aim) => {
    const near = judged(goal({ aim, chroma: [0, 54] }));
    const judgement = judgeChroma(near, colour(40, 56), 'measured');
    expect(judgement.score).toBe(0.25);
    expect(judgement.result).toMatchObject({ verdict: 'off', tooCloseToCall: false });
    // Nine tenths of 60 are left: that is dulled, and within the model's error of the band.
    expect(judgeChroma(near, colour(40, 53.9), 'measured').score).toBe(1);
  });

  test('nothing was to be dulled where the band goes as high as the start, or where another aim was asked', () => {
    expect(
      judgeChroma(judged(goal({ aim: 'dull', chroma: [0, 60] })), colour(40, 59), 'measured').score,
    ).toBe(1);
    expect(
      judgeChroma(judged(goal({ aim: 'lean', chroma: [0, 54] })), colour(40, 56), 'measured').score,
    ).toBe(1);
    expect(
      judgeChroma(judged(goal({ aim: 'rich', chroma: [0, 54] })), colour(40, 56), 'measured').score,
    ).toBe(1);
  });

  test('scores no more than it does by the band', () => {
    const far = judged(goal({ aim: 'dull', chroma: [0, 20] }));
    expect(judgeChroma(far, colour(40, 59), 'measured').score).toBe(0);
  });
});

describe('what is told of chroma', () => {
  test('is before, after, what is kept of it, and the line', () => {
    const { result } = judgeChroma(judged(goal({ aim: 'rich' })), colour(40, 30), 'measured');
    expect(result.before).toBeCloseTo(60, 9);
    expect(result.after).toBeCloseTo(30, 9);
    expect(result.kept).toBeCloseTo(0.5, 9);
    expect(result.shadingLine).toBeCloseTo(44.21, 2);
    expect(result.dullest).toBe(8);
  });

  test('of a grey nothing could be lost', () => {
    const grey = judged(goal({ aim: 'rich' }), colour(60, 0.2));
    expect(judgeChroma(grey, colour(40, 30), 'measured').result.kept).toBe(1);
  });
});
