/** The rule of the seals on a few events, without a file: what each change is called. */
import { describe, expect, it } from 'vitest';
import type { SittingEvent } from '../../src/quiz/events.js';
import { toInstant } from '../../src/quiz/instant.js';
import { checkSeals, hmacSha256, isWholeAtEnd, type Seals, sealAll } from '../../src/quiz/seals.js';
import { NINE, SECRET } from './fixture.js';

const handoutDigest = `sha256:${'a'.repeat(64)}`;
const at = (second: number) => toInstant(NINE + second * 1000);
const shown = (n: number): SittingEvent => ({ event: 'shown', drill: `question-${n}`, at: at(n) });
const EVENTS: readonly SittingEvent[] = [
  { event: 'begin', name: 'Ann', at: at(0) },
  shown(1),
  { event: 'taken', drill: 'question-1', answer: { second: 'ivory-black' }, at: at(20) },
  { event: 'handed-in', at: at(30) },
];
const SEALS = sealAll(SECRET, { handoutDigest, events: EVENTS });
const check = (events: readonly SittingEvent[], seals?: Seals, secret = SECRET) =>
  checkSeals(secret, { handoutDigest, events, seals });
const faultsOf = (events: readonly SittingEvent[], seals?: Seals) =>
  check(events, seals).faults.map(({ fault }) => fault);
const UNSEALED = { state: 'unsealed', faults: [], isCut: false };

it('what was written is whole', () => {
  expect(check(EVENTS, SEALS)).toEqual({ state: 'whole', faults: [], isCut: false });
  expect(SEALS.each.every((seal) => /^[0-9a-f]{64}$/.test(seal))).toBe(true);
  expect(SEALS.end).toMatch(/^[0-9a-f]{32}$/);
});

it('what was read stays as it was read: only events that came since are sealed', () => {
  const broken: Seals = { each: ['x', 'y'], end: 'z' };
  const { each } = sealAll(SECRET, { handoutDigest, events: EVENTS, seals: broken });
  expect(each.slice(0, 2)).toEqual(['x', 'y']);
  expect(each).toHaveLength(4);
  expect(sealAll(SECRET, { handoutDigest, events: EVENTS, seals: { each: SEALS.each.slice(0, 2) } })).toEqual(
    SEALS,
  );
});

describe('without seals', () => {
  it('it is unsealed, and nobody is blamed for events', () => {
    expect(check(EVENTS)).toEqual(UNSEALED);
    expect(check(EVENTS, { each: [] })).toEqual(UNSEALED);
    expect(check(EVENTS, { each: ['', '', '', ''] })).toEqual(UNSEALED);
    expect(isWholeAtEnd(SECRET, { handoutDigest, events: EVENTS })).toBe(true);
  });

  it('but not where one seal is left, at the end or anywhere', () => {
    expect(check(EVENTS, { each: ['', '', '', ''], end: SEALS.end })).toMatchObject({
      state: 'changed',
      isCut: true,
    });
    expect(check(EVENTS, { each: ['', '', '', SEALS.each[3] as string] })).toMatchObject({
      state: 'changed',
      isCut: true,
    });
    expect(faultsOf(EVENTS, { ...SEALS, each: SEALS.each.with(1, '') })[0]).toBe('unsealed');
    expect(check(EVENTS, { each: SEALS.each })).toEqual({ state: 'changed', faults: [], isCut: true });
  });
});

describe('a change', () => {
  it('of what was done, of when, or of both', () => {
    const [begin, ...rest] = EVENTS as [SittingEvent, ...SittingEvent[]];
    const named = { ...begin, name: 'Ben' } as SittingEvent;
    expect(faultsOf([named, ...rest], SEALS)).toEqual(['what']);
    expect(faultsOf([{ ...begin, at: at(1) }, ...rest], SEALS)).toEqual(['time']);
    expect(faultsOf([{ ...named, at: at(1) }, ...rest], SEALS)).toEqual(['lost']);
    expect(check([named, ...rest], SEALS)).toMatchObject({ state: 'changed', isCut: false });
    expect(check([named, ...rest], SEALS).faults[0]?.event).toBe(named);
  });

  it('of the order is a move, with its seal', () => {
    const [a, b, c, d] = EVENTS as [SittingEvent, SittingEvent, SittingEvent, SittingEvent];
    const [w, x, y, z] = SEALS.each as [string, string, string, string];
    expect(faultsOf([a, c, b, d], { ...SEALS, each: [w, y, x, z] })).toEqual(['moved', 'moved', 'moved']);
    expect(faultsOf([b, a, c, d], { ...SEALS, each: [x, w, y, z] })).toContain('moved');
  });

  it('at the end is seen: lines taken out, and another last line', () => {
    const cut = { each: SEALS.each.slice(0, 3), end: SEALS.end };
    expect(check(EVENTS.slice(0, 3), cut)).toEqual({ state: 'changed', faults: [], isCut: true });
    const other = sealAll(SECRET, { handoutDigest, events: EVENTS.with(3, { event: 'gap', at: at(30) }) });
    expect(other.end).not.toBe(SEALS.end);
    expect(other.each.slice(0, 3)).toEqual(SEALS.each.slice(0, 3));
    expect(sealAll(SECRET, { handoutDigest, events: [] }).end).toBe(
      hmacSha256(SECRET, 'end\n0\n').slice(0, 32),
    );
  });

  it('that was noted when the sitting was gone on with stays one', () => {
    const events = [...EVENTS.slice(0, 3), { event: 'gap', at: at(25) } as const];
    expect(check(events, sealAll(SECRET, { handoutDigest, events }))).toEqual({
      state: 'changed',
      faults: [],
      isCut: false,
    });
  });
});

describe('another key', () => {
  it('fits nowhere: the seals are foreign', () => {
    expect(check(EVENTS, SEALS, 'f'.repeat(64))).toMatchObject({ state: 'foreign', isCut: true });
    expect(check(EVENTS, SEALS, 'f'.repeat(64)).faults.map(({ fault }) => fault)).toEqual(
      Array(4).fill('lost'),
    );
  });

  it('is not what happened where the end fits, or one line is only unsealed', () => {
    const junk = 'f'.repeat(64);
    expect(check(EVENTS, { each: ['', junk, junk, junk], end: 'f'.repeat(32) }).state).toBe('changed');
    const each = Array<string>(4).fill(junk);
    const { end } = sealAll(SECRET, { handoutDigest, events: EVENTS, seals: { each } });
    expect(check(EVENTS, { each, end }).state).toBe('changed');
    expect(check(EVENTS, { each, end: 'f'.repeat(32) }).state).toBe('foreign');
    expect(
      check(EVENTS, { each: [SEALS.each[0] as string, junk, junk, junk], end: 'f'.repeat(32) }).state,
    ).toBe('changed');
  });
});

it('looks for the places of twenty events, and calls the others lost', () => {
  const many = Array.from({ length: 40 }, (_, n) => shown(n));
  const { each, end } = sealAll(SECRET, { handoutDigest, events: many });
  const faults = faultsOf(many.toReversed(), { each: each.toReversed(), end });
  expect(faults.filter((fault) => fault === 'moved')).toHaveLength(20);
  expect(faults.slice(0, 20)).toEqual(Array(20).fill('moved'));
  expect(faults.slice(20)).toEqual(Array(20).fill('lost'));
});
