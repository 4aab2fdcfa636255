import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { isNarrow } from '../../src/text/narrow.js';
import { cleanText, printable } from '../../src/text/sanitize.js';
import { fitText, fitWords, nameLines, padText, wrapText } from '../../src/text/wrap.js';

/** Anything a file may hold: all of Unicode, with escapes and direction marks often enough to matter. */
const anyText = fc.string({
  unit: fc.oneof(
    fc.string({ unit: 'binary', minLength: 1, maxLength: 1 }),
    fc.constantFrom(
      '\u001b[31m',
      '\u001b]0;t\u0007',
      '\u202e',
      '\u2066',
      '\u200b',
      '\u0007',
      ' ',
      '\n',
      '漢',
      'é',
      'a',
    ),
  ),
  maxLength: 60,
});

describe('cleanText', () => {
  it('takes out escape sequences with everything that belongs to them', () => {
    expect(cleanText('a\u001b[31mred\u001b[0m b')).toBe('ared b');
    expect(cleanText('x\u001b]0;title\u0007y')).toBe('xy');
    expect(cleanText('x\u001b]8;;http://a\u001b\\y')).toBe('xy');
    expect(cleanText('x\u009b2Jy')).toBe('xy');
  });

  it('takes out characters that reverse or hide text, and keeps what is read', () => {
    expect(cleanText('abc\u202edef\u2066g\u200b\ufeff')).toBe('abcdefg');
    expect(cleanText('  line\r\nbreak\ttab  ')).toBe('line break tab');
    expect(cleanText('Grün, 漢字, naïve')).toBe('Grün, 漢字, naïve');
  });

  it('cuts stacks of combining marks and over-long texts', () => {
    expect(cleanText(`a${'\u0301'.repeat(50)}`).length).toBeLessThan(8);
    expect(cleanText('x'.repeat(5000), 20)).toBe(`${'x'.repeat(17)}...`);
    expect(cleanText('abc', 2)).toBe('..');
  });

  it('never lets a control or format character through, and leaves clean text alone', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const clean = cleanText(text, 40);
        expect(clean).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
        expect([...clean].length).toBeLessThanOrEqual(40);
        expect(cleanText(clean, 40)).toBe(clean);
      }),
    );
  });
});

describe('printable', () => {
  it('keeps the blanks and line breaks of a table', () => {
    expect(printable('a   b\u001b[2J\n\u0007  c')).toBe('a   b\n  c');
  });
});

describe('fitting text into columns', () => {
  // Source: string-width, after Unicode Standard Annex 11, East Asian Width.
  it('takes for one column wide only signs that are', () => {
    const signs = Array.from({ length: 0xfffe }, (_, code) => String.fromCharCode(code)).filter(isNarrow);
    expect(signs.length).toBeGreaterThan(1000);
    expect(signs.filter((sign) => stringWidth(sign) !== 1)).toEqual([]);
  });

  it('breaks at blanks', () => {
    expect(wrapText('one two three', 8)).toEqual(['one two', 'three']);
    expect(wrapText('', 8)).toEqual([]);
  });

  it('cuts a word longer than the line and counts wide characters as two columns', () => {
    expect(wrapText('abcdefghij', 4)).toEqual(['abcd', 'efgh', 'ij']);
    expect(wrapText('漢字漢字', 5)).toEqual(['漢字', '漢字']);
  });

  it('never makes a line wider than its room and loses no letter', () => {
    fc.assert(
      fc.property(anyText, fc.integer({ min: 2, max: 30 }), (text, columns) => {
        const clean = cleanText(text);
        const lines = wrapText(clean, columns);
        for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(columns);
        expect(lines.join('').replaceAll(' ', '')).toBe(clean.replace(/\s+/gu, ''));
      }),
    );
  });

  it('shortens to whole words, and cuts only a first word that is too long', () => {
    expect(fitWords('yellow green bucket', 14)).toBe('yellow green');
    expect(fitWords('yours, far roof', 8)).toBe('yours');
    expect(fitWords('amount, parts to one of the wash', 28)).toBe('amount, parts to one');
    expect(fitWords('phthalo blue (green shade)', 20)).toBe('phthalo blue');
    expect(fitWords('ultramarine', 6)).toBe('ultra…');
    fc.assert(
      fc.property(anyText, fc.integer({ min: 2, max: 30 }), (text, columns) => {
        const clean = cleanText(text);
        const short = fitWords(clean, columns);
        expect(stringWidth(short)).toBeLessThanOrEqual(columns);
        if (stringWidth(clean) <= columns) expect(short).toBe(clean);
      }),
    );
  });

  it('keeps names side by side apart: in two lines where there are two, else by another word', () => {
    const names = ['lit bricks', 'with crimson', 'with black'];
    expect(nameLines(names, 9, 2)).toEqual([
      ['lit', 'bricks'],
      ['with', 'crimson'],
      ['with', 'black'],
    ]);
    expect(nameLines(names, 9, 1)).toEqual([['lit'], ['crimson'], ['black']]);
    expect(nameLines(['sky', 'trunk'], 9, 2)).toEqual([['sky'], ['trunk']]);
  });

  it('cuts with a mark and pads to exactly the columns', () => {
    expect(fitText('alizarin crimson', 9)).toBe('alizarin…');
    expect(fitText('short', 9)).toBe('short');
    fc.assert(
      fc.property(anyText, fc.integer({ min: 1, max: 30 }), (text, columns) => {
        expect(stringWidth(padText(cleanText(text), columns))).toBe(columns);
      }),
    );
  });
});
