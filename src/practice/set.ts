/**
 * Today's set: what is weak, new and due, in an order that mixes look-alikes, at a difficulty near the learner.
 * The same standing, time and seed give the same set on every machine.
 */
import { fraction, seededDraw } from '../chance/draw.js';
import { arrange } from './arrange.js';
import type { Feedback } from './feedback.js';
import { feedbackFor } from './feedback.js';
import type { FamilyNeed, Reason } from './need.js';
import { familyNeeds } from './need.js';
import { atLevel, difficultyFor, isFresh, pickDrill } from './pick-drill.js';
import type { DrillRef, FamilyRef } from './refs.js';
import { shareOut } from './shares.js';
import type { Standing } from './standing.js';

export interface SetRequest {
  readonly standing: Standing;
  /** In the order of the curriculum. */
  readonly families: readonly FamilyRef[];
  readonly drills: readonly DrillRef[];
  readonly now: Date;
  /** Any whole number of 32 bits. */
  readonly seed: number;
  /** How many drills, 1-500. */
  readonly count: number;
  /** Practise this family alone. */
  readonly family?: string;
  /** Families for which new drills can be made: asked for when the written ones would only be recalled. */
  readonly generated?: ReadonlySet<string>;
}

/** One drill of a set: a written one, or the wish for one to be made. */
export interface Pick {
  readonly family: string;
  readonly level: number;
  readonly reason: Reason;
  readonly feedback: Feedback;
  /** Id of a written drill; absent when one has to be made. */
  readonly drill?: string;
  /** How one has to be made: seed, and difficulty 0-1 within the level. */
  readonly make?: { readonly seed: number; readonly difficulty: number };
}

/**
 * Chooses a set. It is shorter than asked only when there is nothing else left than the drill just done.
 * @throws RangeError when the count is out of range or the family is unknown
 */
export function chooseSet(request: SetRequest): Pick[] {
  const { standing, drills, now, seed, count, family: only, generated = new Set<string>() } = request;
  if (!Number.isInteger(count) || count < 1 || count > 500)
    throw new RangeError(`count is ${count}; a set has 1 to 500 drills`);
  if (only !== undefined && !request.families.some(({ id }) => id === only))
    throw new RangeError(`there is no family called ${only}`);
  const byFamily = new Map<string, DrillRef[]>();
  for (const drill of drills) byFamily.set(drill.family, [...(byFamily.get(drill.family) ?? []), drill]);
  const canPractise = ({ id }: FamilyRef): boolean => byFamily.has(id) || generated.has(id);

  const draw = seededDraw(seed);
  const nowMs = now.getTime();
  const needs = familyNeeds(standing, request.families, nowMs).filter(({ family }) => canPractise(family));
  const chosen = only === undefined ? needs : needs.filter(({ family }) => family.id === only);
  if (chosen.length === 0) return [];
  const order =
    only === undefined ? arrange(shareOut(chosen, count), draw) : repeat(chosen[0] as FamilyNeed, count);

  const used = new Map<string, number>();
  const picks: Pick[] = [];
  let last = standing.lastDrill;
  for (const need of order) {
    const { id } = need.family;
    const state = { standing, nowMs, last, used };
    const pool = atLevel(byFamily.get(id) ?? [], need.level);
    const drill = pool.length > 0 ? pickDrill(pool, state, () => fraction(draw)) : undefined;
    const madeSeed = draw(0x7fff_ffff);
    const isStale = drill === undefined || drill.level !== need.level || !isFresh(drill, state);
    const make = generated.has(id) && isStale;
    if (drill === undefined && !make) continue;
    const level = make ? need.level : (drill as DrillRef).level;
    const common = { family: id, level, reason: need.reason, feedback: feedbackFor(level) };
    if (make) {
      picks.push({ ...common, make: { seed: madeSeed, difficulty: difficultyFor(standing, id, level) } });
      last = '';
    } else if (drill !== undefined) {
      picks.push({ ...common, drill: drill.id });
      used.set(drill.id, (used.get(drill.id) ?? 0) + 1);
      last = drill.id;
    }
  }
  return picks;
}

const repeat = (need: FamilyNeed, count: number): FamilyNeed[] => Array.from({ length: count }, () => need);
