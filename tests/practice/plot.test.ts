/** A plot of columns as it stands on the screen, whole. */
import { describe, expect, it } from 'vitest';
import { plots } from '../../src/commands/progress-plots.js';
import { columnPlot, FIGURE_KINDS, type PlotColumn, sideBySide } from '../../src/practice/index.js';

const [VALUE, KEPT] = FIGURE_KINDS;
if (VALUE === undefined || KEPT === undefined) throw new Error('the figures are value, kept, dull');
const BASE = { answers: 4, good: 3, fair: 0, off: 1, mark: 70, level: 2 };

/** Columns of chroma kept, in percent; nothing where nothing of it was asked. */
const kept = (...percents: readonly (number | undefined)[]): PlotColumn[] =>
  percents.map((percent, day) => ({
    figure: percent === undefined ? undefined : KEPT.shown({ ...BASE, chromaKept: percent / 100 }),
    label: `05-0${day + 1}`,
  }));
const plot = (columns: readonly PlotColumn[], ascii: boolean, width = 40, height = 4): string[] =>
  columnPlot({ kind: KEPT, columns, width, height, ascii });

describe('a plot', () => {
  it('has a title, a scale, columns to the eighth of a line, and the figures and days under them', () => {
    expect(plot(kept(0, 50, 80, 100), false)).toEqual([
      'Chroma kept, of what was to be kept',
      '100 % ┤                 ▂▂▂▂▂▂  ██████',
      '      ┤                 ██████  ██████',
      '      ┤         ██████  ██████  ██████',
      '      ┤         ██████  ██████  ██████',
      '  0 % ┼────────────────────────────────',
      '         0 %     50 %    80 %   100 %',
      '        05-01   05-02   05-03   05-04',
    ]);
  });

  it('in ASCII fills a line from its half on', () => {
    expect(plot(kept(0, 50, 62, 63, 75), true)).toEqual([
      'Chroma kept, of what was to be kept',
      '100 % |',
      '      |             ____  ####  ####',
      '      |       ####  ####  ####  ####',
      '      |       ####  ####  ####  ####',
      '  0 % +------------------------------',
      '        0 %   50 %  62 %  63 %  75 %',
      '       05-01 05-02 05-03 05-04 05-05',
    ]);
  });

  it('of an error is tallest where there is none', () => {
    const columns = [0, 1, 2].map((valueError, n) => ({
      figure: VALUE.shown({ ...BASE, valueError }),
      label: `${n}`,
    }));
    expect(columnPlot({ kind: VALUE, columns, width: 40, height: 2, ascii: true })).toEqual([
      'Value error: steps outside what was asked',
      '  0.0 | ########',
      '      | ########  ########',
      '  2.0 +------------------------------',
      '          0.0       1.0       2.0',
      '           0         1         2',
    ]);
  });

  it('has a gap and a dash where nothing was asked', () => {
    expect(plot(kept(100, undefined, 100), true, 40, 1).slice(1)).toEqual([
      '100 % | ########            ########',
      '  0 % +------------------------------',
      '         100 %       -       100 %',
      '         05-01     05-02     05-03',
    ]);
  });

  it.each([
    [false, '▁▁▂▂▃▃▄▄▅▅▆▆▇▇██'],
    [true, '_______#########'],
  ])('tells nothing from a little, and rises by eighths of a line (ASCII: %s: %s)', (ascii, steps) => {
    const line = (percent: number) => plot(kept(percent), ascii, 40, 1)[1];
    expect(line(0)).toBe(`100 % ${ascii ? '|' : '┤'}`);
    // Within each eighth, and at its end as near as a whole percent comes.
    const percents = [1, 12, 13, 25, 26, 37, 38, 50, 51, 62, 63, 75, 76, 87, 88, 100];
    expect(percents.map((percent) => line(percent)?.[8]).join('')).toBe(steps);
  });

  it('has columns as wide as there is room, from six to ten characters', () => {
    const widths = (counts: readonly number[], width: number) =>
      counts.map((count) => plot(kept(...Array(count).fill(50)), true, width)[5]?.length);
    expect(widths([1, 2, 3, 4, 5], 40)).toEqual([7 + 10, 7 + 20, 7 + 30, 7 + 4 * 8, 7 + 5 * 6]);
    expect(widths([5, 6, 7], 60)).toEqual([7 + 50, 7 + 6 * 8, 7 + 7 * 7]);
  });

  it('leaves out the first of more columns than fit', () => {
    const seven = kept(10, 20, 30, 40, 50, 60, 70);
    expect(plot(seven, true, 49).at(-1)).toBe('       05-01 05-02 05-03 05-04 05-05 05-06 05-07');
    expect(plot(seven, true, 48).at(-1)).toBe('       05-02 05-03 05-04 05-05 05-06 05-07');
    expect(plot(seven, true, 40).at(-2)).toBe('        30 %  40 %  50 %  60 %  70 %');
    for (const line of plot(seven, true, 40)) expect(line.length).toBeLessThanOrEqual(40);
  });

  it('of no set at all is its scale', () => {
    expect(plot([], true, 40, 2)).toEqual([
      'Chroma kept, of what was to be kept',
      '100 % |',
      '      |',
      '  0 % +',
      '',
      '',
    ]);
  });
});

describe('two plots side by side', () => {
  it('begin at the same line, the right one at its column, whichever is longer', () => {
    expect(sideBySide(['one', 'two'], ['right'], 6)).toEqual(['one   right', 'two']);
    expect(sideBySide(['one'], ['right', ' below'], 6)).toEqual(['one   right', '       below']);
    expect(sideBySide([], ['right'], 6)).toEqual(['      right']);
    expect(sideBySide([], [], 6)).toEqual([]);
  });
});

describe('the plots of progress', () => {
  it('of seven sets fit in the narrowest terminal that shows two side by side', () => {
    const sets = Array.from({ length: 7 }, (_, day) => ({
      ...BASE,
      valueError: 1,
      chromaKept: 0.5,
      set: `set-${day}`,
      started: `2026-05-0${day + 1}T18:00:00.000Z`,
    }));
    for (const columns of [60, 80, 100, 120]) {
      const lines = plots(sets, columns, true);
      const widest = Math.max(...lines.map((line) => line.length));
      expect(widest, `${columns} columns`).toBeLessThanOrEqual(columns);
      expect(lines.at(-1)?.match(/05-0[1-7]/g), 'no set is left out').toHaveLength(columns < 100 ? 7 : 14);
    }
  });
});
