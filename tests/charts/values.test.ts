import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { dotsOf } from '../../src/charts/dots.js';
import { chartPaper } from '../../src/charts/index.js';
import type { ValueScaleId } from '../../src/colour/value.js';
import { styleOf } from '../paper/fixture.js';
import { printed, requestOf } from './fixture.js';

// ASTM D1535: Y = 1.1914 V - 0.22533 V^2 + 0.23352 V^3 - 0.020484 V^4 + 0.00081939 V^5.
const yOf = (value: number): number =>
  [1.1914, -0.22533, 0.23352, -0.020484, 0.00081939].reduce(
    (sum, factor, at) => sum + factor * value ** (at + 1),
    0,
  );
/** Luminance of an sRGB colour, 0-1, as culori has it. */
const luminance = (hex: string): number => converter('xyz65')(hex)?.y ?? Number.NaN;

/** The paper is the first step: V 9.5. */
const PAPER = yOf(9.5);
const STEPS = Array.from({ length: 10 }, (_, at) => 9.5 - at);
const WHOLE = Array.from({ length: 10 }, (_, at) => 10 - at);

describe('the printed scale of values', () => {
  it('has dots whose bare paper gives the value of the grey in their middle', async () => {
    const { pages } = await printed('values', requestOf([]));
    expect(pages).toHaveLength(1);
    const boxes = pages[0]?.boxes ?? [];
    const fields = boxes.filter(({ height, fill }) => height === 96 && fill !== undefined);
    const inked = [...STEPS, ...WHOLE].filter((value) => value < 9.5);
    expect(fields).toHaveLength(inked.length);
    for (const [at, value] of inked.entries()) {
      const field = fields[at] as (typeof fields)[number];
      const inside = boxes.filter(
        (box) =>
          box !== field &&
          box.fill !== undefined &&
          box.x > field.x - 0.01 &&
          box.x + box.width < field.x + field.width + 0.01 &&
          box.y > field.y - 0.01 &&
          box.y + box.height < field.y + 96.01,
      );
      const squares = inside.filter(({ height }) => height === 20);
      const dots = inside.filter(({ height }) => height < 10);
      const dotted = dots.reduce((sum, { width, height }) => sum + width * height, 0) / (field.width * 96);
      const bare = field.fill === '#000000' ? dotted : 1 - dotted;
      // Murray 1936: luminance by share of area, paper 1 and ink 0.
      expect(bare, `V ${value}`).toBeCloseTo(yOf(value) / PAPER, 3);
      const greys = squares.map(({ fill }) => luminance(fill ?? ''));
      const wanted = [value + 0.5, value, value - 0.5].filter((each) => each <= 9.5 && each >= 0);
      expect(greys).toHaveLength(wanted.length);
      // An 8-bit step of a light grey is 0.008 of luminance.
      for (const [row, each] of wanted.entries()) expect(greys[row]).toBeCloseTo(yOf(each) / PAPER, 2);
    }
  });

  it('leaves the first step bare, as the paper that it is, and the value that no paper has', async () => {
    const { pages } = await printed('values', requestOf([]));
    const boxes = pages[0]?.boxes ?? [];
    const patches = boxes.filter(({ height }) => height === 62);
    // An outline each, also of those that are not filled.
    expect(patches.filter(({ fill }) => fill === undefined)).toHaveLength(20);
    // Every other one is darker than the one before.
    const inked = patches.flatMap(({ fill }) => (fill === undefined ? [] : [luminance(fill)]));
    expect(inked).toHaveLength(18);
    for (const at of [...inked.keys()].filter((index) => index % 9 > 0))
      expect(inked[at]).toBeLessThan(inked[at - 1] ?? 0);
    expect(inked[0]).toBeCloseTo(yOf(8.5) / PAPER, 2);
  });

  it('numbers each grey on both scales, its own first', () => {
    const wordsOn = (scale: ValueScaleId): string =>
      chartPaper('values', requestOf([]), { ...styleOf('a4'), voice: { scale, spoken: false } })
        .pages.flat()
        .flatMap((mark) => (mark.kind === 'text' ? mark.text : []))
        .join(' ');
    const words = wordsOn('paper-first');
    for (const value of STEPS) expect(words).toContain(`${10.5 - value} V ${value.toFixed(1)}`);
    for (const value of WHOLE) expect(words).toContain(`${value} step ${(10.5 - value).toFixed(1)}`);
    expect(words.indexOf("Painter's steps")).toBeLessThan(words.indexOf('Munsell value:'));
    const other = wordsOn('black-first');
    expect(other.indexOf('Munsell value:')).toBeLessThan(other.indexOf("Painter's steps"));
  });

  it('has dots that a printer of 600 dots an inch can keep, but for the blackest', () => {
    for (const value of [...STEPS, ...WHOLE].filter((each) => each >= 1 && each < 9.5)) {
      const { size } = dotsOf(value, 47, 96);
      expect(Math.min(...size), `V ${value}`).toBeGreaterThan((3 * 72) / 600);
    }
  });
});
