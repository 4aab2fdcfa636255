/** A sitting under way: what is added to it, which question is next, how much time is left. Pure; the time is handed in. */
import type { Answer } from '../drills/types.js';
import type { GivenAnswer, Sitting } from './answers.js';
import type { Handout, Rules } from './handout.js';
import { fromInstant, toInstant } from './instant.js';
import { shownName } from './names.js';

/** A sitting that begins now. @param name checked before: not empty when cleaned */
export function startSitting(handout: Handout, name: string, nowMs: number): Sitting {
  return {
    handoutDigest: handout.digest,
    name: shownName(name),
    started: toInstant(nowMs),
    answers: [],
  };
}

/** What the sitting holds for a question. */
export function givenFor(sitting: Sitting, drill: string): GivenAnswer | undefined {
  return sitting.answers.find((given) => given.drill === drill);
}

function withGiven(sitting: Sitting, changed: GivenAnswer): Sitting {
  const there = sitting.answers.some(({ drill }) => drill === changed.drill);
  return {
    ...sitting,
    answers: there
      ? sitting.answers.map((given) => (given.drill === changed.drill ? changed : given))
      : [...sitting.answers, changed],
  };
}

/** Notes that a question is on the screen; only the first time counts. */
export function showQuestion(sitting: Sitting, drill: string, nowMs: number): Sitting {
  if (givenFor(sitting, drill) !== undefined) return sitting;
  return withGiven(sitting, { drill, shown: toInstant(nowMs), answer: {} });
}

/** Takes a choice for a question that is open; a closed question and a finished sitting stay as they are. */
export function takeChoices(sitting: Sitting, drill: string, answer: Answer, nowMs: number): Sitting {
  const given = givenFor(sitting, drill);
  if (sitting.finished !== undefined || given?.closed === true) return sitting;
  const at = toInstant(nowMs);
  return withGiven(sitting, { drill, shown: given?.shown ?? at, answer, at });
}

/** Closes a question for good: its result was shown, or its time ran out. */
export function closeQuestion(sitting: Sitting, drill: string, nowMs: number): Sitting {
  const given = givenFor(sitting, drill) ?? { drill, shown: toInstant(nowMs), answer: {} };
  return given.closed === true ? sitting : withGiven(sitting, { ...given, closed: true });
}

/** Ends a sitting. */
export function finishSitting(sitting: Sitting, nowMs: number): Sitting {
  return sitting.finished === undefined ? { ...sitting, finished: toInstant(nowMs) } : sitting;
}

/**
 * Seconds left for a question, whole, 0 when the time is up; undefined without a clock. The clock runs from the moment the
 * question was first shown, whatever else is on the screen since, so that leaving and coming back wins no time.
 */
export function secondsLeft(
  { timePerQuestionSeconds: limit }: Rules,
  given: GivenAnswer | undefined,
  nowMs: number,
): number | undefined {
  if (limit === undefined) return undefined;
  if (given === undefined) return limit;
  // A clock set back must not give more than the limit.
  const passed = Math.max(0, (nowMs - fromInstant(given.shown)) / 1000);
  return Math.max(0, Math.ceil(limit - passed));
}

/** Whether the answer to a question may still change. */
export function isOpen(rules: Rules, sitting: Sitting, drill: string, nowMs: number): boolean {
  if (sitting.finished !== undefined) return false;
  const given = givenFor(sitting, drill);
  return given?.closed !== true && secondsLeft(rules, given, nowMs) !== 0;
}

/**
 * Where a sitting goes on: the place in the student's order of the question last shown when it is still open, else of
 * the first question never shown, else past the end.
 * @param order indexes of the handout's questions in this student's order
 */
export function resumePlace(
  handout: Handout,
  order: readonly number[],
  sitting: Sitting,
  nowMs: number,
): number {
  const ids = order.map((index) => handout.questions[index]?.drill.id ?? '');
  const last = sitting.answers.at(-1)?.drill ?? '';
  const place = ids.indexOf(last);
  if (place >= 0 && isOpen(handout.rules, sitting, last, nowMs)) return place;
  const fresh = ids.findIndex((id) => givenFor(sitting, id) === undefined);
  return fresh >= 0 ? fresh : ids.length;
}
