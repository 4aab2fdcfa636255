// One scene under two published illuminants (CIE standard illuminants D65 and A, CIE 1931 observer): surfaces of published and of predicted
// spectra, rendered to light and read back. Sources inside the data files.
import { describe, expect, it } from 'vitest';
import { adaptation, applied, SRGB_WHITE } from '../../src/colour/adapt.js';
import { readColour, whiteOf } from '../../src/colour/index.js';
import { spectrum } from '../../src/optics/index.js';
import { readPainting } from '../../src/painting/index.js';
import { widen } from '../colour/helpers/spectra.js';
import { labAt } from '../painting/against.js';
import { chartOf } from '../painting/patches.js';
import { ILLUMINANTS, lightFrom, mixedLight, PICTURES, paintedPicture } from '../painting/scenes.js';
import { STUDIO } from '../studio.js';
import chart from './data/colour-chart-patches.json' with { type: 'json' };
import samples from './data/colour-cie-test-samples.json' with { type: 'json' };

const paper = STUDIO.paper.reflectance;
const washes = PICTURES.flatMap((picture) =>
  paintedPicture(picture, 48, 28).surfaces.map(({ reflectance }) => reflectance),
);
const published = [
  ...chart.patches.map(({ reflectance }) => widen(reflectance, 380)),
  ...samples.samples.map(({ reflectance }) => spectrum(reflectance)),
];

describe.each([
  ['washes of the library', washes],
  ['published reflectances', published],
])('%s', (_, surfaces) => {
  const read = (illuminant: readonly number[]) => {
    const lights = [paper, ...surfaces].map((reflectance) => lightFrom(reflectance, illuminant));
    const top = Math.max(...lights.flat());
    const { photograph, middles } = chartOf(
      lights.map(([r, g, b]) => [r / top, g / top, b / top]),
      Math.ceil(Math.sqrt(lights.length)),
      (light) => light,
    );
    const reading = readPainting(STUDIO, photograph, { white: middles[0] as { x: number; y: number } });
    // A sheet is read at most so large: small patches are read in their middle alone.
    return middles.slice(1).map(({ x, y }) => labAt(reading, x, y, 1));
  };
  const truly = surfaces.map((reflectance) => readColour(reflectance));

  it.each([
    ['D65', ILLUMINANTS.D65, 0.05, 1],
    ['half A', mixedLight(0.5), 0.25, 5],
    ['A', ILLUMINANTS.A, 0.5, 9],
  ] as const)('are within half a step under %s', (_name, illuminant, steps, chroma) => {
    const labs = read(illuminant);
    for (const [at, { lab }] of truly.entries()) {
      const seen = labs[at] as typeof lab;
      // L* is ten times value to a twentieth of a step.
      expect(Math.abs(seen.l - lab.l) / 10).toBeLessThan(steps);
      expect(Math.abs(Math.hypot(seen.a, seen.b) - Math.hypot(lab.a, lab.b))).toBeLessThan(chroma);
    }
  });
});

describe('the transform', () => {
  it('takes white to white, and every grey with it', () => {
    const white = whiteOf('D65-2');
    const { x, y, z } = SRGB_WHITE;
    for (const share of [1, 0.3, 0.01]) {
      const [gx, gy, gz] = applied(adaptation(SRGB_WHITE, white), x * share, y * share, z * share);
      expect(gx).toBeCloseTo(white.x * share, 6);
      expect(gy).toBeCloseTo(white.y * share, 6);
      expect(gz).toBeCloseTo(white.z * share, 6);
    }
  });
});
