import { describe, expect, test } from 'vitest';
import { checkDrills } from '../../src/drills/check.js';
import { FAMILIES } from '../../src/drills/families.js';
import { twinOf } from '../../src/drills/twins.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { STUDIO } from '../studio.js';

const DRILLS = SHIPPED_DRILLS;
const FOLDERS = [...new Set(DRILLS.map(({ family }) => family))].sort();

describe('the shipped drills', () => {
  test('every family of the course has some', () => {
    expect(FOLDERS).toEqual(FAMILIES.map(({ id }) => id).sort());
    expect(DRILLS.length).toBeGreaterThanOrEqual(150);
  });

  test.each(FOLDERS)(
    '%s: the best answer marks 100, a trap marks poorly, no luck of 500 beats it',
    (family) => {
      const own = DRILLS.filter((drill) => drill.family === family);
      const faults = checkDrills(STUDIO, own)
        .filter((check) => check.faults.length > 0)
        .map(({ id, faults: found }) => `${id}: ${found.join('; ')}`);
      expect(faults).toEqual([]);
    },
    60_000,
  );

  test.each(FOLDERS)('%s: covers the five levels, and the last is cold', (family) => {
    const own = DRILLS.filter((drill) => drill.family === family);
    expect([...new Set(own.map(({ level }) => level))].sort()).toEqual([1, 2, 3, 4, 5]);
    expect(own.filter(({ level, hint }) => level === 5 && hint !== undefined)).toEqual([]);
  });

  test('no two are the same decision, in one family or in two', () => {
    const twins = DRILLS.map((drill) => [drill.id, twinOf(STUDIO, drill, DRILLS)]);
    expect(twins.filter(([, twin]) => twin !== undefined)).toEqual([]);
  });

  test('no two have the same scene or title', () => {
    const titles = DRILLS.map(({ title }) => title);
    const scenes = DRILLS.map(({ scene }) => scene);
    expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
    expect(scenes.filter((scene, index) => scenes.indexOf(scene) !== index)).toEqual([]);
  });

  test('scenes are one to three sentences', () => {
    const odd = DRILLS.filter(({ scene }) => !/^[A-Z].*[.!?]$/.test(scene) || scene.length > 300);
    expect(odd.map(({ id }) => id)).toEqual([]);
  });
});
