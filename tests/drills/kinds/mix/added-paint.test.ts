import { expect, test } from 'vitest';
import { familyAsk } from '../../../../src/drills/ask.js';
import { addedPaint } from '../../../../src/drills/kinds/mix/schema.js';
import { asked, kindOf } from '../../../studio.js';
import { roof } from '../../sample.js';

const start = { paints: { 'burnt-sienna': 1, 'raw-sienna': 1 }, strength: 0.3 };

test('the paint asked for is called by its place, in the row, the question and what is fixed', () => {
  expect(addedPaint(roof())).toBe('second paint');
  const third = roof({ start });
  expect(addedPaint(third)).toBe('third paint');
  expect(kindOf(third).fields(third)[0]?.label).toBe('third paint');
  expect(familyAsk('neutraliser', third)).toBe('Bring it to grey: which third paint, and how much?');
  const given = roof({ start, tray: ['alizarin-crimson'] });
  expect(asked(kindOf(given), given).join()).toMatch(/fixed: third paint alizarin crimson/);
});

test('where it may be one of several in the wash it is no third', () => {
  expect(addedPaint(roof({ start, tray: ['raw-sienna', 'alizarin-crimson'] }))).toBe('paint to add');
  // More of the one paint that is there stays a second helping.
  expect(addedPaint(roof({ tray: ['burnt-sienna', 'alizarin-crimson'] }))).toBe('second paint');
});

test('the question asks what is open, and only that', () => {
  const asks = (change: object): string => familyAsk('darken-bright', roof(change));
  const lead = 'Make it darker and keep it bright';
  expect(asks({ amounts: ['1:4', '1:2'] })).toBe(`${lead}: which second paint, and how much?`);
  expect(asks({ amounts: ['1:4'] })).toBe(`${lead}: which second paint?`);
  expect(asks({ tray: ['alizarin-crimson'] })).toBe(`${lead}: how much of it?`);
  expect(asks({ thins: [1, 2] })).toBe(`${lead}: which second paint, how much, and how much water?`);
  expect(asks({ tray: ['alizarin-crimson'], thins: [1, 2] })).toBe(
    `${lead}: how much of it, and how much water?`,
  );
  expect(asks({ amounts: ['1:4'], glazes: [0.2] })).toBe(`${lead}: which second paint, and how is it laid?`);
  // A shade that is asked to stay bright, or a distance only to be dulled, would be another lesson.
  const goal = { aim: 'shade', value: [4.8, 5.8] };
  expect(asks({ goal, amounts: ['1:4'] })).toBe(
    'Put it in shade, neither glowing nor muddy: which second paint?',
  );
  expect(asks({ goal: { ...goal, aim: 'distance' }, amounts: ['1:4'] })).toBe(
    'Send it farther off: which second paint?',
  );
  // The amount is what is to be found: the question does not tell whether it is small.
  expect(familyAsk('tinting-strength', roof({ tray: ['alizarin-crimson'] }))).toBe('How much of it?');
});

test('of shadows only those that are asked', () => {
  const asks = (...shadows: ('shade' | 'cast')[]): string =>
    familyAsk('light-and-shadow', {
      kind: 'shadow-values',
      things: shadows.map((shadow) => ({ name: 'wall', shadow, lit: 3 })),
    });
  expect(asks('shade')).toBe('How dark is the shaded side?');
  expect(asks('shade', 'cast')).toBe('How dark are the shaded side and the cast shadow?');
  expect(asks('cast', 'cast')).toBe('How dark are the cast shadows?');
});
