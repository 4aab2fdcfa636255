/** The entry that is made of an answer, and its line: how long it may be, and what is never written. */
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
import { answerNo, START } from '../profile/helpers.js';

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
      ...answerNo(1),
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
      expect(() => entryLine({ ...answerNo(1), ...wrong })).toThrow(/does not fit the record/);
  });

  it('is of a newer program where its version is a later one', () => {
    expect(['{"v":2}', '{"v":3,"x":1}', '{"v":99,"x":[]}'].map(isNewer)).toEqual([true, true, true]);
    for (const other of [
      '{"v":1}',
      '{"v":0}',
      '{"v":2.5}',
      '{"v":"2"}',
      '{"v":',
      '{}',
      '[2]',
      'null',
      'v 2',
      '',
    ])
      expect(isNewer(other), other).toBe(false);
  });
});
