/** A sitting under way: what is added to it, which question is next, how much time is left. Pure; the time is handed in. */
import type { Answer } from '../drills/types.js';
import { MOST_EVENTS, type Sitting, sittingFrom } from './answers.js';
import { afterEvent, type GivenAnswer, isSameAnswer, type SittingEvent } from './events.js';
import { type Handout, MOST_QUESTIONS, type Rules } from './handout.js';
import { fromInstant, toInstant } from './instant.js';
import { shownName } from './names.js';
import { isWholeAtEnd } from './seals.js';

/** From so many events on no answer changes any more, so that there is room left to show, close and hand in. */
const MOST_CHANGES = MOST_EVENTS - 3 * MOST_QUESTIONS - 1;

/**
 * A sitting that begins now.
 * @param name checked before: not empty when cleaned
 * @param source where it is not sat on a screen
 */
export function startSitting(handout: Handout, name: string, nowMs: number, source?: 'paper'): Sitting {
  const from = source === undefined ? {} : { source };
  return sittingFrom(handout.digest, [
    { event: 'begin', name: shownName(name), ...from, at: toInstant(nowMs) },
  ]);
}

/** What the sitting holds for a question. */
export function givenFor(sitting: Sitting, drill: string): GivenAnswer | undefined {
  return sitting.answers.find((given) => given.drill === drill);
}

function withEvent(sitting: Sitting, event: SittingEvent): Sitting {
  return { ...sitting, ...afterEvent(sitting, event), events: [...sitting.events, event] };
}

/** Notes that the page of a question is up with the question covered: its clock waits for a key. */
export function readyQuestion(sitting: Sitting, drill: string, nowMs: number): Sitting {
  if (givenFor(sitting, drill) !== undefined) return sitting;
  return withEvent(sitting, { event: 'ready', drill, at: toInstant(nowMs) });
}

/** Whether a question is still covered, its clock waiting for a key: a question without a clock never is. */
export function isCovered({ timePerQuestionSeconds: limit }: Rules, given: GivenAnswer | undefined): boolean {
  return limit !== undefined && given?.shown === undefined && given?.closed !== true;
}

/** Notes that a question is on the screen; only the first time counts. */
export function showQuestion(sitting: Sitting, drill: string, nowMs: number): Sitting {
  if (givenFor(sitting, drill)?.shown !== undefined) return sitting;
  return withEvent(sitting, { event: 'shown', drill, at: toInstant(nowMs) });
}

/** Choices on the way to an answer are one event: the last of them, until it is confirmed or another question is met. */
function change(sitting: Sitting, event: 'chosen' | 'taken', drill: string, answer: Answer, nowMs: number) {
  const { events, seals } = sitting;
  const given = givenFor(sitting, drill);
  if (sitting.finished !== undefined || given?.closed === true || events.length >= MOST_CHANGES)
    return sitting;
  const standing = event === 'chosen' ? (given?.choices ?? given?.answer) : given?.answer;
  const isPending = event === 'taken' && given?.choices !== undefined;
  if (!isPending && isSameAnswer(standing, answer)) return sitting;
  const last = events.at(-1);
  const isOnTheWay =
    last?.event === 'chosen' && last.drill === drill && events.length > (seals?.each.length ?? 0);
  const before = isOnTheWay ? sittingFrom(sitting.handoutDigest, events.slice(0, -1), seals) : sitting;
  return withEvent(before, { event, drill, answer, at: toInstant(nowMs) });
}

/** Notes choices that are not confirmed yet; a closed question and a finished sitting stay as they are. */
export function takeChoices(sitting: Sitting, drill: string, answer: Answer, nowMs: number): Sitting {
  return change(sitting, 'chosen', drill, answer, nowMs);
}

/** Takes an answer that is confirmed: the one that counts. */
export function confirmAnswer(sitting: Sitting, drill: string, answer: Answer, nowMs: number): Sitting {
  return change(sitting, 'taken', drill, answer, nowMs);
}

/** Closes a question for good: its result was shown, or its time ran out. */
export function closeQuestion(sitting: Sitting, drill: string, nowMs: number): Sitting {
  if (givenFor(sitting, drill)?.closed === true) return sitting;
  return withEvent(sitting, { event: 'closed', drill, at: toInstant(nowMs) });
}

/** Ends a sitting. */
export function finishSitting(sitting: Sitting, nowMs: number): Sitting {
  if (sitting.finished !== undefined) return sitting;
  return withEvent(sitting, { event: 'handed-in', at: toInstant(nowMs) });
}

/** Goes on with a sitting from its file. Where the end of the file had been changed, that stays on record. */
export function resumeSitting({ secret }: Handout, sitting: Sitting, nowMs: number): Sitting {
  const isSound = secret === undefined || isWholeAtEnd(secret, sitting);
  if (isSound || sitting.events.length >= MOST_CHANGES) return sitting;
  return withEvent(sitting, { event: 'gap', at: toInstant(nowMs) });
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
  if (given?.shown === undefined) return limit;
  // A clock set back must not give more than the limit.
  const passed = Math.max(0, (nowMs - fromInstant(given.shown)) / 1000);
  return Math.max(0, Math.ceil(limit - passed));
}

/** Whether the answer to a question may still change. */
export function isOpen(rules: Rules, sitting: Sitting, drill: string, nowMs: number): boolean {
  if (sitting.finished !== undefined || sitting.events.length >= MOST_CHANGES) return false;
  const given = givenFor(sitting, drill);
  return given?.closed !== true && secondsLeft(rules, given, nowMs) !== 0;
}

/**
 * What of the results may be shown to the student now: nothing, those of the questions that are closed, or all.
 * @param isReleased the teacher has written a result file for this sitting
 */
export function mayShow(
  { showResult }: Rules,
  { finished }: Sitting,
  isReleased: boolean,
): 'nothing' | 'closed' | 'all' {
  if (isReleased) return 'all';
  if (showResult === 'later') return 'nothing';
  if (finished !== undefined) return 'all';
  return showResult === 'each' ? 'closed' : 'nothing';
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
  const fresh = ids.findIndex((id) => {
    const given = givenFor(sitting, id);
    return given?.shown === undefined && given?.closed !== true;
  });
  return fresh >= 0 ? fresh : ids.length;
}
