/** What is said after an answer and at the end of a set: true, computed, and only within one model of prediction. */
import { describe, expect, it } from 'vitest';
import {
  comparedWithLast,
  emptyStanding,
  figureRows,
  foldSorted,
  type HistoryEntry,
  progressReport,
  summariseSet,
} from '../../src/practice/index.js';
import { DAY, entryOf, FAMILIES, START } from './simulate.js';

const entry = (verdict: HistoryEntry['verdict'], more: Partial<HistoryEntry> = {}): HistoryEntry => ({
  ...entryOf(
    { family: 'family-4', level: 2, reason: 'steady', feedback: 'each', drill: 'd' },
    verdict,
    START,
    's',
  ),
  ...more,
});
const value = (after: number) => ({ value: { before: 3, after, asked: [6.5, 7.5] as const } });
const chroma = (after: number) => ({
  chroma: { before: 50, after, kept: after / 50, asked: [30, 40] as const },
});
const plain = { value: undefined, chroma: undefined } as unknown as Partial<HistoryEntry>;

const said = (last: HistoryEntry | undefined, now: HistoryEntry): string | undefined =>
  comparedWithLast(last && foldSorted([last]).families.get('family-4')?.last, now);

describe('the line after an answer', () => {
  it.each([
    [
      entry('off', value(5.7)),
      entry('good', value(7)),
      'Well done: value inside now, 0.8 steps off last time.',
    ],
    [
      entry('off', value(5.5)),
      entry('good', value(7)),
      'Well done: value inside now, 1.0 step off last time.',
    ],
    [
      entry('off', value(5)),
      entry('fair', value(6)),
      'Value 0.5 steps off now, nearer than last time (1.5).',
    ],
    [entry('off', value(6)), entry('off', value(5)), 'Value 1.5 steps off now; last time it was 0.5.'],
    [entry('good', value(7)), entry('off', value(5)), 'Value 1.5 steps off now; last time it was inside.'],
    [
      entry('off', { ...value(7), ...chroma(20) }),
      entry('good', { ...value(7), ...chroma(35) }),
      'Well done: chroma inside now, 10 off last time.',
    ],
    [entry('off', plain), entry('good', plain), 'Well done: good now, off last time.'],
    [entry('good', plain), entry('good', plain), 'Good again, as last time.'],
    [entry('good', plain), entry('off', plain), 'Off now, good last time.'],
    [
      entry('good', plain),
      entry('good', { ...plain, level: 3 }),
      'Well done: good again, and a level harder than last time.',
    ],
    [undefined, entry('good'), 'Well done: good, the first time you met this.'],
    [undefined, entry('off'), undefined],
    [entry('off', value(5)), entry('good', { ...value(7), try: 2 }), undefined],
  ])('case %#', (last, now, words) => {
    expect(said(last, now)).toBe(words);
    expect(words?.length ?? 0).toBeLessThanOrEqual(60);
  });

  it('does not praise what is not good, though its value came right', () => {
    expect(said(entry('off', value(5)), entry('off', value(7)))).toBe(
      'Value inside now, 1.5 steps off last time.',
    );
  });

  it('sets no figure beside one of another model of prediction', () => {
    const last = entry('off', { ...value(5), engine: '0.1.0' });
    expect(said(last, entry('good', { ...value(7), engine: '0.2.0' }))).toBe('Well done: good.');
    expect(said(last, entry('off', { ...value(6), engine: '0.2.0' }))).toBeUndefined();
    expect(said(last, entry('fair', { ...value(6), engine: '0.1.9' }))).toMatch(/nearer than last time/);
  });
});

describe('the warm word of a set', () => {
  const warm = (before: readonly HistoryEntry[], set: readonly HistoryEntry[]): string | undefined =>
    summariseSet(foldSorted(before), set, FAMILIES, new Date(START + DAY))?.warm;
  const now = (verdict: HistoryEntry['verdict'], more: Partial<HistoryEntry> = {}): HistoryEntry =>
    entry(verdict, { set: 'now', at: new Date(START + DAY).toISOString(), ...more });

  it('names a level that rose first', () => {
    expect(warm([entry('good'), entry('good')], [now('good')])).toBe('Well done: Family 4 rose to level 2.');
  });

  it('names what came nearer, with the figures as the bars show them', () => {
    expect(warm([entry('off', value(5))], [now('off', value(6))])).toBe(
      'Your values came nearer: 0.5 steps off, after 1.5 before.',
    );
    expect(warm([entry('off', { ...plain, ...chroma(20) })], [now('off', { ...plain, ...chroma(24) })])).toBe(
      'You kept more colour: 80 % of what was asked, after 67 % before.',
    );
  });

  it('never claims a gain that is not there', () => {
    const worse = warm([entry('fair', value(6.4))], [now('off', value(5)), now('fair', value(5.2))]);
    expect(worse).toBe('Your best was Family 4, 55 of 100.');
    expect(warm([entry('off', plain)], [now('off', plain), now('off', plain)])).toMatch(
      /^2 decisions made before/,
    );
  });

  it('counts a row and praises a set without a miss', () => {
    const good = now('good', plain);
    expect(warm([], [now('good', plain), good, good])).toBe('Well done: all 3 of them good.');
    expect(warm([], [now('off', plain), good, good, good])).toBe('Well done: 3 good answers in a row.');
  });
});

describe('figures shown', () => {
  it('come from one rounded value each, for the words, the number and the bar', () => {
    const figures = { answers: 1, good: 0, fair: 0, off: 1, mark: 10, level: 2 };
    const rows = figureRows(
      { ...figures, valueError: 0.449, chromaKept: 0.706, dullError: 4.4 },
      { ...figures, valueError: 0.451, chromaKept: 0.7 },
    );
    expect(rows.map(({ id, now, before }) => [id, now.value, now.text, before?.text])).toEqual([
      ['value', 0.4, '0.4 steps', '0.5 steps'],
      ['kept', 0.71, '71 %', '70 %'],
      ['dull', 4, '4 of chroma', undefined],
    ]);
  });

  it('keep what asked to keep the colour apart from what asked to dull it', () => {
    const dull = { ...plain, chroma: { before: 50, after: 24, kept: 0.48, asked: [0, 20] as const } };
    const summary = summariseSet(
      emptyStanding(),
      [entry('fair', dull), entry('fair', { ...plain, ...chroma(21) })],
      FAMILIES,
      new Date(START),
    );
    expect(summary?.now).toMatchObject({ dullError: 4, chromaKept: 0.7 });
  });

  it('take a band at the shading line for shade, and one clearly under it for dulling', () => {
    // Burnt sienna, C* 60 at step 4 (L* 65), down to step 8: less light alone leaves 60 (25 + 16) / (65 + 16) = 30.
    const to8 = { value: { before: 4, after: 8, asked: [7.5, 8.5] as const } };
    const asked = (low: number, high: number) =>
      summariseSet(
        emptyStanding(),
        [entry('good', { ...to8, chroma: { before: 60, after: 30, kept: 0.5, asked: [low, high] } })],
        FAMILIES,
        new Date(START),
      )?.now;
    expect(asked(25, 35)).toMatchObject({ chromaKept: 1 });
    expect(asked(25, 35)?.dullError).toBeUndefined();
    expect(asked(5, 18)).toMatchObject({ dullError: 12 });
    expect(asked(5, 18)?.chromaKept).toBeUndefined();
  });
});

describe('progress', () => {
  /** Sets a day apart with so many steps of error and these marks. */
  const practised = (
    days: readonly { readonly after: number; readonly mark: number; readonly level?: number }[],
  ) =>
    foldSorted(
      days.flatMap(({ after, mark, level = 2 }, day) =>
        Array.from({ length: 3 }, (_, n) =>
          entry('good', {
            ...value(after),
            mark,
            level,
            set: `set-${day}`,
            at: new Date(START + day * DAY + n * 1000).toISOString(),
          }),
        ),
      ),
    );
  const report = (days: Parameters<typeof practised>[0]) =>
    progressReport(practised(days), FAMILIES, new Date(START + (days.length - 1) * DAY + 5000));
  const stateOf = (days: Parameters<typeof practised>[0]) =>
    report(days).families.find(({ id }) => id === 'family-4')?.state;

  it('calls a skill rising only when its last sets rise', () => {
    expect(
      stateOf([
        { after: 7, mark: 60 },
        { after: 7, mark: 80 },
      ]),
    ).toBe('rising');
    expect(
      stateOf([
        { after: 7, mark: 80 },
        { after: 7, mark: 80 },
      ]),
    ).toBe('steady');
    expect(
      stateOf([
        { after: 7, mark: 90 },
        { after: 7, mark: 70 },
      ]),
    ).toBe('steady');
    expect(stateOf([{ after: 7, mark: 80 }]), 'one answer tells nothing').toBe('begun');
    expect(
      stateOf([
        { after: 7, mark: 80 },
        { after: 7, mark: 80, level: 3 },
      ]),
    ).toBe('rising');
    expect(
      stateOf([
        { after: 7, mark: 60, level: 3 },
        { after: 7, mark: 80, level: 1 },
      ]),
    ).toBe('steady');
  });

  it('gives the later half against the earlier, so that an error that gets smaller falls', () => {
    const { trend } = report([5, 5, 6, 6].map((after) => ({ after, mark: 60 })));
    expect(trend?.earlier.valueError).toBeCloseTo(1.5, 9);
    expect(trend?.later.valueError).toBeCloseTo(0.5, 9);
    expect(report([{ after: 5, mark: 60 }]).trend).toBeUndefined();
  });
});
