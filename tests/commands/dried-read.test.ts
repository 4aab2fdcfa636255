/** Reading what dried, as it is typed. */
import { describe, expect, it } from 'vitest';
import { readDried, readReading, readTable } from '../../src/commands/dried-read.js';
import { STUDIO } from '../studio.js';

describe('what dried', () => {
  it('is a step on the scale of the learner', () => {
    expect(readDried('4.5', 'paper-first')).toEqual({ step: 4.5 });
    expect(readDried(' 6 ', 'black-first')).toEqual({ step: 4.5 });
    expect(readDried('V 6', 'paper-first')).toEqual({ step: 4.5 });
    expect(readDried('N 6', 'paper-first')).toEqual({ step: 4.5 });
    expect(readDried('N 6/', 'black-first')).toEqual({ step: 4.5 });
  });

  it('is CIELAB or a Munsell notation', () => {
    expect(readDried('lab(40 10 20)', 'paper-first')).toEqual({ lab: { l: 40, a: 10, b: 20 } });
    const dried = readDried('7.5YR 4/4', 'paper-first');
    // L* of Munsell value 4 is 41.2 (ASTM D1535: Y 11.70 against the perfect diffuser).
    expect('lab' in dried && dried.lab.l).toBeCloseTo(41, 0);
  });

  it.each([
    ['', /nothing that dried/],
    ['dark', /nothing that dried/],
    ['#6b4a2f', /nothing that dried/],
    ['\u001b[31m4', /nothing that dried/],
    ['11', /is not on the scale/],
    ['0', /is not on the scale/],
    ['V 11', /no Munsell value/],
    ['lab(40 10)', /no colour/],
    ['lab(400 10 20)', /L\* from 0 to 100/],
    ['7.5YR 40/4', /value of 0 to 10/],
  ])('is not %j', (text, words) => {
    expect(() => readDried(text, 'paper-first')).toThrow(words);
  });
});

describe('a reading', () => {
  const texts = {
    wash: ['burnt-sienna=1'],
    water: '1:24',
    add: ['ultramarine-blue=2'],
    alone: '3.5',
    mixed: '6',
  };

  it('has its wash by the water', () => {
    expect(readReading(STUDIO, texts, 'paper-first')).toEqual({
      wash: { paints: { 'burnt-sienna': 1 }, strength: 4 / 25, add: { 'ultramarine-blue': 2 } },
      alone: { step: 3.5 },
      mixed: { step: 6 },
    });
  });

  it('is the same as a line of a table', () => {
    const table = '# mine\n\nburnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 6\r\nviridian=1 1:12;-;-;V 5\n';
    expect(readTable(STUDIO, table, 'paper-first')).toEqual([
      readReading(STUDIO, texts, 'paper-first'),
      { wash: { paints: { viridian: 1 }, strength: 4 / 13 }, mixed: { step: 5.5 } },
    ]);
  });

  it.each([
    ['burnt-sienna=1 1:24; ultramarine-blue=2; 3.5', /line 1: write the wash/],
    [
      'burnt-sienna=1; ultramarine-blue=2; 3.5; 6',
      /line 1: .*the water is written 1:24|line 1: name at least one paint/,
    ],
    ['burnt-sienna=1 1:2; ultramarine-blue=2; 3.5; 6', /line 1: the water is written/],
    ['burnt-sienna=0 1:24; ultramarine-blue=2; 3.5; 6', /line 1: parts of burnt-sienna/],
    ['burnt-umbrella=1 1:24; ultramarine-blue=2; 3.5; 6', /line 1: no paint is called/],
    ['burnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 66', /line 1: the mixture: 66 is not on the scale/],
    ['burnt-sienna=1 1:24; -; 3.5; 6', /line 1: nothing was stirred in/],
  ])('is refused in one line that names it: %s', (line, words) => {
    expect(() => readTable(STUDIO, line, 'paper-first')).toThrow(words);
  });
});
