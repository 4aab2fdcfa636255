import { describe, expect, test } from 'vitest';
import { lessonFaults as lessonFaultsIn } from '../../../../src/drills/kinds/mix/lesson.js';
import type { MixDrill } from '../../../../src/drills/kinds/mix/schema.js';
import { STUDIO } from '../../../studio.js';
import { roof } from '../../sample.js';

const lessonFaults = (drill: MixDrill): string[] => lessonFaultsIn(STUDIO, drill);

describe('the checker refuses a drill that teaches the wrong thing', () => {
  test('a sound one passes', () => {
    expect(lessonFaults(roof({ amounts: ['1:8', '1:4', '1:2', '1:1'] }))).toEqual([]);
  });

  test('darken and keep it bright: the best must go around, and no opposite or black may do', () => {
    const across = roof({
      tray: ['ultramarine-blue', 'sap-green'],
      goal: { value: [6.3, 7.3], aim: 'rich' },
    });
    expect(lessonFaults(across).join()).toMatch(/does not go around the wheel \(across\)/);
    const touch = roof({ goal: { value: [4.2, 5.2], aim: 'rich' } });
    expect(lessonFaults(touch).join()).toMatch(/a paint that should dull marks well: .*ultramarine-blue/);
    expect(lessonFaults(roof({ tray: ['alizarin-crimson', 'cadmium-red'] })).join()).toMatch(/tempts/);
  });

  test('dull it on purpose: the best must lie across', () => {
    const near = roof({
      family: 'dull-on-purpose',
      goal: { aim: 'dull', value: [4.5, 5.5], chroma: [45, 61] },
    });
    const faults = lessonFaults(near).join();
    expect(faults).toMatch(/alizarin-crimson, does not go across the wheel \(around\)/);
    expect(faults).toMatch(/a neighbour marks well: alizarin-crimson/);
  });

  test('a band tighter than the model’s own error', () => {
    expect(lessonFaults(roof({ goal: { value: [5.7, 5.9], aim: 'rich' } })).join()).toMatch(
      /value band is tighter/,
    );
    const narrow = roof({ family: 'dull-on-purpose', goal: { aim: 'dull', value: [5, 6], chroma: [20, 22] } });
    expect(lessonFaults(narrow).join()).toMatch(/chroma band is tighter/);
  });

  test('a deep dark must be deep, and not a black', () => {
    const shallow = roof({ family: 'deep-dark', goal: { aim: 'neutral', value: [6, 7], chroma: [0, 20] } });
    expect(lessonFaults(shallow).join()).toMatch(/lighter than L\* 25/);
  });

  test('strength: equal parts must be open and must fail', () => {
    const drill = roof({ family: 'tinting-strength', amounts: ['1:8', '1:4'] });
    expect(lessonFaults(drill).join()).toMatch(/equal parts/);
  });
});
