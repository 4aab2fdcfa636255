/** What a family needs, and why it comes up. */
import { describe, expect, it } from 'vitest';
import { addAnswer, emptyStanding, type FamilyRef, type HistoryEntry } from '../../src/practice/index.js';
import { familyNeeds } from '../../src/practice/need.js';
import { DAY, entryOf, START } from './simulate.js';

const pick = (family: string, level: number, drill = 'd') =>
  ({ family, level, reason: 'due', feedback: 'each', drill }) as const;

describe('what a family needs', () => {
  const FAMILIES: readonly FamilyRef[] = ['a', 'b', 'c'].map((id) => ({ id, title: id }));
  const reasons = (entries: readonly HistoryEntry[], now = START, families = FAMILIES) => {
    const standing = emptyStanding();
    for (const entry of entries) addAnswer(standing, entry);
    return familyNeeds(standing, families, now).map(({ reason }) => reason);
  };
  const rows = (family: string, verdicts: readonly HistoryEntry['verdict'][], level = 1) =>
    verdicts.map((verdict, at) => ({
      ...entryOf(pick(family, level, `${family}-${at}`), verdict, START, `set-${at % 2}`),
      guess: 0.1,
    }));
  const good = (count: number) => Array.from({ length: count }, () => 'good' as const);

  it('new where it was not met; the last one left is worked on like a weak one', () => {
    expect(reasons([])).toEqual(['new', 'new', 'new']);
    expect(reasons(rows('a', good(2)))).toEqual(['begun', 'new', 'new']);
    expect(reasons([...rows('a', good(2)), ...rows('b', good(2))])).toEqual(['begun', 'begun', 'weak']);
    expect(reasons([], START, FAMILIES.slice(0, 1)), 'a family by itself is new').toEqual(['new']);
  });

  it('weak where it is missed', () => {
    expect(reasons(rows('a', ['off', 'off']))).toEqual(['weak', 'new', 'new']);
  });

  it('begun up to three answers, steady from the fourth on', () => {
    expect(reasons(rows('a', good(3)))[0]).toBe('begun');
    expect(reasons(rows('a', good(4)))[0]).not.toBe('begun');
  });

  it('weak where four answers and more look like guessing, though few are wrong', () => {
    const of = (guess: number, count: number) =>
      reasons(
        rows('a', ['good', 'good', 'good', 'fair'])
          .slice(4 - count)
          .map((entry) => ({ ...entry, guess })),
      )[0];
    expect([of(0.6, 4), of(0.1, 4), of(0.6, 3)]).toEqual(['weak', 'steady', 'begun']);
  });

  it('due when recall has fallen', () => {
    expect(reasons(rows('a', good(3)), START + 60 * DAY)[0]).toBe('due');
  });

  it('weak where its level is two behind the middle one', () => {
    const standing = emptyStanding();
    for (const family of ['a', 'b', 'c'])
      for (const entry of rows(family, good(4))) addAnswer(standing, entry);
    const at = (family: string, level: number) => {
      const known = standing.families.get(family);
      if (known !== undefined) known.level = { ...known.level, level };
    };
    const reasonOf = (level: number) => {
      at('a', level);
      at('b', 4);
      at('c', 5);
      return familyNeeds(standing, FAMILIES, START)[0]?.reason;
    };
    expect(reasonOf(2)).toBe('weak');
    expect(reasonOf(3)).not.toBe('weak');
    // The middle one by level, wherever it stands in the list.
    at('b', 5);
    at('c', 4);
    expect(familyNeeds(standing, FAMILIES, START)[0]?.reason).not.toBe('weak');
    at('b', 4);
    at('c', 5);
    expect(familyNeeds(standing, FAMILIES, START)[2]).toMatchObject({
      reason: 'known',
      level: 5,
      answers: 4,
    });
  });
});
