/**
 * Pale washes against tints of the same pigment in acrylic with titanium white, at the same lightness. No one has measured pale washes
 * of these paints: the tints are what is nearest. Source: K and S of Berns (2016), Artist Paint Spectral Database, opaque films; the
 * colour of a tint follows from them by Kubelka and Munk (1931) and the Saunderson correction. Limits are the project's own; the most is 16
 * degrees, ultramarine at L* 80, whose wash is the greener.
 */
import { expect, test } from 'vitest';
import { chromaOf, hueDifference, hueOf, type Lab, reflectanceToLab } from '../../src/colour/index.js';
import { DRY_WATERCOLOUR, throughSurface } from '../../src/optics/surface.js';
import { sourceSpectrum } from '../../src/paints/calibration/carried-spectra.js';
import { puddleReflectance } from '../../src/washes/index.js';
import { masstoneReflectance } from '../optics/films.js';
import { paintOf, STUDIO } from '../studio.js';

const WHITE = sourceSpectrum('acrylic-2016', 'PW6');

/** A tint of parts of paint to one of white. */
function tint(pigment: string, parts: number): Lab {
  const { K, S } = sourceSpectrum('acrylic-2016', pigment);
  const reflectance = K.map((k, band) => {
    const ratio =
      ((WHITE.K[band] as number) + parts * k) / ((WHITE.S[band] as number) + parts * (S[band] as number));
    return throughSurface(masstoneReflectance(ratio), DRY_WATERCOLOUR);
  });
  return reflectanceToLab(reflectance, 'D65-2');
}

function wash(id: string, strength: number): Lab {
  const pigment = paintOf(id);
  return reflectanceToLab(
    puddleReflectance([{ pigment, load: strength * pigment.fullStrength }], STUDIO.paper),
    'D65-2',
  );
}

/** The colour with this L* among ever more of a paint. */
function atLightness(of: (amount: number) => Lab, lightness: number): Lab {
  let less = -12;
  let more = 4;
  for (let step = 0; step < 50; step++) {
    const middle = (less + more) / 2;
    if (of(Math.exp(middle)).l > lightness) less = middle;
    else more = middle;
  }
  return of(Math.exp(less));
}

const PAIRS = [
  ['PB29', 'ultramarine-blue'],
  ['PR108', 'cadmium-red'],
  ['PB28', 'cobalt-aluminate-blue'],
  ['PB36:1', 'cerulean-blue-chromium'],
  ['PB15:1', 'phthalo-blue-red-shade'],
  ['PB15:4', 'phthalo-blue-green-shade'],
  ['PG7', 'phthalo-green-blue-shade'],
  ['PG36', 'phthalo-green-yellow-shade'],
  ['PV19', 'quinacridone-rose'],
  ['PR122', 'quinacridone-magenta'],
  ['PV23', 'dioxazine-violet'],
  ['PR254', 'pyrrole-red'],
] as const;

test.each(PAIRS.flatMap(([ci, id]) => [60, 70, 80].map((l) => [ci, id, l] as const)))(
  '%s, %s at L* %i: hue within 18 degrees of the tint, chroma within a quarter',
  (ci, id, lightness) => {
    const acrylic = atLightness((parts) => tint(ci, parts), lightness);
    const pale = atLightness((strength) => wash(id, strength), lightness);
    expect(Math.abs(hueDifference(hueOf(acrylic), hueOf(pale)))).toBeLessThan(18);
    expect(chromaOf(pale) / chromaOf(acrylic)).toBeGreaterThan(0.75);
    expect(chromaOf(pale) / chromaOf(acrylic)).toBeLessThan(1.25);
  },
);

// Common practice, no source: a thin wash of ultramarine is still a blue that leans to violet, one of phthalo blue is a greenish blue.
test('a wash of ultramarine at 5 % stays more violet than one of phthalo blue, green shade', () => {
  const lean = (id: string) => hueOf(wash(id, 0.05));
  expect(lean('ultramarine-blue')).toBeGreaterThan(262);
  expect(lean('ultramarine-blue') - lean('phthalo-blue-green-shade')).toBeGreaterThan(30);
});
