/** What to do next, in words: which skill is named, why, in which order; and what is missing for the next level. */
import { describe, expect, it } from 'vitest';
import { type FamilyRef, foldSorted, type HistoryEntry, nextSteps } from '../../src/practice/index.js';
import { outlookWords } from '../../src/practice/next-steps.js';
import { dueAt } from '../../src/practice/spacing.js';
import type { FamilyStanding, Standing } from '../../src/practice/standing.js';
import { DAY, entryOf, START } from './simulate.js';

/** Glazing, greys, darks and greens, in the order of the curriculum. */
const SKILLS: readonly FamilyRef[] = ['Glazing', 'Greys', 'Darks', 'Greens'].map((title) => ({
  id: title.toLowerCase(),
  title,
}));

const answer = (
  family: string,
  verdict: HistoryEntry['verdict'],
  more: Partial<HistoryEntry> = {},
): HistoryEntry => ({
  ...entryOf(
    { family, level: 1, reason: 'steady', feedback: 'each', drill: family },
    verdict,
    START,
    'set-1',
  ),
  ...more,
});

/** Each skill named answered once, good, and then set to what the test is about. */
function standingWith(skills: Readonly<Record<string, Partial<FamilyStanding>>>): Standing {
  const standing = foldSorted(Object.keys(skills).map((family) => answer(family, 'good')));
  for (const [family, more] of Object.entries(skills)) {
    const known = standing.families.get(family);
    if (known !== undefined) standing.families.set(family, { ...known, ...more });
  }
  return standing;
}
const level = (now: number, more: Partial<FamilyStanding['level']> = {}) => ({
  level: { level: now, row: 0, sittings: 0, sitting: '', poor: 0, evidence: 0, ...more },
});
/** Nothing to do for it: at the top, and fresh. */
const known = { ...level(5), answers: 9, recent: 0.9 };
/** Weak: its recent share of answers known is low. */
const weak = (recent: number, at = 1) => ({ ...level(at), answers: 3, recent });
/** Remembered for so many days before it is due. */
const remembered = (stability: number) => ({ memory: { stability, difficulty: 5, lastMs: START } });

const steps = (standing: Standing, days = 0, most?: number): string[] =>
  nextSteps(standing, SKILLS, new Date(START + days * DAY), most);

describe('what is missing for the next level', () => {
  const words = (state: Partial<FamilyStanding['level']>): string =>
    outlookWords(standingWith({ greys: level(state.level ?? 1, state) }), 'greys');

  it.each([
    [{}, 'Three good answers in a row to level 2, over at least two sittings.'],
    [{ row: 1, sittings: 1 }, 'Two good answers in a row to level 2, over at least two sittings.'],
    [{ row: 2, sittings: 1 }, 'One more good answer to level 2, over at least two sittings.'],
    [{ row: 2, sittings: 2 }, 'One more good answer to level 2.'],
    [{ level: 4, row: 1, sittings: 2 }, 'Two good answers in a row to level 5.'],
    [{ row: 3, sittings: 1 }, 'A good answer in another sitting to level 2.'],
    [{ level: 4, row: 5, sittings: 1 }, 'A good answer in another sitting to level 5.'],
    [{ level: 5 }, 'Top level.'],
    [{ level: 5, row: 2, sittings: 2 }, 'Top level.'],
  ])('%j: %s', (state, said) => {
    expect(words(state)).toBe(said);
  });

  it('from level 2 on a row has to be more than luck: odds of a thousand against guessing', () => {
    const row = { level: 2, row: 4, sittings: 2 };
    const luck = 'More good answers to level 3: with few options a short row can be luck.';
    expect(words({ ...row, evidence: 0 })).toBe(luck);
    expect(words({ ...row, evidence: Math.log(999) })).toBe(luck);
    expect(words({ ...row, evidence: Math.log(1000) })).toBe('A good answer to level 3.');
    expect(words({ ...row, level: 1 })).toBe('A good answer to level 2.');
  });

  it('of a skill not met yet is said to be not practised', () => {
    expect(outlookWords(standingWith({ greys: known }), 'darks')).toBe('Not practised yet.');
  });
});

describe('the next steps', () => {
  it('of a beginner are one: the first skill, with a worked case', () => {
    expect(steps(foldSorted([]))).toEqual(['Begin with Glazing: it starts with a worked case.']);
    expect(nextSteps(foldSorted([]), [], new Date(START))).toEqual([]);
  });

  it('name what is missed most first, then what is due, then one new skill, then the rest from the highest level down', () => {
    const standing = standingWith({
      glazing: { ...level(2), answers: 9, recent: 0.9, ...remembered(400) },
      greys: { ...level(3), answers: 9, recent: 0.9, ...remembered(10) },
      darks: weak(0.4),
      greens: weak(0.2),
    });
    const more = ['Lifting', 'Edges'].map((title) => ({ id: title.toLowerCase(), title }));
    expect(nextSteps(standing, [...SKILLS, ...more], new Date(START + 30 * DAY), 9)).toEqual([
      'Greens: often missed of late; more than half of the next set goes to what is weak.',
      'Darks: often missed of late.',
      'Greys: due for review.',
      'Lifting: not met yet; it starts with a worked case.',
      'Glazing: level 2. Three good answers in a row to level 3, over at least two sittings.',
    ]);
  });

  it('name the last skill left first, like a weak one', () => {
    expect(steps(standingWith({ glazing: weak(0.2), greys: known, darks: known }))).toEqual([
      'Greens: not met yet; it starts with a worked case.',
      'Glazing: often missed of late.',
    ]);
  });

  it('name of several new skills the first one alone, after what is due', () => {
    const standing = standingWith({ darks: { ...level(2), answers: 9, recent: 0.9, ...remembered(10) } });
    expect(steps(standing, 30)).toEqual([
      'Darks: due for review.',
      'Glazing: not met yet; it starts with a worked case.',
    ]);
  });

  it('put the most forgotten of what is due first', () => {
    const due = (stability: number) => ({ ...level(5), answers: 9, recent: 0.9, ...remembered(stability) });
    const standing = standingWith({ glazing: due(20), greys: due(5), darks: due(10), greens: known });
    expect(steps(standing, 25).slice(0, 3)).toEqual([
      'Greens: due for review.',
      'Greys: due for review.',
      'Darks: due for review.',
    ]);
    expect(steps(standing, 25, 4)[3]).toBe('Glazing: due for review.');
  });

  it('tell of what goes on at which level it is, whether it rises, and what is missing', () => {
    const set = (mark: number) => ({
      ...(foldSorted([answer('greys', 'good', { mark })]).sets[0] as Standing['sets'][number]),
      set: `set-${mark}`,
    });
    const standing = standingWith({
      glazing: { ...level(2), answers: 2, recent: 0.9 },
      greys: { ...level(3, { row: 2, sittings: 2 }), answers: 9, recent: 0.9, sets: [set(60), set(80)] },
      darks: { ...level(4), answers: 9, recent: 0.9, sets: [set(80), set(60)] },
      greens: known,
    });
    expect(steps(standing)).toEqual([
      'Darks: level 4. Three good answers in a row to level 5, over at least two sittings.',
      'Greys: level 3, on the way up. One more good answer to level 4.',
      'Glazing: level 2. Three good answers in a row to level 3, over at least two sittings.',
    ]);
  });

  it('are three at most, or as many as asked', () => {
    const standing = standingWith({
      glazing: weak(0.4),
      greys: weak(0.3),
      darks: weak(0.2),
      greens: weak(0.1),
    });
    const first = (said: readonly string[]) => said.map((line) => line.split(':')[0]);
    expect(first(steps(standing))).toEqual(['Greens', 'Darks', 'Greys']);
    expect(first(steps(standing, 0, 1))).toEqual(['Greens']);
    expect(first(steps(standing, 0, 4))).toEqual(['Greens', 'Darks', 'Greys', 'Glazing']);
  });

  it('say of what is weak where it stands above level 1, and "often missed" only from the second answer on', () => {
    const share = '; more than half of the next set goes to what is weak.';
    const said = (more: Partial<FamilyStanding>): string | undefined =>
      steps(standingWith({ glazing: known, greys: known, darks: known, greens: more }))[0];
    expect(said({ ...weak(0.49), answers: 2 })).toBe(`Greens: often missed of late${share}`);
    expect(said({ ...weak(0.49), answers: 1 })).toBe(`Greens: not settled yet${share}`);
    expect(said(weak(0.49, 2))).toBe(`Greens: often missed of late, now at level 2${share}`);
    // Half of the answers known is not missed often, but it is left behind by the others.
    expect(said(weak(0.5, 2))).toBe(`Greens: not settled yet, now at level 2${share}`);
    expect(said(weak(0.5, 1))).toBe(`Greens: not settled yet${share}`);
  });

  it('begin a new skill where the placing round found its level', () => {
    const placing = Array.from({ length: 8 }, (_, n) =>
      answer(n % 2 === 0 ? 'glazing' : 'greys', 'good', {
        level: 4,
        guess: 0.05,
        placing: true,
        set: 'placing',
      }),
    );
    expect(steps(foldSorted(placing)).find((line) => line.startsWith('Darks'))).toBe(
      'Darks: not met yet; it starts at level 3.',
    );
  });
});

describe('when nothing is to be done', () => {
  const stands = (stability: number, more: Standing['families'] = new Map()): Standing => {
    const long = { ...known, ...remembered(400) };
    const standing = standingWith({ glazing: long, greys: long, darks: long });
    const greens = standingWith({ greens: { ...known, ...remembered(stability) } }).families;
    return { ...standing, families: new Map([...standing.families, ...greens, ...more]) };
  };
  const said = (days: string) => [`Every family is at level 5 and fresh; the next review is due in ${days}.`];

  it('the next review is named by the days until the first of them, begun days counted whole', () => {
    const days = (dueAt(remembered(10).memory) - START) / DAY;
    expect(days).toBe(10);
    expect(steps(stands(10), 0)).toEqual(said('10 days'));
    expect(steps(stands(10), 7.5)).toEqual(said('3 days'));
    expect(steps(stands(10), 8)).toEqual(said('2 days'));
    expect(steps(stands(10), 8.5)).toEqual(said('2 days'));
    expect(steps(stands(10), 9.5)).toEqual(said('1 day'));
  });

  it('it is never in less than a day', () => {
    // FSRS counts whole days: 10.4 days of memory are due after 10.
    expect(steps(stands(10.4), 10.2)).toEqual(said('1 day'));
  });

  it('a skill in the record that the curriculum has no more does not count', () => {
    const gone = standingWith({ tinting: { ...known, ...remembered(1) } }).families;
    expect(steps(stands(10, gone), 5)).toEqual(said('5 days'));
  });
});
