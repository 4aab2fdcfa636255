import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BLACK_FIRST,
  bandEnds,
  formatStep,
  lightnessFromMunsellValue,
  munsellValueFromY,
  PAPER_FIRST,
  painterStep,
  scaleEnds,
  VALUE_SCALES,
  valueFromStep,
  valueWord,
  yFromMunsellValue,
} from '../../src/colour/value.js';

const value = fc.double({ min: 0, max: 10, noNaN: true });
const everyValue = (check: (v: number) => void): void => {
  fc.assert(
    fc.property(value, (v) => {
      check(v);
    }),
  );
};
const luminance = fc.double({ min: 0, max: 100, noNaN: true });

describe('Munsell value', () => {
  it('comes back from luminance unchanged', () => {
    everyValue((v) => expect(munsellValueFromY(yFromMunsellValue(v))).toBeCloseTo(v, 9));
    fc.assert(
      fc.property(luminance, (y) => {
        expect(yFromMunsellValue(munsellValueFromY(y))).toBeCloseTo(y, 9);
      }),
    );
  });

  it('rises with luminance', () => {
    fc.assert(
      fc.property(luminance, luminance, (one, other) => {
        fc.pre(Math.abs(one - other) > 1e-6);
        const [darker, lighter] = one < other ? [one, other] : [other, one];
        expect(munsellValueFromY(lighter)).toBeGreaterThan(munsellValueFromY(darker));
      }),
    );
  });

  it('stays within 0-10 and 0-100 whatever comes in', () => {
    expect(munsellValueFromY(-5)).toBe(0);
    expect(munsellValueFromY(130)).toBe(10);
    expect(yFromMunsellValue(-1)).toBe(0);
    expect(yFromMunsellValue(12)).toBe(yFromMunsellValue(10));
    expect(yFromMunsellValue(10)).toBeCloseTo(100, 3);
  });

  it('does not hide something that is not a number', () => {
    expect(munsellValueFromY(Number.NaN)).toBeNaN();
  });

  it('is about a tenth of L*', () => {
    everyValue((v) => expect(Math.abs(lightnessFromMunsellValue(v) - 10 * v)).toBeLessThan(1.2));
  });
});

describe('steps', () => {
  it('run from 1 for V 9.5 to 10 for V 0.5, and back', () => {
    expect(painterStep(9.5)).toBe(1);
    expect(painterStep(0.5)).toBe(10);
    everyValue((v) => expect(valueFromStep(painterStep(v))).toBeCloseTo(v, 12));
  });

  it('go a little past their ends rather than hide a brighter paper', () => {
    expect(painterStep(9.8)).toBeCloseTo(0.7, 12);
    expect(painterStep(11)).toBe(0.5);
    expect(valueFromStep(20)).toBe(0);
  });

  it.each(Object.values(VALUE_SCALES))('of the scale $id come back from value unchanged', (scale) => {
    everyValue((v) => expect(scale.valueOf(scale.stepOf(v))).toBeCloseTo(v, 12));
    expect(VALUE_SCALES[scale.id]).toBe(scale);
  });

  it('are lightest where the scale says so', () => {
    for (const scale of Object.values(VALUE_SCALES)) {
      expect(scale.valueOf(scale.lightest.step)).toBeGreaterThan(scale.valueOf(scale.darkest.step));
    }
  });

  it('print to one decimal, with the ends named in number order', () => {
    expect(formatStep(4)).toBe('6.5');
    expect(formatStep(4, BLACK_FIRST)).toBe('4.0');
    expect(formatStep(0, BLACK_FIRST)).toBe('0.0');
    expect(scaleEnds()).toBe('1 paper white to 10 darkest dark');
    expect(scaleEnds(BLACK_FIRST)).toBe('0 black to 10 white');
    expect(scaleEnds(PAPER_FIRST)).toBe(scaleEnds());
  });
});

describe('value words', () => {
  // Bands of lightness tens: B. MacEvoy, handprint.com HP/WCL/pigmt8.html; the words are ours.
  it.each([
    [9.4, 'near white'],
    [8.5, 'very light'],
    [7, 'light'],
    [6.99, 'middle light'],
    [5.5, 'middle'],
    [4.2, 'middle dark'],
    [3.5, 'dark'],
    [2.1, 'very dark'],
    [1.9, 'near black'],
    [0, 'near black'],
  ])('V %d is %s', (v, word) => {
    expect(valueWord(v)).toBe(word);
  });
});

describe('a band of steps', () => {
  it('ends where the scale ends, whatever lies beyond', () => {
    expect(bandEnds([4.6, 5.6])).toEqual(['4.6', '5.6']);
    expect(bandEnds([7.9, 10.4])).toEqual(['7.9', '10 (the darkest)']);
    expect(bandEnds([0.6, 2])).toEqual(['1 (the lightest)', '2.0']);
    expect(bandEnds([4.6, 5.6], BLACK_FIRST), 'lower number first').toEqual(['4.9', '5.9']);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 12, noNaN: true }),
        (one, other) => {
          for (const end of bandEnds([Math.min(one, other), Math.max(one, other)])) {
            expect(Number.parseFloat(end)).toBeGreaterThanOrEqual(1);
            expect(Number.parseFloat(end)).toBeLessThanOrEqual(10);
          }
        },
      ),
    );
  });
});
