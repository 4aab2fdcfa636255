/** The counts of a room, marked: every offered answer is graded as a student's would be. */
import { kindOf } from '../drills/kinds/index.js';
import type { Answer } from '../drills/types.js';
import { GOOD_MARK } from '../judgement/index.js';
import type { Handout } from './handout.js';
import { type Interval, shareInterval } from './intervals.js';
import type { Grader } from './marking.js';
import { type Misconception, type Shown, tallyIdeas } from './misconceptions.js';
import type { Hands, RoomCounts, RoomQuestion } from './room-counts.js';

/** One vote on one question. */
export interface Vote {
  readonly hands: number;
  /** Hands for an answer of 85 or more. */
  readonly right: number;
  /** Of the share that was right, by the score method. */
  readonly interval?: Interval | undefined;
}

/** A whole answer, what it marks and its hands. */
export interface VotedAnswer extends Hands {
  readonly answer: Answer;
  readonly label: string;
  readonly mark: number;
  readonly isGood: boolean;
  readonly idea?: string;
}

export interface RoomQuestionResult {
  /** Index in the handout. */
  readonly index: number;
  readonly answers: readonly VotedAnswer[];
  readonly none?: Hands | undefined;
  readonly first: Vote;
  /** After the room had talked. */
  readonly second?: Vote;
}

/** A room, question by question in the order of the handout. */
export interface RoomResult {
  readonly file: string;
  readonly held: string;
  readonly questions: readonly RoomQuestionResult[];
  /** Of the last vote on each question. */
  readonly misconceptions: readonly Misconception[];
}

/** A counts file and the name that it came under. */
export interface RoomFile {
  readonly file: string;
  /** False: it only lay in a folder that was named. */
  readonly isNamed?: boolean;
  readonly counts: RoomCounts;
}

/** What is wrong with counts as those of a handout; undefined when nothing is. */
export function roomFault(
  handout: Handout,
  grader: Grader,
  { handoutDigest, questions }: RoomCounts,
): string | undefined {
  if (handoutDigest !== handout.digest) return 'counts of another handout, or of one changed since';
  for (const { drill, offered } of questions) {
    const index = handout.questions.findIndex((question) => question.drill.id === drill);
    if (index < 0) return `the handout has no question "${drill}"`;
    if (offered.some(({ answer }) => grader.stateOf(index, answer) !== 'answered'))
      return `the question "${drill}" is counted with an answer that it does not have`;
  }
  return undefined;
}

type Turn = 'first' | 'second';

const handsIn = (hands: Hands | undefined, turn: Turn): number => hands?.[turn] ?? 0;

function vote(answers: readonly VotedAnswer[], none: Hands | undefined, turn: Turn): Vote {
  const sum = (all: readonly Hands[]): number => all.reduce((total, each) => total + handsIn(each, turn), 0);
  const hands = sum(answers) + handsIn(none, turn);
  const right = sum(answers.filter(({ isGood }) => isGood));
  return { hands, right, interval: shareInterval(right, hands) };
}

function questionResult(
  handout: Handout,
  grader: Grader,
  index: number,
  counted: RoomQuestion,
): RoomQuestionResult {
  const { drill } = handout.questions[index] as Handout['questions'][number];
  const { offered, none } = counted;
  const answers = offered.map(({ answer, ...hands }): VotedAnswer => {
    const { mark, idea } = grader.grade(index, answer);
    const label = kindOf(handout.studio, drill).label(drill, answer);
    return {
      ...hands,
      answer,
      label,
      mark,
      isGood: mark >= GOOD_MARK,
      ...(idea === undefined ? {} : { idea }),
    };
  });
  const isTwice = offered.some(({ second }) => second !== undefined);
  return {
    index,
    answers,
    none,
    first: vote(answers, none, 'first'),
    ...(isTwice ? { second: vote(answers, none, 'second') } : {}),
  };
}

/** The hands of a room as answers that are nobody's: those of the last vote. */
export const shownByHands = (questions: readonly RoomQuestionResult[]): Shown[] =>
  questions.flatMap(({ index, answers, none, second }) => {
    const turn = second === undefined ? 'first' : 'second';
    return [
      ...answers.map((each) => ({
        question: index,
        mark: each.mark,
        idea: each.idea,
        times: handsIn(each, turn),
      })),
      ...(none === undefined ? [] : [{ question: index, mark: 0, times: handsIn(none, turn) }]),
    ];
  });

/** Marks a room whose counts have no {@link roomFault}. */
export function markRoom(handout: Handout, grader: Grader, { file, counts }: RoomFile): RoomResult {
  const counted = new Map(counts.questions.map((question) => [question.drill, question]));
  const questions = handout.questions.flatMap(({ drill }, index) => {
    const question = counted.get(drill.id);
    return question === undefined ? [] : [questionResult(handout, grader, index, question)];
  });
  return { file, held: counts.held, questions, misconceptions: tallyIdeas(handout, shownByHands(questions)) };
}
