import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enter, typing } from '../../src/tui/kit/keys.js';
import { type Arrival, pasteReader } from '../../src/tui/kit/paste-reader.js';
import { pastedKeys } from '../../src/tui/kit/pasted.js';

const START = '\u001b[200~';
const END = '\u001b[201~';

/** Pieces of a text, cut where the numbers say. */
function cutAt(text: string, places: readonly number[]): string[] {
  const at = [...new Set(places.map((place) => place % (text.length + 1)))].sort((a, b) => a - b);
  return [0, ...at].map((from, index) => text.slice(from, at[index])).filter((piece) => piece !== '');
}

/** What reads hold, keys joined; after a paste that is not marked comes a pause. */
function arrivals(reads: readonly string[]): Arrival[] {
  const reader = pasteReader();
  const all = [
    ...reads.flatMap((read) => [...reader.push(read), ...(reader.waits === 'bulk' ? reader.giveUp() : [])]),
    ...reader.giveUp(),
  ];
  const joined: Arrival[] = [];
  for (const each of all) {
    const last = joined.at(-1);
    if ('keys' in each && each.keys === '') continue;
    if (last !== undefined && 'keys' in last && 'keys' in each)
      joined[joined.length - 1] = { keys: last.keys + each.keys };
    else joined.push(each);
  }
  return joined;
}

describe('the reader of pastes', () => {
  // Parts of the marks among the signs; an end would be one.
  const signs = fc.constantFrom('q', '\r', '\u0003', '\u001b', '[', '2', '0', '1', 'ü', '[200~', '\u001b[20');
  const pasted = fc
    .array(signs, { maxLength: 40 })
    .map((parts) => parts.join(''))
    .filter((text) => !`${text}${END}`.slice(0, -1).includes(END));

  it('gives a marked paste as one text, wherever the reads cut it, and the keys around it as keys', () => {
    fc.assert(
      fc.property(pasted, fc.array(fc.nat(), { maxLength: 6 }), (text, places) => {
        expect(arrivals(cutAt(`ab${START}${text}${END}c`, places))).toEqual([
          { keys: 'ab' },
          { paste: text },
          { keys: 'c' },
        ]);
      }),
      { numRuns: 500 },
    );
  });

  it('leaves keys as they are, and waits only where they could begin a mark', () => {
    const reader = pasteReader();
    for (const keys of [
      'j',
      '\r',
      '\u001b[A\u001b[B',
      '\u001b[5~',
      '\u001b[1;5A',
      '\u001b[Z',
      '\u001bOH',
      'äöü',
      '\u0003',
      'k'.repeat(300),
      '\u001b[A'.repeat(300),
    ]) {
      expect(reader.push(keys)).toEqual([{ keys }]);
      expect(reader.waits).toBe('nothing');
    }
    expect(reader.push('\u001b')).toEqual([]);
    expect(reader.waits).toBe('key');
    expect(reader.giveUp()).toEqual([{ keys: '\u001b' }]);
    expect(reader.waits).toBe('nothing');
  });

  // Ctrl+F1, F1, Ctrl+F3, Ctrl+F5, Ctrl+F13 and a mouse report, as xterm sends them (Control Sequences, "PC-Style Function Keys").
  it.each(['\u001b[1;5P', '\u001bOP', '\u001b[1;5R', '\u001b[15;5~', '\u001b[25;5~', '\u001b[<0;3;4M'])(
    'leaves out a key that means nothing here, whole or in two reads: %j',
    (key) => {
      expect(arrivals([`j${key}k`])).toEqual([{ keys: 'jk' }]);
      expect(arrivals([key.slice(0, -1), `${key.slice(-1)}k`])).toEqual([{ keys: 'k' }]);
    },
  );

  it('drops a sequence that is never ended', () => {
    expect(arrivals(['j', '\u001b[1;5'])).toEqual([{ keys: 'j' }]);
  });

  it('takes all before an end as pasted, since no key is one', () => {
    expect(arrivals([`${START}a${END}q\rq${END}k`])).toEqual([
      { paste: 'a' },
      { paste: 'q\rq' },
      { keys: 'k' },
    ]);
  });

  it('ends a paste without an end when it is given up', () => {
    const reader = pasteReader();
    expect(reader.push(`${START}rm`)).toEqual([]);
    expect(reader.waits).toBe('paste');
    expect(reader.giveUp()).toEqual([{ paste: 'rm' }]);
    expect(reader.push('q')).toEqual([{ keys: 'q' }]);
  });

  it('holds many signs of one read for a paste, and what follows at once; Ctrl+C among them is a key all the same', () => {
    const reader = pasteReader();
    expect(reader.push('a line that is pasted\r')).toEqual([{ paste: 'a line that is pasted\r' }]);
    expect(reader.waits).toBe('bulk');
    expect(reader.push('q')).toEqual([{ paste: 'q' }]);
    // The beginning of a marker in between ends no paste.
    expect(reader.push('\u001b')).toEqual([]);
    expect(reader.waits).toBe('key');
    expect(reader.giveUp()).toEqual([{ keys: '\u001b' }]);
    expect(reader.push('q')).toEqual([{ paste: 'q' }]);
    expect(reader.giveUp()).toEqual([]);
    expect(reader.waits).toBe('nothing');
    expect(reader.push('q')).toEqual([{ keys: 'q' }]);
    expect(reader.push('some keys, then \u0003').at(-1)).toEqual({ keys: '\u0003' });
  });

  it('keeps little of a long paste', () => {
    const reader = pasteReader();
    expect(reader.push(START)).toEqual([]);
    for (let i = 0; i < 1000; i++) reader.push('x'.repeat(1000));
    expect(reader.push(END)).toEqual([{ paste: 'x'.repeat(1000) }]);
  });
});

describe('the keys of a paste', () => {
  const number = {
    keys: { '1': 'digit', '5': 'digit', '.': 'type' },
    show: '0-9',
    does: 'x',
    writes: 'signs',
  } as const;

  it('are none where no text is typed', () => {
    expect(pastedKeys([enter('lay it down')], 'q')).toBeUndefined();
  });

  it('are those of its signs on one line, without what steers a terminal', () => {
    expect(pastedKeys([typing('search')], ' a\r\n\u0007b\u001b[31mß \u202e')).toEqual([
      'a',
      'space',
      'b',
      'ß',
    ]);
    expect(pastedKeys([typing('search')], 'x'.repeat(5000))).toHaveLength(100);
  });

  it('are all or none for a field of few signs', () => {
    expect(pastedKeys([number], ' 1.5\n')).toEqual(['1', '.', '5']);
    expect(pastedKeys([number], '5 to 1')).toEqual([]);
  });
});
