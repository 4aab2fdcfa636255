// A reading that cannot be trusted says so, and why; one that can says nothing.
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors.js';
import { readPainting } from '../../src/painting/index.js';
import type { ByHand, Corners, PaintingReading } from '../../src/painting/types.js';
import { some } from '../cases.js';
import { STUDIO } from '../studio.js';
import { against } from './against.js';
import { mixedLight, PICTURES, paintedPicture, strips } from './scenes.js';
import { photographed, type Shot, shotOf } from './simulate.js';

const painting = paintedPicture(
  PICTURES.find(({ id }) => id === 'harbour-roofs') as (typeof PICTURES)[number],
);
const plain = shotOf('trust', painting);
const shots = new Map<string, ReturnType<typeof photographed>>();
/** The photograph of a shot, taken once; it is not to be written into. */
const taken = (change: Partial<Shot>): ReturnType<typeof photographed> => {
  const key = JSON.stringify(change);
  const photograph = shots.get(key) ?? photographed(painting, { ...plain, ...change });
  shots.set(key, photograph);
  return photograph;
};
const read = async (change: Partial<Shot>, byHand: ByHand = {}) =>
  readPainting(STUDIO, await taken(change), byHand);
const ids = ({ doubts }: PaintingReading): string[] => doubts.map(({ id }) => id);

/** A sheet between these places. */
const sheet = (left: number, top: number, right: number, bottom: number): Pick<Shot, 'corners'> => ({
  corners: [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ],
});

describe('a photograph as it should be', () => {
  it('is trusted without a doubt', async () => {
    const reading = await read({});
    expect(reading).toMatchObject({ trust: 'good', doubts: [], white: { found: true } });
  });

  it('is trusted on a dark table, out of a level hand, a little soft and grainy', async () => {
    expect((await read({ table: [0.02, 0.02, 0.02], blur: 4, electrons: 400, readNoise: 0.008 })).trust).toBe(
      'good',
    );
  });
});

describe('what takes from the trust', () => {
  const doubtful: readonly [string, Partial<Shot>, string, 'fair' | 'low'][] = [
    ['paper lighter than the file can hold', { exposure: 1.2 }, 'white-clipped', 'low'],
    ['a little of the paper cut', { exposure: 1.03, slope: 0.02 }, 'white-clipped', 'fair'],
    ['hardly any light', { exposure: 0.08 }, 'dim', 'low'],
    ['a lamp, and a camera that leaves it', { illuminant: mixedLight(1), balance: 0 }, 'strong-cast', 'fair'],
    ['light from one side', { slope: 0.5 }, 'uneven-light', 'fair'],
    ['light that all but fails on one side', { slope: 0.8 }, 'light-unknown', 'low'],
    ['a sheet far away', sheet(0.42, 0.42, 0.58, 0.55), 'no-white', 'low'],
    ['far out of focus', { blur: 80 }, 'soft', 'fair'],
    ['a sheet on a table as white as it is', { table: [0.85, 0.85, 0.83] }, 'light-unknown', 'low'],
    ['a sheet without a margin', { margin: 0 }, 'light-unknown', 'low'],
    ['a sheet that the photograph cuts off', sheet(-0.12, 0.15, 0.8, 0.8), 'cut-off', 'fair'],
  ];
  it.each(some(doubtful, 2))('%s', async (_, change, id, trust) => {
    const reading = await read(change);
    expect(ids(reading)).toContain(id);
    const worst = reading.doubts.find((doubt) => doubt.id === id)?.trust;
    expect(worst).toBe(trust);
    expect(reading.trust).not.toBe('good');
    if (trust === 'low') expect(reading.trust).toBe('low');
  });

  it('a sheet far away, whose corners are said: too few pixels', async () => {
    const far = sheet(0.42, 0.42, 0.58, 0.55);
    const reading = await read(far, { corners: far.corners as unknown as Corners });
    expect(reading.trust).toBe('low');
    expect(ids(reading)).toContain('few-pixels');
  });

  it('no paper at all: everything is read by the white of the file', async () => {
    const light = new Float32Array(3 * 320 * 240).map((_, at) => 0.02 + 0.1 * ((at % 7) / 7));
    const reading = readPainting(STUDIO, { width: 320, height: 240, light }, {});
    expect(reading.white.found).toBe(false);
    expect(reading.trust).toBe('low');
    expect(ids(reading)).toContain('no-white');
  });

  it('a white said where there is none', async () => {
    const reading = await read({}, { white: { x: 0.5, y: 0.5 } });
    expect(reading.trust).toBe('low');
    expect(ids(reading)).toContain('lighter-than-white');
  });
});

describe('what is said by hand', () => {
  const [first, , third] = plain.corners as readonly { x: number; y: number }[] as [
    { x: number; y: number },
    unknown,
    { x: number; y: number },
  ];
  const onMargin = { x: first.x * 0.975 + third.x * 0.025, y: first.y * 0.975 + third.y * 0.025 };

  it.each<[string, ByHand]>([
    ['corners', { corners: plain.corners as unknown as Corners }],
    ['white on the margin', { white: onMargin }],
    ['a cut around the sheet', { cut: { x: 0.02, y: 0.03, width: 0.95, height: 0.94 } }],
  ])('%s: the reading is the same', async (_, byHand) => {
    const reading = await read({}, byHand);
    const off = against(reading, painting, plain.margin);
    expect(reading.trust).toBe('good');
    expect(Math.abs(off.light)).toBeLessThan(0.2);
    expect(Math.abs(off.dark)).toBeLessThan(0.2);
    for (const { steps } of off.masses) expect(Math.abs(steps)).toBeLessThan(0.3);
  });

  it('keeps places of the whole photograph when it is cut', async () => {
    const [whole, cut] = [
      await read({}),
      await read({}, { cut: { x: 0.02, y: 0.03, width: 0.95, height: 0.94 } }),
    ];
    for (const [at, { x, y }] of cut.corners.entries()) {
      expect(x).toBeCloseTo(whole.corners[at]?.x as number, 2);
      expect(y).toBeCloseTo(whole.corners[at]?.y as number, 2);
    }
    const corners = plain.corners as unknown as Corners;
    expect((await read({}, { corners })).corners.map(({ x }) => x)).toEqual(
      plain.corners.map(({ x }) => expect.closeTo(x, 6)),
    );
  });

  it('a card of known value on the table, in light that is not even', async () => {
    const { width, height, light: clean } = await photographed(painting, { ...plain, jpeg: undefined });
    const light = clean.slice();
    // A grey card of Munsell value 5 (ASTM D1535: Y 19.27) in the left upper corner, lit as the paper there would be.
    const bare = strips([STUDIO.paper.reflectance]);
    const bright = await photographed(bare, { ...plain, ...sheet(-1, -1, 2, 2), jpeg: undefined });
    for (let y = 4; y < 34; y++)
      for (let x = 4; x < 44; x++)
        for (let k = 0; k < 3; k++) {
          const at = 3 * (y * width + x) + k;
          light[at] = ((bright.light[at] as number) * 19.27) / 86.4;
        }
    const photograph = { width, height, light };
    const reading = readPainting(STUDIO, photograph, { white: { x: 24 / width, y: 19 / height, value: 5 } });
    const off = against(reading, painting, plain.margin);
    expect(reading.white.found).toBe(false);
    expect(Math.abs(off.light)).toBeLessThan(0.25);
    expect(Math.abs(off.dark)).toBeLessThan(0.25);
  });
});

describe('what cannot be', () => {
  const photograph = { width: 40, height: 30, light: new Float32Array(3600).fill(0.5) };
  const corners = (...list: [number, number][]): ByHand => ({
    corners: list.map(([x, y]) => ({ x, y })) as unknown as Corners,
  });

  it.each<[string, ByHand, RegExp]>([
    ['corners on a line', corners([0.1, 0.1], [0.5, 0.5], [0.9, 0.9], [0.95, 0.95]), /no sheet/],
    ['corners that cross', corners([0.1, 0.1], [0.9, 0.9], [0.9, 0.1], [0.1, 0.9]), /no sheet/],
    ['corners the other way round', corners([0.1, 0.1], [0.1, 0.9], [0.9, 0.9], [0.9, 0.1]), /left upper/],
    ['one place four times', corners([0.5, 0.5], [0.5, 0.5], [0.5, 0.5], [0.5, 0.5]), /no sheet/],
    ['a white beside the photograph', { white: { x: 1.2, y: 0.5 } }, /outside/],
    ['a white that is black', { white: { x: 0.5, y: 0.5, value: 0 } }, /Munsell/],
  ])('%s is one clear line', (_, byHand, line) => {
    expect(() => readPainting(STUDIO, photograph, byHand)).toThrow(InputError);
    expect(() => readPainting(STUDIO, photograph, byHand)).toThrow(line);
  });
});

it('reads a white beside the cut where it lies', async () => {
  const even = await taken({ slope: 0, vignette: 0 });
  const [corner] = plain.corners;
  const white = { x: (corner?.x ?? 0) + 0.01, y: (corner?.y ?? 0) + 0.01 };
  const cut = { x: 0.3, y: 0.35, width: 0.4, height: 0.3 };
  const passage = readPainting(STUDIO, even, { white, cut });
  expect(passage.white).toEqual({ ...white, found: false });
  // The same passage with the white of the file is read too dark, by as much as the paper is from its white.
  const byFile = readPainting(STUDIO, even, { cut, white: { x: 0.5, y: 0.5 } });
  expect(passage.range.light).not.toBeCloseTo(byFile.range.light, 1);
  const whole = readPainting(STUDIO, even, {});
  expect(passage.range.light).toBeGreaterThan(whole.range.light - 0.4);
  expect(passage.range.dark).toBeLessThan(whole.range.dark + 0.4);
});

describe('odd sizes', () => {
  it.each([
    [1, 1],
    [1, 40],
    [40, 1],
    [2, 3],
    [13, 13],
    [900, 9],
  ])('%i by %i pixels: a reading, and not to be trusted', (width, height) => {
    for (const level of [0, 0.5, 1]) {
      const light = new Float32Array(3 * width * height).map((_, at) => (level * ((at * 7919) % 100)) / 100);
      const reading = readPainting(STUDIO, { width, height, light }, {});
      expect(reading.trust).toBe('low');
      expect(reading.masses.length).toBeGreaterThan(0);
      expect(reading.masses.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1);
      expect(reading.histogram.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1);
      expect(JSON.stringify(reading.masses)).not.toContain('null');
    }
  });
});
