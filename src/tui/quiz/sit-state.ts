/** The state of a sitting on the screen, and the keys that work in it. */
import { firstAnswer } from '../../drills/answers.js';
import type { Answer } from '../../drills/types.js';
import type { Sitting } from '../../quiz/answers.js';
import type { Handout, Question } from '../../quiz/handout.js';
import type { Grader } from '../../quiz/marking.js';
import { givenFor, isOpen, secondsLeft } from '../../quiz/sitting.js';
import { showsAs } from '../kit/fields.js';
import type { DrillScreen, World } from '../kit/state.js';
import {
  digits,
  enter,
  esc,
  KEYS,
  leftRight,
  letter,
  type QuizBinding,
  SCROLL,
  STOP,
  upDown,
} from './quiz-keys.js';
import { type QuizState, questionScreen } from './stage.js';

/** Fixed for a sitting. */
export interface SitWorld {
  readonly handout: Handout;
  /** Indexes of the handout's questions in this student's order. */
  readonly order: readonly number[];
  readonly grader: Grader;
  readonly world: World;
}

/** `place` counts in the student's order, from 0. */
export type SitScreen =
  | { readonly name: 'begin' }
  | { readonly name: 'question'; readonly place: number; readonly focus: number; readonly answer: Answer }
  | {
      readonly name: 'result';
      readonly place: number;
      readonly top: number;
      readonly from: 'sitting' | 'done';
    }
  | { readonly name: 'overview'; readonly selected: number }
  | { readonly name: 'done'; readonly selected: number };

export type SitOverlay =
  | { readonly name: 'keys' }
  | { readonly name: 'leave' }
  | { readonly name: 'finish' }
  | { readonly name: 'caution'; readonly pigments: readonly string[] };

export interface SitState extends QuizState {
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

/** The question in front, as the drill screen takes it. */
export function drillOf(world: SitWorld, state: SitState): DrillScreen | undefined {
  const { screen } = state;
  if (screen.name !== 'question') return undefined;
  const { drill, index } = questionAt(world, screen.place);
  const closed = isOpenAt(world, state, screen.place)
    ? undefined
    : isAnsweredAt(world, state, screen.place)
      ? 'This question is closed; the answer below counts.'
      : 'This question is closed; nothing was chosen.';
  return questionScreen(drill, world.grader.fields[index] ?? [], {
    answer: screen.answer,
    focus: screen.focus,
    hints: world.handout.rules.hints,
    ...(closed === undefined ? {} : { message: closed }),
  });
}

function questionBindings(world: SitWorld, state: SitState): QuizBinding[] {
  const drill = drillOf(world, state);
  if (drill === undefined || state.screen.name !== 'question') return [];
  const { rules } = world.handout;
  const moving = rules.backAllowed
    ? [letter('n', 'next', 'next'), letter('p', 'previous', 'back'), letter('o', 'overview', 'all questions')]
    : [];
  const leave = esc('leave');
  const time = rules.timePerQuestionSeconds === undefined ? [] : [letter('t', 'time', 'time left', true)];
  if (!isOpenAt(world, state, state.screen.place)) return [enter('go on'), ...moving, leave];
  const field = drill.fields[drill.focus];
  const isTray = field !== undefined && showsAs(field) === 'tray';
  return [
    upDown(isTray ? 'choose' : 'row'),
    ...(drill.fields.some((each) => showsAs(each) !== 'tray') ? [leftRight('less, more')] : []),
    enter('take it'),
    ...moving,
    ...(drill.fields.length > 1
      ? [
          {
            keys: { tab: 'next-field', 'back-tab': 'previous-field' },
            show: 'Tab',
            does: 'next row',
            quiet: true,
          } as const,
        ]
      : []),
    digits('1', 'choose by number', true),
    letter('c', 'caution', 'caution for this paint', true),
    ...time,
    leave,
  ];
}

function screenBindings(world: SitWorld, state: SitState): QuizBinding[] {
  const { screen } = state;
  const { backAllowed } = world.handout.rules;
  switch (screen.name) {
    case 'begin':
      return [enter(state.isResumed ? 'go on' : 'begin'), esc('leave')];
    case 'question':
      return questionBindings(world, state);
    case 'result':
      return [
        enter(screen.from === 'done' ? 'back to the list' : 'next'),
        SCROLL,
        esc(screen.from === 'done' ? 'back' : 'leave'),
      ];
    case 'overview':
      return [
        ...(backAllowed ? [upDown('move'), enter('open it')] : []),
        letter('f', 'finish', 'hand in'),
        esc('leave'),
      ];
    case 'done':
      return [upDown('move'), enter('open a result'), esc('close')];
  }
}

/** The keys that work now, most used first. */
export function sitBindings(world: SitWorld, state: SitState): QuizBinding[] {
  switch (state.overlay?.name) {
    case 'leave':
      return [enter('leave; go on later'), esc('stay'), STOP];
    case 'finish':
      return [enter('hand in'), esc('not yet'), STOP];
    case 'caution':
    case 'keys':
      return [
        { ...enter('close'), keys: { enter: 'confirm', escape: 'back', q: 'back', '?': 'back' } },
        STOP,
      ];
    default:
      return [...screenBindings(world, state), KEYS, STOP];
  }
}
