/** What a line of the record may hold: each member to its bounds, and nothing beyond. */
import { describe, expect, it } from 'vitest';
import { type HistoryEntry, isEntry, parseEntry } from '../../src/practice/index.js';
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
  // What a later version added is kept.
  expect(parseEntry(JSON.stringify({ ...ENTRY, more: { a: 1 } }))).toEqual({ ...ENTRY, more: { a: 1 } });
});

it('is one object, no list of one', () => {
  for (const other of [null, undefined, 1, 'x', [], [ENTRY], Object.assign([], ENTRY)])
    expect(isEntry(other)).toBe(false);
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
    for (const beyond of [least - 1, least - 0.01, most + 0.01, most + 1])
      expect(isRead(path, beyond), `${beyond}`).toBe(false);
    for (const other of [null, `${least}`, [least], { is: least }, true])
      expect(isRead(path, other)).toBe(false);
  });

  it.each(['v', 'level', 'hints', 'try'])('%s is whole', (path) => {
    expect(isRead(path, 1.5)).toBe(false);
  });

  it('a mark need not be whole', () => {
    expect(isRead('mark', 99.5)).toBe(true);
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
    for (const read of ['x', 'é 李', 'x'.repeat(most)]) expect(isRead(path, read), read).toBe(true);
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
    expect(isRead('answer', { '': 'a' })).toBe(false);
    expect(isRead('answer', { 'a\u001b': 'a' })).toBe(false);
    for (const other of [null, [], ['a'], 'a', 5]) expect(isRead('answer', other)).toBe(false);
  });

  it('a choice called __proto__ is looked at as every other', () => {
    const line = (choice: string) =>
      JSON.stringify(ENTRY).replace('"answer":{', `"answer":{"__proto__":${choice},`);
    expect(parseEntry(line('"a"'))).toBeDefined();
    expect(parseEntry(line('5'))).toBeUndefined();
  });
});

describe('words', () => {
  it('of a verdict, an aim and the placing round are the known ones', () => {
    expect(['good', 'fair', 'off'].map((word) => isRead('verdict', word))).toEqual([true, true, true]);
    expect(['splendid', 'Good', '', null, 1].some((word) => isRead('verdict', word))).toBe(false);
    const aims = ['shade', 'rich', 'dull', 'distance', 'neutral', 'lean'];
    expect(aims.every((aim) => isRead('aim', aim))).toBe(true);
    expect(['bright', '', null, 1].some((aim) => isRead('aim', aim))).toBe(false);
    expect([true, false, 'true', 1].map((is) => isRead('placing', is))).toEqual([true, false, false, false]);
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

  it.each(['value', 'chroma', 'box'])('%s is a map, and may hold more', (path) => {
    for (const other of [null, [], ['six', 'x'], 5, 'x', true]) expect(isRead(path, other)).toBe(false);
    expect(isRead(`${path}.more`, 1)).toBe(true);
  });
});
