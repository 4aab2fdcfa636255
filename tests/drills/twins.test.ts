import { describe, expect, test } from 'vitest';
import { checkDrills } from '../../src/drills/check.js';
import { twinOf } from '../../src/drills/twins.js';
import { STUDIO } from '../studio.js';
import { roof } from './sample.js';

const one = roof({ amounts: ['1:8', '1:4', '1:2', '1:1'] });

describe('one decision twice', () => {
  test('another scene, tray and amount of the same start and goal is no other decision', () => {
    const other = roof({ id: 'wall', title: 'Wall', amounts: ['1:4', '1:1'] });
    expect(twinOf(STUDIO, one, [one, other])).toBe('wall');
    expect(checkDrills(STUDIO, [one, other])[0]?.faults).toContain('the same decision as wall');
  });

  test('parts are shares: two to two is one to one', () => {
    const of = (parts: number): typeof one =>
      roof({
        id: `parts-${parts}`,
        start: { paints: { 'burnt-sienna': parts, 'raw-sienna': parts }, strength: 0.3 },
      });
    const [a, b] = [of(1), of(2)];
    expect(twinOf(STUDIO, a, [a, b])).toBe(b.id);
  });

  test('a wash of another strength, or a goal elsewhere, is one', () => {
    const weaker = roof({ id: 'weak', start: { ...one.start, strength: one.start.strength / 2 } });
    const deeper = roof({ id: 'deep', goal: { aim: 'rich', value: [7, 8] } });
    expect(twinOf(STUDIO, one, [one, weaker, deeper])).toBeUndefined();
  });

  test('a drill is not its own twin', () => {
    expect(twinOf(STUDIO, one, [one])).toBeUndefined();
  });
});
