/** What answers come to: which figures each of them counts for, and how a standing carries them on. */
import { describe, expect, it } from 'vitest';
import {
  addAnswer,
  copyStanding,
  emptyStanding,
  type Figures,
  figuresOf,
  type HistoryEntry,
  levelIn,
  standingFromJson,
  standingToJson,
} from '../../src/practice/index.js';
import { skillIn } from '../../src/practice/standing.js';
import {
  addToSets,
  chromaErrorOf,
  modelOf,
  setsOfModel,
  type Totals,
  valueErrorOf,
} from '../../src/practice/totals.js';
import { DAY, entryOf, START } from './simulate.js';

const PICK = { family: 'f', level: 2, reason: 'due', feedback: 'each', drill: 'd' } as const;
const answer = (more: Partial<HistoryEntry> = {}, atMs = START): HistoryEntry => {
  const { value: _value, chroma: _chroma, ...bare } = entryOf(PICK, 'fair', atMs, 'set-1');
  return { ...bare, ...more };
};
const chroma = (before: number, after: number, asked?: readonly [number, number]) => ({
  chroma: { before, after, kept: after / Math.max(before, 1), ...(asked && { asked }) },
});
const figures = (...entries: HistoryEntry[]): Figures | undefined => {
  const sets: Totals[] = [];
  for (const entry of entries) addToSets(sets, entry, START);
  return figuresOf(sets);
};

describe('the figures of answers', () => {
  it('are none without answers, and means over all of them', () => {
    expect(figuresOf([])).toBeUndefined();
    expect(
      figures(
        answer({ verdict: 'good', mark: 90, level: 1 }),
        answer({ verdict: 'off', mark: 20, level: 4 }),
        answer({ verdict: 'off', mark: 10, level: 4 }, START + DAY),
      ),
    ).toEqual({ answers: 3, good: 1, fair: 0, off: 2, mark: 40, level: 3 });
    expect(figures(answer(), answer({ set: 'set-2' }))).toMatchObject({ answers: 2, fair: 2 });
  });

  it('hold the value error as a mean over those that were asked for one', () => {
    const value = (after: number) => ({ value: { before: 3, after, asked: [6, 7] as const } });
    expect([4, 6.5, 7.5].map((after) => valueErrorOf(answer(value(after))))).toEqual([2, 0, 0.5]);
    expect(valueErrorOf(answer())).toBeUndefined();
    expect(figures(answer(value(4)), answer(value(6.5)), answer())).toMatchObject({
      valueError: 1,
      valueAnswers: 2,
    });
  });

  it('hold the chroma kept for a shade and a rich colour, of the least that was asked, no more than all', () => {
    for (const aim of ['shade', 'rich'] as const) {
      const kept = figures(
        answer({ aim, ...chroma(50, 20, [40, 60]) }),
        answer({ aim, ...chroma(50, 70, [40, 60]) }),
        // Nothing to keep: a grey start, a band that begins at grey, no band, no chroma.
        answer({ aim, ...chroma(4.9, 20, [40, 60]) }),
        answer({ aim, ...chroma(50, 20, [4.9, 60]) }),
        answer({ aim, ...chroma(50, 20) }),
        answer({ aim }),
      );
      expect(kept).toMatchObject({ chromaKept: 0.75, chromaAnswers: 2 });
      expect(kept?.dullError).toBeUndefined();
    }
    expect(figures(answer({ aim: 'rich', ...chroma(5, 5, [5, 60]) }))).toMatchObject({
      chromaKept: 1,
      chromaAnswers: 1,
    });
  });

  it('hold the dulling error for all other aims, beside the band that was asked', () => {
    for (const aim of ['dull', 'distance', 'neutral', 'lean'] as const) {
      const dulled = figures(
        answer({ aim, ...chroma(50, 30, [10, 20]) }),
        answer({ aim, ...chroma(50, 5, [10, 20]) }),
        answer({ aim, ...chroma(50, 15, [10, 20]) }),
        answer({ aim, ...chroma(50, 15) }),
        answer({ aim }),
      );
      expect(dulled).toMatchObject({ dullError: 5, dullAnswers: 3 });
      expect(dulled?.chromaKept).toBeUndefined();
    }
    expect(chromaErrorOf(answer(chroma(50, 15)))).toBeUndefined();
  });

  it('go by the band where a record has no aim: dulled is what ends under four fifths of the shading line', () => {
    const isDulled = (top: number, value?: HistoryEntry['value']): boolean => {
      const entry = answer({ ...chroma(50, 30, [10, top]), ...(value && { value }) });
      return figures(entry)?.dullError !== undefined;
    };
    // Without a value the start itself is the line.
    expect([isDulled(39.9), isDulled(40)]).toEqual([true, false]);
    // From step 4.5 (L* 60) to the middle of 6 and 7 (L* 40) less light leaves 56/76 of C* 50, 36.8; four fifths are 29.5.
    const value = { before: 4.5, after: 6.5, asked: [6, 7] as const };
    expect([isDulled(29.4, value), isDulled(29.6, value)]).toEqual([true, false]);
  });
});

describe('sets', () => {
  it('are the last seven, one for each set and model', () => {
    const sets: Totals[] = [];
    for (let n = 0; n < 9; n += 1) addToSets(sets, answer({ set: `s${n}` }), START + n);
    expect(sets.map(({ set }) => set)).toEqual(['s2', 's3', 's4', 's5', 's6', 's7', 's8']);
    expect(sets.at(-1)?.startMs).toBe(START + 8);
    addToSets(sets, answer({ set: 's5' }), START + 20);
    expect(sets.find(({ set }) => set === 's5')).toMatchObject({ answers: 2, startMs: START + 5 });
    addToSets(sets, answer({ set: 's8', engine: '9.9.9' }), START + 30);
    expect(sets.map(({ set, model }) => [set, model]).slice(-2)).toEqual([
      ['s8', 'test'],
      ['s8', '9.9'],
    ]);
    expect(setsOfModel(sets, '9.9')).toHaveLength(1);
    expect(setsOfModel(sets, undefined)).toEqual([]);
  });

  it('the last number of a version changes no figure', () => {
    expect(['1.2.3', '1.2.9', '1.3.0', '2'].map(modelOf)).toEqual(['1.2', '1.2', '1.3', '2']);
  });
});

describe('a standing', () => {
  const standingAfter = (...entries: HistoryEntry[]) => {
    const standing = emptyStanding();
    for (const entry of entries) addAnswer(standing, entry);
    return standing;
  };

  it('counts sets one after another, and knows the last drill, later tries too', () => {
    const one = standingAfter(
      answer({ set: 'a' }),
      answer({ set: 'a' }),
      answer({ set: 'b' }),
      answer({ set: 'b', drill: 'e', try: 2 }),
    );
    expect([one.answers, one.laterTries, one.setCount, one.lastSet, one.lastDrill]).toEqual([
      3,
      1,
      2,
      'b',
      'e',
    ]);
    expect(one.drills.get('d')).toMatchObject({ answers: 3, setNumber: 2, wasGood: false });
    expect(one.families.get('f')?.answers).toBe(3);
  });

  it('an answer with a hint moves the ratings by half as much, and the evidence not at all', () => {
    const [plain, hinted] = [
      standingAfter(answer({ verdict: 'good' })),
      standingAfter(answer({ verdict: 'good', hints: 1 })),
    ];
    expect(hinted.overall.at).toBeLessThan(plain.overall.at);
    expect(plain.evidence).toBeGreaterThan(0);
    expect(hinted.evidence).toBe(0);
    expect(standingAfter(answer({ verdict: 'off' })).evidence).toBeLessThan(0);
    expect(hinted.overall.at).toBeCloseTo(standingAfter(answer({ verdict: 'fair' })).overall.at, 12);
  });

  it('the share known moves about an eighth of the way with each answer, chance taken off', () => {
    const known = (verdict: HistoryEntry['verdict'], guess: number) =>
      standingAfter(answer({ verdict, guess })).families.get('f')?.recent;
    expect(known('good', 0.5)).toBeCloseTo(0.88 * 0.55 + 0.12, 9);
    expect(known('off', 0)).toBeCloseTo(0.88 * 0.55, 9);
    expect(known('off', 0.25)).toBeCloseTo(0.88 * 0.55 - 0.12 / 3, 9);
    expect(known('off', 0.9), 'at most one answer lost').toBeCloseTo(0.88 * 0.55 - 0.12, 9);
    expect(known('good', 1), 'what cannot fail is no knowledge').toBeCloseTo(0.88 * 0.55 + 0.12, 9);
  });

  it('holds the level that a family had when its set began', () => {
    const goods = ['a', 'a', 'b', 'b', 'c'].map((set, at) =>
      answer({ verdict: 'good', set, drill: `d${at}`, guess: 0.1, level: 1 }),
    );
    const one = standingAfter(...goods.slice(0, 4));
    expect(levelIn(one, 'f')).toBe(2);
    expect(one.families.get('f')?.entered).toEqual({ set: 'b', level: 1 });
    expect(standingAfter(...goods).families.get('f')?.entered).toEqual({ set: 'c', level: 2 });
    expect(levelIn(one, 'never met')).toBe(1);
  });

  it('forgets drills from a half more than a thousand on: those that were answered longest ago, down to a thousand', () => {
    const standing = emptyStanding();
    const met = (n: number, at = n) =>
      addAnswer(standing, { ...answer({}, START + at * 60_000), drill: `d${n}`, set: 'one' });
    for (let n = 0; n < 1500; n += 1) met(n);
    // The first one is met again: it is no longer the oldest.
    met(0, 1500);
    expect(standing.drills.size).toBe(1500);
    met(1500, 1501);
    expect(standing.drills.size).toBe(1000);
    expect(['d0', 'd1', 'd501', 'd502', 'd1500'].map((id) => standing.drills.has(id))).toEqual([
      true,
      false,
      false,
      true,
      true,
    ]);
  });

  it('a skill is that in everything and what the family adds', () => {
    const one = standingAfter(answer({ verdict: 'good' }));
    expect(skillIn(one, 'other')).toBe(one.overall.at);
    expect(skillIn(one, 'f')).toBeCloseTo(one.overall.at + (one.families.get('f')?.rating.at ?? 0), 12);
    expect(skillIn(one, 'f')).toBeGreaterThan(skillIn(one, 'other'));
  });

  it('an answer ahead of the clock counts, but sets no date', () => {
    const standing = emptyStanding();
    addAnswer(standing, answer({ verdict: 'good' }, START + 5 * DAY), START);
    expect([standing.answers, standing.lastMs, standing.ahead?.count]).toEqual([1, 0, 1]);
    expect(standing.families.get('f')?.memory.lastMs).toBe(0);
    addAnswer(standing, answer({ verdict: 'good' }, START), START);
    const dated = standing.families.get('f')?.memory;
    expect(dated?.lastMs).toBe(START);
    addAnswer(standing, answer({ verdict: 'off' }, START + 5 * DAY), START);
    expect(standing.families.get('f')?.memory).toEqual(dated);
  });

  it('comes back from its line, and a copy is its own', () => {
    const one = standingAfter(answer({ verdict: 'good' }), answer({ family: 'g', drill: 'e', set: 'b' }));
    const back = standingFromJson(standingToJson(one));
    expect(back).toEqual(one);
    const copy = copyStanding(one);
    addAnswer(copy, answer());
    expect(one.answers).toBe(2);
    expect(one.families.get('f')?.answers).toBe(1);
    for (const wrong of [
      '',
      '{',
      'null',
      '[]',
      '{"families":[]}',
      '{"drills":[]}',
      '{"families":{},"drills":[]}',
    ])
      expect(standingFromJson(wrong)).toBeUndefined();
  });
});
