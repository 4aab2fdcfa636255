/** What is due, what was done last and what rose, from records whose answers are known. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FAMILY_REFS } from '../../src/commands/family-refs.js';
import {
  type AtAGlance,
  atAGlance,
  emptyStanding,
  foldSorted,
  glanceLines,
  type HistoryEntry,
  standingFromJson,
  standingToJson,
} from '../../src/practice/index.js';
import { widthOf } from '../../src/text/wrap.js';
import { always, DAY, entryOf, FAMILIES, practise, START } from './simulate.js';

const HOUR = DAY / 24;
const WIDTHS = [58, 60, 78, 80, 100, 118, 120];

const answer = (
  n: number,
  day: number,
  verdict: HistoryEntry['verdict'],
  more: Partial<HistoryEntry> = {},
): HistoryEntry => ({
  ...entryOf(
    { family: `family-${n}`, level: more.level ?? 1, reason: 'steady', feedback: 'each', drill: 'd' },
    verdict,
    START + day * DAY,
    `set-${day}`,
  ),
  ...more,
});
const at = (day: number): Date => new Date(START + day * DAY);
const glance = (entries: readonly HistoryEntry[], now: Date): AtAGlance =>
  atAGlance(foldSorted(entries), FAMILIES, now);

describe('the glance', () => {
  it('of a beginner has nothing in it, and says so', () => {
    const empty = atAGlance(emptyStanding(), FAMILIES, at(0));
    expect(empty).toEqual({ due: [], rose: [] });
    expect(glanceLines(empty, 60)).toEqual(['Nothing practised yet.']);
  });

  it('tells the last set: when, what, how many good, the mean mark', () => {
    const entries = [
      answer(1, 0, 'good'),
      answer(4, 2, 'good'),
      answer(2, 2, 'off'),
      answer(4, 2, 'good', { try: 2 }),
    ];
    const { last } = glance(entries, new Date(START + 2 * DAY + 5 * HOUR));
    expect(last).toEqual({
      when: at(2).toISOString(),
      hoursAgo: 5,
      families: [
        { id: 'family-2', title: 'Family 2' },
        { id: 'family-4', title: 'Family 4' },
      ],
      answers: 2,
      good: 1,
      mark: 53,
    });
    expect(glanceLines(glance(entries, new Date(START + 2 * DAY + 5 * HOUR)), 80)).toContain(
      'Last, 5 hours ago: 1 of 2 good, mark 53, in Family 2; Family 4',
    );
  });

  it.each([
    [0.2, 'just now'],
    [1, '1 hour ago'],
    [23.9, '23 hours ago'],
    [24, '1 day ago'],
    [100, '4 days ago'],
    [-30, 'just now'],
  ])('%d hours later the last set was %s', (hours, words) => {
    const lines = glanceLines(glance([answer(1, 0, 'good')], new Date(START + hours * HOUR)), 80);
    expect(lines.join('\n')).toContain(`Last, ${words}: `);
  });

  it('tells what is due, the most forgotten first, and else what is due next', () => {
    // FSRS-6 with its published parameters: 0.2 days until recall is 0.9 after "again", 2.3 days after "good".
    const entries = [answer(1, 0, 'good'), answer(2, 0, 'off')];
    const soon = glance(entries, new Date(START + HOUR));
    expect(soon.due).toEqual([]);
    expect(soon.next).toMatchObject({ id: 'family-2', days: 1 });
    expect(glanceLines(soon, 80)[0]).toBe('Due next, in 1 day: Family 2');
    expect(glance(entries, at(1)).due.map(({ id }) => id)).toEqual(['family-2']);
    const later = glance(entries, at(9));
    expect(later.due.map(({ id }) => id)).toEqual(['family-2', 'family-1']);
    expect(later.next).toBeUndefined();
    expect(glanceLines(later, 80)[0]).toBe('Due for review: Family 2; Family 1');
  });

  it('tells a level that rose in the last set, and tells it no longer after the next', () => {
    const good = (day: number) => answer(1, day, 'good');
    const entries = [good(0), good(0), good(1)];
    expect(glance(entries, at(1)).rose).toEqual([
      { id: 'family-1', title: 'Family 1', by: 'level', from: 1, to: 2 },
    ]);
    expect(glanceLines(glance(entries, at(1)), 80).at(-1)).toBe('Rose: Family 1, level 1 to 2');
    expect(glance([...entries, answer(2, 2, 'good')], at(2)).rose).toEqual([]);
    expect(glance(entries.slice(0, 2), at(1)).rose, 'one sitting is not enough').toEqual([]);
  });

  it('tells a mark that rose where the level stayed, but not on easier drills, and no fall', () => {
    const marks = (first: number, second: number, level = 2) => [
      answer(1, 0, 'fair', { mark: first, level: 2 }),
      answer(1, 1, 'fair', { mark: second, level }),
    ];
    expect(glance(marks(50, 70), at(1)).rose).toEqual([
      { id: 'family-1', title: 'Family 1', by: 'mark', from: 50, to: 70 },
    ]);
    expect(glance(marks(50, 54), at(1)).rose).toEqual([]);
    expect(glance(marks(50, 70, 1), at(1)).rose).toEqual([]);
    expect(glance(marks(70, 50), at(1)).rose).toEqual([]);
    const [first, second] = marks(50, 70) as [HistoryEntry, HistoryEntry];
    const otherModel = [
      { ...first, engine: '0.1.0' },
      { ...second, engine: '0.2.0' },
    ];
    expect(glance(otherModel, at(1)).rose, 'another model of prediction').toEqual([]);
  });

  it('calls no start a rise that the placing round found', () => {
    const rounds = Array.from({ length: 8 }, (_, n) =>
      answer(1 + n, 0, 'good', { level: 3, placing: true, guess: 0.05, drill: `p-${n}` }),
    );
    const standing = foldSorted(rounds);
    expect(standing.families.get('family-1')?.level.level).toBeGreaterThan(1);
    expect(atAGlance(standing, FAMILIES, at(0)).rose).toEqual([]);
  });

  it('is the same from a standing that was kept and read again', () => {
    const { standing } = practise({ knows: always, sets: 6, count: 12, seed: 3 });
    const now = at(40);
    expect(atAGlance(standingFromJson(standingToJson(standing)) ?? emptyStanding(), FAMILIES, now)).toEqual(
      atAGlance(standing, FAMILIES, now),
    );
  });
});

describe('its lines', () => {
  const skill = fc.constantFrom(...FAMILY_REFS.map(({ id, title }) => ({ id, title })));
  const some = fc.uniqueArray(skill, {
    minLength: 1,
    maxLength: FAMILY_REFS.length,
    selector: ({ id }) => id,
  });
  const anything: fc.Arbitrary<AtAGlance> = fc
    .tuple(some, some, fc.boolean(), fc.nat({ max: 9999 }), fc.nat({ max: 99 }), fc.nat({ max: 100 }))
    .map(([first, second, isDue, hoursAgo, answers, mark]) => {
      const [next] = first;
      return {
        due: isDue ? first : [],
        ...(!isDue && next && { next: { ...next, due: at(9).toISOString(), days: 1 + (hoursAgo % 900) } }),
        last: { when: at(0).toISOString(), hoursAgo, families: second, answers, good: answers, mark },
        rose: second.map((one, n) => ({ ...one, by: n % 2 ? 'level' : 'mark', from: 1, to: mark })),
      };
    });

  it('are three at most, whole, and fit at every width', () => {
    fc.assert(
      fc.property(anything, fc.constantFrom(...WIDTHS), (any, columns) => {
        const lines = glanceLines(any, columns);
        expect(lines).toHaveLength(3);
        for (const line of lines) {
          expect(widthOf(line), line).toBeLessThanOrEqual(columns);
          expect(line).toMatch(/^(Due for review|Due next, .*|Last, .*|Rose): ./);
        }
        const [due, last, rose] = lines;
        expect(due).toMatch(any.next === undefined ? /review: / : /^Due next, in \d+ days?: ./);
        expect(last).toContain(`of ${any.last?.answers} good, mark ${any.last?.mark}, in `);
        // What is not named is counted, so that nothing is left out unsaid.
        const told = (line = '', all: readonly { readonly title: string }[]): number => {
          const rest = /(\d+) more$/.exec(line)?.[1] ?? /(\d+) skills?$/.exec(line)?.[1] ?? '0';
          return all.filter(({ title }) => line.includes(title)).length + Number(rest);
        };
        expect(told(rose, any.rose)).toBe(any.rose.length);
        expect(told(last, any.last?.families ?? [])).toBe(any.last?.families.length);
        if (any.due.length > 0) expect(told(due, any.due)).toBe(any.due.length);
      }),
      { seed: 2, numRuns: 400 },
    );
  });
});
