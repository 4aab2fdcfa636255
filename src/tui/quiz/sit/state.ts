/** The state of a sitting on the screen, and the keys that work in it. */
import { firstAnswer } from '../../../drills/answers.js';
import type { Answer } from '../../../drills/types.js';
import type { Sitting } from '../../../quiz/answers.js';
import type { Handout, Question } from '../../../quiz/handout.js';
import type { Grader } from '../../../quiz/marking.js';
import { givenFor, isOpen, secondsLeft } from '../../../quiz/sitting.js';
import type { Question as OnScreen } from '../../drill/question.js';
import type { Stage, World } from '../../kit/stage.js';
import type { Judged } from '../../result/judged.js';
import type { SheetPanel } from '../../sheet/keys.js';

/** Fixed for a sitting. */
export interface SitWorld {
  readonly handout: Handout;
  /** Whose results they are: as the class has it, else as it was typed. */
  readonly name: string;
  /** Indexes of the handout's questions in this student's order. */
  readonly order: readonly number[];
  readonly grader: Grader;
  readonly world: World;
}

/** A question in front; what was chosen is in the sitting as well. */
export interface QuestionScreen extends Pick<OnScreen, 'focus' | 'answer' | 'inGrey'> {
  readonly name: 'question';
  readonly place: number;
}

/** A result in front. */
export interface GradedScreen extends Omit<Judged, 'answered'> {
  readonly name: 'result';
  readonly place: number;
  readonly from: 'sitting' | 'done';
}

/** `place` counts in the student's order, from 0. */
export type SitScreen =
  | { readonly name: 'begin' }
  /** The clock of a question waits for a key. */
  | { readonly name: 'covered'; readonly place: number }
  | QuestionScreen
  | GradedScreen
  | { readonly name: 'overview'; readonly selected: number }
  | { readonly name: 'done'; readonly selected: number };

export type SitOverlay =
  | { readonly name: 'keys' }
  | SheetPanel
  | { readonly name: 'leave' }
  | { readonly name: 'finish' }
  | { readonly name: 'caution'; readonly pigments: readonly string[] };

export interface SitState extends Stage {
  readonly screen: SitScreen;
  readonly overlay?: SitOverlay;
  readonly sitting: Sitting;
  readonly isResumed: boolean;
  /** Milliseconds since 1970, at the last key or tick. */
  readonly now: number;
}

/** The question at a place, and its index in the handout. */
export function questionAt({ handout, order }: SitWorld, place: number): Question & { index: number } {
  const index = order[place] ?? 0;
  return { ...(handout.questions[index] as Question), index };
}

/** Whether the answer at a place may still change. */
export function isOpenAt(world: SitWorld, { sitting, now }: SitState, place: number): boolean {
  return isOpen(world.handout.rules, sitting, questionAt(world, place).drill.id, now);
}

export function isAnsweredAt(world: SitWorld, { sitting }: SitState, place: number): boolean {
  const { drill, index } = questionAt(world, place);
  return world.grader.stateOf(index, givenFor(sitting, drill.id)?.answer) === 'answered';
}

/** Seconds left at a place; undefined without a clock. */
export function secondsAt(world: SitWorld, { sitting, now }: SitState, place: number): number | undefined {
  return secondsLeft(world.handout.rules, givenFor(sitting, questionAt(world, place).drill.id), now);
}

/** The answer that a question opens with: what was chosen last, else what stands for it. */
export function openingAnswer(world: SitWorld, state: SitState, place: number): Answer {
  const { drill, index } = questionAt(world, place);
  const choices = givenFor(state.sitting, drill.id)?.choices;
  const isWhole = isOpenAt(world, state, place) && world.grader.stateOf(index, choices) === 'answered';
  return isWhole && choices !== undefined ? choices : standingAnswer(world, state, place);
}

/** The answer that counts for a question so far: what was taken, or the first of everything. */
export function standingAnswer(world: SitWorld, { sitting }: SitState, place: number): Answer {
  const { drill, index } = questionAt(world, place);
  const given = givenFor(sitting, drill.id)?.answer;
  const isWhole = world.grader.stateOf(index, given) === 'answered';
  return isWhole && given !== undefined ? given : firstAnswer(world.grader.fields[index] ?? []);
}

/** The question in front, as it is drawn. */
export function questionOf(world: SitWorld, state: SitState, screen: QuestionScreen): OnScreen {
  const { drill, index } = questionAt(world, screen.place);
  const closed = isOpenAt(world, state, screen.place)
    ? undefined
    : isAnsweredAt(world, state, screen.place)
      ? 'This question is closed; the answer below counts.'
      : 'This question is closed; nothing was chosen.';
  const { answer, focus, inGrey = false } = screen;
  return {
    drill,
    fields: world.grader.fields[index] ?? [],
    answer,
    focus,
    inGrey,
    hint: world.handout.rules.hints ? 'shown' : 'hidden',
    ...(closed === undefined ? {} : { message: closed }),
  };
}

/** The result in front, as it is drawn; of a question that was not answered the best there is. */
export function judgedOf(world: SitWorld, state: SitState, screen: GradedScreen): Judged {
  const { drill, index } = questionAt(world, screen.place);
  const isAnswered = isAnsweredAt(world, state, screen.place);
  const answer = isAnswered
    ? standingAnswer(world, state, screen.place)
    : world.world.kindOf(drill).best(drill);
  const grade = world.grader.grade(index, answer);
  return { ...screen, answered: { drill, answer, grade, mark: grade.mark } };
}

/** "1:05". */
export const clockText = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
