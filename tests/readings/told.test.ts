/** What readings tell, on data simulated by the program's own model (see recovery.ts); the long run has two hundred trials. */
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { boxStudio } from '../../src/paints/index.js';
import { patchColour, type Reading, readingsTold, toldBy } from '../../src/readings/index.js';
import { seeLaid, type Wash, waterStrength } from '../../src/washes/index.js';
import { sayAll, tell } from '../../src/words/tell.js';
import { STUDIO } from '../studio.js';
import { anyTubes, askedFor, medianOf, painted, recovered, STEADY, shareOf } from './recovery.js';

const SIX = STUDIO.palettes.find(({ id }) => id === 'six')?.pigments ?? [];
const WASHES = askedFor(SIX, 3);
const VOICE = { scale: 'paper-first', spoken: false } as const;
const EXACT = { noise: 0, offset: 0, water: 0 };

/** Found over true of a tube, both against the tubes that can be told. */
function ratioOf(readings: readonly Reading[], truth: ReadonlyMap<string, number>): Map<string, number> {
  return new Map(
    [...recovered(1, 'one', () => ({ truth, readings }))].map(([id, { ratios }]) => [
      id,
      ratios[0] as number,
    ]),
  );
}

describe('what is predicted of a patch', () => {
  const wash: Wash = { paints: { 'burnt-sienna': 1 }, strength: 0.3, add: { 'ultramarine-blue': 0.5 } };

  it('is what the rest of the program predicts where the tubes are the library’s', () => {
    expect(patchColour(STUDIO, wash, 'mixed').lab).toEqual(seeLaid(STUDIO, wash).colour.lab);
    const { add: _, ...alone } = wash;
    expect(patchColour(STUDIO, wash, 'alone').lab).toEqual(seeLaid(STUDIO, alone).colour.lab);
  });

  it('is what a box with that strength predicts, where the first tube is the library’s', () => {
    const strengths = { 'ultramarine-blue': 1.4 };
    const own = boxStudio(STUDIO, { id: 'x', name: 'x', note: '', pigments: [], strengths });
    const { lab } = patchColour(STUDIO, wash, 'mixed', {
      strengths: new Map([['ultramarine-blue', Math.log(1.4)]]),
      wash: 0,
    });
    const seen = seeLaid(own, wash).colour.lab;
    expect(Math.hypot(lab.l - seen.l, lab.a - seen.a, lab.b - seen.b)).toBeLessThan(1e-9);
  });
});

describe('strengths from values', () => {
  it('are found within a fifth, and held by their intervals, in the short run', () => {
    const found = recovered(24, 'short', (draw) => {
      const truth = anyTubes(SIX, draw);
      return { truth, readings: painted(WASHES, truth, { noise: 0.5, offset: 0.4, water: 0.2 }, draw) };
    });
    expect(found.size).toBe(5);
    const all = [...found.values()];
    const median = medianOf(all.flatMap(({ ratios }) => ratios));
    expect(median).toBeGreaterThan(0.8);
    expect(median).toBeLessThan(1.2);
    expect(shareOf(all.flatMap(({ held }) => held))).toBeGreaterThanOrEqual(0.9);
  });

  it('stay at the library’s for readings that are the library’s', () => {
    const { tubes, disagreements, offset } = toldBy(STUDIO, painted(WASHES, new Map(), EXACT, seededDraw(1)));
    for (const { factor } of tubes) expect(factor).toBeCloseTo(1, 3);
    expect(disagreements).toEqual([]);
    expect(offset?.steps).toBeCloseTo(0, 3);
  });

  it('leave the others alone where one tube is unlike the library’s', () => {
    const unlike = new Map([['ultramarine-blue', Math.log(1.6)]]);
    const { tubes } = toldBy(STUDIO, painted(WASHES, unlike, EXACT, seededDraw(1)));
    expect(tubes.map(({ id }) => id)).toHaveLength(5);
    for (const { id, factor, interval } of tubes) {
      const real = id === 'ultramarine-blue' ? 1.6 : 1;
      expect(Math.abs(Math.log(factor / real)), id).toBeLessThan(Math.log(1.07));
      expect(interval[0], id).toBeLessThan(real);
      expect(interval[1], id).toBeGreaterThan(real);
    }
  });

  it('may stand further from the middle one than a tube from the library’s', () => {
    const unlike = new Map(SIX.map((id, at) => [id, Math.log(at % 2 === 0 ? 0.4 : 2.5)]));
    const { tubes } = toldBy(STUDIO, painted(WASHES, unlike, EXACT, seededDraw(1)));
    expect(Math.min(...tubes.map(({ interval }) => interval[0]))).toBeLessThan(1 / 4);
  });

  it('of two tubes are a ratio', () => {
    const washes = ['1:12', '1:24'].flatMap((water) =>
      [1 / 4, 1, 2].map(
        (parts): Wash => ({
          paints: { 'burnt-sienna': 1 },
          strength: waterStrength(water),
          add: { 'ultramarine-blue': parts },
        }),
      ),
    );
    const readings = painted(washes, new Map([['ultramarine-blue', Math.log(1.6)]]), EXACT, seededDraw(1));
    const told = toldBy(STUDIO, readings);
    const [blue, sienna] = ['ultramarine-blue', 'burnt-sienna'].map(
      (wanted) => told.tubes.find(({ id }) => id === wanted)?.factor ?? 0,
    ) as [number, number];
    expect(blue * sienna).toBeCloseTo(1, 6);
    expect(blue / sienna).toBeGreaterThan(1.2);
    const said = sayAll(readingsTold(STUDIO, told, readings), VOICE).join(' ');
    expect(said).toContain(`${Number((blue / sienna).toPrecision(2))} times your burnt sienna`);
    expect(said).not.toContain('as strong as the library’s');
    expect(said).toContain('a correction moves each of them half way');
  });

  it('do not follow a scale that is off as a whole: the offset does', () => {
    const { tubes, offset } = toldBy(
      STUDIO,
      painted(WASHES, new Map(), { ...EXACT, offset: 0.6 }, seededDraw(1)),
    );
    for (const { factor } of tubes) expect(Math.abs(Math.log(factor))).toBeLessThan(Math.log(1.1));
    expect(offset?.steps).toBeGreaterThan(0.3);
  });

  it('get narrower with more readings', () => {
    const width = (count: number) => {
      const { tubes } = toldBy(STUDIO, painted(WASHES.slice(0, count), new Map(), EXACT, seededDraw(1)));
      const { interval } = tubes.find(({ id }) => id === 'prussian-blue') ?? { interval: [1, 1] };
      return interval[1] / interval[0];
    };
    expect(width(3)).toBeGreaterThan(width(6));
    expect(width(6)).toBeGreaterThan(width(9));
  });
});

describe('where value cannot tell', () => {
  const washes: Wash[] = [1 / 4, 1 / 2, 1].map((parts) => ({
    paints: { 'ultramarine-blue': 1 },
    strength: 0.16,
    add: { 'cadmium-yellow': parts },
  }));
  const truth = new Map([
    ['ultramarine-blue', Math.log(0.8)],
    ['cadmium-yellow', Math.log(2)],
  ]);

  it('says so of a yellow in a blue', () => {
    const { tubes } = toldBy(STUDIO, painted(washes, truth, STEADY, seededDraw(3)));
    const yellow = tubes.find(({ id }) => id === 'cadmium-yellow');
    expect(yellow).toMatchObject({ standing: 'cannot-tell', factor: 1 });
    expect(yellow?.moves).toBeLessThan(1);
  });

  it('tells from CIELAB', () => {
    const found = ratioOf(painted(washes, truth, STEADY, seededDraw(3), 'lab'), truth);
    expect([...found.keys()].toSorted()).toEqual(['cadmium-yellow', 'ultramarine-blue']);
    for (const ratio of found.values()) expect(Math.abs(Math.log(ratio))).toBeLessThan(Math.log(1.2));
  });
});

describe('one bad reading', () => {
  const truth = anyTubes(SIX, seededDraw(11));
  const sound = painted(WASHES, truth, { ...STEADY, noise: 0.2 }, seededDraw(12));
  const spoilt = sound.map((reading, at) =>
    at === 4 && 'step' in reading.mixed ? { ...reading, mixed: { step: reading.mixed.step + 3 } } : reading,
  );

  it('is named, and left out', () => {
    const told = toldBy(STUDIO, spoilt);
    expect(told.disagreements).toHaveLength(1);
    expect(told.disagreements[0]).toMatchObject({ reading: 4, part: 'mixed' });
    expect(told.disagreements[0]?.darker).toBeGreaterThan(2);
    expect(told.isAtOdds).toBe(false);
    for (const [id, ratio] of ratioOf(spoilt, truth))
      expect(Math.abs(Math.log(ratio)), id).toBeLessThan(Math.log(1.35));
    expect(toldBy(STUDIO, sound).disagreements).toEqual([]);
  });

  it('is not believed where many are bad', () => {
    const wild = sound.map((reading, at) => ({ ...reading, mixed: { step: at % 2 === 0 ? 1 : 10 } }));
    expect(toldBy(STUDIO, wild).isAtOdds).toBe(true);
  });
});

describe('what is said', () => {
  const said = (readings: readonly Reading[]) =>
    sayAll(readingsTold(STUDIO, toldBy(STUDIO, readings), readings), VOICE).join(' ');
  const wash: Wash = {
    paints: { 'ultramarine-blue': 1 },
    strength: 0.08,
    add: { 'cadmium-yellow': 1 },
  };
  const far: Reading = { wash, alone: { step: 10 }, mixed: { step: 1 } };

  it('of one reading or two names no others', () => {
    for (const readings of [[far], [far, far]]) {
      expect(toldBy(STUDIO, readings).disagreements).toEqual([]);
      expect(said(readings)).not.toContain('others');
    }
    expect(said([far])).toContain('does not fit what was mixed');
  });

  it('of a difference stays on the scale', () => {
    // The others are read so pale that they lead to expect less than the lightest step.
    const exact = painted(WASHES, new Map(), { ...EXACT, offset: -2.6 }, seededDraw(1));
    const readings = exact.map((one, at) => (at === 4 ? { ...one, alone: { step: 8 } } : one));
    const { disagreements } = toldBy(STUDIO, readings);
    expect(disagreements).toHaveLength(1);
    expect(disagreements[0]).toMatchObject({ reading: 4, part: 'alone' });
    expect(disagreements[0]?.darker).toBeLessThanOrEqual(7.5);
  });

  it('of a grey scale is that it agrees only where it is known to half a step', () => {
    const one = painted([wash], new Map(), EXACT, seededDraw(1));
    expect(said(one)).toContain('cannot be told yet');
    const scale = (steps: number, giveOrTake: number) => tell('reader-offset', { steps, giveOrTake });
    expect(sayAll([scale(0.1, 0.4)], VOICE)[0]).toContain('agree, give or take 0.4 steps');
    expect(sayAll([scale(0.1, 0.6)], VOICE)[0]).not.toContain('agree');
    expect(sayAll([scale(-0.9, 0.6)], VOICE)[0]).toContain('0.9 steps lighter');
  });

  it('of a tube that cannot be told is how far it would move the patches', () => {
    const readings = painted([wash], new Map(), EXACT, seededDraw(1));
    const { tubes } = toldBy(STUDIO, readings);
    const moves = Math.max(...tubes.filter(({ standing }) => standing === 'cannot-tell').map((t) => t.moves));
    expect(moves).toBeGreaterThan(0.05);
    expect(said(readings)).toContain(`by ${moves.toFixed(1)} steps at most`);
  });
});

it('tells nothing of nothing', () => {
  expect(toldBy(STUDIO, [])).toEqual({ tubes: [], disagreements: [], isAtOdds: false });
});
