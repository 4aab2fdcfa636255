/** Which drill of a family is taken, and which one mends a mistake: the rules at the head of pick-drill.ts. */
import { describe, expect, it } from 'vitest';
import {
  addAnswer,
  chooseMend,
  type DrillRef,
  emptyStanding,
  type HistoryEntry,
} from '../../src/practice/index.js';
import { atLevel, isFresh, type PickState, pickDrill } from '../../src/practice/pick-drill.js';
import { DAY, entryOf, START } from './simulate.js';

describe('the drill of a family', () => {
  const drill = (id: string, level = 2, more: Partial<DrillRef> = {}): DrillRef => ({
    id,
    family: 'f',
    level,
    ...more,
  });
  const met = (id: string, verdict: HistoryEntry['verdict'], daysAgo: number, set: string): HistoryEntry =>
    entryOf(
      { family: 'f', level: 2, reason: 'due', feedback: 'each', drill: id },
      verdict,
      START - daysAgo * DAY,
      set,
    );
  const state = (entries: readonly HistoryEntry[], more: Partial<PickState> = {}): PickState => {
    const standing = emptyStanding();
    for (const entry of entries) addAnswer(standing, entry);
    return { standing, nowMs: START, last: '', used: new Map(), ...more };
  };
  const others = ['s1', 's2', 's3'].map((set) => met(`other-${set}`, 'good', 0, set));

  it('is of the level asked, else of the nearest below, else of the nearest above', () => {
    const drills = [drill('a', 1), drill('b', 3), drill('c', 5), drill('d', 3)];
    const ids = (level: number) => atLevel(drills, level).map(({ id }) => id);
    expect([ids(3), ids(4), ids(2), ids(5)]).toEqual([['b', 'd'], ['b', 'd'], ['a'], ['c']]);
    expect(atLevel(drills.slice(1), 1).map(({ id }) => id)).toEqual(['b', 'd']);
  });

  it('is fresh where it was not met; where it was missed, a day and three sets later', () => {
    expect(isFresh(drill('a'), state([]))).toBe(true);
    expect(isFresh(drill('a'), state([], { used: new Map([['a', 1]]) }))).toBe(false);
    const missed = met('a', 'off', 2, 's0');
    expect(isFresh(drill('a'), state([missed, ...others.slice(0, 2)]))).toBe(true);
    expect(isFresh(drill('a'), state([missed, ...others.slice(0, 1)]))).toBe(false);
    expect(isFresh(drill('a'), state([met('a', 'off', 1, 's0'), ...others]))).toBe(true);
    expect(isFresh(drill('a'), state([met('a', 'off', 0.99, 's0'), ...others]))).toBe(false);
  });

  it('is fresh where it was done well only when it is fading', () => {
    expect(isFresh(drill('a'), state([met('a', 'good', 2, 's0'), ...others]))).toBe(false);
    expect(isFresh(drill('a'), state([met('a', 'good', 3, 's0'), ...others]))).toBe(true);
  });

  it('is not the one just done, nor one of this set while others are left', () => {
    const none = () => 0;
    expect(pickDrill([drill('a')], state([], { last: 'a' }), none)).toBeUndefined();
    expect(pickDrill([drill('a'), drill('b')], state([], { last: 'a' }), none)?.id).toBe('b');
    expect(pickDrill([drill('a'), drill('b')], state([], { used: new Map([['a', 1]]) }), none)?.id).toBe('b');
    const twice = new Map([
      ['a', 2],
      ['b', 1],
    ]);
    expect(pickDrill([drill('a'), drill('b')], state([], { used: twice }), none)?.id).toBe('b');
    expect(pickDrill([drill('a'), drill('b')], state([]), none)?.id, 'of equals the first').toBe('a');
  });

  it('is a new one before one that was missed, and that before one done well', () => {
    const none = () => 0;
    const entries = [met('good', 'good', 2, 's0'), met('missed', 'off', 2, 's0'), ...others];
    const ids = ['good', 'missed', 'new'].map((id) => drill(id));
    expect(pickDrill(ids, state(entries), none)?.id).toBe('new');
    expect(pickDrill(ids.slice(0, 2), state(entries), none)?.id).toBe('missed');
  });

  it('is the one that four in five would do well', () => {
    // Nothing is known of the learner: at level 3 half of it is known, and the rest is chance.
    const none = () => 0;
    const byGuess = [0.05, 0.6, 0.95].map((guess) => drill(`${guess}`, 3, { guess }));
    expect(pickDrill(byGuess, state([]), none)?.id).toBe('0.6');
  });
});

describe('mending', () => {
  const standing = emptyStanding();
  const drills: DrillRef[] = [
    { id: 'a2', family: 'a', level: 2 },
    { id: 'b2', family: 'b', level: 2 },
    { id: 'a3', family: 'a', level: 3 },
  ];
  const families = ['a', 'b'].map((id) => ({ id, title: id }));
  const source = { standing, families, drills, now: new Date(START), seed: 1 };
  const mistake = (idea: string, family = 'a', level = 2) => ({ idea, count: 1, family, level });

  it('takes a drill of the very family and level, each once', () => {
    const picks = chooseMend(source, [mistake('one'), mistake('two', 'b'), mistake('three', 'a', 3)]);
    expect(picks.map(({ drill, idea, reason, feedback }) => [drill, idea, reason, feedback])).toEqual([
      ['a2', 'one', 'mend', 'each'],
      ['b2', 'two', 'mend', 'each'],
      ['a3', 'three', 'mend', 'each'],
    ]);
    expect(chooseMend(source, [mistake('one'), mistake('two')]).map(({ idea }) => idea)).toEqual(['one']);
    expect(chooseMend(source, [mistake('one', 'a', 4)])).toEqual([]);
  });

  it('leaves out a drill that cannot show the mistake', () => {
    expect(
      chooseMend(source, [mistake('one'), mistake('two', 'b')], (drill) => drill !== 'a2').map(
        ({ drill }) => drill,
      ),
    ).toEqual(['b2']);
  });
});
