import { describe, expect, test } from 'vitest';
import { weigh } from '../../../src/drills/kinds/worked/weigh.js';
import type { Wash } from '../../../src/washes/index.js';
import { SHIPPED_DRILLS } from '../../exercises.js';
import { asked, kindOf, STUDIO } from '../../studio.js';

const wash = (paint: string, strength = 0.3): Wash => ({ paints: { [paint]: 1 }, strength });

function isTrue(
  fact: 'third-colour' | 'on-line' | 'glows-above-line' | 'below-line',
  one: Wash,
  other: Wash,
) {
  const items = [
    { id: 'one', name: 'one', laid: one },
    { id: 'other', name: 'other', laid: other },
  ];
  return weigh(STUDIO, { case: items, statements: [{ fact, of: ['one', 'other'] }] })[0]?.isTrue;
}

// Common practice, no source: which pairs of paints give a third colour, and which only a grey or more of the same.
describe('a third colour lies between', () => {
  test.each([
    ['lemon-yellow', 'cerulean-blue', true],
    ['lemon-yellow', 'prussian-blue', true],
    ['burnt-sienna', 'ultramarine-blue', false],
    ['cadmium-red', 'cadmium-yellow', false],
    ['cobalt-blue', 'ultramarine-blue', false],
  ])('%s and %s: %s', (one, other, is) => {
    expect(isTrue('third-colour', wash(one), wash(other))).toBe(is);
  });
});

// The shading line (D. Briggs, The Dimensions of Colour, section 10.1): on it, above it or below it, and only one of the three.
test('a darker thing lies on the line, glows above it or has gone below', () => {
  const lit = wash('burnt-sienna', 0.2);
  const facts = ['on-line', 'glows-above-line', 'below-line'] as const;
  const where = (shade: Wash): string[] => facts.filter((fact) => isTrue(fact, shade, lit));
  const black = { paints: { 'burnt-sienna': 2, 'ivory-black': 1 }, strength: 0.4 };
  const crimson = { paints: { 'burnt-sienna': 1, 'alizarin-crimson': 1 }, strength: 0.65 };
  expect(where(black)).toEqual(['below-line']);
  expect(where(crimson)).toEqual(['glows-above-line']);
  expect(where(lit)).toEqual(['on-line']);
});

test('before the answer no figure of a colour is told where colours are to be judged', () => {
  const all = SHIPPED_DRILLS;
  const lines = (kind: string): string[] =>
    all.filter((drill) => drill.kind === kind).flatMap((drill) => asked(kindOf(drill), drill));
  const told = [
    ...lines('worked').filter((line) => /step \d|chroma \d|\d°/.test(line)),
    // The plan is told, what lies there is only shown.
    ...lines('diagnosis').filter(
      (line) => !/^[a-z ]+: planned step \S+( \(the \w+\))? to \S+, [^;]*$/.test(line),
    ),
  ];
  expect(told).toEqual([]);
});
