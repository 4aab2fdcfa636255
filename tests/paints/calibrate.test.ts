import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import { hueDifference, hueOf } from '../../src/colour/index.js';
import { type Aim, filmColour } from '../../src/paints/calibration/aims.js';
import { BASIS, bends, curve, SPLINES } from '../../src/paints/calibration/basis.js';
import { calibrate, misfitOfShape } from '../../src/paints/calibration/calibrate.js';
import { sourceSpectrum } from '../../src/paints/calibration/carried-spectra.js';
import { scatterFromTransparency, startingShape, visibleMean } from '../../src/paints/calibration/medium.js';
import type { Pigment } from '../../src/paints/index.js';
import { paintOf as paint, STUDIO } from '../studio.js';

const PAPER = STUDIO.paper;

/** Aims read off a paint that is known, as a user's own swatches would be. */
function aimsFrom(pigment: Pigment, strengths: readonly number[]): Aim[] {
  const film = {
    K: pigment.K.map((k) => k * pigment.fullStrength),
    S: pigment.S.map((s) => s * pigment.fullStrength),
  };
  return strengths.map((strength) => ({
    kind: 'colour',
    strength,
    lab: filmColour(film, strength, 'D65-2', PAPER),
    observer: 'D65-2',
    tolerance: 0.3,
  }));
}

describe('calibration', () => {
  test('finds a known paint again from its own curve and two swatches', () => {
    const known = paint('alizarin-crimson');
    const aims = aimsFrom(known, [1, 0.3]);
    const shape = startingShape(sourceSpectrum('watercolour', 'alizarin-crimson'), 'watercolour');
    const { film, departure } = calibrate({ shape, aims, transparency: 3.9, freedom: 'same' }, PAPER);
    expect(departure).toBeLessThan(0.02);
    const kept = visibleMean(film.K) / (visibleMean(known.K) * known.fullStrength);
    expect(kept).toBeGreaterThan(0.9);
    expect(kept).toBeLessThan(1.1);
    // a strength that was not aimed at
    const between = filmColour(film, 0.6, 'D65-2', PAPER);
    const truth = filmColour(known, 0.6 * known.fullStrength, 'D65-2', PAPER);
    expect(deltaE00(between, truth)).toBeLessThan(1);
  });

  test('reaches the colours of a paint from the curve of a related one', () => {
    const known = paint('burnt-sienna');
    const aims = aimsFrom(known, [1, 0.25]);
    const shape = startingShape(sourceSpectrum('watercolour', 'raw-sienna'), 'watercolour');
    const { film } = calibrate({ shape, aims, freedom: 'kin' }, PAPER);
    for (const aim of aims) {
      if (aim.kind !== 'colour') continue;
      expect(deltaE00(filmColour(film, aim.strength, 'D65-2', PAPER), aim.lab)).toBeLessThan(2);
    }
  });

  test('gives the hue shift that is asked for', () => {
    const shape = startingShape(sourceSpectrum('acrylic-2016', 'PR122'), 'acrylic');
    const shiftOf = (shiftDeg: number) => {
      const { film } = calibrate(
        {
          shape,
          freedom: 'kin',
          aims: [
            { kind: 'colour', strength: 1, lab: { l: 45, a: 60, b: 0 }, observer: 'D65-2' },
            { kind: 'hue-shift', tintStrength: 0.35, shiftDeg, observer: 'D65-2', toleranceDeg: 1 },
          ],
        },
        PAPER,
      );
      const hue = (strength: number) => hueOf(filmColour(film, strength, 'D65-2', PAPER));
      return hueDifference(hue(1), hue(0.35));
    };
    expect(shiftOf(-20)).toBeLessThan(shiftOf(-5) - 5);
  });

  test('the more transparent rating gives the film that scatters less', () => {
    const shape = startingShape(sourceSpectrum('acrylic-2016', 'PR254'), 'acrylic');
    const aims: Aim[] = [{ kind: 'lightness', strength: 1, lightness: 45, observer: 'D65-2' }];
    const scatter = (transparency: number) =>
      visibleMean(calibrate({ shape, aims, transparency, freedom: 'same' }, PAPER).film.S);
    expect(scatter(0.5)).toBeGreaterThan(scatter(3.5));
    expect(scatterFromTransparency(0)).toBeGreaterThan(scatterFromTransparency(4));
  });

  test('ranks the true curve before a wrong one', () => {
    const aims = aimsFrom(paint('ultramarine-blue'), [1, 0.35]);
    const misfit = (id: string) =>
      misfitOfShape(
        { shape: startingShape(sourceSpectrum('watercolour', id), 'watercolour'), aims, freedom: 'kin' },
        PAPER,
      );
    expect(misfit('ultramarine-blue')).toBeLessThan(misfit('prussian-blue'));
    expect(misfit('ultramarine-blue')).toBeLessThan(misfit('cadmium-red'));
  });

  test('refuses to work from nothing', () => {
    const shape = startingShape(sourceSpectrum('acrylic-2016', 'PR254'), 'acrylic');
    expect(() => calibrate({ shape, aims: [], freedom: 'same' }, PAPER)).toThrow(RangeError);
    expect(() => sourceSpectrum('acrylic-2016', 'PX99')).toThrow(/no spectrum/);
  });
});

describe('smooth curves', () => {
  test('the splines add up to one in every band', () => {
    for (const row of BASIS) expect(row.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
  });

  test('a straight line has no bends and level ends', () => {
    const line = Array.from({ length: SPLINES }, (_, index) => index);
    for (const bend of bends(line)) expect(bend).toBe(0);
    const values = curve(line);
    expect(values[0]).toBe(values[2]);
    expect(values[20] as number).toBeGreaterThan(values[10] as number);
  });
});
