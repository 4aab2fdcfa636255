// Value, Munsell notation and hue names against Munsell data; sources inside the data files.
import { describe, expect, it } from 'vitest';
import { hueName } from '../../src/colour/hue.js';
import { hueOf, xyzToLab } from '../../src/colour/lab.js';
import { munsellNotation } from '../../src/colour/munsell-notation.js';
import { munsellValueFromY, yFromMunsellValue } from '../../src/colour/value.js';
import { reflectanceToXyz, whiteOf } from '../../src/colour/xyz.js';
import { fromIlluminantC, hueSteps, parseMunsell } from '../colour/helpers/munsell.js';
import { widen } from '../colour/helpers/spectra.js';
import samples from './data/colour-cie-test-samples.json' with { type: 'json' };
import chips from './data/colour-munsell-chips.json' with { type: 'json' };
import conversions from './data/colour-munsell-conversions.json' with { type: 'json' };
import valueTable from './data/colour-munsell-value.json' with { type: 'json' };

const CHIPS = chips.chips as [string, number, number, number][];

describe('Munsell value (ASTM D1535)', () => {
  it('follows the table of luminance factor both ways', () => {
    for (const [v, y] of valueTable.rows as [number, number][]) {
      expect(yFromMunsellValue(v)).toBeCloseTo(y, 5);
      expect(munsellValueFromY(y)).toBeCloseTo(v, 5);
    }
  });

  it('reads the 1943 figures once they are brought from magnesium oxide to the perfect diffuser', () => {
    for (const [v, y] of (valueTable.magnesiumOxide as [number, number][]).filter(([v]) => v < 10)) {
      expect(munsellValueFromY(y * 0.975)).toBeCloseTo(v, 2);
    }
  });
});

function expectNotation(
  got: string,
  wanted: string,
  tolerance: { hue: number; value: number; chroma: number },
): void {
  const one = parseMunsell(got);
  const other = parseMunsell(wanted);
  expect(Math.abs(one.value - other.value), `${got} for ${wanted}`).toBeLessThan(tolerance.value);
  expect(Math.abs(one.chroma - other.chroma), `${got} for ${wanted}`).toBeLessThan(tolerance.chroma);
  // Below chroma 2 a step of hue is smaller than the printed figures can tell.
  if (other.chroma >= 2) {
    expect(hueSteps(one.hue, other.hue), `${got} for ${wanted}`).toBeLessThan(tolerance.hue);
  }
}

describe('Munsell notation', () => {
  it.each(CHIPS)('of the renotation chip %s (Newhall, Nickerson, Judd 1943)', (notation, x, y, yMgo) => {
    expectNotation(munsellNotation(fromIlluminantC(x, y, yMgo * 0.975)), notation, {
      hue: 0.2,
      value: 0.06,
      chroma: 0.15,
    });
  });

  it.each(conversions.literature)('of $x $y $Y agrees with Centore 2012, Table 2', ({ x, y, Y, centore }) => {
    expectNotation(munsellNotation(fromIlluminantC(x, y, Y)), centore, {
      hue: 0.3,
      value: 0.07,
      chroma: 0.25,
    });
  });

  it.each(conversions.chart)('of $patch agrees with McCamy and others 1976', ({ x, y, Y, published }) => {
    expectNotation(munsellNotation(fromIlluminantC(x, y, Y)), published, {
      hue: 0.3,
      value: 0.1,
      chroma: 0.2,
    });
  });

  it.each(samples.samples)(
    'of the CIE 13.3 sample $name is about the one printed',
    ({ reflectance, munsell }) => {
      const notation = munsellNotation(reflectanceToXyz(widen(reflectance, 380)));
      expectNotation(notation, munsell, { hue: 1.6, value: 0.25, chroma: 1.2 });
    },
  );
});

describe('hue names', () => {
  /** The names that a Munsell family may go by. The families cut the circle in ten; the painters' wheel in thirteen. */
  const NAMES: Readonly<Record<string, readonly string[]>> = {
    R: ['red', 'red orange'],
    YR: ['red orange', 'orange', 'yellow orange', 'yellow'],
    Y: ['yellow'],
    GY: ['yellow green', 'green', 'yellow'],
    G: ['green', 'blue green'],
    BG: ['blue green', 'blue'],
    B: ['blue'],
    PB: ['blue', 'violet blue'],
    P: ['violet blue', 'violet', 'purple'],
    RP: ['purple', 'magenta', 'red'],
  };
  /** The name of the middle of each family. */
  const MIDDLES: Readonly<Record<string, string>> = {
    '5R': 'red',
    '5YR': 'orange',
    '5Y': 'yellow',
    '5GY': 'yellow green',
    '5G': 'green',
    '5BG': 'blue green',
    '5B': 'blue',
    '5PB': 'blue',
    '5P': 'violet',
    '5RP': 'magenta',
  };

  // Lines of constant Munsell hue bend in CIELAB, and chips stronger than any paint lie far along the bend.
  const paintable = CHIPS.filter(([notation]) => parseMunsell(notation).chroma <= 12);

  it.each(paintable)('of the renotation chip %s suits its Munsell family', (notation, x, y, yMgo) => {
    const name = hueName(hueOf(xyzToLab(fromIlluminantC(x, y, yMgo * 0.975), whiteOf('D65-2'))));
    expect(NAMES[parseMunsell(notation).family]).toContain(name);
    const middle = MIDDLES[notation.split(' ')[0] ?? ''];
    if (middle) expect(name).toBe(middle);
  });

  it('have enough chips to be checked on, with the middle of every family but G', () => {
    expect(paintable.length).toBeGreaterThan(40);
    const hues = new Set(paintable.map(([notation]) => notation.split(' ')[0]));
    // The 5G chips of this set are all stronger than chroma 12.
    expect(Object.keys(MIDDLES).filter((hue) => !hues.has(hue))).toEqual(['5G']);
  });
});
