import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { greyOfValue } from '../../src/colour/screen.js';
import { whyOf } from '../../src/drills/why.js';
import { Canvas } from '../../src/tui/kit/canvas.js';
import { ASCII, inAscii, UNICODE } from '../../src/tui/kit/glyphs.js';
import { chromaBar, greyRamp, legend, staircase } from '../../src/tui/kit/goal-picture.js';
import { drillPlane, planePicture } from '../../src/tui/kit/plane-picture.js';
import { curvesPicture } from '../../src/tui/why/curves.js';
import { lookOf } from '../../src/words/look.js';
import { sayAll } from '../../src/words/tell.js';
import { stepText, WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';
import { FAKE_KIND, fakeDrill, paintSpectrum } from './fakes.js';

const text = (line: readonly { text: string }[]): string => line.map((piece) => piece.text).join('');
const brightness = (hex: string): number => Number.parseInt(hex.slice(1, 3), 16);

const GOAL = { start: { step: 4, chroma: 60 }, goal: { step: [6, 8], chroma: [20, 40] } } as const;

describe('a canvas', () => {
  it('sets the dot of a braille cell that a place falls on', () => {
    const canvas = new Canvas(1, 1, { braille: true, role: 'plain' });
    canvas.dot(0, 0, 'plain');
    canvas.dot(0.99, 0.99, 'plain');
    // Unicode chapter 21.1: dots 1 and 8 are bits 0 and 7.
    expect(text(canvas.lines()[0] ?? [])).toBe('\u2881');
  });

  it('draws nothing outside and keeps its size whatever is drawn', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double(), fc.double()), { maxLength: 20 }),
        fc.boolean(),
        (points, braille) => {
          const canvas = new Canvas(7, 3, { braille, role: 'plain' });
          for (const [x, y] of points) canvas.dot(x, y, 'plain');
          canvas.write(5, 1, 'long text', 'plain');
          canvas.write(-3, 9, 'far away', 'plain');
          expect(canvas.lines().map((line) => stringWidth(text(line)))).toEqual([7, 7, 7]);
        },
      ),
    );
  });
});

describe('the staircase', () => {
  const draw = (scale: 'paper-first' | 'black-first', rows = 5) =>
    staircase(GOAL, { columns: 34, rows, scale, glyphs: UNICODE });

  it('runs from paper at the left down to the darkest dark', () => {
    const greys = (draw('paper-first', 2)[0] ?? []).map(({ style }) =>
      brightness(style?.backgroundColor ?? '#000000'),
    );
    expect(greys).toHaveLength(10);
    expect(greys).toEqual([...greys].sort((a, b) => b - a));
    // sRGB of Munsell N 9.5 is near 240: Munsell renotation greys, Y 87.8 by ASTM D1535.
    expect(greys[0]).toBeGreaterThan(232);
    expect(greys[9]).toBeLessThan(30);
  });

  it('puts the start under its step and the bar under the goal', () => {
    const lines = draw('paper-first').map(text);
    const numbers = lines.at(-2) ?? '';
    const marks = lines.at(-1) ?? '';
    expect(Math.abs(marks.indexOf('▲') - numbers.indexOf('4'))).toBeLessThanOrEqual(1);
    expect(Math.abs(marks.indexOf('━') - numbers.indexOf('6'))).toBeLessThanOrEqual(1);
    expect(Math.abs(marks.lastIndexOf('━') - numbers.indexOf('8'))).toBeLessThanOrEqual(1);
  });

  it('counts the other way for painters who do, at the same greys', () => {
    const numbers = text(draw('black-first').at(-2) ?? [])
      .trim()
      .split(/\s+/)
      .map(Number);
    expect(numbers).toEqual([10, 9, 8, 7, 6, 5, 4, 3, 2, 1]);
    const marks = text(draw('black-first').at(-1) ?? []);
    // Step 4 is Munsell value 6.5: between the cells 7 and 6.
    expect(marks.indexOf('▲')).toBeGreaterThanOrEqual(3 * 3);
    expect(marks.indexOf('▲')).toBeLessThanOrEqual(5 * 3);
    expect(text(legend(UNICODE, 'black-first', 40))).toMatch(/10 white, 0 black/);
  });

  it('has one half line of height to a step where it has five lines', () => {
    const filled = draw('paper-first').slice(0, 5);
    const heights = Array.from({ length: 10 }, (_, index) =>
      filled.reduce((sum, line) => {
        const piece = line[index];
        return sum + (piece?.style?.backgroundColor ? 2 : piece?.text.includes('▄') ? 1 : 0);
      }, 0),
    );
    expect(heights).toEqual([10, 9, 8, 7, 6, 5, 4, 3, 2, 1]);
  });

  it('shows the numbers and marks alone where there are no colours', () => {
    expect(draw('paper-first', 0)).toHaveLength(2);
  });
});

describe('the bar of chroma', () => {
  it('is as wide as its room and marks start and goal in order', () => {
    const bar = text(chromaBar(GOAL, { columns: 50, glyphs: ASCII }));
    expect(bar).toHaveLength(50);
    expect(bar).toMatch(/^chroma 0 -+=+-+\^-+ 100$/);
  });

  it('takes a goal without an upper end', () => {
    const open = {
      start: { step: 4, chroma: 60 },
      goal: { step: [6, 8], chroma: [40, Number.POSITIVE_INFINITY] },
    } as const;
    expect(text(chromaBar(open, { columns: 50, glyphs: ASCII }))).toMatch(/= 100$/);
  });
});

describe('the plane of value and chroma', () => {
  const view = FAKE_KIND.plane?.(fakeDrill('one'), {
    second: 'alizarin-crimson',
    amount: '1:8',
    way: 'puddle',
  });
  const draw = (columns: number, rows: number, glyphs = ASCII): string[] => {
    if (view === undefined) throw new Error('no plane');
    return planePicture(drillPlane(view), { columns, rows, glyphs, scale: 'paper-first' }).map(text);
  };

  it.each([
    [30, 7],
    [40, 10],
    [56, 16],
  ])('keeps to %i columns and %i lines and shows start, yours, best and the goal', (columns, rows) => {
    const lines = draw(columns, rows);
    expect(lines).toHaveLength(rows);
    for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(columns);
    const drawn = lines.slice(0, -1).join('\n');
    for (const sign of ['S', 'Y', 'B']) expect(drawn).toContain(sign);
    // With few lines the best answer may stand on the one corner of the box.
    if (rows >= 10) expect(drawn).toMatch(/[+[]/);
  });

  it('puts the darker below and the stronger to the right', () => {
    const lines = draw(56, 20).slice(0, -1);
    const rowOf = (sign: string): number => lines.findIndex((line) => line.slice(3).includes(sign));
    const columnOf = (sign: string): number => lines[rowOf(sign)]?.indexOf(sign) ?? -1;
    expect(rowOf('S')).toBeLessThan(rowOf('Y'));
    expect(rowOf('Y')).toBeLessThan(rowOf('B'));
    expect(columnOf('S')).toBeGreaterThan(columnOf('Y'));
  });

  it('draws in ASCII where nothing else is to be had', () => {
    for (const line of draw(50, 12)) expect(line).toMatch(/^[ -~]*$/);
  });
});

describe('the curves of a why', () => {
  // Burnt sienna and alizarin crimson stirred together.
  const why = whyOf(STUDIO, { paints: { 'burnt-sienna': 4, 'alizarin-crimson': 1 }, strength: 0.6 });

  it('name the paints that were laid and what both swallow', () => {
    expect(why.films.map(({ label }) => label)).toEqual([
      'burnt sienna alone',
      'alizarin crimson alone',
      'the mixture',
    ]);
    // Burnt sienna and alizarin both absorb in the blue and green and pass the red: common practice, no source.
    const [run] = why.swallowed ?? [];
    expect(run?.fromNm).toBeLessThan(460);
    expect(run?.toNm).toBeGreaterThan(540);
    expect(run?.toNm).toBeLessThan(640);
    // Said in names of light, from its one end to the other, and red is not swallowed.
    expect(sayAll(why.told, WRITTEN)[0]).toMatch(/alizarin crimson swallows violet to (green|yellow) /);
  });

  it('are drawn within their room, the shared part marked under them', () => {
    for (const glyphs of [UNICODE, ASCII]) {
      const lines = curvesPicture(why, { columns: 70, rows: 12, glyphs }).map(text);
      expect(lines).toHaveLength(12);
      for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(70);
      expect(lines.at(-2)).toContain(glyphs.band);
      for (const sign of ['a', 'b', 'c']) expect(lines.slice(0, -2).join('')).toContain(sign);
    }
  });

  it('mark nothing under them where one film stands alone', () => {
    const one = whyOf(STUDIO, { paints: { 'burnt-sienna': 1 }, strength: 0.3 });
    expect(one.films).toHaveLength(1);
    expect(text(curvesPicture(one, { columns: 70, rows: 12, glyphs: ASCII }).at(-2) ?? []).trim()).toBe('');
  });
});

describe('how a colour looks', () => {
  it('has a grey of the same value beside it', () => {
    const look = lookOf(paintSpectrum('ultramarine-blue'));
    expect(look.grey).toBe(greyOfValue(look.value));
    expect(look.grey).toMatch(/^#(..)\1\1$/);
  });

  it('shows middle grey, Munsell N 5, near sRGB 122', () => {
    // N 5 is Y 19.27 (ASTM D1535); IEC 61966-2-1 takes that to 0.4764, or 121.5 of 255.
    expect(Math.abs(brightness(greyOfValue(5)) - 121.5)).toBeLessThanOrEqual(1.5);
  });

  it('has ten different greys and says the value on either scale', () => {
    const ramp = greyRamp(60, UNICODE, 3).map(({ style }) => style?.backgroundColor);
    expect(new Set(ramp).size).toBe(10);
    expect(stepText(4.2, { scale: 'paper-first' })).toBe('4.2');
    expect(stepText(4.2, { scale: 'black-first' })).toBe('6.3');
  });
});

describe('signs', () => {
  it('are all one column wide', () => {
    for (const glyphs of [UNICODE, ASCII]) {
      const { up, down, left, right, corners, ...rest } = glyphs;
      for (const sign of [...Object.values(rest).filter((sign) => typeof sign === 'string'), ...corners]) {
        expect(stringWidth(sign)).toBe(1);
      }
    }
  });

  it('are written out where texts must be ASCII', () => {
    expect(inAscii('the two keep each other’s colour, 46° … é 漢')).toBe(
      "the two keep each other's colour, 46 deg ~ e ?",
    );
  });
});
