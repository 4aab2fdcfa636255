/** Two hundred trials of each case; what is simulated and what is from outside is said in recovery.ts. */
import { describe, expect, it } from 'vitest';
import { STUDIO } from '../studio.js';
import {
  anyTubes,
  askedFor,
  medianOf,
  movesAt,
  painted,
  type Recovered,
  recovered,
  STEADY,
  shareOf,
} from './recovery.js';

const TRIALS = 200;
const box = (id: string) => STUDIO.palettes.find((palette) => palette.id === id)?.pigments ?? [];

function holds(found: ReadonlyMap<string, Recovered>, tubes = found.size): void {
  expect(found.size).toBe(tubes);
  for (const [id, { ratios, held }] of found) {
    expect(ratios, id).toHaveLength(TRIALS);
    expect(medianOf(ratios), id).toBeGreaterThan(0.8);
    expect(medianOf(ratios), id).toBeLessThan(1.2);
    expect(shareOf(held), id).toBeGreaterThanOrEqual(0.9);
  }
}

describe('strengths found again from values, after three rounds of three mixtures', () => {
  const ids = box('six');
  const washes = askedFor(ids, 3);

  it('holds for any tubes, read within half a step', () => {
    holds(
      recovered(TRIALS, 'any', (draw) => {
        const truth = anyTubes(ids, draw);
        return { truth, readings: painted(washes, truth, STEADY, draw) };
      }),
      5,
    );
  });

  it('holds where the scale is half a step off and the water is measured within a fifth', () => {
    holds(
      recovered(TRIALS, 'loose', (draw) => {
        const truth = anyTubes(ids, draw);
        return { truth, readings: painted(washes, truth, { noise: 0.5, offset: 0.5, water: 0.2 }, draw) };
      }),
      5,
    );
  });

  it('holds for one set of tubes that are as unlike as they may be, wherever a patch moves a step', () => {
    for (const first of [0, 1]) {
      const truth = new Map(ids.map((id, at) => [id, Math.log(at % 2 === first ? 0.4 : 2.5)]));
      // No tube is like the middle of these, and from one they lie 6.25 times apart: all of them together count 1 here.
      const found = recovered(
        TRIALS,
        `unlike ${first}`,
        (draw) => ({ truth, readings: painted(washes, truth, STEADY, draw) }),
        'together',
      );
      const moves = (id: string) => movesAt(washes, id, truth);
      expect([...found.keys()].filter((id) => moves(id) >= 1).length).toBeGreaterThanOrEqual(3);
      holds(new Map([...found].filter(([id]) => moves(id) >= 1)));
      for (const [id, { held }] of found) expect(shareOf(held), id).toBeGreaterThanOrEqual(0.9);
    }
  });
});

describe('strengths found again from CIELAB', () => {
  it('holds for every paint of the box, also where value cannot tell', () => {
    const ids = box('six');
    const washes = askedFor(ids, 3, 'lab');
    holds(
      recovered(TRIALS, 'lab', (draw) => {
        const truth = anyTubes(ids, draw);
        return { truth, readings: painted(washes, truth, STEADY, draw, 'lab') };
      }),
      6,
    );
  });
});
