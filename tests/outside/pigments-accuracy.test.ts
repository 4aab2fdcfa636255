/**
 * Predictions against published appearance, complements, non-complements and hue shifts.
 * Source: B. MacEvoy, guide to watercolor pigments (handprint.com, 2004 tests, rev. 2015); measured films as in
 * pigments-mixtures.test.ts. Limits are the project's own.
 */
import { describe, expect, test } from 'vitest';
import { accuracyReport } from '../../src/accuracy/index.js';
import { painterStep, readColour } from '../../src/colour/index.js';
import { accuracyText } from '../../src/commands/accuracy.js';
import { puddleReflectance } from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';

const report = accuracyReport(STUDIO);

describe('accuracy report', () => {
  test('as text ends with what no prediction can do', () => {
    expect(accuracyText(STUDIO, report)).toMatch(/Makers differ[\s\S]*nearer than that\.\n$/);
  });

  test('masstones: median CIEDE2000 at most 1.2, 90th percentile at most 2.8, largest at most 4.9', () => {
    expect(report.masstones.n).toBeGreaterThanOrEqual(60);
    expect(report.masstones.median).toBeLessThanOrEqual(1.2);
    expect(report.masstones.p90).toBeLessThanOrEqual(2.8);
    expect(report.masstones.max).toBeLessThanOrEqual(4.9);
  });

  test('complements: 87 % reach C* 8, 62 % reach C* 5, other pairs at most 22 %', () => {
    expect(report.complements.n).toBeGreaterThanOrEqual(100);
    expect(report.complements.withinC8 / report.complements.n).toBeGreaterThanOrEqual(0.87);
    expect(report.complements.withinC5 / report.complements.n).toBeGreaterThanOrEqual(0.62);
    const { others } = report.complements;
    expect(others.withinC8 / others.n).toBeLessThanOrEqual(0.22);
  });

  test('non-complements: 92 % stay above C* 5 and lean the stated way', () => {
    expect(report.nonComplements.held / report.nonComplements.n).toBeGreaterThanOrEqual(0.92);
  });

  test('hue shifts of 5 degrees and more: 95 % have the published sign', () => {
    expect(report.hueShifts.n).toBeGreaterThanOrEqual(40);
    expect(report.hueShifts.signRight / report.hueShifts.n).toBeGreaterThanOrEqual(0.95);
  });

  // published: about L* 27 with PR254, about 22 with PR255
  test('phthalo green with either pyrrole red makes a grey 14 L* darker than both, within 7 of the published one', () => {
    const published = { 'pyrrole-red': 27, 'pyrrole-scarlet': 22 };
    expect(report.darkGreys.map(({ b }) => b)).toEqual(Object.keys(published));
    for (const { b, lstar, darkerLstar } of report.darkGreys) {
      expect(darkerLstar - lstar, b).toBeGreaterThanOrEqual(14);
      expect(Math.abs(lstar - published[b as keyof typeof published]), b).toBeLessThanOrEqual(7);
    }
  });

  test('hue shift of the measured paints: root mean square at most 3.5 degrees at a tint between 0.2 and 0.3', () => {
    const { tintHueShift } = report;
    expect(tintHueShift.n).toBe(7);
    expect(tintHueShift.strength).toBeGreaterThanOrEqual(0.2);
    expect(tintHueShift.strength).toBeLessThanOrEqual(0.3);
    expect(tintHueShift.rmsDeg).toBeLessThanOrEqual(3.5);
  });

  test('a burnt sienna wash keeps its colour: C* 45-60 at step 3.9-4.6 at 0.3, no yellow at 0.06 (common practice, no source)', () => {
    const pigment = paintOf('burnt-sienna');
    const at = (strength: number) =>
      readColour(puddleReflectance([{ pigment, load: strength * pigment.fullStrength }], STUDIO.paper));
    const wash = at(0.3);
    expect(wash.chroma).toBeGreaterThanOrEqual(45);
    expect(wash.chroma).toBeLessThanOrEqual(60);
    expect(painterStep(wash.value)).toBeGreaterThanOrEqual(3.9);
    expect(painterStep(wash.value)).toBeLessThanOrEqual(4.6);
    expect(at(0.06).hue).toBeLessThanOrEqual(68);
  });
});

describe('report format', () => {
  test('errors of a change cover all strengths, each with all measured paints', () => {
    const measured = STUDIO.paints.filter(({ evidence }) => evidence === 'measured').map(({ id }) => id);
    const { modelError } = report;
    expect(modelError[0]?.from).toBe(0);
    expect(modelError.at(-1)?.to).toBeNull();
    for (const [index, row] of modelError.entries()) {
      if (index > 0) expect(row.from).toBe(modelError[index - 1]?.to);
      expect(Object.keys(row.bySecond).toSorted()).toEqual(measured.toSorted());
      expect(row.value).toBeGreaterThan(0.1);
      expect(row.chroma).toBeGreaterThan(1);
    }
  });

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
