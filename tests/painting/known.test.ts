// Cases whose answer a painter knows before looking.
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import { shadingLine, yFromMunsellValue } from '../../src/colour/index.js';
import { GRID, type Spectrum } from '../../src/optics/index.js';
import { type Border, readPainting } from '../../src/painting/index.js';
import { seeLaid, type Wash } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';
import { type Painting, strips } from './scenes.js';
import { photographed, shotOf } from './simulate.js';

const read = async (painting: Painting) =>
  readPainting(STUDIO, await photographed(painting, shotOf('known', painting)), {});
const grey = (value: number): Spectrum => new Float64Array(GRID.count).fill(yFromMunsellValue(value) / 100);
const laid = (wash: Wash): Spectrum => seeLaid(STUDIO, wash).reflectance;

describe('values', () => {
  it('a bare sheet: one mass of paper, and nothing to be read', async () => {
    const reading = await read(strips([STUDIO.paper.reflectance]));
    expect(reading.masses).toHaveLength(1);
    expect(reading.masses[0]?.colour.step).toBeCloseTo(1.06, 1);
    expect(reading.range.dark - reading.range.light).toBeLessThan(0.25);
    expect(reading.shares.light).toBeCloseTo(1, 9);
    expect(reading).toMatchObject({ trust: 'low', veil: { slope: undefined, masses: [] } });
    expect(reading.doubts.map(({ id }) => id)).toEqual(['bare']);
  });

  it('a full strip of ten values: the whole range, a tenth in each', async () => {
    // Steps 1.5 to 9.8: a strip of paper white would be margin.
    const steps = [2, 3, 4, 5, 6, 7, 8, 9, 9.8, 1.5];
    const order = [3, 9, 1, 7, 0, 5, 8, 2, 6, 4].map((at) => steps[at] as number);
    const reading = await read(strips(order.map((step) => grey(10.5 - step))));
    expect(reading.trust).toBe('good');
    expect(Math.abs(reading.range.light - 1.5)).toBeLessThan(0.25);
    expect(Math.abs(reading.range.dark - 9.8)).toBeLessThan(0.4);
    for (const share of reading.histogram.slice(2, 9)) expect(Math.abs(share - 0.1)).toBeLessThan(0.03);
    expect(reading.masses.length).toBeGreaterThanOrEqual(5);
    expect(reading.masses.length).toBeLessThanOrEqual(8);
    for (const { colour } of reading.masses) expect(colour.chroma).toBeLessThan(5);
  });

  it('white to middle grey: no darks', async () => {
    const reading = await read(strips([6, 9, 7, 8.2, 5.5].map(grey)));
    expect(reading.shares.dark).toBe(0);
    expect(Math.abs(reading.range.dark - 5)).toBeLessThan(0.25);
    expect(Math.abs(reading.range.light - 1.5)).toBeLessThan(0.25);
    expect(reading.masses.map(({ colour }) => Math.round(10 * colour.value) / 10).sort()).toEqual(
      [5.5, 6, 7, 8.2, 9].map((value) => expect.closeTo(value, 0)),
    );
  });
});

describe('what stands beside what', () => {
  it('puts the strongest contrast first, and its place between the two', async () => {
    const { masses, borders } = await read(strips([8, 7, 2.5].map(grey)));
    expect(borders).toHaveLength(2);
    const [strongest, next] = borders as [Border, Border];
    expect(Math.abs(strongest.steps - 4.5)).toBeLessThan(0.3);
    expect(Math.abs(next.steps - 1)).toBeLessThan(0.3);
    expect(Math.abs(strongest.at.x - 2 / 3)).toBeLessThan(0.03);
    const [lighter, darker] = strongest.between;
    expect(masses[lighter]?.colour.step).toBeLessThan(masses[darker]?.colour.step as number);
  });
});

describe('a veil', () => {
  const roof: Wash = { paints: { 'burnt-sienna': 3, 'cadmium-red': 1 }, strength: 0.16 };
  const kept: Wash = {
    paints: { 'burnt-sienna': 6, 'alizarin-crimson': 4, 'ultramarine-blue': 1 },
    strength: 0.9,
  };
  const sky: Wash = { paints: { 'cobalt-blue': 4, 'burnt-sienna': 1 }, strength: 0.05 };

  it('is not seen in a roof whose shade kept its colour', async () => {
    const reading = await read(strips([sky, roof, kept].map(laid)));
    expect(reading.veil).toMatchObject({ below: 0, masses: [] });
    expect(reading.veil.slope).toBeGreaterThan(0.8);
  });

  it('is seen in the same roof killed with black, by as much as it lies under the shading line', async () => {
    const killed: Wash = { paints: { 'burnt-sienna': 4, 'ivory-black': 2 }, strength: 0.6 };
    const [light, dark] = [seeLaid(STUDIO, roof).colour, seeLaid(STUDIO, killed).colour];
    const under = shadingLine(light.chroma, light.lab.l, dark.lab.l) - dark.chroma;
    const reading = await read(strips([sky, roof, killed].map(laid)));
    expect(under).toBeGreaterThan(8);
    expect(reading.veil.masses).toHaveLength(1);
    expect(Math.abs(reading.veil.below - under)).toBeLessThan(4);
    expect(reading.veil.slope).toBeLessThan(0.7);
  });

  it('is not seen in grey things: nothing lighter of their hue has colour', async () => {
    const slate: Wash = { paints: { 'ultramarine-blue': 1, 'burnt-sienna': 1 }, strength: 0.5 };
    const reading = await read(
      strips(
        [sky, { paints: { 'ultramarine-blue': 1, 'burnt-sienna': 1 }, strength: 0.06 } as Wash, slate].map(
          laid,
        ),
      ),
    );
    expect(reading.veil.masses).toEqual([]);
  });
});

it('reads the same photograph the same twice', async () => {
  const painting = strips([8, 6, 3].map(grey));
  const photograph = await photographed(painting, shotOf('twice', painting));
  const [one, other] = [0, 1].map(() => readPainting(STUDIO, photograph, {}));
  expect(isDeepStrictEqual(one, other)).toBe(true);
});
