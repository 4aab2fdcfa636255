/** Drills with tubes that their owner knows to be stronger than the library's. */
import { expect, it } from 'vitest';
import { kindOf } from '../../../src/drills/kinds/index.js';
import { boxStudio } from '../../../src/paints/index.js';
import { STUDIO } from '../../studio.js';
import { drillOf } from './helpers.js';

it('a water tells the strength that it gives of this tube, a masstone at most', () => {
  const drill = drillOf(
    'washes',
    `paint: burnt-sienna
waters: ["1:3", "1:12", "1:48"]
blocks: [{ name: near, step: 6 }, { name: far, step: 2 }]`,
    'one-paint-ladder',
  );
  const strengths = { 'burnt-sienna': 2 };
  const own = boxStudio(STUDIO, { id: 'own', name: 'own', note: '', pigments: [], strengths });
  const notes = (studio: typeof STUDIO) =>
    kindOf(studio, drill)
      .fields(drill)[0]
      ?.options.map(({ note }) => /strength (\d+) %/.exec(note ?? '')?.[1]);
  // One part of paint to 12 of water is a thirteenth of paint, and the masstone a quarter: 4 / 13 is 31 %.
  expect(notes(STUDIO)).toEqual(['8', '31', '100']);
  expect(notes(own)).toEqual(['16', '62', '100']);
});
