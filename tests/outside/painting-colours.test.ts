// Colours of published figures put into a file and read back; sources inside the data files.
import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { seededDraw, shuffled } from '../../src/chance/draw.js';
import { deltaE00 } from '../../src/colour/difference.js';
import { munsellValueFromY, whiteOf, xyzToLab } from '../../src/colour/index.js';
import { readPainting } from '../../src/painting/index.js';
import { labAt } from '../painting/against.js';
import { chartOf } from '../painting/patches.js';
import type { Light } from '../painting/scenes.js';
import { quantised } from '../painting/simulate.js';
import { STUDIO } from '../studio.js';
import values from './data/colour-munsell-value.json' with { type: 'json' };
import single from './data/colour-single-examples.json' with { type: 'json' };
import chart from './data/painting-chart.json' with { type: 'json' };

const BITS = [8, 16] as const;
const value = (l: number): number =>
  munsellValueFromY(100 * (l > 8 ? ((l + 16) / 116) ** 3 : (27 * l) / 24389));

describe('neutrals of published Munsell values (ASTM D1535)', () => {
  // In no order: a row of whites along an edge would be a margin.
  const rows = shuffled(values.rows as [number, number][], seededDraw(1));
  const lights = rows.map(([, y]): Light => [y / 100, y / 100, y / 100]);

  it.each(BITS)('read back within 0.1 value from %i bits, once one of them is said', (bits) => {
    const { photograph, middles } = chartOf(lights, 9, (light) => quantised(light, bits));
    for (const said of [9.4, 6, 4]) {
      const white = {
        ...(middles[rows.findIndex(([v]) => v === said)] as { x: number; y: number }),
        value: said,
      };
      const reading = readPainting(STUDIO, photograph, { white });
      for (const [at, [v]] of rows.entries()) {
        const { x, y } = middles[at] as { x: number; y: number };
        expect(Math.abs(value(labAt(reading, x, y).l) - v), `${v} from ${said}`).toBeLessThan(0.1);
      }
    }
  });

  it('read back within 0.1 value by the white of sRGB, where nothing is light enough for paper', () => {
    const dark = rows.filter(([v]) => v <= 5);
    const { photograph, middles } = chartOf(
      dark.map(([, y]): Light => [y / 100, y / 100, y / 100]),
      6,
      (light) => quantised(light, 8),
    );
    const reading = readPainting(STUDIO, photograph, {});
    expect(reading.white.found).toBe(false);
    expect(reading.trust).toBe('low');
    for (const [at, [v]] of dark.entries()) {
      const { x, y } = middles[at] as { x: number; y: number };
      expect(Math.abs(value(labAt(reading, x, y).l) - v), `${v}`).toBeLessThan(0.1);
    }
  });
});

describe('the 24 colours of the chart of McCamy, Marcus and Davidson 1976', () => {
  /** From illuminant C to D65 by the Bradford transform of ICC.1, which the reader does not use. */
  const bradford = new Matrix([
    [0.8951, 0.2664, -0.1614],
    [-0.7502, 1.7135, 0.0367],
    [0.0389, -0.0685, 1.0296],
  ]);
  const [from, to] = [single.whites.C, single.whites.D65].map((white) =>
    bradford.mmul(Matrix.columnVector(white)).to1DArray(),
  );
  const adapted = inverse(bradford)
    .mmul(Matrix.diag((to as number[]).map((response, k) => response / ((from as number[])[k] as number))))
    .mmul(bradford);
  /** IEC 61966-2-1, with its own white, which is not quite the one of the ASTM weights. */
  const toSrgb = inverse(
    new Matrix([
      [506752 / 1228815, 87881 / 245763, 12673 / 70218],
      [87098 / 409605, 175762 / 245763, 12673 / 175545],
      [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
    ]),
  );
  const white = whiteOf('D65-2');
  const colours = (chart.patches as [string, number, number, number][]).map(([name, x, y, ofMgO]) => {
    const Y = 97.5 * ofMgO;
    const [X = 0, yy = 0, Z = 0] = adapted
      .mmul(Matrix.columnVector([(x / y) * Y, Y, ((1 - x - y) / y) * Y]))
      .to1DArray();
    const ours = [(X / white.x) * (0.3127 / 0.329), yy / 100, (Z / white.z) * ((1 - 0.3127 - 0.329) / 0.329)];
    const light = toSrgb.mmul(Matrix.columnVector(ours)).to1DArray() as unknown as Light;
    return { name, light, lab: xyzToLab({ x: X, y: yy, z: Z }, white) };
  });

  it.each([
    [8, 1],
    [16, 0.5],
  ] as const)('read back from %i bits within CIEDE2000 %d', (bits, most) => {
    const { photograph, middles } = chartOf(
      colours.map(({ light }) => light),
      6,
      (light) => quantised(light, bits),
    );
    const at = colours.findIndex(({ name }) => name === 'white 9.5');
    const reading = readPainting(STUDIO, photograph, {
      white: { ...(middles[at] as { x: number; y: number }), value: 9.5 },
    });
    for (const [patch, { name, lab, light }] of colours.entries()) {
      const { x, y } = middles[patch] as { x: number; y: number };
      const off = deltaE00(labAt(reading, x, y), lab);
      // Cyan has a red that is less than nothing: no file of sRGB holds it.
      const isHeld = Math.min(...light) >= 0 && Math.max(...light) <= 1;
      expect(isHeld, name).toBe(name !== 'cyan');
      expect(off, name).toBeLessThan(isHeld ? most : 3);
    }
  });
});
