/** Learners made up for tests: they practise in sets, a set a day, and answer by a rule. */
import { fraction, seededDraw, seedOf } from '../../src/chance/draw.js';
import type { DrillRef, FamilyRef, HistoryEntry, Pick, Standing } from '../../src/practice/index.js';
import { addAnswer, chooseSet, emptyStanding, nextPlacing } from '../../src/practice/index.js';

export const DAY = 86_400_000;
export const START = Date.UTC(2026, 0, 5, 18);

/** Fifteen families in order; three pairs that look alike. */
export const FAMILIES: readonly FamilyRef[] = Array.from({ length: 15 }, (_, i) => ({
  id: `family-${i + 1}`,
  title: `Family ${i + 1}`,
  lookAlike: { 3: ['family-5'], 5: ['family-8'], 9: ['family-11'] }[i] ?? [],
}));

/** Chance that a blind choice is good at each level: the hardest case, two options at levels 1 and 2. */
export const GUESS = [0.5, 0.5, 0.25, 0.1, 0.05];

export function fakeDrills(perLevel = 3, families = FAMILIES): DrillRef[] {
  return families.flatMap(({ id }) =>
    GUESS.flatMap((guess, level) =>
      Array.from({ length: perLevel }, (_, n) => ({
        id: `${id}-${level + 1}-${n + 1}`,
        family: id,
        level: level + 1,
        guess,
        ...(level === 0 ? { isWorked: true as const } : {}),
      })),
    ),
  );
}

/** Chance (0-1) that the learner knows the answer. */
export type Knows = (pick: Pick) => number;

export const always: Knows = () => 1;
export const never: Knows = () => 0;
export const allBut =
  (family: string): Knows =>
  (pick) =>
    pick.family === family ? 0 : 1;

export function entryOf(
  pick: Pick,
  verdict: HistoryEntry['verdict'],
  atMs: number,
  set: string,
): HistoryEntry {
  return {
    v: 1,
    at: new Date(atMs).toISOString(),
    drill: pick.drill ?? `made-${pick.make?.seed}`,
    family: pick.family,
    level: pick.level,
    answer: { second: 'a' },
    mark: verdict === 'good' ? 90 : verdict === 'fair' ? 55 : 15,
    verdict,
    value: { before: 3, after: verdict === 'good' ? 7 : 5, asked: [6.5, 7.5] },
    chroma: {
      before: 50,
      after: verdict === 'good' ? 40 : 20,
      kept: verdict === 'good' ? 0.8 : 0.4,
      asked: [40, 50],
    },
    hints: 0,
    try: 1,
    set,
    engine: 'test',
    guess: GUESS[pick.level - 1] as number,
  };
}

export interface Run {
  readonly standing: Standing;
  readonly picks: Pick[];
  readonly highest: Map<string, number>;
  /** Sets after which every family stood at the top, if it came to that. */
  readonly setsToTop: number | undefined;
}

/** Lets a learner go through the placing round; returns the decisions. */
export function placed(options: {
  readonly knows: Knows;
  readonly seed: number;
  readonly standing: Standing;
  readonly drills?: readonly DrillRef[];
}): Pick[] {
  const { knows, seed, standing, drills = fakeDrills() } = options;
  const draw = seededDraw(seedOf('placing', seed));
  const picks: Pick[] = [];
  for (;;) {
    const atMs = START - DAY + picks.length * 40_000;
    const pick = nextPlacing({ standing, families: FAMILIES, drills, now: new Date(atMs), seed });
    if (pick === undefined) return picks;
    const isGood = fraction(draw) < knows(pick) || fraction(draw) < (GUESS[pick.level - 1] as number);
    addAnswer(standing, { ...entryOf(pick, isGood ? 'good' : 'off', atMs, 'placing'), placing: true });
    picks.push(pick);
  }
}

/** Lets a learner practise. */
export function practise(options: {
  readonly knows: Knows;
  readonly sets: number;
  readonly count: number;
  readonly seed: number;
  readonly standing?: Standing;
  readonly firstDay?: number;
  readonly drills?: readonly DrillRef[];
}): Run {
  const { knows, sets, count, seed, standing = emptyStanding(), firstDay = 0 } = options;
  const drills = options.drills ?? fakeDrills();
  const draw = seededDraw(seedOf('learner', seed));
  const picks: Pick[] = [];
  const highest = new Map<string, number>();
  let setsToTop: number | undefined;
  for (let set = 0; set < sets; set += 1) {
    const startMs = START + (firstDay + set) * DAY;
    const chosen = chooseSet({
      standing,
      families: FAMILIES,
      drills,
      now: new Date(startMs),
      seed: seedOf(seed, set),
      count,
    });
    for (const [place, pick] of chosen.entries()) {
      const isGood = fraction(draw) < knows(pick) || fraction(draw) < (GUESS[pick.level - 1] as number);
      addAnswer(
        standing,
        entryOf(pick, isGood ? 'good' : 'off', startMs + place * 40_000, `set-${firstDay + set}`),
      );
      picks.push(pick);
      const level = standing.families.get(pick.family)?.level.level ?? 1;
      highest.set(pick.family, Math.max(highest.get(pick.family) ?? 1, level));
    }
    const levels = [...standing.families.values()].map(({ level }) => level.level);
    if (setsToTop === undefined && levels.length === 15 && levels.every((level) => level === 5))
      setsToTop = set + 1;
  }
  return { standing, picks, highest, setsToTop };
}
