import { describe, expect, test } from 'vitest';
import { listWords } from '../../src/text/list-words.js';
import {
  laidLabel,
  laidNote,
  namesOf,
  paintsLabel,
  ratioWords,
  stepsWords,
  strengthWords,
  thinWords,
} from '../../src/words/laid.js';
import { runsWords, without } from '../../src/words/spectrum.js';
import { STUDIO } from '../studio.js';

const wash = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };

describe('laid paint in words', () => {
  test.each([
    [1 / 32, '1:32'],
    [1 / 8, '1:8'],
    [1 / 6, '1:6'],
    [0.3, '1:3.3'],
    [1, '1:1'],
    [2, '2:1'],
    [2.5, '2.5:1'],
  ])('a ratio of %d is %s', (ratio, words) => {
    expect(ratioWords(ratio)).toBe(words);
  });

  test.each([
    [1, 'no water'],
    [2, 'thinned to a half'],
    [4, 'thinned to a quarter'],
    [4.5, 'thinned to one part in 4.5'],
  ])('water of %d is "%s"', (thin, words) => {
    expect(thinWords(thin)).toBe(words);
  });

  test('lists, strengths and steps', () => {
    expect(listWords([])).toBe('');
    expect(listWords(['a', 'b', 'c'])).toBe('a, b and c');
    expect(strengthWords(0.075)).toBe('7.5 %');
    expect([stepsWords(1), stepsWords(-2.34)]).toEqual(['1 step', '2.3 steps']);
  });

  test('what was stirred in, layered and laid side by side', () => {
    const stirred = { ...wash, add: { 'alizarin-crimson': 0.25 }, thin: 2 };
    expect(paintsLabel(STUDIO, stirred)).toBe('burnt sienna, alizarin crimson 1:4 stirred in');
    expect(namesOf(STUDIO, { ...stirred, add: { 'burnt-sienna': 1 } })).toBe('burnt sienna');
    expect(laidNote(stirred)).toBe('stirred, 30 % strong, thinned to a half');
    const glaze = { paints: { 'sap-green': 1 }, strength: 0.1 };
    expect(laidLabel(STUDIO, { layers: [wash, glaze] })).toBe('burnt sienna, then sap green');
    const strokes = [
      { ...wash, share: 0.75 },
      { ...glaze, share: 0.25 },
    ];
    expect(laidLabel(STUDIO, { strokes })).toBe('strokes of burnt sienna and sap green');
    expect(laidNote({ strokes })).toBe('side by side; 75 % and 25 % of the paper');
  });
});

describe('stretches of the spectrum in words', () => {
  test('are named by both ends; short ones are left out', () => {
    expect(
      runsWords([
        { fromNm: 400, toNm: 480 },
        { fromNm: 500, toNm: 510 },
        { fromNm: 560, toNm: 580 },
        { fromNm: 640, toNm: 700 },
      ]),
    ).toBe('violet to blue, yellow and red');
  });

  test('without others: what is in both goes', () => {
    const all = [{ fromNm: 400, toNm: 700 }];
    expect(without(all, [{ fromNm: 450, toNm: 690 }])).toEqual([
      { fromNm: 400, toNm: 440 },
      { fromNm: 700, toNm: 700 },
    ]);
    expect(without(all, all)).toEqual([]);
  });
});
