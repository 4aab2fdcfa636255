import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { checkDrill } from '../../src/drills/check.js';
import { randomAnswer } from '../../src/drills/random-answer.js';
import { kindOf, STUDIO } from '../studio.js';
import { roof } from './sample.js';

const sound = roof({ amounts: ['1:8', '1:4', '1:2', '1:1'] });

describe('the checker', () => {
  test('passes a sound drill and says what it found', () => {
    expect(checkDrill(STUDIO, sound)).toMatchObject({ id: 'roof', bestMark: 100, faults: [] });
    expect(checkDrill(STUDIO, sound).trapMark).toBeLessThan(50);
  });

  test('faults a goal out of reach', () => {
    const faults = checkDrill(STUDIO, roof({ goal: { value: [9, 10], chroma: 'bright' } })).faults.join();
    expect(faults).toMatch(/cannot be reached/);
  });

  test('faults a drill in which nothing tempts, or luck does', () => {
    const open = roof({
      family: 'one-paint-ladder',
      goal: { value: [0.5, 10.5], chroma: [0, 150] },
    });
    const faults = checkDrill(STUDIO, open).faults.join();
    expect(faults).toMatch(/nothing tempts/);
    expect(faults).toMatch(/too easy/);
  });

  test('finds the same for the same seed', () => {
    expect(checkDrill(STUDIO, sound, 9)).toEqual(checkDrill(STUDIO, sound, 9));
  });
});

describe('random answers', () => {
  test('the same seed draws the same answers, and every option comes up', () => {
    const fields = kindOf(sound).fields(sound);
    const drawn = (seed: number): string[] => {
      const draw = seededDraw(seed);
      return Array.from({ length: 300 }, () => JSON.stringify(randomAnswer(fields, draw)));
    };
    expect(drawn(4)).toEqual(drawn(4));
    expect(drawn(5)).not.toEqual(drawn(4));
    expect(new Set(drawn(4)).size).toBe(16);
  });
});
