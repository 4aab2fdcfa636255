import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import type { ColourReading } from '../../src/colour/reading.js';
import { checkDrill } from '../../src/drills/check.js';
import { randomAnswer } from '../../src/drills/random-answer.js';
import { isSeenApart } from '../../src/judgement/index.js';
import { kindOf, STUDIO } from '../studio.js';
import { roof } from './sample.js';

const sound = roof({ amounts: ['1:8', '1:4', '1:2', '1:1'] });

describe('the checker', () => {
  test('passes a sound drill and says what it found', () => {
    const { id, look, faults } = checkDrill(STUDIO, sound);
    expect({ id, faults, best: look.best.grade.mark }).toEqual({ id: 'roof', faults: [], best: 100 });
    expect(look.worst.grade.mark).toBeLessThan(50);
  });

  test('faults a goal out of reach', () => {
    const faults = checkDrill(STUDIO, roof({ goal: { aim: 'rich', value: [9, 10] } })).faults.join();
    expect(faults).toMatch(/cannot be reached/);
  });

  test('faults a best answer that only comes near to what is asked', () => {
    const crimson = { tray: ['alizarin-crimson'], amounts: ['1:8', '1:1'] as const };
    const step = checkDrill(STUDIO, roof(crimson)).look.best.grade.value?.after ?? 0;
    // A tenth of a step short: inside the model's error, so it marks 100 all the same.
    const near = roof({ ...crimson, goal: { aim: 'rich', value: [step + 0.1, step + 1.1] } });
    const check = checkDrill(STUDIO, near);
    expect(check.look.best.grade.mark).toBe(100);
    expect(check.faults.join()).toMatch(/the value of the best answer, \d\.\d, lies outside/);
    expect(checkDrill(STUDIO, sound).faults).toEqual([]);
  });

  test('faults a drill in which nothing tempts, or luck does', () => {
    const open = roof({
      family: 'one-paint-ladder',
      goal: { aim: 'dull', value: [0.5, 10.5], chroma: [0, 150], hue: { near: 'start', within: 180 } },
    });
    const faults = checkDrill(STUDIO, open).faults.join();
    expect(faults).toMatch(/nothing tempts/);
    expect(faults).toMatch(/too easy/);
  });

  test('faults a tray whose wrong paints look like the best once their amount is mended', () => {
    const said = /still looks wrong once its amount is mended: /;
    // A yellow thinned until it is pale: whatever was stirred in, a sixteenth of it looks the same.
    const pale = roof({
      family: 'dull-on-purpose',
      start: { paints: { 'cadmium-yellow': 1 }, strength: 0.2 },
      goal: { aim: 'dull', value: [1.8, 2.8], chroma: [9, 25], hue: { near: 'start', within: 25 } },
      tray: ['alizarin-crimson', 'burnt-sienna'],
      amounts: ['1:16', '1:8', '1:4', '1:2', '1:1'],
      thins: [1, 2, 4],
    });
    const { look, faults } = checkDrill(STUDIO, pale);
    const sienna = look.traps.find(({ answer }) => answer['second'] === 'burnt-sienna');
    expect(isSeenApart(look.best.colour as ColourReading, sienna?.colour as ColourReading)).toBe(false);
    expect(faults.join()).toMatch(said);
    expect(checkDrill(STUDIO, sound).faults.join()).not.toMatch(said);
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
