/** The words, the number and the bar of a figure agree, and a fuller bar is better, whatever the figure. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  columnPlot,
  FIGURE_KINDS,
  type Figures,
  figureRows,
  figuresInWords,
  foldSorted,
  type HistoryEntry,
  summariseSet,
} from '../../src/practice/index.js';
import { glyphsFor } from '../../src/tui/kit/glyphs.js';
import { figureBars } from '../../src/tui/summary/bars.js';
import { DAY, entryOf, FAMILIES, START } from './simulate.js';

/** An answer of a family at a time: values and chroma anywhere, every aim. */
const answers = (set: string, atMs: number): fc.Arbitrary<HistoryEntry[]> =>
  fc.array(
    fc
      .record({
        family: fc.constantFrom('family-1', 'family-2'),
        aim: fc.constantFrom('shade', 'rich', 'dull', 'distance', 'neutral', 'lean', undefined),
        step: fc.double({ min: 1, max: 10, noNaN: true }),
        before: fc.double({ min: 0, max: 90, noNaN: true }),
        after: fc.double({ min: 0, max: 90, noNaN: true }),
        low: fc.double({ min: 0, max: 60, noNaN: true }),
      })
      .map(
        ({ family, aim, step, before, after, low }): HistoryEntry => ({
          ...entryOf({ family, level: 2, reason: 'steady', feedback: 'each', drill: 'd' }, 'fair', atMs, set),
          value: { before: 3, after: step, asked: [6.5, 7.5] },
          chroma: { before, after, kept: after / Math.max(1, before), asked: [low, low + 16] },
          ...(aim !== undefined && { aim }),
        }),
      ),
    { minLength: 1, maxLength: 6 },
  );

/** How full a bar has to be for the number that stands beside it: two steps, nothing kept and C* 20 leave it empty. */
const FILL: Readonly<Record<string, (x: number) => number>> = {
  'value error': (x) => 1 - x / 2,
  'chroma kept': (x) => x / 100,
  'dulling error': (x) => 1 - x / 20,
};
const LABELS = Object.keys(FILL);

const LENGTH = 24;
const numberIn = (text: string): number => Number(/\d+(\.\d)?/.exec(text)?.[0]);
const lengthFor = (label: string, x: number): number =>
  Math.round(LENGTH * Math.max(0, Math.min(1, FILL[label]?.(x) ?? Number.NaN)));

/** What a drawn line of a bar says: the cells that are full, and its number. */
function readBar(pieces: readonly { readonly text: string }[]) {
  const [label = '', , bar = '', text = ''] = pieces.map((piece) => piece.text);
  expect(bar).toMatch(/^#*-*$/);
  expect(bar).toHaveLength(LENGTH);
  return { label: label.trim(), full: bar.replaceAll('-', '').length, text: text.trim() };
}

/** "value error 0.9 steps, was 1.2: nearer" in a sentence. */
function readWords(sentence: string, label: string) {
  const part = sentence.split(/; |: (?=\d)|\. /).find((words) => words.startsWith(label)) ?? '';
  return {
    number: numberIn(part),
    was: /was/.test(part) ? numberIn(part.split('was ')[1] ?? '') : undefined,
    part,
  };
}

describe('every summary', () => {
  const glyphs = { ...glyphsFor({}), full: '#', empty: '-' };

  it('says, writes and draws one value for each figure, now and before, and a fuller bar is the better one', () => {
    let bars = 0;
    fc.assert(
      fc.property(answers('then', START), answers('now', START + DAY), (then, now) => {
        const summary = summariseSet(foldSorted(then), now, FAMILIES, new Date(START + DAY));
        if (summary === undefined) throw new Error('no summary of a set with answers');
        const sentence = summary.lines[0] ?? '';
        let label = '';
        let nowFull = 0;
        for (const line of figureBars(figureRows(summary.now, summary.before), glyphs, 100)) {
          const bar = readBar(line);
          label = bar.label || label;
          const words = readWords(sentence, label);
          bars += 1;
          if (bar.label !== '') {
            nowFull = bar.full;
            expect(numberIn(bar.text), sentence).toBe(words.number);
            expect(bar.full, `${label} ${bar.text}`).toBe(lengthFor(label, words.number));
            continue;
          }
          const was = numberIn(bar.text);
          expect(bar.full).toBe(lengthFor(label, was));
          if (words.was === undefined) expect(words.part).toMatch(/as before/);
          else expect(words.was).toBe(was);
          if (/nearer|more/.test(words.part)) expect(nowFull).toBeGreaterThanOrEqual(bar.full);
          if (/further off|less/.test(words.part)) expect(nowFull).toBeLessThanOrEqual(bar.full);
        }
      }),
      { seed: 5, numRuns: 300 },
    );
    expect(bars).toBeGreaterThan(600);
  });
});

const FIGURES: Figures = { answers: 4, good: 3, fair: 0, off: 1, mark: 70, level: 2 };

describe('which way is better', () => {
  it.each([
    [{ valueError: 0.9 }, { valueError: 1.2 }, 'value error 0.9 steps, was 1.2: nearer'],
    [{ valueError: 1.2 }, { valueError: 0.9 }, 'value error 1.2 steps, was 0.9: further off'],
    [{ valueError: 1.04 }, { valueError: 0.96 }, 'value error 1.0 step, as before'],
    [{ chromaKept: 0.71 }, { chromaKept: 0.6 }, 'chroma kept 71 % of what was asked, was 60 %: more'],
    [{ chromaKept: 0.5 }, { chromaKept: 0.6 }, 'chroma kept 50 % of what was asked, was 60 %: less'],
    [{ dullError: 4 }, { dullError: 9 }, 'dulling error 4 of chroma, was 9: nearer'],
    [{ dullError: 4 }, undefined, 'dulling error 4 of chroma'],
    [{ dullError: 4, dullAnswers: 4 }, undefined, 'dulling error 4 of chroma'],
    [
      { valueError: 0.9, valueAnswers: 2 },
      { valueError: 1.2, valueAnswers: 9 },
      'value error 0.9 steps in 2 of them, was 1.2: nearer',
    ],
    [{ chromaKept: 0.71, chromaAnswers: 1 }, undefined, 'chroma kept 71 % of what was asked in 1 of them'],
  ])('%j after %j', (now, before, words) => {
    const was = before && { ...FIGURES, ...before };
    expect(figuresInWords({ ...FIGURES, ...now }, was)).toBe(`3 of 4 good; ${words}`);
  });

  it('a bar names its answers where some of the set had none of it', () => {
    const rows = figureRows({ ...FIGURES, valueError: 0.9, valueAnswers: 1, dullError: 4, dullAnswers: 4 });
    const glyphs = { ...glyphsFor({}), full: '#', empty: '-' };
    expect(figureBars(rows, glyphs, 80).map(([, when]) => when?.text.trim())).toEqual([
      '1 answer',
      'this time',
    ]);
  });

  it.each(FIGURE_KINDS)('a column of "$title" is taller where it is better', (kind) => {
    const [foot, top] = kind.ends;
    const columns = Array.from({ length: 5 }, (_, n) => foot.value + ((top.value - foot.value) * n) / 4).map(
      (x) => ({
        figure: kind.shown({ ...FIGURES, valueError: x, chromaKept: x, dullError: x }),
        label: String(x),
      }),
    );
    const lines = columnPlot({ kind, columns, width: 60, height: 4, ascii: true });
    const rows = lines.slice(1, 5).map((line) => line.slice(7).padEnd(50));
    const heights = columns.map((_, n) => rows.filter((row) => row[n * 10 + 3] === '#').length);
    expect(heights).toEqual([0, 1, 2, 3, 4]);
    expect(lines[1]).toContain(top.number);
    expect(lines[5]).toContain(foot.number);
  });
});

describe('chroma', () => {
  const set = (given: readonly Partial<HistoryEntry>[]) =>
    summariseSet(
      foldSorted([]),
      given.map((more) => ({
        ...entryOf(
          { family: 'family-1', level: 2, reason: 'steady', feedback: 'each', drill: 'd' },
          'good',
          START,
          's',
        ),
        ...more,
      })),
      FAMILIES,
      new Date(START),
    )?.now;
  const chroma = (before: number, after: number, low: number, high: number) => ({
    chroma: { before, after, kept: after / before, asked: [low, high] as const },
  });

  it.each(['dull', 'distance', 'neutral', 'lean'] as const)(
    'lost on purpose, as %s asks, is a success and no loss',
    (aim) => {
      const now = set([{ aim, ...chroma(60, 12, 5, 20) }]);
      expect(now).toMatchObject({ dullError: 0 });
      expect(now?.chromaKept).toBeUndefined();
      expect(figureRows(now as Figures).find(({ id }) => id === 'dull')?.now).toMatchObject({
        value: 0,
        fill: 1,
      });
    },
  );

  it('kept where it was to be dulled is an error', () => {
    expect(set([{ aim: 'dull', ...chroma(60, 55, 5, 20) }])).toMatchObject({ dullError: 35 });
  });

  // src/judgement/README.md: C* 50 at L* 60 becomes 36.8 at L* 40 on the shading line; a band around it has a margin of 15 %.
  it('of a shade on the shading line is all kept, though it is less than before; mud is not', () => {
    expect(set([{ aim: 'shade', ...chroma(50, 36.8, 31.3, 42.3) }])).toMatchObject({ chromaKept: 1 });
    expect(set([{ aim: 'shade', ...chroma(50, 15.65, 31.3, 42.3) }])).toMatchObject({ chromaKept: 0.5 });
  });

  it('above what was asked does not make up for what another lost', () => {
    const now = set([
      { aim: 'rich', ...chroma(40, 60, 30, 1000) },
      { aim: 'rich', ...chroma(40, 15, 30, 1000) },
    ]);
    expect(now).toMatchObject({ chromaKept: 0.75 });
  });

  it('is counted apart: what was to be kept, and what was to be dulled', () => {
    const now = set([
      { aim: 'rich', ...chroma(40, 15, 30, 1000) },
      { aim: 'dull', ...chroma(40, 24, 5, 20) },
    ]);
    expect(now).toMatchObject({ chromaKept: 0.5, dullError: 4 });
    expect(figureRows(now as Figures).map(({ label }) => label)).toEqual(LABELS);
  });
});
