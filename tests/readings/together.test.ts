/** Whether readings fit together. Right ones are simulated by the program's own model (recovery.ts), wrong ones are made up. */
import { chiSquaredDistributionTable } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { readingsTold, toldBy } from '../../src/readings/index.js';
import { mostSquare } from '../../src/readings/together.js';
import { sayAll } from '../../src/words/tell.js';
import { STUDIO } from '../studio.js';
import { anyTubes, askedFor, painted } from './recovery.js';

const SIX = STUDIO.palettes.find(({ id }) => id === 'six')?.pigments ?? [];
const WASHES = askedFor(SIX, 3);
const LOOSE = { noise: 0.5, offset: 0.5, water: 0.2 };

// Upper 0.5 % points: Hines and Montgomery, Probability and Statistics in Engineering (1980), as simple-statistics has them.
it('the bound is the upper 0.5 % point of chi-squared', () => {
  for (const [freedom, points] of Object.entries(chiSquaredDistributionTable)) {
    const share = mostSquare(Number(freedom)) / (points[0.005] as number);
    expect(Math.abs(share - 1), freedom).toBeLessThan(0.01);
  }
});

describe('readings that are no readings', () => {
  const same = WASHES.map((wash) => ({ wash, alone: { step: 4 }, mixed: { step: 5 } }));

  it('are not believed where all mixtures are read alike', () => {
    const told = toldBy(STUDIO, same);
    expect(told.isAtOdds).toBe(true);
    const said = sayAll(readingsTold(STUDIO, told, same), { scale: 'paper-first', spoken: false }).join(' ');
    expect(said).toContain('do not fit together');
    expect(said).toContain('daylight');
    expect(said).not.toContain('times');
  });

  it('are not believed where dark is read light', () => {
    const upside = painted(WASHES, new Map(), { noise: 0, offset: 0, water: 0 }, seededDraw(1)).map(
      (one) => ({
        ...one,
        alone: one.mixed,
        mixed: one.alone ?? one.mixed,
      }),
    );
    expect(toldBy(STUDIO, upside).isAtOdds).toBe(true);
  });
});

describe('readings of a painter', () => {
  it('are believed, whatever the tubes', () => {
    for (let trial = 0; trial < 12; trial++) {
      const draw = seededDraw(trial);
      const readings = painted(WASHES, anyTubes(SIX, draw), LOOSE, draw);
      expect(toldBy(STUDIO, readings).isAtOdds, `${trial}`).toBe(false);
    }
  });

  it('are believed where one mixture was painted again and again', () => {
    const again = Array.from({ length: 8 }, () => WASHES[0] as (typeof WASHES)[number]);
    const readings = painted(again, new Map(), LOOSE, seededDraw(4));
    expect(toldBy(STUDIO, readings).isAtOdds).toBe(false);
  });
});
