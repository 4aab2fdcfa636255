import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reflectanceToLab } from '../../src/colour/index.js';
import { MODEL_ERROR } from '../../src/judgement/index.js';
import { ground, LEVEL, spectrum } from '../../src/optics/index.js';
import type { Studio } from '../../src/paints/index.js';
import {
  type Laid,
  layMixture,
  puddleReflectance,
  seeAlone,
  seeLaid,
  seeWet,
  strokeShares,
  strokesReflectance,
  type Wash,
  washLoads,
} from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';

const paint = fc.constantFrom(...STUDIO.paints.map(({ id }) => id));
const strength = fc.double({ min: 0.02, max: 1, noNaN: true });
const wash: fc.Arbitrary<Wash> = fc
  .record({ paints: fc.tuple(paint, paint), strength })
  .map(({ paints, strength: at }) => ({
    paints: Object.fromEntries(paints.map((id, index) => [id, index + 1])),
    strength: at,
  }));

function expectSame(one: Laid, other: Laid): void {
  const [a, b] = [seeLaid(STUDIO, one).reflectance, seeLaid(STUDIO, other).reflectance];
  for (const [band, value] of a.entries()) expect(Math.abs(value - (b[band] as number))).toBeLessThan(1e-12);
}

describe('how sure it is', () => {
  const alone = (id: string): number =>
    MODEL_ERROR[seeLaid(STUDIO, { paints: { [id]: 1 }, strength: 0.3 }).evidence].step;

  test('is no better than of the paint that is known least, be it ever so little of it', () => {
    const kinds = ['measured', 'transferred', 'estimated'] as const;
    const [measured, ...others] = kinds.map(
      (kind) => STUDIO.paints.find(({ evidence }) => evidence === kind)?.id as string,
    );
    for (const other of others) {
      for (const paints of [
        { [measured as string]: 20, [other]: 1 },
        { [other]: 1, [measured as string]: 20 },
      ]) {
        const { evidence } = seeLaid(STUDIO, { paints, strength: 0.3 });
        expect(evidence).toBe(paintOf(other).evidence);
        expect(MODEL_ERROR[evidence].step).toBe(alone(other));
        expect(MODEL_ERROR[evidence].step).toBeGreaterThan(alone(measured as string));
      }
    }
  });

  test('counts the washes below and the strokes beside', () => {
    const guessed = STUDIO.paints.find(({ evidence }) => evidence === 'estimated')?.id as string;
    const [sure, unsure] = ['burnt-sienna', guessed].map((id) => ({
      paints: { [id]: 1 },
      strength: 0.3,
    })) as [Wash, Wash];
    expect(seeLaid(STUDIO, { layers: [unsure, sure] }).evidence).toBe('estimated');
    const strokes = [
      { ...sure, share: 0.9 },
      { ...unsure, share: 0.1 },
    ];
    expect(seeLaid(STUDIO, { strokes }).evidence).toBe('estimated');
    expect(seeLaid(STUDIO, { layers: [sure, sure] }).evidence).toBe('measured');
  });
});

describe('what lies there', () => {
  test('one wash is one layer, and strokes of the same wash are that wash', () => {
    fc.assert(
      fc.property(wash, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (one, share) => {
        expectSame(one, { layers: [one] });
        const strokes = [
          { ...one, share },
          { ...one, share: 1 - share },
        ];
        expectSame(one, { strokes });
      }),
    );
  });

  test('strokes are the mean of what their washes reflect, by their shares', () => {
    const [one, other]: Wash[] = [
      { paints: { 'lemon-yellow': 1 }, strength: 0.5 },
      { paints: { 'ultramarine-blue': 1 }, strength: 0.2 },
    ];
    if (one === undefined || other === undefined) throw new Error('no washes');
    const both = seeLaid(STUDIO, {
      strokes: [
        { ...one, share: 0.3 },
        { ...other, share: 0.7 },
      ],
    }).reflectance;
    const [a, b] = [one, other].map((each) => seeLaid(STUDIO, each).reflectance);
    for (const [band, value] of both.entries())
      expect(value).toBeCloseTo(0.3 * (a?.[band] as number) + 0.7 * (b?.[band] as number), 12);
  });

  test('a puddle laid as strokes: every stroke at the strength of the whole, on its share of it', () => {
    const loads = washLoads(STUDIO, { paints: { 'lemon-yellow': 1, 'ultramarine-blue': 2 }, strength: 0.4 });
    const shares = strokeShares(loads);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    const strokes = loads.map(({ pigment }, at) => ({
      paints: { [pigment.id]: 1 },
      strength: 0.4,
      share: shares[at] as number,
    }));
    const apart = strokesReflectance(loads, STUDIO.paper);
    for (const [band, value] of seeLaid(STUDIO, { strokes }).reflectance.entries())
      expect(value).toBeCloseTo(apart[band] as number, 12);
  });

  test('all names of the paint in a passage come with their loads, wash by wash', () => {
    const first = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };
    const added = [
      { id: 'sap-green', amount: 0.2 },
      { id: 'alizarin-crimson', amount: 0.1 },
    ];
    const of = (way: 'puddle' | 'glaze' | 'strokes'): string[][] =>
      seeLaid(STUDIO, layMixture(first, { way, added, strength: 0.3, thin: 1 })).loads.map((film) =>
        film.map(({ pigment }) => pigment.id),
      );
    expect(of('puddle')).toEqual([['burnt-sienna', 'sap-green', 'alizarin-crimson']]);
    expect(of('glaze')).toEqual([['burnt-sienna'], ['sap-green'], ['alizarin-crimson']]);
    expect(of('strokes')).toEqual([['burnt-sienna'], ['sap-green'], ['alizarin-crimson']]);
  });

  test('an unknown paint is refused', () => {
    expect(() => seeLaid(STUDIO, { paints: { 'no-such': 1 }, strength: 0.3 })).toThrow(
      /no paint is called "no-such"/,
    );
    expect(() => seeAlone(STUDIO, '__proto__', 0.3)).toThrow(RangeError);
  });

  test('wet it is no lighter than dry', () => {
    fc.assert(
      fc.property(wash, (one) => {
        const [wet, dry] = [seeWet(STUDIO, one).colour, seeLaid(STUDIO, one).colour];
        expect(wet.lab.l).toBeLessThanOrEqual(dry.lab.l + 1e-9);
      }),
    );
  });
});

describe('a studio of one’s own', () => {
  const grey = ground(spectrum(Array.from({ length: 38 }, () => 0.5)), undefined, LEVEL);
  const own: Studio = {
    paints: [{ ...paintOf('burnt-sienna'), id: 'my-sienna', name: 'my sienna' }],
    paper: grey,
    palettes: [],
  };

  test('has its own paints on its own paper, and does not mix with the library', () => {
    const laid = { paints: { 'my-sienna': 1 }, strength: 0.3 };
    const here = seeLaid(own, laid);
    const expected = puddleReflectance(washLoads(own, laid), grey);
    expect(here.colour.lab).toEqual(reflectanceToLab(expected, 'D65-2'));
    expect(here.colour.step).toBeGreaterThan(seeAlone(STUDIO, 'burnt-sienna', 0.3).colour.step);
    expect(() => seeLaid(own, { paints: { 'burnt-sienna': 1 }, strength: 0.3 })).toThrow(
      /no paint is called/,
    );
    expect(() => seeLaid(STUDIO, laid)).toThrow(/no paint is called/);
    expect(seeAlone(own, 'my-sienna', 0.3).colour.lab).toEqual(here.colour.lab);
  });
});
