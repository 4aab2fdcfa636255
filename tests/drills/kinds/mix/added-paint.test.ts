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
