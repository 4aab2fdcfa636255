/** Drills with tubes that their owner knows to be stronger than the library's. */
import { expect, it } from 'vitest';
import { kindOf } from '../../../src/drills/kinds/index.js';
import { firstWords } from '../../../src/drills/kinds/mix/label.js';
import type { MixDrill } from '../../../src/drills/kinds/mix/schema.js';
import { boxStudio } from '../../../src/paints/index.js';
import { STUDIO } from '../../studio.js';
import { drillOf } from './helpers.js';

const BOX = { id: 'own', name: 'own', note: '', pigments: [] };

it('a wash of a stronger tube takes more water, and is as thick as that', () => {
  const drill = drillOf(
    'mix',
    `start: { paints: { burnt-sienna: 1 }, strength: 0.3 }
goal: { aim: rich, value: [5.5, 6.5] }
tray: [alizarin-crimson, ultramarine-blue]`,
    'darken-bright',
  ) as MixDrill;
  const own = boxStudio(STUDIO, { ...BOX, strengths: { 'burnt-sienna': 3 } });
  expect(firstWords(STUDIO, drill)).toBe('burnt sienna at 30 %, thick as milk');
  // The same film of a tube three times as strong is a wash of 10 %, one part to 39 of water; too dark to be called tea.
  expect(firstWords(own, drill)).toBe('burnt sienna at 30 %');
});

it('a water tells the strength that it gives of this tube, a masstone at most', () => {
  const drill = drillOf(
    'washes',
    `paint: burnt-sienna
waters: ["1:3", "1:12", "1:48"]
blocks: [{ name: near, step: 6 }, { name: far, step: 2 }]`,
    'one-paint-ladder',
  );
  const strengths = { 'burnt-sienna': 2 };
  const own = boxStudio(STUDIO, { ...BOX, strengths });
  const notes = (studio: typeof STUDIO) =>
    kindOf(studio, drill)
      .fields(drill)[0]
      ?.options.map(({ note }) => /strength (\d+) %/.exec(note ?? '')?.[1]);
  // One part of paint to 12 of water is a thirteenth of paint, and the masstone a quarter: 4 / 13 is 31 %.
  expect(notes(STUDIO)).toEqual(['8', '31', '100']);
  expect(notes(own)).toEqual(['16', '62', '100']);
});
