/** Which strengths a box is corrected to. What is told is made up. */
import { describe, expect, it } from 'vitest';
import { type DriedPlace, newStrengths } from '../../src/commands/dried-store.js';
import type { Standing, Told } from '../../src/readings/index.js';

const placeOf = (strengths: Readonly<Record<string, number>>) => ({ box: { strengths } }) as DriedPlace;
const toldOf = (tubes: Readonly<Record<string, readonly [number, number, number]>>, standing: Standing) =>
  ({
    tubes: Object.entries(tubes).map(([id, [low, factor, high]]) => ({
      id,
      standing,
      factor,
      interval: [low, high],
      moves: 2,
    })),
    disagreements: [],
    isAtOdds: false,
  }) satisfies Told;
const TUBES = { 'ultramarine-blue': [1.2, 1.6, 2.1], 'burnt-sienna': [0.7, 0.86, 1.05] } as const;

describe('a box is corrected', () => {
  it('where a tube is surely unlike the library’s, and nowhere else', () => {
    expect([...newStrengths(placeOf({}), toldOf(TUBES, 'known'))]).toEqual([['ultramarine-blue', 1.6]]);
  });

  it('where a tube is surely unlike what the box has, as after a new tube', () => {
    const strengths = { 'ultramarine-blue': 1.6, 'burnt-sienna': 1.8 };
    expect([...newStrengths(placeOf(strengths), toldOf(TUBES, 'known'))]).toEqual([['burnt-sienna', 0.86]]);
  });

  it('never by what is unsure, or at odds', () => {
    expect(newStrengths(placeOf({}), toldOf(TUBES, 'unsure')).size).toBe(0);
    expect(newStrengths(placeOf({}), { ...toldOf(TUBES, 'known'), isAtOdds: true }).size).toBe(0);
  });
});
