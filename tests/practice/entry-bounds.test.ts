/** What a line of the record may hold: each member to its bounds, and nothing beyond. */
import { describe, expect, it } from 'vitest';
import { StoreError } from '../../src/errors.js';
import {
  type Answered,
  entryLine,
  type HistoryEntry,
  isNewer,
  MAX_LINE_BYTES,
  parseEntry,
  entryOf as recordEntryOf,
} from '../../src/practice/index.js';
import { entryOf, START } from './simulate.js';

const PICK = {
  family: 'family-4',
  level: 2,
  reason: 'rising',
  feedback: 'each',
  drill: 'family-4-2-1',
} as const;
const ENTRY: HistoryEntry = {
  ...entryOf(PICK, 'good', START, 'set-1'),
  aim: 'rich',
  idea: 'went-across',
  placing: true,
  box: { id: 'twelve', revision: 'abc' },
};

/** The entry with one member changed, at a path of names. */
function changed(path: string, value: unknown): string {
  const copy = structuredClone(ENTRY) as unknown as Record<string, unknown>;
  const names = path.split('.');
  const last = names.pop() as string;
  let at = copy;
  for (const name of names) at = at[name] as Record<string, unknown>;
  if (value === undefined) delete at[last];
  else at[last] = value;
  return JSON.stringify(copy);
}
const isRead = (path: string, value: unknown): boolean => parseEntry(changed(path, value)) !== undefined;

it('reads what it should, with all that may be there', () => {
  expect(parseEntry(JSON.stringify(ENTRY))).toEqual(ENTRY);
  expect(parseEntry(JSON.stringify({ ...ENTRY, more: 1 }))).toEqual({ ...ENTRY, more: 1 });
});

describe('numbers', () => {
  it.each([
    ['v', 1, 1],
    ['level', 1, 5],
    ['mark', 0, 100],
    ['hints', 0, 1000],
    ['try', 1, 1000],
    ['guess', 0, 1],
    ['value.before', -5, 20],
    ['value.after', -5, 20],
    ['value.asked.0', -5, 20],
    ['value.asked.1', -5, 20],
    ['chroma.before', 0, 300],
    ['chroma.after', 0, 300],
    ['chroma.kept', 0, 1e6],
    ['chroma.asked.0', -1000, 1000],
    ['chroma.asked.1', -1000, 1000],
  ])('%s is %d to %d', (path, least, most) => {
    expect([isRead(path, least), isRead(path, most)]).toEqual([true, true]);
    expect([isRead(path, least - 1), isRead(path, most + 1)]).toEqual([false, false]);
    for (const other of [null, `${least}`, [least], { is: least }, true])
      expect(isRead(path, other)).toBe(false);
  });

  it.each(['v', 'level', 'hints', 'try'])('%s is whole', (path) => {
    expect(isRead(path, 1.5)).toBe(false);
  });

  it('a band has two ends', () => {
    for (const path of ['value.asked', 'chroma.asked'])
      for (const band of [[], [5], [5, 6, 7], 5, { 0: 5, 1: 6, length: 2 }, null])
        expect(isRead(path, band)).toBe(false);
  });
});

describe('texts', () => {
  it.each([
    ['drill', 200],
    ['family', 100],
    ['set', 100],
    ['engine', 60],
    ['idea', 100],
    ['box.id', 200],
    ['box.revision', 40],
    ['answer.second', 200],
  ])('%s has at most %d characters, and none that steer a terminal', (path, most) => {
    expect([isRead(path, 'x'), isRead(path, 'x'.repeat(most))]).toEqual([true, true]);
    expect(isRead(path, 'x'.repeat(most + 1))).toBe(false);
    for (const other of [
      'a\u001b[2J',
      'a\nb',
      'a\u202eb',
      'a\u200bb',
      '\ufeffa',
      'a\u007f',
      'a\u009b',
      3,
      null,
      ['x'],
    ])
      expect(isRead(path, other), JSON.stringify(other)).toBe(false);
    // A choice that is left open is kept as empty; nothing else may be.
    expect(isRead(path, '')).toBe(path === 'answer.second');
  });

  it('the time is one', () => {
    expect(isRead('at', '2026-03-01T09:00:00.000Z')).toBe(true);
    for (const other of ['yesterday', '', 5, null, `2026-03-01T09:00:00.${'0'.repeat(40)}Z`])
      expect(isRead('at', other)).toBe(false);
  });

  it('the names of choices are texts too, 64 of them at most', () => {
    const choices = (count: number) =>
      Object.fromEntries(Array.from({ length: count }, (_, at) => [`c${at}`, 'x']));
    expect([isRead('answer', {}), isRead('answer', choices(64))]).toEqual([true, true]);
    expect(isRead('answer', choices(65))).toBe(false);
    expect(isRead('answer', { ['x'.repeat(200)]: 'a' })).toBe(true);
    expect(isRead('answer', { ['x'.repeat(201)]: 'a' })).toBe(false);
    expect(isRead('answer', { 'a\u001b': 'a' })).toBe(false);
    for (const other of [null, [], ['a'], 'a', 5]) expect(isRead('answer', other)).toBe(false);
  });
});

describe('words', () => {
  it('of a verdict, an aim and the placing round are the known ones', () => {
    expect(['good', 'fair', 'off'].map((word) => isRead('verdict', word))).toEqual([true, true, true]);
    expect(['splendid', '', null, 1].map((word) => isRead('verdict', word))).toEqual([
      false,
      false,
      false,
      false,
    ]);
    const aims = ['shade', 'rich', 'dull', 'distance', 'neutral', 'lean'];
    expect(aims.every((aim) => isRead('aim', aim))).toBe(true);
    expect(['bright', '', null, 1].some((aim) => isRead('aim', aim))).toBe(false);
    expect([isRead('placing', true), isRead('placing', false), isRead('placing', 1)]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe('members', () => {
  it.each(['value', 'chroma', 'chroma.asked', 'guess', 'aim', 'idea', 'placing', 'box'])(
    '%s may be missing',
    (path) => {
      expect(isRead(path, undefined)).toBe(true);
    },
  );

  it.each([
    'v',
    'at',
    'drill',
    'family',
    'level',
    'answer',
    'mark',
    'verdict',
    'hints',
    'try',
    'set',
    'engine',
    'value.before',
    'value.after',
    'value.asked',
    'chroma.before',
    'chroma.after',
    'chroma.kept',
    'box.id',
    'box.revision',
  ])('%s must be there', (path) => {
    expect(isRead(path, undefined)).toBe(false);
  });

  it.each(['value', 'chroma', 'box'])('%s is a map', (path) => {
    for (const other of [null, [], 5, 'x', true]) expect(isRead(path, other)).toBe(false);
  });
});

describe('the entry of an answer', () => {
  const answered = (grade: object): Answered =>
    ({
      drill: { id: 'd', family: 'f', level: 3 },
      answer: { second: 'a', amount: '1:4' },
      grade: { verdict: 'fair', ...grade },
      mark: 68,
      answeredAt: START,
      hints: 2,
      attempt: 1,
    }) as unknown as Answered;
  const BARE = {
    v: 1,
    at: new Date(START).toISOString(),
    drill: 'd',
    family: 'f',
    level: 3,
    answer: { second: 'a', amount: '1:4' },
    mark: 68,
    verdict: 'fair',
    hints: 2,
    try: 1,
    set: 's',
    engine: '1.0.0',
  };
  const told = { set: 's', engine: '1.0.0', try: 1 };

  it('has no more than there was', () => {
    expect(recordEntryOf(answered({}), told)).toStrictEqual(BARE);
    expect(recordEntryOf(answered({}), { ...told, placing: false })).toStrictEqual(BARE);
  });

  it('has all that there was, numbers to three decimals', () => {
    const grade = {
      value: { before: 3.00049, after: 6.1239, asked: [5.99999, 7], verdict: 'good', tooCloseToCall: false },
      chroma: { before: 50.12345, after: 30, kept: 0.59876, asked: [10.0004, 20.0006], verdict: 'off' },
      aim: 'dull',
      idea: 'went-across',
    };
    const box = { id: 'twelve', revision: 'abc' };
    const made = recordEntryOf(answered(grade), { ...told, guess: 0.33333, placing: true, box });
    expect(made).toStrictEqual({
      ...BARE,
      value: { before: 3, after: 6.124, asked: [6, 7] },
      chroma: { before: 50.123, after: 30, kept: 0.599, asked: [10, 20.001] },
      guess: 0.333,
      aim: 'dull',
      idea: 'went-across',
      placing: true,
      box,
    });
    expect(parseEntry(entryLine(made))).toEqual(made);
  });

  it('holds the answer as it was given, whatever becomes of it', () => {
    const given = answered({});
    const made = recordEntryOf(given, told);
    (given.answer as Record<string, string>)['second'] = 'b';
    expect(made.answer).toEqual({ second: 'a', amount: '1:4' });
  });
});

describe('a line', () => {
  it('is as long as it may be, in bytes and not in letters, and no longer', () => {
    const wide = (letters: number): HistoryEntry => ({
      ...ENTRY,
      answer: Object.fromEntries(
        Array.from({ length: Math.ceil(letters / 200) }, (_, at) => [
          `c${String(at).padStart(2, '0')}`,
          'é'.repeat(Math.min(200, letters - 200 * at)),
        ]),
      ),
    });
    const bytes = (entry: HistoryEntry): number => Buffer.byteLength(entryLine(entry));
    let letters = 5000;
    while (bytes(wide(letters)) < MAX_LINE_BYTES - 1) letters += 1;
    const last = wide(letters);
    expect(bytes(last)).toBeLessThanOrEqual(MAX_LINE_BYTES);
    expect(parseEntry(entryLine(last))).toEqual(last);
    expect(() => entryLine(wide(letters + 1))).toThrow(StoreError);
    expect(() => entryLine(wide(letters + 1))).toThrow(/too long/);
  });

  it('that could not be read back is not written', () => {
    for (const wrong of [{ mark: 101 }, { mark: Number.NaN }, { drill: '' }, { level: 6 }])
      expect(() => entryLine({ ...ENTRY, ...wrong })).toThrow(/does not fit the record/);
  });

  it('is of a newer program where its version is a later one', () => {
    expect(['{"v":2}', '{"v":3,"x":1}'].map(isNewer)).toEqual([true, true]);
    expect(['{"v":1}', '{"v":0}', '{"v":2.5}', '{"v":"2"}', '{}', '[2]', 'v 2', ''].some(isNewer)).toBe(
      false,
    );
  });
});
