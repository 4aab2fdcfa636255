import { describe, expect, test } from 'vitest';
import { labToXyz } from '../../src/colour/lab.js';
import { munsellNotation } from '../../src/colour/munsell-notation.js';
import { readColourText } from '../../src/colour/read-colour.js';
import { toScreen } from '../../src/colour/screen.js';
import { whiteOf } from '../../src/colour/xyz.js';

const xyz = (text: string) => labToXyz(readColourText(text), whiteOf('D65-2'));

describe('a colour as it is written', () => {
  test('comes back from the screen as it was', () => {
    for (const hex of ['#6b4a2f', '#ffffff', '#00405c', '#d8b400']) {
      expect(toScreen(xyz(hex)).hex).toBe(hex);
    }
    expect(readColourText('#ABC')).toEqual(readColourText('#aabbcc'));
  });

  test('Lab is taken as it stands, D65', () => {
    expect(readColourText('lab(40 10 20)')).toEqual({ l: 40, a: 10, b: 20 });
    expect(readColourText(' LAB( 40, -10.5, 20 ) ')).toEqual({ l: 40, a: -10.5, b: 20 });
  });

  test('Munsell notation comes back as it was', () => {
    for (const notation of ['7.5YR 4.0/4.0', '5.0PB 3.0/8.0', '10.0R 5.0/10.0']) {
      expect(munsellNotation(xyz(notation))).toBe(notation);
    }
    expect(munsellNotation(xyz('N5/'))).toBe('N 5.0');
    expect(readColourText('7.5yr4/4')).toEqual(readColourText('7.5YR 4/4'));
  });

  test('each figure is taken to its bounds', () => {
    const taken = [
      'lab(0 0 0)',
      'lab(100 0 0)',
      'lab(50 200 0)',
      'lab(50 -120 160)',
      '5R 10/2',
      '10R 5/4',
      '5R 5/50',
      'N 10',
      'N 0',
    ];
    for (const text of taken) expect(() => readColourText(text), text).not.toThrow();
    const refused = [
      'lab(-1 0 0)',
      'lab(101 0 0)',
      'lab(50 201 0)',
      'lab(50 -121 160)',
      '5R 10.1/2',
      '10.1R 5/4',
      '5R 5/51',
      'N 10.1',
    ];
    for (const text of refused) expect(() => readColourText(text), text).toThrow(RangeError);
    expect(readColourText('N 10').l).toBeCloseTo(100, 2);
  });

  test('a text is looked at to its eightieth character, and shown to its fortieth', () => {
    const long = (length: number): string => `lab(40 ${'10 20)'.padStart(length - 7)}`;
    expect(readColourText(long(80))).toEqual({ l: 40, a: 10, b: 20 });
    expect(() => readColourText(long(81))).toThrow(/too long/);
    expect(() => readColourText('m'.repeat(60))).toThrow(/^"m{40}" is no colour/);
  });

  test.each([
    '',
    'mud',
    '#12',
    'lab(140 0 0)',
    'lab(40 300 0)',
    'lab(40)',
    '11YR 4/4',
    '5R 12/4',
    'N 11',
    'transparent',
    'brown',
    'rgb(107 74 47)',
    '#12345',
    '#6b4a2f80',
    'lch(40 10 20)',
    'a'.repeat(100),
  ])('refuses %j', (text) => {
    expect(() => readColourText(text)).toThrow(RangeError);
  });
});
