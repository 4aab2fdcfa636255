import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeColour } from '../../src/colour/describe.js';
import { deltaE00 } from '../../src/colour/difference.js';
import { chromaOf, hueOf } from '../../src/colour/lab.js';
import { readColour } from '../../src/colour/reading.js';
import { toScreen } from '../../src/colour/screen.js';
import { munsellValueFromY } from '../../src/colour/value.js';
import { colourInWords } from '../../src/colour/words.js';
import { anyReflectance, flat } from './helpers/spectra.js';

describe('a reading', () => {
  it('agrees with itself', () => {
    fc.assert(
      fc.property(anyReflectance, (reflectance) => {
        const { xyz, lab, value, step, chroma, hue } = readColour(reflectance);
        expect(value).toBe(munsellValueFromY(xyz.y));
        expect(step).toBe(10.5 - value);
        expect(chroma).toBe(chromaOf(lab));
        expect(hue).toBe(hueOf(lab));
      }),
    );
  });

  it('gets darker, in value and in step, as less is reflected', () => {
    fc.assert(
      fc.property(anyReflectance, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (reflectance, share) => {
        fc.pre(reflectance.some((band) => band > 0.2));
        const lit = readColour(reflectance);
        const dimmed = readColour(reflectance.map((band) => band * share));
        expect(dimmed.value).toBeLessThan(lit.value);
        expect(dimmed.step).toBeGreaterThan(lit.step);
      }),
    );
  });
});

describe('a description', () => {
  it('is the reading with its notation, words and screen colour', () => {
    fc.assert(
      fc.property(anyReflectance, (reflectance) => {
        const description = describeColour(reflectance);
        expect(description).toMatchObject(readColour(reflectance));
        expect(description).toMatchObject(toScreen(description.xyz));
        expect(description.words).toBe(colourInWords(description.lab));
      }),
      { numRuns: 50 },
    );
    // Y 19.27 is value 5 (ASTM D1535).
    expect(describeColour(flat(0.192718))).toMatchObject({ munsell: 'N 5.0', words: 'middle grey' });
  });

  it('refuses a reflectance that holds something that is not a number', () => {
    expect(() => describeColour(flat(Number.NaN))).toThrow(RangeError);
  });
});

describe('colour difference', () => {
  it('is nothing for the same colour, something otherwise, the same both ways', () => {
    fc.assert(
      fc.property(anyReflectance, anyReflectance, (one, other) => {
        const [a, b] = [readColour(one).lab, readColour(other).lab];
        expect(deltaE00(a, a)).toBe(0);
        expect(deltaE00(a, b)).toBeGreaterThan(0);
        expect(deltaE00(a, b)).toBeCloseTo(deltaE00(b, a), 9);
      }),
    );
  });
});
