/** The state of a quiz in the room: one question at a time, its votes, the answers explained, then the next. */
import type { Answer } from '../../../drills/types.js';
import type { Handout, Question as HandoutQuestion } from '../../../quiz/handout.js';
import { type LetteredAnswer, letteredHandout } from '../../../quiz/lettered.js';
import { createGrader, type Grader } from '../../../quiz/marking.js';
import type { RoomCounts } from '../../../quiz/room-counts.js';
import { countedIn, leading, type Turn, type Vote, votesOf } from '../../../quiz/room-votes.js';
import type { Voice } from '../../../words/voice.js';
import type { Question } from '../../drill/question.js';
import type { Stage, World } from '../../kit/stage.js';
import type { Judged } from '../../result/judged.js';
import type { SheetPanel } from '../../sheet/keys.js';

/** Fixed for the lesson. */
export interface RoomWorld {
  readonly handout: Handout;
  readonly grader: Grader;
  readonly world: World;
  /** By place. */
  readonly letters: readonly (readonly LetteredAnswer[])[];
  /** The file of an earlier hour that can be gone on with. */
  readonly found?: { readonly file: string; readonly counts: RoomCounts };
  /** Why the last file that is there cannot be gone on with. */
  readonly note?: string;
  /** The file of a new one. */
  readonly fresh: { readonly file: string; readonly counts: RoomCounts };
}

/** The result of one of the lettered answers. */
export interface GradedStage extends Omit<Judged, 'answered'> {
  readonly name: 'result';
  /** Place among the letters. */
  readonly at: number;
}

/** Where the lesson is with the question in front. */
export type RoomStage =
  /** Counts are there: whether to go on with them, or why not. */
  | { readonly name: 'begin' }
  /** `at`: the answer in front, where they do not all fit. */
  | { readonly name: 'question'; readonly at: number }
  /**
   * Hands are typed out of sight: a number for each letter, then one for none of them; digits go to the one at `at`. `isAnew`: it was come
   * to just now, and as it cannot be seen the first digit takes the place of what it had.
   */
  | {
      readonly name: 'count';
      readonly typed: readonly string[];
      readonly at: number;
      readonly isAnew: boolean;
    }
  | { readonly name: 'shown' }
  | GradedStage;

export type RoomOverlay = { readonly name: 'keys' | 'leave' } | SheetPanel;

export interface RoomState extends Stage {
  readonly place: number;
  /** After the last question, the list of all. */
  readonly isOver: boolean;
  readonly selected: number;
  readonly stage: RoomStage;
  /** The vote that is asked for or being counted. */
  readonly turn: Turn;
  /** The picture of the question in greys. */
  readonly inGrey: boolean;
  readonly counts: RoomCounts;
  /** Whether they go to the file that was found. */
  readonly goesOn: boolean;
  /** What the timer is set to, seconds, and when it ends; without an end it does not run. Milliseconds since 1970. */
  readonly timerSeconds: number;
  readonly timerEnd?: number;
  readonly now: number;
  readonly overlay?: RoomOverlay;
}

/** What is fixed, from a handout. @param voice of whoever reads the answers */
export function roomWorld(
  handout: Handout,
  world: World,
  voice: Voice,
  files: Pick<RoomWorld, 'found' | 'note' | 'fresh'>,
): RoomWorld {
  return {
    handout,
    grader: createGrader(handout),
    world,
    letters: letteredHandout(handout, voice),
    ...files,
  };
}

export const questionIn = ({ handout }: RoomWorld, place: number): HandoutQuestion =>
  handout.questions[place] as HandoutQuestion;

export const lettersIn = ({ letters }: RoomWorld, place: number): readonly LetteredAnswer[] =>
  letters[place] ?? [];

/** The votes on a question that are kept. */
export const votesAt = (
  world: RoomWorld,
  { counts }: Pick<RoomState, 'counts'>,
  place: number,
): Partial<Record<Turn, Vote>> => votesOf(countedIn(counts, questionIn(world, place).drill.id));

/** Place of the letter with most hands in the last vote; undefined in a tie, without hands, or when it is none of them. */
export function mostVoted(
  world: RoomWorld,
  state: Pick<RoomState, 'counts'>,
  place: number,
): number | undefined {
  const { first = [], second } = votesAt(world, state, place);
  const [lead, ...others] = leading(second ?? first);
  return others.length > 0 || lead === lettersIn(world, place).length ? undefined : lead;
}

/** What the timer shows; undefined where it does not run. */
export const secondsLeft = ({ timerEnd, now }: Pick<RoomState, 'timerEnd' | 'now'>): number | undefined =>
  timerEnd === undefined ? undefined : Math.max(0, Math.ceil((timerEnd - now) / 1000));

/** The question in front, as the screens of a drill read it. Nothing is chosen. */
export function shownQuestion(world: RoomWorld, state: RoomState): Question {
  const { place, inGrey } = state;
  const { drill } = questionIn(world, place);
  return {
    drill,
    fields: world.grader.fields[place] ?? [],
    answer: {},
    focus: 0,
    inGrey,
    hint: world.handout.rules.hints ? 'shown' : 'hidden',
  };
}

/** One of the lettered answers, as its result is drawn. */
export function judgedIn(world: RoomWorld, { place }: RoomState, stage: GradedStage): Judged {
  const { drill } = questionIn(world, place);
  const answer: Answer = lettersIn(world, place)[stage.at]?.answer ?? {};
  const grade = world.grader.grade(place, answer);
  return { ...stage, answered: { drill, answer, grade, mark: grade.mark } };
}
