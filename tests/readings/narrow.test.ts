/** Which further readings would narrow the strengths of tubes. */
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { type Reading, readingsTold, toldBy } from '../../src/readings/index.js';
import { sayAll } from '../../src/words/tell.js';
import { STUDIO } from '../studio.js';
import { askedFor, painted } from './recovery.js';

const SIX = STUDIO.palettes.find(({ id }) => id === 'six')?.pigments ?? [];
const WASHES = askedFor(SIX, 3);
const VOICE = { scale: 'paper-first', spoken: false } as const;
const EXACT = { noise: 0, offset: 0, water: 0 };

describe('what would narrow it', () => {
  const unlike = new Map([['ultramarine-blue', Math.log(1.6)]]);
  const widthOf = (readings: readonly Reading[]): number => {
    const blue = toldBy(STUDIO, readings).tubes.find(({ id }) => id === 'ultramarine-blue');
    const [low, high] = blue?.interval ?? [1, 1];
    return high / low;
  };
  const saidOf = (readings: readonly Reading[]): string =>
    sayAll(readingsTold(STUDIO, toldBy(STUDIO, readings), readings), VOICE).join(' ');

  it('is said where a tube looks unlike the library’s and cannot be called so, and only there', () => {
    expect(saidOf(painted(WASHES, unlike, EXACT, seededDraw(1)))).toContain(
      'An instrument narrows them most',
    );
    expect(saidOf(painted(WASHES, new Map(), EXACT, seededDraw(1)))).not.toContain('narrow');
    expect(saidOf(painted(WASHES.slice(0, 3), new Map(), EXACT, seededDraw(1)))).toContain('narrow');
  });

  it('is an instrument: six of its readings tell more than two dozen by eye', () => {
    const byEye = painted(askedFor(SIX, 8), unlike, EXACT, seededDraw(1));
    const byInstrument = painted(askedFor(SIX, 2, 'lab'), unlike, EXACT, seededDraw(1), 'lab');
    expect(byEye).toHaveLength(24);
    expect(byInstrument).toHaveLength(6);
    expect(widthOf(byInstrument)).toBeLessThan(widthOf(byEye));
    expect(widthOf(byEye)).toBeLessThan(widthOf(painted(WASHES, unlike, EXACT, seededDraw(1))));
  });
});
