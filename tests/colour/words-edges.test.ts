/** The edges of the plan at the head of src/colour/words.ts: what a colour is called at each, and just before it. */
import { describe, expect, it } from 'vitest';
import { chromaOf, hueOf, type Lab } from '../../src/colour/lab.js';
import { chromaWord, colourInWords } from '../../src/colour/words.js';

const polar = (l: number, chroma: number, hue: number): Lab => ({
  l,
  a: chroma * Math.cos((hue * Math.PI) / 180),
  b: chroma * Math.sin((hue * Math.PI) / 180),
});

/** Of a hue to the last bit, where rounding lets any chroma have it; else a hair beyond. */
function atHue(l: number, chroma: number, hue: number): Lab {
  for (let n = 0; n < 1000; n += 1) {
    const lab = polar(l, chroma + n * 1e-6, hue);
    if (hueOf(lab) === hue) return lab;
  }
  return polar(l, chroma, hue + 1e-9);
}

/** Of a chroma to the last bit. */
function atChroma(l: number, chroma: number, hue: number): Lab {
  for (let n = 0; n < 1000; n += 1) {
    const lab = polar(l, chroma, hue + n * 1e-6);
    if (chromaOf(lab) === chroma) return lab;
  }
  throw new Error(`no colour of ${chroma}`);
}

const BEFORE = 1e-3;

describe('by lightness', () => {
  it.each([
    // Neutral, C* up to 5.
    [88, 2, 200, 'light grey', 'white'],
    [68, 2, 200, 'middle grey', 'light grey'],
    [45, 2, 200, 'dark grey', 'middle grey'],
    [25, 2, 200, 'black', 'dark grey'],
    // Near neutral, C* up to 12.
    [88, 8, 250, 'pale bluish grey', 'bluish white'],
    [68, 8, 250, 'bluish grey', 'pale bluish grey'],
    [45, 8, 250, 'dark bluish grey', 'bluish grey'],
    [25, 8, 250, 'bluish black', 'dark bluish grey'],
    // A light tinge is never brown, olive or red.
    [68, 8, 70, 'brownish grey', 'pale yellowish grey'],
    [68, 8, 120, 'olive grey', 'pale yellowish grey'],
    [68, 8, 30, 'reddish grey', 'pale pinkish grey'],
    [68, 8, 350, 'purplish grey', 'pale pinkish grey'],
    [68, 8, 100, 'yellowish grey', 'pale yellowish grey'],
    // Brown, olive and pink end where they are too light or begin where they are light enough.
    [66, 30, 70, 'light yellowish brown', 'light yellow orange'],
    [44, 28, 20, 'reddish brown', 'moderate red'],
    [60, 30, 98, 'light olive', 'moderate yellow'],
    [50, 30, 115, 'olive green', 'moderate yellow green'],
    [58, 50, 20, 'strong red', 'strong pink'],
    [68, 40, 45, 'light red orange', 'light yellowish pink'],
    // Modifiers.
    [80, 20, 200, 'light blue green', 'light blue green'],
    [80, 15, 200, 'pale blue green', 'very pale blue green'],
    [65, 15, 200, 'greyish blue green', 'pale blue green'],
    [65, 30, 200, 'moderate blue green', 'light blue green'],
    [65, 45, 200, 'strong blue green', 'bright blue green'],
    [38, 15, 200, 'dark greyish blue green', 'greyish blue green'],
    [38, 30, 200, 'dark blue green', 'moderate blue green'],
    [38, 45, 200, 'deep blue green', 'strong blue green'],
    [18, 15, 200, 'blackish blue green', 'dark greyish blue green'],
    [18, 30, 200, 'very dark blue green', 'dark blue green'],
    [18, 45, 200, 'very deep blue green', 'deep blue green'],
    // Those of browns and olives.
    [52, 30, 50, 'brown', 'light brown'],
    [52, 15, 50, 'greyish brown', 'light greyish brown'],
    [33, 30, 50, 'dark brown', 'brown'],
    [33, 15, 50, 'dark brown', 'greyish brown'],
    [14, 15, 50, 'very dark brown', 'dark brown'],
    [30, 50, 60, 'deep brown', 'strong brown'],
  ])('L* %d (C* %d, h %d): %s before, %s from there', (l, chroma, hue, before, from) => {
    expect(colourInWords(polar(l - BEFORE, chroma, hue))).toBe(before);
    expect(colourInWords(polar(l, chroma, hue))).toBe(from);
  });
});

describe('by hue', () => {
  it.each([
    // Tinges.
    [15, 40, 8, 'dark purplish grey', 'dark reddish grey'],
    [45, 40, 8, 'dark reddish grey', 'dark brownish grey'],
    [75, 40, 8, 'dark brownish grey', 'dark yellowish grey'],
    [105, 40, 8, 'dark yellowish grey', 'dark olive grey'],
    [130, 40, 8, 'dark olive grey', 'dark greenish grey'],
    [200, 40, 8, 'dark greenish grey', 'dark bluish grey'],
    [285, 40, 8, 'dark bluish grey', 'dark purplish grey'],
    [340, 75, 8, 'pale purplish grey', 'pale pinkish grey'],
    [60, 75, 8, 'pale pinkish grey', 'pale yellowish grey'],
    // Brown, h 20-90.
    [20, 35, 25, 'dark greyish red', 'reddish brown'],
    [45, 40, 30, 'reddish brown', 'brown'],
    [65, 40, 30, 'brown', 'yellowish brown'],
    [78, 40, 30, 'yellowish brown', 'olive brown'],
    [90, 40, 30, 'olive brown', 'olive'],
    // Olive to 106, olive green to 126.
    [106, 40, 30, 'olive', 'olive green'],
    [126, 40, 30, 'olive green', 'moderate yellow green'],
    // Pink.
    [340, 70, 40, 'bright purple', 'light purplish pink'],
    [5, 70, 40, 'light purplish pink', 'light pink'],
    [38, 70, 40, 'light pink', 'light yellowish pink'],
    [60, 70, 40, 'light yellowish pink', 'light orange'],
    [48, 70, 50, 'bright yellowish pink', 'bright orange'],
  ])('h %d (L* %d, C* %d): %s before, %s from there', (hue, l, chroma, before, from) => {
    expect(colourInWords(polar(l, chroma, hue - BEFORE))).toBe(before);
    expect(colourInWords(atHue(l, chroma, hue))).toBe(from);
  });
});

describe('by chroma', () => {
  it.each([
    [5, 55, 200, 'middle grey', 'greenish grey'],
    [12, 55, 250, 'bluish grey', 'greyish blue'],
    [25, 55, 10, 'greyish red', 'moderate red'],
    [47, 55, 10, 'moderate red', 'strong red'],
    [66, 55, 10, 'strong red', 'vivid red'],
    [25, 75, 100, 'pale yellow', 'light yellow'],
    [47, 75, 100, 'light yellow', 'bright yellow'],
    [80, 75, 100, 'bright yellow', 'vivid yellow'],
    [18, 55, 250, 'greyish blue', 'moderate blue'],
    [38, 55, 250, 'moderate blue', 'strong blue'],
    [58, 55, 250, 'strong blue', 'vivid blue'],
    [18, 40, 98, 'greyish olive', 'olive'],
    [40, 40, 98, 'olive', 'strong olive'],
  ])('C* %d (L* %d, h %d): %s up to it, %s beyond', (chroma, l, hue, upTo, beyond) => {
    expect(colourInWords(atChroma(l, chroma, hue))).toBe(upTo);
    expect(colourInWords(polar(l, chroma + BEFORE, hue))).toBe(beyond);
  });

  it.each([
    // A brown ends, and a pink, where it gets as strong as this.
    [58, 40, 70, 'strong yellowish brown', 'strong yellow orange'],
    [62, 70, 20, 'bright pink', 'bright red'],
    [62, 70, 45, 'bright yellowish pink', 'bright red orange'],
    [48, 70, 55, 'bright yellowish pink', 'bright orange'],
  ])('C* %d (L* %d, h %d): %s before, %s from there', (chroma, l, hue, before, from) => {
    expect(colourInWords(polar(l, chroma - BEFORE, hue))).toBe(before);
    expect(colourInWords(atChroma(l, chroma, hue))).toBe(from);
  });

  it('the redder a brown is, the sooner it is a red as it gets stronger or lighter', () => {
    const isBrown = (l: number, chroma: number, hue: number) =>
      / ?brown$/.test(colourInWords(polar(l, chroma, hue)));
    // Half way from one bound to the next the bound is half way too.
    for (const [hue, strongest] of [
      [20.001, 30],
      [30, 41],
      [39.999, 52],
      [40, 52],
      [52.5, 55],
      [65, 58],
      [85, 58],
    ] as const) {
      expect([isBrown(40, strongest - 0.02, hue), isBrown(40, strongest + 0.02, hue)]).toEqual([true, false]);
    }
    for (const [hue, lightest] of [
      [20.001, 44],
      [42.5, 55],
      [65, 66],
      [89, 66],
    ] as const) {
      expect([isBrown(lightest - 0.02, 28, hue), isBrown(lightest + 0.02, 28, hue)]).toEqual([true, false]);
    }
  });

  it('the scale of strength turns where the hue can reach another chroma', () => {
    // Yellows reach further than reds, blues and greens less far.
    const strength = (hue: number) => [22, 42, 62, 72].map((chroma) => chromaWord(polar(75, chroma, hue)));
    expect(strength(44)).toEqual(['dull', 'moderate', 'strong', 'vivid']);
    expect(strength(46)).toEqual(['dull', 'moderate', 'strong', 'strong']);
    expect(strength(105)).toEqual(['dull', 'moderate', 'strong', 'strong']);
    expect(strength(129)).toEqual(['dull', 'moderate', 'strong', 'vivid']);
    expect(strength(131)).toEqual(['moderate', 'strong', 'vivid', 'vivid']);
    expect(strength(339)).toEqual(['moderate', 'strong', 'vivid', 'vivid']);
    expect(strength(341)).toEqual(['dull', 'moderate', 'strong', 'vivid']);
  });
});
