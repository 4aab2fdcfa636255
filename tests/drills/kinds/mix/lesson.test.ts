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
    const narrow = roof({
      family: 'dull-on-purpose',
      goal: { aim: 'dull', value: [5, 6], chroma: [20, 22] },
    });
    expect(lessonFaults(narrow).join()).toMatch(/chroma band is tighter/);
  });

  test('a deep dark must be deep, and not a black', () => {
    const shallow = roof({ family: 'deep-dark', goal: { aim: 'neutral', value: [6, 7], chroma: [0, 20] } });
    expect(lessonFaults(shallow).join()).toMatch(/lighter than L\* 25/);
  });

  const aims: readonly (readonly [string, Partial<MixDrill>, RegExp])[] = [
    [
      'a shade no darker than what is lit',
      { goal: { aim: 'shade', value: [3.7, 4.7] }, tray: ['burnt-sienna'], amounts: ['1:32', '1:16'] },
      /has to be darker than its start/,
    ],
    [
      'a shade in black, which is mud',
      { goal: { aim: 'shade', value: [5.3, 6.3] }, tray: ['ivory-black'] },
      /below the shading line: it is mud/,
    ],
    [
      'a shade in more and stronger colour, which glows',
      {
        start: { paints: { 'burnt-sienna': 1 }, strength: 0.1 },
        goal: { aim: 'shade', value: [3.5, 4.5] },
        tray: ['cadmium-red', 'alizarin-crimson'],
        amounts: ['1:1', '2:1', '4:1'],
      },
      /above the shading line: the shade glows/,
    ],
    [
      'a rich dark in black',
      { goal: { aim: 'rich', value: [5.3, 6.3] }, tray: ['ivory-black'] },
      /lies below the shading line/,
    ],
    [
      'a dulling that keeps the colour',
      { goal: { aim: 'dull', value: [4.5, 5.5], chroma: [45, 61] } },
      /hardly duller than the start/,
    ],
    [
      'a distance that comes nearer',
      { goal: { aim: 'distance', value: [4.5, 5.5], chroma: [45, 61] } },
      /farther off has to be lighter.*may not be darker than the start/,
    ],
    [
      'a neutral that is still a colour',
      { goal: { aim: 'neutral', value: [4.5, 5.5], chroma: [10, 30] } },
      /a neutral ends at a lower chroma/,
    ],
    [
      'a lean that is still a colour',
      { goal: { aim: 'lean', value: [4.5, 5.5], chroma: [10, 30], hue: { near: 50, within: 40 } } },
      /a lean ends at chroma 20 or below/,
    ],
    ['a red for lemons', { subject: 'lemons' }, /is no colour of lemons/],
  ];
  test.each(aims)('%s', (_what, change, message) => {
    expect(lessonFaults(roof(change)).join()).toMatch(message);
  });

  test('strength: equal parts must be open and must fail', () => {
    const drill = roof({ family: 'tinting-strength', amounts: ['1:8', '1:4'] });
    expect(lessonFaults(drill).join()).toMatch(/equal parts/);
  });
});
