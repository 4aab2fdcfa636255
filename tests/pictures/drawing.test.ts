/** Shapes as pixels, coverings as colours, strokes as strokes; examples worked by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readColour, valueFromStep } from '../../src/colour/index.js';
import { greyOfValue } from '../../src/colour/screen.js';
import {
  BARE,
  findPicture,
  type Picture,
  painted,
  pixelsOf,
  raster,
  screenTones,
} from '../../src/pictures/index.js';
import { seeLaid } from '../../src/washes/index.js';
import { SHIPPED_PICTURES } from '../exercises.js';
import { STUDIO } from '../studio.js';

const WASH = { paints: { 'cobalt-blue': 1 }, strength: 0.2 };
const PICTURES = SHIPPED_PICTURES;
const ROOFS = findPicture(PICTURES, 'harbour-roofs') as Picture;

/** A picture of a ground and one thing, made by hand. */
const made = (shape: object): Picture => ({
  id: 'made',
  place: 'harbour',
  title: 'Made',
  centre: 'thing',
  behind: 'ground',
  lies: { start: 'ground', passage: 'thing' },
  subjects: {},
  areas: [
    { id: 'ground', words: 'the ground', wash: WASH },
    { id: 'thing', words: 'the thing', wash: WASH },
  ],
  shapes: [
    { area: 'ground', rects: [[0, 0, 48, 28]] },
    { area: 'thing', ...shape },
  ],
});

const thing = (picture: Picture, width: number, height: number): string[] => {
  const { area } = raster(picture, width, height);
  return Array.from({ length: height }, (_, y) =>
    [...area.slice(y * width, (y + 1) * width)].map((at) => (at === 1 ? '#' : '.')).join(''),
  ).filter((row) => row.includes('#'));
};

describe('a figure covers the pixels whose middles it lies over', () => {
  it('a box on the grid, at 48 by 28', () => {
    const rows = thing(made({ rects: [[2, 3, 5, 5]] }), 48, 28);
    expect(rows).toEqual([`..###${'.'.repeat(43)}`, `..###${'.'.repeat(43)}`]);
  });

  it('a triangle', () => {
    // Left edge from (0, 0) to (0, 4), bottom to (4, 4): at row y + 0.5 it reaches x = y + 0.5.
    const rows = thing(
      made({
        polygons: [
          [
            [0, 0],
            [4, 4],
            [0, 4],
          ],
        ],
      }),
      48,
      28,
    ).map((row) => row.indexOf('.'));
    expect(rows).toEqual([1, 1, 2, 3].map((_, y) => Math.max(1, y)));
  });

  it('a circle as wide as it is high', () => {
    const rows = thing(made({ ellipses: [[24, 14, 5, 5]] }), 48, 28);
    const widths = rows.map((row) => row.replaceAll('.', '').length);
    expect(rows).toHaveLength(10);
    expect(Math.max(...widths)).toBe(10);
    // Area of a circle: 25 pi, 78.5 units.
    expect(Math.abs(widths.reduce((sum, width) => sum + width, 0) - 78.5)).toBeLessThan(6);
  });

  it.each([
    [24, 16],
    [48, 28],
    [31, 17],
  ])('a mast keeps its pixel, whole from end to end, at %i by %i', (width, height) => {
    for (const x of [10.02, 10.3, 10.5, 10.98]) {
      const rows = thing(
        made({
          lines: [
            [
              [x, 0],
              [x, 28],
            ],
          ],
          width: 0.2,
        }),
        width,
        height,
      );
      expect(rows).toHaveLength(height);
      for (const row of rows) expect(row.replaceAll('.', '')).toBe('#');
    }
  });

  it('a window smaller than a pixel keeps one', () => {
    fc.assert(
      fc.property(
        fc.float({ min: 0, max: 47, noNaN: true }),
        fc.float({ min: 0, max: 27, noNaN: true }),
        (x, y) => {
          expect(thing(made({ rects: [[x, y, x + 0.4, y + 0.4]] }), 24, 16).join('')).toContain('#');
        },
      ),
      { numRuns: 60 },
    );
  });

  it('and any slant of a line hangs together', () => {
    const inside = fc.tuple(fc.integer({ min: 1, max: 47 }), fc.integer({ min: 1, max: 27 }));
    fc.assert(
      fc.property(inside, inside, (from, to) => {
        const rows = thing(made({ lines: [[from, to]], width: 0.3 }), 48, 28);
        const columns = new Set(
          rows.flatMap((row) => [...row].flatMap((sign, x) => (sign === '#' ? [x] : []))),
        );
        const [dx, dy] = [Math.abs(from[0] - to[0]), Math.abs(from[1] - to[1])];
        expect(Math.max(rows.length, columns.size)).toBeGreaterThanOrEqual(Math.max(dx, dy, 1));
      }),
      { numRuns: 80 },
    );
  });
});

it('what no shape covers is paper', () => {
  const picture = {
    ...made({ rects: [[1, 1, 2, 2]] }),
    shapes: [{ area: 'thing', rects: [[0, 0, 24, 28]] as const }],
  };
  const drawn = raster(picture, 48, 28);
  expect([...drawn.area].filter((at) => at === BARE)).toHaveLength(24 * 28);
  const pixels = pixelsOf(painted(STUDIO, picture), 48, 28);
  const bare = pixels.tones[pixels.at[47] as number];
  expect(bare?.colour.step).toBeCloseTo(readColour(STUDIO.paper.reflectance).step, 9);
});

it('is refused at a size that nobody can look at', () => {
  for (const [width, height] of [
    [0, 10],
    [10.5, 10],
    [3, 3],
    [4000, 10],
    [Number.NaN, 10],
  ])
    expect(() => raster(ROOFS, width as number, height as number)).toThrow(RangeError);
});

it('a flat area has the colour that the washes predict, and its grey the same value', () => {
  const laid = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };
  const look = painted(STUDIO, ROOFS, { roof: laid }).looks['roof'];
  if (look?.kind !== 'laid') throw new Error('open');
  const { colour } = seeLaid(STUDIO, laid);
  expect(look.tone.colour.step).toBe(colour.step);
  expect(look.tone.grey).toBe(greyOfValue(valueFromStep(colour.step)));
});

it('a colour that is known by its reflectance lies as it is', () => {
  const { reflectance, colour } = seeLaid(STUDIO, { paints: { 'sap-green': 1 }, strength: 0.4 });
  const look = painted(STUDIO, ROOFS, { roof: { reflectance } }).looks['roof'];
  expect(look?.kind === 'laid' && look.tone.colour.chroma).toBeCloseTo(colour.chroma, 9);
});

it('a graded wash only gets lighter towards the side where it is weaker', () => {
  const pixels = pixelsOf(painted(STUDIO, ROOFS), 48, 28);
  const steps = [0, 1, 2, 3, 4].map(
    (y) => pixels.tones[pixels.at[y * 48 + 46] as number]?.colour.step as number,
  );
  expect(steps).toEqual([...steps].sort((one, other) => other - one));
  expect((steps[0] as number) - (steps[4] as number)).toBeGreaterThan(0.1);
});

it('strokes cover their share of the area, and lie in both of their own colours', () => {
  for (const share of [0.1, 0.25, 0.5, 0.8]) {
    const first = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };
    const second = { paints: { 'ultramarine-blue': 1 }, strength: 0.4 };
    const strokes = [
      { ...first, share: 1 - share },
      { ...second, share },
    ];
    const pixels = pixelsOf(painted(STUDIO, ROOFS, { 'roof-turned': { strokes } }), 48, 28);
    const own = ROOFS.areas.findIndex(({ id }) => id === 'roof-turned');
    const { area } = raster(ROOFS, 48, 28);
    const steps = [...area].flatMap((of, at) =>
      of === own ? [pixels.tones[pixels.at[at] as number]?.colour.step] : [],
    );
    const darker = seeLaid(STUDIO, second).colour.step;
    expect(new Set(steps).size).toBe(2);
    expect(steps.filter((step) => step === darker).length).toBe(Math.round(share * steps.length));
  }
});

it('an area that the picture does not have is refused, as is a paint that the studio does not have', () => {
  expect(() => painted(STUDIO, ROOFS, { moat: 'open' })).toThrow(/no area "moat"/);
  expect(() => painted(STUDIO, ROOFS, { roof: { paints: { mud: 1 }, strength: 0.2 } })).toThrow(RangeError);
});

it('the value check shows greys only, as many as there are values', () => {
  const pixels = pixelsOf(painted(STUDIO, ROOFS), 48, 28);
  for (const hex of screenTones(pixels, true)) expect(hex.slice(1, 3)).toBe(hex.slice(3, 5));
  expect(new Set(screenTones(pixels, false)).size).toBeGreaterThan(8);
});
