import { describe, expect, test } from 'vitest';
import { shadingLine } from '../../../src/colour/chroma.js';
import { hueDifference } from '../../../src/colour/lab.js';
import { readColour } from '../../../src/colour/reading.js';
import { lightnessFromMunsellValue, painterStep, valueFromStep } from '../../../src/colour/value.js';
import { fittingTurn } from '../../../src/drills/kinds/shade-chroma/answers.js';
import { shadowBand, shadowStep } from '../../../src/drills/kinds/shadow-values/rules.js';
import { inShade, withChroma } from '../../../src/drills/light.js';
import { VALUE_BOUNDS } from '../../../src/judgement/index.js';
import {
  type Laid,
  seeLaid,
  seeWet,
  strokesReflectance,
  WATERS,
  type Wash,
  washLoads,
  waterStrength,
} from '../../../src/washes/index.js';
import { STUDIO } from '../../studio.js';

const MEASURED = STUDIO.paints
  .filter(({ evidence, id }) => evidence === 'measured' && !id.includes('white'))
  .map(({ id }) => id);
const HUED = MEASURED.filter((id) => !id.includes('black'));
const one = (id: string, strength: number): Wash => ({ paints: { [id]: 1 }, strength });
const colour = (laid: Laid) => seeLaid(STUDIO, laid).colour;
const wetColour = (laid: Laid) => seeWet(STUDIO, laid).colour;
const mean = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;

// Source: B. MacEvoy, handprint.com, color11.html (value): in direct sun a shaded side near six tenths of the lit
// Munsell value, a cast shadow near four tenths; "8 to 5" and "9 to 4" after rounding, 4.8 and 3.6 before.
describe('values of shadows', () => {
  test('a lit 8 has a shaded side of 4.8, a lit 9 casts 3.6', () => {
    expect(valueFromStep(shadowStep(painterStep(8), 'shade'))).toBeCloseTo(4.8, 9);
    expect(valueFromStep(shadowStep(painterStep(9), 'cast'))).toBeCloseTo(3.6, 9);
  });

  test('half a step each way counts, so the rounded figures do', () => {
    const [light, dark] = shadowBand(painterStep(8), 'shade', 'sun');
    expect(painterStep(5)).toBeGreaterThanOrEqual(light);
    expect(painterStep(5)).toBeLessThanOrEqual(dark);
    const cast = shadowBand(painterStep(9), 'cast', 'sun');
    expect(painterStep(4)).toBeGreaterThanOrEqual(cast[0]);
    expect(painterStep(4)).toBeLessThanOrEqual(cast[1]);
  });

  // Common practice, no source.
  test('under a grey sky the rule does not hold; in hard light a step more is allowed', () => {
    expect(shadowBand(2.5, 'shade', 'overcast')[1]).toBeLessThan(shadowStep(2.5, 'shade') - 1);
    expect(shadowBand(2.5, 'shade', 'hard-sun')[1]).toBeCloseTo(shadowBand(2.5, 'shade', 'sun')[1] + 1, 9);
  });
});

// Source: D. Briggs, The Dimensions of Colour, section 10.1: under less light L* + 16, a* and b* all scale with the cube
// root of the light; L* 60, a* 40, b* 30 at 40 % of the light is L* 40.0, a* 29.47, b* 22.1.
describe('a surface in shade', () => {
  test('the published example lies on the line', () => {
    expect(shadingLine(Math.hypot(40, 30), 60, 40)).toBeCloseTo(Math.hypot(29.47, 22.1), 1);
  });

  test('the shade of every measured paint lies on its line, with its hue', () => {
    for (const id of HUED) {
      const lit = colour(one(id, 0.2));
      const shade = readColour(inShade(seeLaid(STUDIO, one(id, 0.2)).reflectance, lit.step + 2));
      expect(shade.step, id).toBeCloseTo(lit.step + 2, 6);
      // The line is exact while all tristimulus ratios stay above 0.0089; strong yellows leave that range.
      const line = shadingLine(lit.chroma, lit.lab.l, shade.lab.l);
      expect(Math.abs(shade.chroma - line), id).toBeLessThan(0.5 + 0.02 * line);
      expect(Math.abs(hueDifference(shade.hue, lit.hue)), id).toBeLessThan(2);
    }
  });

  test('a swatch gets the chroma that is wanted and keeps its value', () => {
    const shade = inShade(seeLaid(STUDIO, one('burnt-sienna', 0.3)).reflectance, 6);
    const before = readColour(shade);
    for (const chroma of [10, 25, 40]) {
      const after = readColour(withChroma(shade, chroma));
      expect(after.chroma).toBeCloseTo(chroma, 3);
      expect(after.step).toBeCloseTo(before.step, 3);
    }
  });

  // Source: B. MacEvoy, handprint.com, color18b.html: greens turn towards blue in shadow, oranges towards red.
  test('which way the hue may turn', () => {
    expect(fittingTurn(150)).toBe('to-blue');
    expect(fittingTurn(60)).toBe('to-red');
  });
});

// Source: B. MacEvoy, handprint.com, cdsl.html and cdsp.html (drying shift of 75 paints): mean change of lightness 2.3 L*;
// loss of chroma is the main change.
describe('what drying does', () => {
  const full = MEASURED.map((id) => {
    const laid = one(id, 1);
    const [dry, wet] = [colour(laid), wetColour(laid)];
    return { id, rise: dry.lab.l - wet.lab.l, lost: wet.chroma - dry.chroma };
  });

  test('the mean rise of L* is the published one, the loss of chroma clearly larger', () => {
    expect(mean(full.map(({ rise }) => rise))).toBeCloseTo(2.3, 1);
    expect(mean(full.map(({ lost }) => lost))).toBeGreaterThan(2 * 2.3);
  });

  test('every paint loses chroma, none changes by a whole step', () => {
    for (const { id, rise, lost } of full) {
      expect(lost, id).toBeGreaterThan(0);
      expect(Math.abs(rise), id).toBeLessThan(10);
    }
  });

  // Source: the same guide, intstud.html: dark and concentrated paints change more, light and dilute ones less.
  test('a dilute wash changes less than a strong one, in every measured paint', () => {
    for (const id of MEASURED) {
      const loss = (strength: number): number =>
        wetColour(one(id, strength)).chroma - colour(one(id, strength)).chroma;
      expect(loss(0.08), id).toBeLessThan(loss(0.9));
    }
  });

  // Sources: the same guide, waterw.html: lamp black as the extreme of lightness change; second-hand figures (a painter's
  // page of 2017 quoting the guide): ultramarine shifts three times as far as a hansa yellow.
  test('lamp black lightens most; ultramarine changes more than a hansa yellow', () => {
    const rise = (id: string): number => colour(one(id, 1)).lab.l - wetColour(one(id, 1)).lab.l;
    const shift = (id: string): number => {
      const [dry, wet] = [colour(one(id, 1)).lab, wetColour(one(id, 1)).lab];
      return Math.hypot(dry.l - wet.l, dry.a - wet.a, dry.b - wet.b);
    };
    const most = Math.max(...MEASURED.map(rise));
    expect(rise('lamp-black')).toBeGreaterThan(most);
    expect(shift('ultramarine-blue')).toBeGreaterThan(shift('hansa-yellow-medium'));
  });
});

// Source: D. Briggs, The Dimensions of Colour, section 4.4, after O. Rood, Modern Chromatics, 1879.
describe('strokes, puddle and glaze', () => {
  test('strokes are never darker than the puddle of the same paint, and never stronger than their stronger part', () => {
    for (const [index, a] of MEASURED.entries()) {
      for (const b of MEASURED.slice(index + 1)) {
        const both = { paints: { [a]: 1, [b]: 1 }, strength: 0.5 };
        const strokes = readColour(strokesReflectance(washLoads(STUDIO, both), STUDIO.paper));
        expect(strokes.step, `${a} ${b}`).toBeLessThanOrEqual(colour(both).step);
        const parts = [colour(one(a, 0.5)).chroma, colour(one(b, 0.5)).chroma];
        expect(strokes.chroma, `${a} ${b}`).toBeLessThanOrEqual(Math.max(...parts));
      }
    }
  });

  test('yellow and ultramarine as strokes pass through grey, in a puddle they make a green', () => {
    const at = (share: number) =>
      colour({
        strokes: [
          { paints: { 'cadmium-yellow': 1 }, strength: 0.6, share: 1 - share },
          { paints: { 'ultramarine-blue': 1 }, strength: 0.6, share },
        ],
      });
    const shares = Array.from({ length: 81 }, (_, index) => 0.1 + index / 100);
    const greyest = Math.min(...shares.map((share) => at(share).chroma));
    expect(greyest).toBeLessThan(12.5);
    // Never a green on the way: 120 to 200 degrees with any strength.
    expect(shares.map(at).filter(({ hue, chroma }) => chroma > 12 && hue > 120 && hue < 200)).toEqual([]);
    const puddle = colour({ paints: { 'cadmium-yellow': 1, 'ultramarine-blue': 1 }, strength: 0.5 });
    expect(puddle.hue).toBeGreaterThan(100);
    expect(puddle.hue).toBeLessThan(200);
  });

  // Source: D. Briggs, section 6.1, and B. MacEvoy, color18a.html: a transparent glaze can only darken. To one unit of L*:
  // clear paints of the library still scatter a little.
  test('a glaze of a transparent paint does not lighten what lies below', () => {
    const clear = STUDIO.paints
      .filter(
        ({ handling, evidence }) => (handling.transparency?.value ?? 0) >= 3 && evidence !== 'estimated',
      )
      .map(({ id }) => id);
    expect(clear.length).toBeGreaterThan(3);
    for (const glaze of clear) {
      for (const below of MEASURED) {
        const wash = { paints: { [below]: 1 }, strength: 0.4 };
        const top = { paints: { [glaze]: 1 }, strength: 0.4 };
        expect(colour({ layers: [wash, top] }).step, `${glaze} over ${below}`).toBeGreaterThanOrEqual(
          colour(wash).step - 0.1,
        );
      }
    }
  });

  // Source: B. MacEvoy, handprint.com, color18a.html: cadmium yellow over phthalo green is lighter and less saturated
  // than phthalo green over cadmium yellow.
  test('the order of cadmium yellow and phthalo green', () => {
    const yellow = { paints: { 'cadmium-yellow': 1 }, strength: 0.6 };
    const green = { paints: { 'phthalo-green-blue-shade': 1 }, strength: 0.5 };
    const yellowTop = colour({ layers: [green, yellow] });
    const greenTop = colour({ layers: [yellow, green] });
    expect(yellowTop.step).toBeLessThan(greenTop.step);
    expect(yellowTop.chroma).toBeLessThan(greenTop.chroma);
  });

  // Source: B. MacEvoy, handprint.com, intstud.html: a second thin layer of the same paint darkens and strengthens.
  test('the same thin wash twice is darker and stronger', () => {
    for (const id of HUED) {
      const wash = { paints: { [id]: 1 }, strength: 0.05 };
      const [once, twice] = [colour(wash), colour({ layers: [wash, wash] })];
      expect(twice.step, id).toBeGreaterThan(once.step);
      expect(twice.chroma, id).toBeGreaterThan(once.chroma);
    }
  });

  // Source: B. MacEvoy, handprint.com, color18b.html: within about 45 degrees little chroma goes, near the opposite most.
  test('neighbours keep more of their chroma than paints across the wheel', () => {
    const kept = (near: (angle: number) => boolean): number[] =>
      HUED.flatMap((a) =>
        HUED.filter(
          (b) => a < b && near(Math.abs(hueDifference(colour(one(a, 0.4)).hue, colour(one(b, 0.4)).hue))),
        ).map((b) => {
          const parts = [colour(one(a, 0.4)).chroma, colour(one(b, 0.4)).chroma];
          return colour({ paints: { [a]: 1, [b]: 1 }, strength: 0.4 }).chroma / mean(parts);
        }),
      );
    expect(mean(kept((angle) => angle <= 45))).toBeGreaterThan(0.8);
    expect(mean(kept((angle) => angle > 120))).toBeLessThan(0.55);
  });
});

// Source: B. MacEvoy, handprint.com, color18b.html: most paints are strongest at one part to four to six of water.
test('water: the middle one of the measured colours is strongest at 1:4 to 1:6', () => {
  const strengths = Array.from({ length: 400 }, (_, index) => (index + 1) / 400);
  const peaks = HUED.map((id) =>
    strengths.reduce((best, next) =>
      colour(one(id, next)).chroma > colour(one(id, best)).chroma ? next : best,
    ),
  )
    .map((strength) => (1 + 3) / strength - 1)
    .sort((a, b) => a - b);
  const median = peaks[Math.floor(peaks.length / 2)] as number;
  expect(median).toBeGreaterThanOrEqual(4);
  expect(median).toBeLessThanOrEqual(6);
  expect(waterStrength('1:3')).toBe(1);
  expect(WATERS.map(waterStrength)).toEqual([...WATERS.map(waterStrength)].sort((a, b) => a - b));
  expect(() => waterStrength('1:1')).toThrow(RangeError);
});

// Source: B. MacEvoy, handprint.com, color11.html: usable range on paper L* 97 to 20; cut in three even parts by us.
test('light, middle and dark share the range of watercolour evenly', () => {
  const third = (97 - 20) / 3;
  const [light, dark] = VALUE_BOUNDS.map((step) => lightnessFromMunsellValue(valueFromStep(step)));
  expect(Math.abs((light as number) - (97 - third))).toBeLessThan(0.5);
  expect(Math.abs((dark as number) - (20 + third))).toBeLessThan(0.5);
});
