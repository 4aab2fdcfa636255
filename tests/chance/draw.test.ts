import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';

describe('seeded draws', () => {
  test('the same seed, the same numbers', () => {
    const [a, b] = [seededDraw(42), seededDraw(42)];
    expect(Array.from({ length: 50 }, () => a(99))).toEqual(Array.from({ length: 50 }, () => b(99)));
  });

  // Serial test: Knuth, The Art of Computer Programming 2, 3.3.2 B. Critical value of chi-square, 24 degrees of freedom,
  // 0.001: 51.18 (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4). The seeds are fixed, so the figure is too.
  test.each([0, 1, 2])('draw %i of one seed says nothing of that of the next', (place) => {
    const drawn = (seed: number): number => {
      const draw = seededDraw(seed);
      for (let skipped = 0; skipped < place; skipped++) draw(4);
      return draw(4);
    };
    const counts = new Array<number>(25).fill(0);
    for (let seed = 0; seed < 5000; seed += 2) {
      const cell = 5 * drawn(seed) + drawn(seed + 1);
      counts[cell] = (counts[cell] ?? 0) + 1;
    }
    const chiSquare = counts.reduce((sum, count) => sum + (count - 100) ** 2 / 100, 0);
    expect(chiSquare).toBeLessThan(51.18);
  });
});

test('no other room has a generator, and nothing is drawn without a seed', () => {
  const others = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && name !== join('chance', 'draw.ts'))
    .filter((name) => /from 'pure-rand|Math\.random/.test(readFileSync(join('src', name), 'utf8')));
  expect(others).toEqual([]);
});
