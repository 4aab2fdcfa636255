import { converter } from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import { readColour } from '../../src/colour/reading.js';
import { toScreen } from '../../src/colour/screen.js';
import { type Block, box, line, paragraph, stack } from '../../src/paper/block.js';
import { columnWidth, type Frame, flow, withFeet } from '../../src/paper/flow.js';
import { greyScale } from '../../src/paper/grey-scale.js';
import { NEAR_SIGN, patchBox, patchLines, patchRows } from '../../src/paper/patch.js';
import { type Mark, PAGE_SIZES } from '../../src/paper/types.js';
import { seeAlone } from '../../src/washes/index.js';
import { WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';
import { MADE_MS, PRESS, reread } from './fixture.js';
import { wordsOf } from './pdf-reader.js';

const { ruler } = PRESS;
const FRAME: Frame = { size: PAGE_SIZES.a4, margins: { top: 40, right: 50, bottom: 60, left: 50 } };

/** A document of the marks of one page. */
const page = (marks: readonly Mark[]) => ({
  title: 'Trial',
  size: PAGE_SIZES.a4,
  pages: [marks],
  madeMs: MADE_MS,
});

describe('patches on paper', () => {
  const toLab = (hex: string | undefined) =>
    converter('lab65')(hex ?? '') as { l: number; a: number; b: number };
  const ids = STUDIO.paints.map(({ id }) => id);
  const strengths = [0.05, 0.3, 1];
  const swatches = ids.flatMap((id) =>
    strengths.map((strength) => ({
      label: `${id} ${strength}`,
      reflectance: seeAlone(STUDIO, id, strength).reflectance,
    })),
  );

  it('are drawn within CIEDE2000 1 of the prediction where sRGB holds it, and marked where not', async () => {
    const { pages } = await reread(page(stack(swatches.map((swatch) => patchBox(swatch, 90, 10))).marks));
    // Two boxes a patch: the colour, and the grey of its value over its right part.
    const fills = (pages[0]?.boxes ?? []).flatMap(({ fill }) => fill ?? []);
    expect(fills).toHaveLength(2 * swatches.length);
    let outside = 0;
    for (const [at, swatch] of swatches.entries()) {
      const { lab, xyz } = readColour(swatch.reflectance);
      const isMarked = patchLines(swatch, WRITTEN)[0]?.includes(NEAR_SIGN) ?? false;
      // Back from the page with culori, white to white.
      const drawn = toLab(fills[2 * at]);
      const difference = deltaE00(lab, drawn);
      const grey = toLab(fills[2 * at + 1]);
      expect(isMarked, swatch.label).toBe(!toScreen(xyz).inScreenGamut);
      if (isMarked) outside += 1;
      else expect(difference, swatch.label).toBeLessThan(1);
      // CIELAB L* of the grey twin: the same lightness, no chroma.
      expect(Math.abs(grey.l - lab.l), swatch.label).toBeLessThan(0.5);
      expect(Math.hypot(grey.a, grey.b), swatch.label).toBeLessThan(0.5);
    }
    expect(outside).toBeGreaterThan(0);
    expect(outside).toBeLessThan(swatches.length / 2);
  });

  it('tell nothing before the answer that has to be judged by eye', () => {
    const [swatch] = swatches as [(typeof swatches)[number]];
    for (const unread of ['value', 'figures'] as const) {
      expect(patchLines({ ...swatch, unread }, WRITTEN).join(' ')).not.toMatch(/\d/);
      // No grey twin: it would show the value.
      expect(patchBox({ ...swatch, unread }, 90, 10).marks).toHaveLength(1);
    }
    expect(patchLines(swatch, WRITTEN).join(' ')).toMatch(/step \d/);
  });

  it('never touch one another, however many', () => {
    for (let count = 1; count <= 9; count++) {
      const style = { ruler, voice: WRITTEN, height: 20 };
      const { marks } = patchRows(
        swatches.slice(0, count).map((one) => ({ ...one, unread: 'figures' as const })),
        480,
        style,
      );
      const boxes = marks.flatMap((mark) =>
        mark.kind === 'figure' && 'box' in mark.outline ? [mark.outline.box] : [],
      );
      expect(boxes).toHaveLength(count);
      for (const [at, [x, y, width, height]] of boxes.entries()) {
        expect(x + width).toBeLessThanOrEqual(480.01);
        for (const [left, top] of boxes.slice(at + 1))
          expect(left >= x + width + 6 || top >= y + height + 6).toBe(true);
      }
    }
  });
});

describe('text on paper', () => {
  it('is refused below seven points', () => {
    expect(() => line('small', 100, { size: 6.9 }, ruler)).toThrow(RangeError);
    expect(line('small', 100, { size: 7 }, ruler).height).toBeGreaterThan(7);
  });

  it('is broken within its width and loses no word', () => {
    fc.assert(
      fc.property(fc.lorem({ maxCount: 60 }), fc.integer({ min: 30, max: 400 }), (text, width) => {
        const { marks } = paragraph(text, width, { size: 9 }, ruler);
        const lines = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
        for (const each of lines) expect(ruler(each, { size: 9 })).toBeLessThanOrEqual(width + 0.01);
        expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
      }),
      { numRuns: 50 },
    );
  });

  it('is Latin, Greek and Cyrillic, in two embedded faces, and comes out as it went in', async () => {
    const texts = ['Ångström žluťoučký', 'Ώχρα και σκιά', 'Жёлтая охра, їжак'];
    const marks = stack(
      texts.map((text, at) => line(text, 300, { size: 9, face: at === 1 ? 'bold' : 'regular' }, ruler)),
    ).marks;
    const { pages, fonts } = await reread(page(marks));
    expect(pages[0]?.texts.map(({ text }) => text)).toEqual(texts);
    expect(fonts.map((name) => name.replace(/^[A-Z]{6}\+/, '')).sort()).toEqual([
      'NotoSans-Bold',
      'NotoSans-Regular',
    ]);
    expect(PRESS.missing(texts.join(''))).toEqual([]);
    expect(PRESS.missing('a中中🙂')).toEqual(['中', '🙂']);
  });
});

describe('pages', () => {
  it('keep a group together where a page holds it, and lose nothing', () => {
    const room = PAGE_SIZES.a4.height - 100;
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: 5, max: 300 }), { minLength: 1, maxLength: 5 }), {
          maxLength: 20,
        }),
        (heights) => {
          const groups = heights.map((own) => ({
            parts: own.map((height): Block => box(10, height, { fill: '#000000' })),
          }));
          const pages = flow(groups, FRAME, 7);
          const tops = pages.map((marks) =>
            marks.map((mark) =>
              mark.kind === 'figure' && 'box' in mark.outline ? mark.outline.box : [0, 0, 0, 0],
            ),
          );
          expect(tops.flat().map(([, , , height]) => height)).toEqual(heights.flat());
          for (const [, y = 0, , height = 0] of tops.flat()) {
            expect(y).toBeGreaterThanOrEqual(40);
            expect(y + height).toBeLessThanOrEqual(40 + room + 0.01);
          }
          let seen = 0;
          for (const own of heights) {
            const places = own.map((_, at) => {
              const place = seen + at;
              let before = 0;
              return tops.findIndex((each) => {
                before += each.length;
                return place < before;
              });
            });
            seen += own.length;
            if (own.reduce((sum, height) => sum + height, 0) <= room) expect(new Set(places).size).toBe(1);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it('fill columns before pages', () => {
    const frame: Frame = { ...FRAME, columns: { count: 2, gap: 20 } };
    const parts = [box(10, 400, {}), box(10, 400, {}), box(10, 400, {})];
    const pages = flow(
      parts.map((part) => ({ parts: [part] })),
      frame,
      0,
    );
    const lefts = pages.map((marks) =>
      marks.map((mark) => (mark.kind === 'figure' && 'box' in mark.outline ? mark.outline.box[0] : -1)),
    );
    expect(lefts).toEqual([[50, 50 + columnWidth(frame) + 20], [50]]);
  });

  it('are numbered, and the same document gives the same bytes', async () => {
    const frame = { ...FRAME, size: PAGE_SIZES.letter };
    const groups = [box(10, 500, {}), box(10, 500, {})].map((part) => ({ parts: [part] }));
    const pages = withFeet(flow(groups, frame, 0), frame, { left: 'left', middle: 'middle' }, ruler);
    const made = { title: 'Trial', size: PAGE_SIZES.letter, pages, madeMs: MADE_MS };
    const read = await reread(made);
    expect(read.pages.map(({ width, height }) => [width, height])).toEqual([
      [612, 792],
      [612, 792],
    ]);
    expect(read.pages.map((each) => wordsOf([each]))).toEqual([
      'left middle page 1 of 2',
      'left middle page 2 of 2',
    ]);
    expect(read.source).toContain('D:20260301090000Z');
    const [one, other] = [await PRESS.print(made), await PRESS.print(made)];
    expect(Buffer.compare(one, other)).toBe(0);
    expect(Buffer.compare(one, await PRESS.print({ ...made, madeMs: MADE_MS + 1000 }))).not.toBe(0);
  });
});

describe('the scale of greys', () => {
  // ASTM D1535: Y = 1.1914 V - 0.22533 V^2 + 0.23352 V^3 - 0.020484 V^4 + 0.00081939 V^5; L* from Y by CIE 15.
  const lightnessOf = (value: number): number => {
    const y = [1.1914, -0.22533, 0.23352, -0.020484, 0.00081939].reduce(
      (sum, factor, at) => sum + factor * value ** (at + 1),
      0,
    );
    return y / 100 > 0.008856 ? 116 * (y / 100) ** (1 / 3) - 16 : 903.3 * (y / 100);
  };

  it('has ten steps whose lightness is that of their Munsell value', async () => {
    const { pages } = await reread(page(greyScale(200, 10, 'paper-first', ruler).marks));
    const lightness = (pages[0]?.boxes ?? []).flatMap(({ fill }) =>
      fill === undefined ? [] : [converter('lab65')(fill)?.l ?? Number.NaN],
    );
    expect(lightness).toHaveLength(10);
    for (const [at, each] of lightness.entries())
      expect(Math.abs(each - lightnessOf(9.5 - at))).toBeLessThan(0.5);
    expect(wordsOf(pages)).toBe('1 2 3 4 5 6 7 8 9 10');
  });
});
