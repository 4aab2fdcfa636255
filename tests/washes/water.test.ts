import { describe, expect, it } from 'vitest';
import { consistency, WATERS, waterStrength } from '../../src/washes/index.js';

/** Pale enough for any word. */
const PALE = 2;

describe('how thick a wash is', () => {
  // Common practice, no source: paint straight from the tube is butter, so that no wash with three parts of water can be.
  it('goes from cream at 1:3 over milk to weak tea, never thicker with more water', () => {
    expect(WATERS.map((water) => [water, consistency(waterStrength(water), PALE)])).toEqual([
      ['1:96', 'thin as weak tea'],
      ['1:48', 'thin as weak tea'],
      ['1:24', 'thin as tea'],
      ['1:12', 'thick as milk'],
      ['1:6', 'thick as milk'],
      ['1:3', 'thick as cream'],
    ]);
    const words = Array.from({ length: 100 }, (_, at) => consistency((at + 1) / 100, PALE));
    const turns = words.filter((word, at) => word !== words[at - 1]);
    expect(turns).toEqual(['thin as weak tea', 'thin as tea', 'thick as milk', 'thick as cream']);
  });

  it('calls no dark wash tea', () => {
    expect(consistency(0.2, 6)).toBeUndefined();
    expect(consistency(0.3, 6)).toBe('thick as milk');
  });
});
