import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chromaWord, colourInWords } from '../../src/colour/words.js';

/** CIELAB from lightness, chroma and hue in degrees. */
const lab = (l: number, chroma: number, hue: number) => ({
  l,
  a: chroma * Math.cos((hue * Math.PI) / 180),
  b: chroma * Math.sin((hue * Math.PI) / 180),
});
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a colour in words', () => {
  it.each([
    [95, 2, 109, 'white'],
    [75, 2, 109, 'light grey'],
    [55, 1, 0, 'middle grey'],
    [30, 2, 200, 'dark grey'],
    [15, 0, 0, 'black'],
    [75, 8, 250, 'pale bluish grey'],
    [55, 10, 250, 'bluish grey'],
    [20, 6, 60, 'brownish black'],
    [92, 8, 20, 'pinkish white'],
    [30, 21, 37, 'dark reddish brown'],
    [45, 24, 55, 'brown'],
    [42, 30, 98, 'olive'],
    [40, 35, 115, 'olive green'],
    [85, 95, 88, 'vivid yellow'],
    [70, 40, 20, 'light pink'],
    [27, 31, 268, 'dark blue'],
    [30, 30, 330, 'dark purple'],
  ])('L* %d C* %d h %d is %s', (l, chroma, hue, words) => {
    expect(colourInWords(lab(l, chroma, hue))).toBe(words);
  });

  it('is one to four plain words for every colour', () => {
    fc.assert(
      fc.property(number(0, 100), number(0, 130), number(0, 360), (l, chroma, hue) => {
        expect(colourInWords(lab(l, chroma, hue))).toMatch(/^[a-z]+( [a-z]+){0,3}$/);
      }),
    );
  });

  it('says neutral things of neutrals whatever their hue', () => {
    fc.assert(
      fc.property(number(0, 100), number(0, 2.99), number(0, 360), (l, chroma, hue) => {
        expect(colourInWords(lab(l, chroma, hue))).toMatch(/^(white|(light|middle|dark) grey|black)$/);
      }),
    );
  });

  it.each([
    [5, 20, 'neutral'],
    [5.1, 20, 'near neutral'],
    [12.1, 20, 'dull'],
    [47, 20, 'moderate'],
    [66, 20, 'strong'],
    [66.1, 20, 'vivid'],
    [70, 80, 'strong'],
    [40, 270, 'strong'],
  ])('C* %d at h %d is %s', (chroma, hue, word) => {
    expect(chromaWord(lab(60, chroma, hue))).toBe(word);
  });

  it('says one strength in the name and in the word for chroma', () => {
    const inName: readonly (readonly [RegExp, RegExp])[] = [
      [/^vivid/, /^vivid$/],
      [/^(strong|bright|deep|very deep)\b/, /^strong$/],
      [/^moderate/, /^moderate$/],
      [/greyish|^(very )?pale (?!.*grey)|^blackish/, /^dull$/],
      [/^(white|black|(light|middle|dark) grey)$/, /^neutral$/],
      [/ish (white|black)$|ish grey$/, /^near neutral$/],
    ];
    fc.assert(
      fc.property(number(0, 100), number(0, 130), number(0, 360), (l, chroma, hue) => {
        const colour = lab(l, chroma, hue);
        const words = colourInWords(colour);
        for (const [name, word] of inName)
          if (name.test(words)) expect(chromaWord(colour), words).toMatch(word);
      }),
    );
  });

  it('never calls a light colour dark, nor a dark one pale', () => {
    fc.assert(
      fc.property(number(0, 100), number(0, 100), number(0, 360), (l, chroma, hue) => {
        const words = colourInWords(lab(l, chroma, hue));
        if (l >= 60) expect(words).not.toMatch(/dark|deep|black/);
        if (l < 35) expect(words).not.toMatch(/pale|light|bright|white/);
      }),
    );
  });

  it('refuses what is not a colour', () => {
    expect(() => colourInWords({ l: Number.NaN, a: 0, b: 0 })).toThrow(RangeError);
    expect(() => colourInWords({ l: 50, a: Number.NaN, b: 0 })).toThrow('is not a colour');
  });
});
