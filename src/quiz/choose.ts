/** Choosing the questions of a new quiz: evenly over the families, by seed. */
import { type Draw, seededDraw } from '../chance/draw.js';
import { FAMILY_IDS, findFamily } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { paintsIn } from '../drills/paint-names.js';
import { InputError } from '../errors.js';
import { didYouMean } from '../text/nearest.js';
import { MOST_QUESTIONS } from './handout.js';

/** What a teacher asks for. */
export interface QuizWish {
  /** Ids of families; none: every family that has drills. */
  readonly families: readonly string[];
  /** Ids of drills that the quiz begins with, whatever their family, level and paints. */
  readonly drills?: readonly string[];
  readonly count: number;
  /** 1-5; absent: any. */
  readonly level?: number;
  /** Ids of the paints that questions may use; absent: any. */
  readonly paints?: readonly string[];
  readonly seed: number;
}

/** Makes a new drill of a family where the written ones do not reach; undefined when it cannot. */
export type MakeDrill = (family: string, seed: number) => Drill | undefined;

function fits(drill: Drill, { level, paints }: QuizWish): boolean {
  if (level !== undefined && drill.level !== level) return false;
  return paints === undefined || paintsIn(drill).every((paint) => paints.includes(paint));
}

/** Takes a random one out of a list. */
function take<T>(list: T[], draw: Draw): T | undefined {
  return list.length === 0 ? undefined : list.splice(draw(list.length - 1), 1)[0];
}

/** Tries of the maker for one question; it may refuse a seed, or make a drill with an id already used. */
const MOST_TRIES = 8;

function makeNew(
  make: MakeDrill | undefined,
  family: string,
  draw: Draw,
  taken: ReadonlySet<string>,
  wish: QuizWish,
): Drill | undefined {
  for (let tries = 0; make !== undefined && tries < MOST_TRIES; tries++) {
    const drill = make(family, draw(0x7fff_fffe));
    if (drill !== undefined && !taken.has(drill.id) && fits(drill, wish)) return drill;
  }
  return undefined;
}

/** The drills that were asked for by their ids, in that order. */
function named({ drills: ids = [], count }: QuizWish, drills: readonly Drill[]): Drill[] {
  const chosen = [...new Set(ids)].map((id) => {
    const drill = drills.find((each) => each.id === id);
    if (drill === undefined)
      throw new InputError(
        `no drill is called "${id.slice(0, 60)}".${didYouMean(
          id,
          drills.map((each) => each.id),
        )}`,
      );
    return drill;
  });
  if (chosen.length > count)
    throw new InputError(`${chosen.length} drills are named for a quiz of ${count} questions`);
  return chosen;
}

function knownFamilies(wish: QuizWish, drills: readonly Drill[]): readonly string[] {
  for (const id of wish.families) {
    if (findFamily(id) === undefined)
      throw new InputError(
        `no family is called "${id.slice(0, 60)}"; there are: ${FAMILY_IDS.join(', ')}.${didYouMean(id, FAMILY_IDS)}`,
      );
  }
  if (wish.families.length > 0) return [...new Set(wish.families)];
  return FAMILY_IDS.filter((id) => drills.some((drill) => drill.family === id));
}

/**
 * Chooses the drills of a quiz: those named first, then written ones, each family in turn, then made ones.
 * The same wish and the same drills give the same questions.
 * @throws InputError for an unknown family or drill, a count out of range, or when there are not enough drills
 */
export function chooseQuestions(wish: QuizWish, drills: readonly Drill[], make?: MakeDrill): Drill[] {
  const { count, seed, level, paints } = wish;
  if (!Number.isInteger(count) || count < 1 || count > MOST_QUESTIONS)
    throw new InputError(`a quiz has 1 to ${MOST_QUESTIONS} questions, not ${count}`);
  const draw = seededDraw(seed);
  const chosen = named(wish, drills);
  const taken = new Set(chosen.map(({ id }) => id));
  const families = knownFamilies(wish, drills).map((id) => ({
    id,
    pool: drills.filter((drill) => drill.family === id && !taken.has(drill.id) && fits(drill, wish)),
  }));
  let waiting = families;
  while (chosen.length < count && waiting.length > 0) {
    const next: typeof families = [];
    for (const family of waiting) {
      if (chosen.length >= count) break;
      const drill = take(family.pool, draw) ?? makeNew(make, family.id, draw, taken, wish);
      if (drill === undefined) continue;
      chosen.push(drill);
      taken.add(drill.id);
      next.push(family);
    }
    waiting = next;
  }
  if (chosen.length < count) {
    const limits = [
      `in ${families.map(({ id }) => id).join(', ')}`,
      ...(level === undefined ? [] : [`at level ${level}`]),
      ...(paints === undefined ? [] : ['with the paints of this palette']),
    ].join(' ');
    throw new InputError(
      `there are ${chosen.length} drills ${limits}, not ${count}; ask for fewer, or widen families, level or palette`,
    );
  }
  return chosen;
}
