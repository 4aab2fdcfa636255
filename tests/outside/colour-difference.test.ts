// Source inside data/colour-ciede2000.json: Sharma, Wu, Dalal 2005, Table 1.
import { describe, expect, it } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import table from './data/colour-ciede2000.json' with { type: 'json' };

type Row = [number, number, number, number, number, number, number, number];

describe('CIEDE2000 (Sharma, Wu, Dalal 2005)', () => {
  it.each(table.pairs as Row[])('pair %d', (_pair, l1, a1, b1, l2, a2, b2, published) => {
    const one = { l: l1, a: a1, b: b1 };
    const other = { l: l2, a: a2, b: b2 };
    expect(Math.abs(deltaE00(one, other) - published)).toBeLessThan(5.1e-5);
    expect(deltaE00(other, one)).toBeCloseTo(deltaE00(one, other), 10);
  });
});
