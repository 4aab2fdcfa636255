/** The strict reading of a line of the record: what each member takes, to its bounds and not beyond. */
import { describe, expect, it } from 'vitest';
import { isEntry, isNewer, parseEntry } from '../../src/practice/index.js';
import { answerNo } from '../profile/helpers.js';

const x = (length: number): string => 'x'.repeat(length);
const choices = (count: number) =>
  Object.fromEntries(Array.from({ length: count }, (_, n) => [`c${n}`, 'x']));
const value = { before: 3, after: 7, asked: [6, 8] };
const chroma = { before: 48, after: 36, kept: 0.75 };

/** For each member what it takes and what not; `undefined`: it is left out. */
const MEMBERS: Readonly<Record<string, readonly [takes: readonly unknown[], refuses: readonly unknown[]]>> = {
  v: [[1], [0, 2, '1', undefined]],
  at: [['2026-03-02T18:00:00.000Z'], ['yesterday', '', 5, undefined]],
  drill: [
    [x(200), 'é 李'],
    [x(201), '', 'a\u202eb', 'a\u001bb', 5, undefined],
  ],
  family: [[x(100)], [x(101), undefined]],
  level: [
    [1, 5],
    [0, 6, 1.5, '1', undefined],
  ],
  answer: [
    [{}, choices(64), { area: '' }, { [x(200)]: x(200) }, JSON.parse('{"__proto__":"a"}')],
    [choices(65), { '': 'a' }, { a: x(201) }, { a: 1 }, { a: 'b\n' }, [], ['a'], 'a', null, undefined],
  ],
  mark: [
    [0, 100, 99.5],
    [-1, 101, '5', null, undefined],
  ],
  verdict: [
    ['good', 'fair', 'off'],
    ['Good', '', undefined],
  ],
  value: [
    [value, { ...value, before: -5, after: 20, more: 1 }, undefined],
    [{ ...value, before: 20.1 }, { ...value, asked: [1] }, { ...value, asked: [1, 2, 3] }, [], null],
  ],
  chroma: [
    [chroma, { ...chroma, kept: 1e6, asked: [-1e3, 1e3] }, undefined],
    [{ ...chroma, before: -1 }, { ...chroma, kept: 2e6 }, { ...chroma, asked: [0, 2e3] }, { before: 1 }],
  ],
  hints: [
    [0, 1000],
    [-1, 1001, 0.5, undefined],
  ],
  try: [
    [1, 1000],
    [0, 1001, undefined],
  ],
  set: [[x(100)], [x(101), '', undefined]],
  engine: [[x(60)], [x(61), undefined]],
  guess: [
    [0, 1, undefined],
    [-0.1, 1.1, null],
  ],
  aim: [
    ['rich', undefined],
    ['bright', null],
  ],
  idea: [
    [x(100), undefined],
    [x(101), ''],
  ],
  placing: [
    [true, undefined],
    [false, 'true'],
  ],
  box: [
    [{ id: x(200), revision: x(40) }, undefined],
    [{ id: 'six' }, { id: 'six', revision: x(41) }, ['six', 'x']],
  ],
  later: [['anything', undefined], []],
};

/** As it is read from a line. The answer of JSON.parse may hold a member of its own called `__proto__`. */
const lineWith = (member: string, given: unknown): string =>
  JSON.stringify({ ...answerNo(1), [member]: given });

describe.each(Object.entries(MEMBERS))('the member %s of a line', (member, [takes, refuses]) => {
  it('takes what it should and refuses the rest', () => {
    for (const given of takes) expect(parseEntry(lineWith(member, given))).toBeDefined();
    for (const given of refuses)
      expect([given, parseEntry(lineWith(member, given))]).toEqual([given, undefined]);
  });
});

describe('a line', () => {
  it('keeps what a later version added', () => {
    expect(parseEntry(lineWith('later', { a: 1 }))).toMatchObject({ later: { a: 1 } });
  });

  it('looks at a choice called __proto__ as at every other', () => {
    const line = (choice: string) =>
      JSON.stringify(answerNo(1)).replace('"amount":"1:4"', `"__proto__":${choice}`);
    expect(parseEntry(line('"a"'))).toBeDefined();
    expect(parseEntry(line('5'))).toBeUndefined();
  });

  it('is one object, no list of one', () => {
    for (const other of [null, undefined, 1, 'x', [], [answerNo(1)], Object.assign([], answerNo(1))])
      expect(isEntry(other)).toBe(false);
  });

  it('is of a newer version where its number is higher', () => {
    expect(['{"v":2}', '{"v":99,"x":[]}'].map(isNewer)).toEqual([true, true]);
    expect(['{"v":1}', '{"v":2.5}', '{"v":"2"}', '[2]', 'null', '{"v":'].some(isNewer)).toBe(false);
  });
});
