/**
 * Predicted against measured watercolour mixtures.
 * Source: Chen, Huang, Chang, Ouhyoung (2019), arXiv:1904.00275, NTU WPSM data set, January 2019 (Apache-2.0 distribution).
 */
import { expect, test } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import { reflectanceToLab } from '../../src/colour/index.js';
import { puddleReflectance } from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';
import carried from './data/pigments-mixtures.json' with { type: 'json' };

/** The data set gives millilitres on one patch; load 1 is 0.01 mL. */
const MILLILITRES_PER_LOAD = 0.01;

const differences = carried.mixtures.map(([a, b, millilitresA, millilitresB, l, labA, labB]) => {
  const loads = [
    { pigment: paintOf(String(a)), load: Number(millilitresA) / MILLILITRES_PER_LOAD },
    { pigment: paintOf(String(b)), load: Number(millilitresB) / MILLILITRES_PER_LOAD },
  ];
  const predicted = reflectanceToLab(puddleReflectance(loads, STUDIO.paper), 'D65-2');
  return deltaE00(predicted, { l: Number(l), a: Number(labA), b: Number(labB) });
});

test('the carried mixtures cover every measured pair', () => {
  expect(carried.mixtures.length).toBeGreaterThanOrEqual(160);
  const pairs = new Map<string, number>();
  for (const [a, b] of carried.mixtures) pairs.set(`${a} ${b}`, (pairs.get(`${a} ${b}`) ?? 0) + 1);
  expect(pairs.size).toBe(62);
  expect(Math.min(...pairs.values())).toBe(3);
});

test('186 measured mixtures: mean CIEDE2000 at most 2.5, 90th percentile at most 4.5', () => {
  const sorted = differences.toSorted((a, b) => a - b);
  const mean = sorted.reduce((sum, value) => sum + value, 0) / sorted.length;
  expect(mean).toBeLessThanOrEqual(2.5);
  expect(sorted[Math.ceil(0.9 * sorted.length) - 1]).toBeLessThanOrEqual(4.5);
});
