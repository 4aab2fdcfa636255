/**
 * Predictions against published appearance, complements, non-complements and hue shifts.
 * Source: B. MacEvoy, guide to watercolor pigments (handprint.com, 2004 tests, rev. 2015); measured mixtures as in
 * pigments-mixtures.test.ts. Limits are the project's own.
 */
import { describe, expect, test } from 'vitest';
import { accuracyReport } from '../../src/accuracy/index.js';
import { STUDIO } from '../studio.js';

const report = accuracyReport(STUDIO);

describe('accuracy report', () => {
  test('masstones: median CIEDE2000 at most 3, 90th percentile at most 6', () => {
    expect(report.masstones.n).toBeGreaterThanOrEqual(60);
    expect(report.masstones.median).toBeLessThanOrEqual(3);
    expect(report.masstones.p90).toBeLessThanOrEqual(6);
  });

  test('complements: 85 % reach C* 8, 60 % reach C* 5, other pairs at most 25 %', () => {
    expect(report.complements.n).toBeGreaterThanOrEqual(100);
    expect(report.complements.withinC8 / report.complements.n).toBeGreaterThanOrEqual(0.85);
    expect(report.complements.withinC5 / report.complements.n).toBeGreaterThanOrEqual(0.6);
    const { others } = report.complements;
    expect(others.withinC8 / others.n).toBeLessThanOrEqual(0.25);
  });

  test('non-complements: 80 % stay above C* 5 and lean the stated way', () => {
    expect(report.nonComplements.held / report.nonComplements.n).toBeGreaterThanOrEqual(0.8);
  });

  test('hue shifts of 5 degrees and more: 85 % have the published sign', () => {
    expect(report.hueShifts.n).toBeGreaterThanOrEqual(40);
    expect(report.hueShifts.signRight / report.hueShifts.n).toBeGreaterThanOrEqual(0.85);
  });

  // With level films 17 and 15: the thin places of a film on paper's tooth let light through, so no grey is quite as deep.
  test('phthalo green with either pyrrole red makes a grey 14 L* darker than both', () => {
    for (const grey of report.darkGreys) expect(grey.darkerLstar - grey.lstar).toBeGreaterThanOrEqual(14);
  });

  test('measured mixtures: mean at most 2.5, 90th percentile at most 4.5', () => {
    expect(report.mixtures.n).toBeGreaterThanOrEqual(120);
    expect(report.mixtures.mean).toBeLessThanOrEqual(2.5);
    expect(report.mixtures.p90).toBeLessThanOrEqual(4.5);
  });
});

describe('report format', () => {
  test('every row names pigments of the library and the counts agree with the rows', () => {
    const ids = new Set(STUDIO.paints.map((pigment) => pigment.id));
    const { masstones, complements, nonComplements } = report;
    expect([masstones.rows.length, complements.rows.length, nonComplements.rows.length]).toEqual([
      masstones.n,
      complements.n,
      nonComplements.n,
    ]);
    for (const { a, b, at, minChroma } of [...complements.rows, ...nonComplements.rows]) {
      expect(ids.has(a) && ids.has(b)).toBe(true);
      expect(at).toBeGreaterThan(0);
      expect(at).toBeLessThan(1);
      expect(minChroma).toBeGreaterThanOrEqual(0);
    }
  });
});
