import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileNamePart, nameKey, shownName, titlePart } from '../../src/quiz/names.js';
import { questionOrder } from '../../src/quiz/order.js';
import { someHandout } from './fixture.js';

describe('names of students', () => {
  it('keeps plain names readable in file names', () => {
    expect(fileNamePart('Ann Lee')).toBe('ann-lee');
    expect(fileNamePart('  ann   LEE ')).toBe('ann-lee');
    expect(fileNamePart('Zoë Müller')).toBe('zoë-müller');
    expect(fileNamePart('李 明')).toBe('李-明');
  });

  it.each([
    '../../etc/passwd',
    'a/b',
    'a\\b',
    '.',
    '..',
    '...',
    '.hidden',
    'con:',
    'a\u0000b',
    '🙂',
    '🎨🎨',
    '-rf',
    '--',
    ' ',
    'x'.repeat(300),
    '👩‍🎨'.repeat(100),
    'a\u202Egpj.exe',
    '*?"<>|',
    '\u0301\u0301',
    'Ann-Lee',
    "O'Neil",
    'é'.repeat(300),
  ])('makes a safe part of %j', (name) => {
    const part = fileNamePart(name);
    expect(part).toMatch(/^[\p{L}\p{N}][\p{L}\p{M}\p{N}-]*(?:_[0-9a-f]{8})?$/u);
    expect(Buffer.byteLength(part)).toBeLessThanOrEqual(75);
  });

  it('gives names that are equal after cleaning different files', () => {
    const alike = ['Ann Lee', 'Ann-Lee', 'Ann/Lee', 'Ann.Lee', 'Ann_Lee', 'Ann Lee!', 'Ann 🙂 Lee'];
    expect(new Set(alike.map(fileNamePart)).size).toBe(alike.length);
    const long = ['x'.repeat(300), `${'x'.repeat(299)}y`, 'x'.repeat(61)];
    expect(new Set(long.map(fileNamePart)).size).toBe(long.length);
  });

  it('gives any two different students different files, and one student always the same', () => {
    const anyName = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(anyName, anyName, (a, b) => {
        expect(fileNamePart(a) === fileNamePart(b)).toBe(nameKey(a) === nameKey(b));
        expect(fileNamePart(a)).toMatch(/^[^/\\.\p{C}\s]+$/u);
      }),
      { numRuns: 2000 },
    );
  });

  it('makes a file name of a title', () => {
    expect(titlePart('Week 3: darker, not muddier!')).toBe('week-3-darker-not-muddier');
    expect([titlePart('../../etc'), titlePart('🙂'), titlePart('')]).toEqual(['etc', 'quiz', 'quiz']);
    expect(Buffer.byteLength(titlePart('é'.repeat(300)))).toBeLessThanOrEqual(60);
  });

  it('shows names without anything invisible', () => {
    expect(shownName('A\u202Enn\u200B \u001b[31mLee\n')).toBe('Ann Lee');
  });
});

describe('the order of questions', () => {
  const handout = someHandout(12);

  it('is a permutation that depends on name and seed alone', () => {
    const order = questionOrder(handout, 'Ann Lee');
    expect([...order].sort((a, b) => a - b)).toEqual(handout.questions.map((_, index) => index));
    expect(questionOrder(handout, ' ann lee ')).toEqual(order);
    expect(questionOrder(handout, 'Ben Lee')).not.toEqual(order);
    expect(questionOrder({ ...handout, seed: 43 }, 'Ann Lee')).not.toEqual(order);
    // Fixed for ever: a sitting begun with one version goes on with the next.
    expect(order).toEqual([8, 6, 0, 1, 5, 4, 7, 10, 3, 2, 11, 9]);
  });

  it('is the order of the handout when it is not shuffled', () => {
    expect(questionOrder(someHandout(5, { shuffle: false }), 'Ann')).toEqual([0, 1, 2, 3, 4]);
  });

  it('makes every order equally likely (chi-squared, 23 degrees of freedom)', () => {
    const counts = new Map<string, number>();
    const rounds = 24_000;
    const four = someHandout(4);
    for (let student = 0; student < rounds; student++) {
      const key = questionOrder(four, `Student ${student}`).join('');
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    const expected = rounds / 24;
    const chi = [...counts.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
    expect(counts.size).toBe(24);
    // Critical value at 0.001 from the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4.
    expect(chi).toBeLessThan(49.728);
  });
});
