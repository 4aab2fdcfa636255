/** The state of a quiz in the room: one question at a time, a count for each choice, the result, then the next. */
import { firstAnswer } from '../../../drills/answers.js';
import { kindOf } from '../../../drills/kinds/index.js';
import type { Answer, Field, Grade } from '../../../drills/types.js';
import type { Handout, Question } from '../../../quiz/handout.js';
import type { Grader } from '../../../quiz/marking.js';
import {
  type Binding,
  back,
  close,
  digits,
  enter,
  KEYS,
  leftRight,
  letter,
  stop,
  upDown,
} from '../../kit/keys.js';
import type { Stage, World } from '../../kit/stage.js';
import type { Judged } from '../../result/judged.js';
import { showingKeys } from '../../result/keys.js';
import { panelKeys, type SheetPanel } from '../../sheet/keys.js';

/** Fixed for the lesson. */
export interface RoomWorld {
  readonly handout: Handout;
  readonly grader: Grader;
  readonly world: World;
}

/** Counts of one question: by row of choices and option, 0 where none was typed. */
export type Counts = readonly (readonly number[])[];

/** The result of the answer with most hands. */
export interface GradedStage extends Omit<Judged, 'answered'> {
  readonly name: 'result';
}

/** Where the lesson is with the question in front. */
export type RoomStage =
  | { readonly name: 'question' }
  /** Hands are counted for one row of choices. */
  | { readonly name: 'count'; readonly field: number; readonly option: number }
  | { readonly name: 'shown' }
  | GradedStage;

export type RoomOverlay = { readonly name: 'keys' | 'leave' } | SheetPanel;

export interface RoomState extends Stage {
  readonly place: number;
  /** After the last question, the list of all. */
  readonly isOver: boolean;
  readonly selected: number;
  readonly stage: RoomStage;
  readonly counts: readonly Counts[];
  readonly overlay?: RoomOverlay;
}

const STOP = stop('stop at once');

export const questionIn = ({ handout }: RoomWorld, place: number): Question =>
  handout.questions[place] as Question;

export const fieldsIn = ({ grader }: RoomWorld, place: number): readonly Field[] =>
  grader.fields[place] ?? [];

/** Counts of nothing. */
export function emptyCounts(grader: Grader): Counts[] {
  return grader.fields.map((fields) => fields.map(({ options }) => options.map(() => 0)));
}

export const countsOf = (
  { counts }: Pick<RoomState, 'counts'>,
  place: number,
  field: number,
): readonly number[] => counts[place]?.[field] ?? [];

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

/** Whether anything was counted for a question. */
export function isCounted(state: Pick<RoomState, 'counts'>, place: number): boolean {
  return (state.counts[place] ?? []).some((row) => sum(row) > 0);
}

/**
 * The answer of the room: in each row the choice with most hands, the first of them where two are equal; where no hand was
 * counted in a row, the best choice, so that the result speaks of what was asked.
 */
export function roomAnswer(world: RoomWorld, state: Pick<RoomState, 'counts'>, place: number): Answer {
  const { drill } = questionIn(world, place);
  const fields = fieldsIn(world, place);
  const best = kindOf(world.handout.studio, drill).best(drill);
  const chosen = fields.map(({ id, options }, index) => {
    const hands = countsOf(state, place, index);
    const most = Math.max(0, ...hands);
    return [id, most === 0 ? (best[id] ?? '') : (options[hands.indexOf(most)]?.id ?? '')] as const;
  });
  return { ...firstAnswer(fields), ...Object.fromEntries(chosen) };
}

/** The room's answer, graded. */
export function roomGrade(world: RoomWorld, state: Pick<RoomState, 'counts'>, place: number): Grade {
  return world.grader.grade(place, roomAnswer(world, state, place));
}

/** "7 of 12, 5 of 11": hands for the room's answer, row by row; rows without hands are left out. */
export function handsWords(world: RoomWorld, state: Pick<RoomState, 'counts'>, place: number): string {
  return fieldsIn(world, place)
    .flatMap((_, index) => {
      const hands = countsOf(state, place, index);
      return sum(hands) === 0 ? [] : [`${Math.max(0, ...hands)} of ${sum(hands)}`];
    })
    .join(', ');
}

/** The room's result, as it is drawn. */
export function judgedIn(world: RoomWorld, state: RoomState, stage: GradedStage): Judged {
  const { drill } = questionIn(world, state.place);
  const answer = roomAnswer(world, state, state.place);
  const grade = world.grader.grade(state.place, answer);
  return { ...stage, answered: { drill, answer, grade, mark: grade.mark } };
}

function stageKeys(world: RoomWorld, state: RoomState): Binding[] {
  const { stage, place } = state;
  const fields = fieldsIn(world, place);
  const moving = [letter('n', 'next', 'next question'), letter('p', 'previous', 'question before')];
  switch (stage.name) {
    case 'question':
      return [enter('count hands'), ...moving, back('leave')];
    case 'count': {
      const last = stage.field === fields.length - 1;
      return [
        digits('0', 'how many', false),
        upDown('choice'),
        enter(last ? 'show' : 'next row'),
        leftRight('one less, more'),
        { keys: { erase: 'erase' }, show: 'Backspace', does: 'take the last figure back', quiet: true },
        {
          keys: { tab: 'next-field', 'back-tab': 'previous-field' },
          show: 'Tab',
          does: 'another row',
          quiet: true,
        },
        back('back'),
      ];
    }
    case 'shown':
      return [enter('show what it gives'), letter('c', 'recount', 'count again'), ...moving, back('leave')];
    case 'result':
      return [
        enter('next question'),
        ...showingKeys(state, world.world, judgedIn(world, state, stage)),
        letter('p', 'previous', 'question before'),
        back('back'),
      ];
  }
}

/** The keys that work now, most used first. */
export function roomKeys(world: RoomWorld, state: RoomState): Binding[] {
  const { overlay } = state;
  switch (overlay?.name) {
    case 'leave':
      return [enter('leave'), back('stay'), STOP];
    case 'keys':
      return [close(), STOP];
    case 'sheet':
    case 'scene':
      return [
        ...(state.stage.name === 'result'
          ? panelKeys(state, world.world, judgedIn(world, state, state.stage), overlay)
          : []),
        STOP,
      ];
    default:
      if (state.isOver) return [upDown('move'), enter('open a result'), back('close'), KEYS, STOP];
      return [...stageKeys(world, state), KEYS, STOP];
  }
}
