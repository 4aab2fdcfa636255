import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StoreError } from '../../src/errors.js';
import type { HistoryEntry } from '../../src/practice/index.js';
import {
  type Answered,
  addAnswer,
  emptyStanding,
  entryLine,
  figuresOf,
  foldSorted,
  MAX_LINE_BYTES,
  nextSteps,
  parseEntry,
  entryOf as recordEntryOf,
  sessionMark,
  standingToJson,
  summariseSet,
} from '../../src/practice/index.js';
import { chromaErrorOf } from '../../src/practice/totals.js';
import { DAY, entryOf, FAMILIES, START } from './simulate.js';

const pick = {
  family: 'family-4',
  level: 2,
  reason: 'rising',
  feedback: 'each',
  drill: 'family-4-2-1',
} as const;
const entry = (
  verdict: HistoryEntry['verdict'],
  day = 0,
  set = `set-${day}`,
  more: Partial<HistoryEntry> = {},
): HistoryEntry => ({
  ...entryOf(pick, verdict, START + day * DAY, set),
  ...more,
});

describe('the line of an answer', () => {
  it('comes back as it went', () => {
    const line = entryLine(entry('good'));
    expect(line.endsWith('\n')).toBe(true);
    expect(line.indexOf('\n')).toBe(line.length - 1);
    expect(parseEntry(line)).toEqual(entry('good'));
  });

  it('is refused when torn, foreign, out of range or carrying characters that steer a terminal', () => {
    const line = entryLine(entry('good')).trim();
    for (let cut = 0; cut < line.length; cut += 1) expect(parseEntry(line.slice(0, cut))).toBeUndefined();
    const wrong: Partial<Record<keyof HistoryEntry, unknown>>[] = [
      { v: 2 },
      { at: 'yesterday' },
      { level: 0 },
      { level: 2.5 },
      { mark: 101 },
      { mark: null },
      { verdict: 'splendid' },
      { drill: 'a\u001b[2J' },
      { family: 'a\u202eb' },
      { answer: ['a'] },
      { answer: { second: 3 } },
      { hints: -1 },
      { try: 0 },
      { value: { before: 1, after: 2 } },
      { chroma: { before: 1, after: -2, kept: 1 } },
      { guess: 1.5 },
      { placing: 'yes' },
    ];
    for (const change of wrong)
      expect(parseEntry(JSON.stringify({ ...entry('good'), ...change }))).toBeUndefined();
    expect(parseEntry(JSON.stringify({ ...entry('good'), newer: 'member' }))).toBeDefined();
    const old = { ...entry('good'), difficulty: 0.5 };
    expect(parseEntry(JSON.stringify(old)), 'a member of earlier versions').toEqual(old);
  });

  it('is never written so that it could not be read back', () => {
    expect(() => entryLine(entry('good', 0, 'a\nb'))).toThrow(/does not fit the record/);
    expect(() => entryLine(entry('good', 0, 's', { mark: Number.NaN }))).toThrow(StoreError);
    expect(parseEntry(entryLine(entry('good', 0, 's', { answer: { second: '' } })))).toBeDefined();
  });

  it('reads any text without throwing', () => {
    fc.assert(fc.property(fc.string(), (text) => void parseEntry(text)));
    fc.assert(fc.property(fc.json(), (text) => void parseEntry(text)));
  });

  it('is at most 16 KB', () => {
    const answer = Object.fromEntries(
      Array.from({ length: 64 }, (_, n) => [`${n}${'\u00e4'.repeat(80)}`, '\u00e4'.repeat(80)]),
    );
    expect(MAX_LINE_BYTES).toBe(16_384);
    expect(() => entryLine(entry('good', 0, 's', { answer }))).toThrow(/too long/);
  });

  it('is made from a grade, with what hints and tries cost taken off', () => {
    const made = recordEntryOf(
      {
        drill: { id: 'd', family: 'f', level: 3 },
        answer: { a: 'b' },
        grade: {
          verdict: 'good',
          value: { before: 3.00049, after: 7, asked: [6.5, 7.5], verdict: 'good', tooCloseToCall: false },
        },
        mark: sessionMark(83.4, 1, 2),
        answeredAt: START,
        hints: 1,
        attempt: 2,
      } as unknown as Answered,
      { set: 's', engine: '1', try: 2 },
    );
    expect(made).toMatchObject({
      mark: 37,
      try: 2,
      hints: 1,
      value: { before: 3, after: 7, asked: [6.5, 7.5] },
    });
    expect(parseEntry(entryLine(made))).toEqual(made);
    expect(sessionMark(5, 3, 1)).toBe(0);
  });

  it('holds a band without an upper end as a number beyond every colour: JSON knows no infinity', () => {
    const made = recordEntryOf(
      {
        drill: { id: 'd', family: 'f', level: 3 },
        answer: { a: 'b' },
        grade: {
          verdict: 'fair',
          chroma: { before: 50, after: 30, kept: 0.6, asked: [38, Number.POSITIVE_INFINITY] },
        },
        mark: 68,
        answeredAt: START,
        hints: 0,
        attempt: 1,
      } as unknown as Answered,
      { set: 's', engine: '1', try: 1 },
    );
    const kept = parseEntry(entryLine(made));
    expect(kept).toEqual(made);
    const [low, high] = kept?.chroma?.asked ?? [];
    expect(low).toBe(38);
    // No colour that can be written down lies outside the band for being too strong.
    expect(Number.isFinite(high)).toBe(true);
    expect(high).toBeGreaterThan(300);
    expect(
      chromaErrorOf({
        ...made,
        chroma: { before: 50, after: 300, kept: 6, asked: [low as number, high as number] },
      }),
    ).toBe(0);
  });
});

describe('standing', () => {
  it('counts later tries apart, and nothing else of them', () => {
    const once = foldSorted([entry('off')]);
    const twice = foldSorted([entry('off'), entry('good', 0, 'set-0', { try: 2 })]);
    expect([twice.answers, twice.laterTries]).toEqual([1, 1]);
    expect({ ...twice, laterTries: 0 }).toEqual(once);
  });

  it('is the same whatever the order of the lines', () => {
    const list = Array.from({ length: 30 }, (_, i) => entry(i % 4 === 0 ? 'off' : 'good', i));
    const shuffled = list.toSorted((a, b) => Math.sin(Date.parse(a.at)) - Math.sin(Date.parse(b.at)));
    expect(standingToJson(foldSorted(shuffled))).toBe(standingToJson(foldSorted(list)));
  });

  it('stays small however long the record: 20,000 answers to drills that never come again', () => {
    const standing = emptyStanding();
    for (let i = 0; i < 20_000; i += 1)
      addAnswer(
        standing,
        entry('good', i / 100, `set-${Math.floor(i / 12)}`, { drill: `made-${i}`, family: `f-${i % 500}` }),
      );
    expect(standing.answers).toBe(20_000);
    expect(standing.drills.size).toBeLessThanOrEqual(1500);
    expect(standing.drills.has('made-19999')).toBe(true);
    expect(standing.families.size).toBeLessThanOrEqual(300);
    expect(standing.sets).toHaveLength(7);
    expect(standingToJson(standing).length).toBeLessThan(1_000_000);
  });

  it('holds families whose names are members of every object', () => {
    const standing = foldSorted([entry('good', 0, 's', { family: '__proto__', drill: 'constructor' })]);
    expect(standing.families.get('__proto__')?.answers).toBe(1);
  });

  it('means value error outside the band, and chroma kept only where keeping was asked', () => {
    const grey = { before: 50, after: 3, kept: 0.06, asked: [0, 5] as const };
    const { sets } = foldSorted([
      entry('off', 0, 's'),
      entry('good', 0, 's'),
      entry('good', 0, 's', { chroma: grey }),
    ]);
    const figures = figuresOf(sets);
    expect(figures).toMatchObject({ answers: 3, good: 2, off: 1, dullError: 0 });
    expect(figures?.valueError).toBeCloseTo(0.5, 9);
    // Half of what was asked, and all of it.
    expect(figures?.chromaKept).toBeCloseTo(0.75, 9);
  });
});

describe('the summary of a set', () => {
  it('compares with the sets before, family by family, and does not change the standing', () => {
    const before = foldSorted([entry('off', 0), entry('off', 0), entry('good', 1)]);
    const copy = standingToJson(before);
    const set = [entry('good', 2, 'now'), entry('good', 2, 'now'), entry('off', 2, 'now', { try: 2 })];
    const summary = summariseSet(before, set, FAMILIES, new Date(START + 2 * DAY));
    expect(standingToJson(before)).toBe(copy);
    expect(summary?.now).toMatchObject({ answers: 2, good: 2, valueError: 0, chromaKept: 1 });
    expect(summary?.before?.valueError).toBeCloseTo(1, 9);
    expect(summary?.families).toHaveLength(1);
    expect(summary?.families[0]).toMatchObject({ title: 'Family 4', levelBefore: 1, levelAfter: 2 });
    expect(summary?.lines).toHaveLength(1);
    expect(summary?.lines[0]).toBe(
      'This set: 2 of 2 good; value error 0.0 steps, was 1.0: nearer; chroma kept 100 % of what was asked, was 67 %: more. Up to level 2.',
    );
    expect(summary?.next.length).toBeGreaterThan(0);
  });

  it('is nothing for a set without a first answer', () => {
    expect(summariseSet(emptyStanding(), [], FAMILIES, new Date(START))).toBeUndefined();
  });

  it('tells a beginner where to begin and names what is weak first', () => {
    expect(nextSteps(emptyStanding(), FAMILIES, new Date(START))[0]).toMatch(/^Begin with Family 1/);
    const weak = foldSorted([entry('off'), entry('off'), entry('off')]);
    expect(nextSteps(weak, FAMILIES, new Date(START))[0]).toMatch(/^Family 4: often missed/);
  });
});
