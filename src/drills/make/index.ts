/** Endless drills: the same seed, family, level and palette make the same drill on every machine. */
import { seededDraw, seedOf } from '../../chance/draw.js';
import { InputError } from '../../errors.js';
import { type CriterionId, criterionOf, MOST_LUCK } from '../../judgement/index.js';
import type { Studio } from '../../paints/index.js';
import { seeLaid } from '../../washes/index.js';
import { countAnswers } from '../answers.js';
import { familyAsk } from '../ask.js';
import { checkDrill } from '../check.js';
import { type Drill, kindOf } from '../kinds/index.js';
import { APPLICATION_GENERATORS } from './application-generators.js';
import { DIAGNOSIS_GENERATORS } from './diagnosis-generators.js';
import { DRYING_GENERATORS } from './drying-generators.js';
import type { Level } from './levels.js';
import { MIX_GENERATORS } from './mix-generators.js';
import { keepsPlan } from './mix-plan.js';
import { MIX_RULES, type PlanRules } from './mix-rules.js';
import { usedBy } from './sentences.js';
import { SHADOW_GENERATORS } from './shadow-generators.js';

import { THREE_VALUES_GENERATORS } from './three-values-generator.js';
import type { Generator } from './types.js';
import { VALUE_GENERATORS } from './value-generators.js';
import { WHEEL_GENERATORS } from './wheel-generators.js';

export type { Level } from './levels.js';
export type { DrillDraft, Generator, Wanted } from './types.js';

/** Generators by family. */
const GENERATORS: Readonly<Record<string, Generator>> = {
  ...MIX_GENERATORS,
  ...VALUE_GENERATORS,
  ...THREE_VALUES_GENERATORS,
  ...SHADOW_GENERATORS,
  ...WHEEL_GENERATORS,
  ...APPLICATION_GENERATORS,
  ...DRYING_GENERATORS,
  ...DIAGNOSIS_GENERATORS,
};

/** Families that drills can be made for. */
export const GENERATED_FAMILIES: readonly string[] = Object.keys(GENERATORS);

/** Attempts before a palette is held unfit; most families need fewer than ten. */
const MOST_ATTEMPTS = 400;

/** Attempts at one aim before the next is tried; and how many ways of asking there may be. */
const ATTEMPTS_A_TURN = 40;
const MOST_TURN = 59;

/** What to make. */
export interface Request {
  /** Any whole number. */
  readonly seed: number;
  readonly family: string;
  /** 1 worked - 5 cold. */
  readonly level: number;
  /** Ids of the paints to use, two or more. */
  readonly palette: readonly string[];
  /** What the drills just before used: paints of the first wash, subjects, sentences (`usedBy`). */
  readonly avoid?: readonly string[];
}

/** How far neighbours in a comparison lie apart at least, so that it can be decided by eye: C*, and steps. */
const APART: Readonly<Partial<Record<CriterionId, number>>> = {
  'most-chroma': 5,
  greyest: 5,
  darkest: 0.5,
  lightest: 0.5,
  warmest: 5,
  coolest: 5,
  'dries-most': 2,
};

function isApart(studio: Studio, drill: Drill): boolean {
  if (drill.kind !== 'choose' && drill.kind !== 'order') return true;
  const laid = (drill.kind === 'choose' ? drill.options : drill.items).map((one) => one.laid);
  const gaps = (by: CriterionId): number[] => {
    const score = laid
      .map((one) => criterionOf(by).score(seeLaid(studio, one), { studio }))
      .sort((a, b) => b - a);
    return score.slice(1).map((low, at) => (score[at] as number) - low);
  };
  // Of a choice the first has to stand out, of an order all.
  const stands = (by: CriterionId, all: boolean): boolean =>
    gaps(by).every((gap, at) => (!all && at > 0) || Math.abs(gap) >= (APART[by] ?? 0));
  if (drill.kind === 'choose') return stands(drill.by, false);
  return stands(drill.by, true) && (drill.also === undefined || stands(drill.also, false));
}

function isSound(studio: Studio, drill: Drill): boolean {
  const { faults, luck } = checkDrill(studio, drill, 1);
  const answers = countAnswers(kindOf(studio, drill).fields(drill));
  return faults.length === 0 && (luck <= MOST_LUCK.made || answers <= 2);
}

/** A palette of few paints may have no other start, and after many attempts what was seen before is better than nothing. */
function stillAvoided(
  avoid: readonly string[],
  paints: readonly string[],
  attempt: number,
): readonly string[] {
  if (attempt < MOST_ATTEMPTS / 4) return avoid;
  return attempt < (MOST_ATTEMPTS * 3) / 4 ? avoid.filter((used) => !paints.includes(used)) : [];
}

/** Drills in a row that share no subject and no sentence. */
const ROW = 8;

/** What to avoid after these drills. */
export function usedBefore(drills: readonly Drill[]): string[] {
  return [...new Set(drills.slice(1 - ROW).flatMap(usedBy))];
}

/**
 * Makes a drill that passes the checker.
 * @throws InputError for a palette from which no such drill can be made; RangeError for an unknown family, a level outside
 * 1-5, or a seed that is no whole number
 */
export function generateDrill(studio: Studio, { seed, family, level, palette, avoid = [] }: Request): Drill {
  const make = Object.hasOwn(GENERATORS, family) ? GENERATORS[family] : undefined;
  if (make === undefined) throw new RangeError(`no drills can be made for the family "${family}"`);
  if (!Number.isInteger(level) || level < 1 || level > 5)
    throw new RangeError(`level is 1 to 5, got ${level}`);
  if (!Number.isSafeInteger(seed)) throw new RangeError(`a seed is a whole number, got ${seed}`);
  const paints = [...new Set(palette)].sort();
  if (paints.length < 2) throw new InputError(`a palette needs two paints, got ${paints.length}`);
  const key = seedOf(seed, family, level, ...paints);
  const draw = seededDraw(key);
  // Another drill where other things are avoided, and so another id.
  const name = avoid.length === 0 ? key : seedOf(key, ...[...avoid].sort());
  const turn = draw(MOST_TURN);
  for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
    const wanted = {
      level: level as Level,
      palette: paints,
      turn: turn + Math.floor(attempt / ATTEMPTS_A_TURN),
      avoid: stillAvoided(avoid, paints, attempt),
    };
    const draft = make(studio, wanted, draw);
    if (draft === undefined) continue;
    const drill = {
      ...draft,
      id: `made-${family}-${level}-${(name >>> 0).toString(36)}`,
      family,
      level,
      ask: draft.ask ?? familyAsk(family, draft),
    } as Drill;
    // The lesson first: it costs a tenth of the whole check and fails most.
    const isLesson = (kindOf(studio, drill).faults?.(drill) ?? []).length === 0;
    const isKept = (): boolean =>
      drill.kind !== 'mix' || keepsPlan(studio, drill, MIX_RULES[family] as PlanRules);
    if (isLesson && isKept() && isApart(studio, drill) && isSound(studio, drill)) return drill;
  }
  throw new InputError(
    `${family}, level ${level}: no drill found for a palette of ${paints.length} paints; try a larger one`,
  );
}
