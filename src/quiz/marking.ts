/** Marking: every mark is computed from the answers; nothing that a student's file says about marks or order is believed. */
import { requireComplete } from '../drills/answers.js';
import { kindOf } from '../drills/kinds/index.js';
import type { Answer, Field, Grade } from '../drills/types.js';
import { InputError } from '../errors.js';
import { GOOD_MARK } from '../judgement/index.js';
import { canonicalJson } from '../text/canonical-json.js';
import type { Sitting } from './answers.js';
import type { GivenAnswer } from './events.js';
import type { Handout, Question } from './handout.js';

/** `open`: nothing chosen; `unfinished`: a row left open; `unfit`: choices that the question does not have. */
export type AnswerState = 'answered' | 'open' | 'unfinished' | 'unfit';

/** One question of one sitting. */
export interface QuestionMark {
  readonly state: AnswerState;
  readonly answer?: Answer;
  /** 0-100; 0 unless answered. */
  readonly mark: number;
  readonly points: number;
  /** A good mark, 85 or more: what the right-or-wrong statistics count. */
  readonly right: boolean;
  /** Id of the mistaken idea that the answer shows. */
  readonly idea?: string;
}

/** A sitting with its marks, questions in the order of the handout. */
export interface MarkedSitting {
  readonly marks: readonly QuestionMark[];
  readonly answered: number;
  readonly right: number;
  readonly points: number;
  readonly possible: number;
  /** 0-100. */
  readonly percent: number;
}

/** Grades answers to a handout's questions; the same answer is graded once. */
export interface Grader {
  readonly fields: readonly (readonly Field[])[];
  stateOf(question: number, answer: Answer | undefined): AnswerState;
  /** @throws InputError when the answer does not fit */
  grade(question: number, answer: Answer): Grade;
}

/** Sets up the marking of a handout. */
export function createGrader({ questions, studio }: Pick<Handout, 'questions' | 'studio'>): Grader {
  const fields = questions.map(({ drill }) => kindOf(studio, drill).fields(drill));
  const graded = questions.map(() => new Map<string, Grade>());
  return {
    fields,
    stateOf(question, answer) {
      if (answer === undefined || Object.keys(answer).length === 0) return 'open';
      const rows = fields[question] as readonly Field[];
      const known = Object.entries(answer).every(([id, option]) =>
        rows.some((row) => row.id === id && row.options.some((each) => each.id === option)),
      );
      if (!known) return 'unfit';
      try {
        requireComplete(rows, answer);
        return 'answered';
      } catch (error) {
        if (error instanceof InputError) return 'unfinished';
        throw error;
      }
    },
    grade(question, answer) {
      const key = canonicalJson(answer);
      const before = graded[question]?.get(key);
      if (before !== undefined) return before;
      const { drill } = questions[question] as Question;
      const grade = kindOf(studio, drill).grade(drill, answer);
      graded[question]?.set(key, grade);
      return grade;
    },
  };
}

/** Points are kept to a thousandth, so that sums in any order are equal. */
const toPoints = (points: number): number => Math.round(points * 1000) / 1000;

function markQuestion(
  grader: Grader,
  index: number,
  { points }: Question,
  given: GivenAnswer | undefined,
): QuestionMark {
  const state = grader.stateOf(index, given?.answer);
  const answer = given?.answer;
  if (state !== 'answered' || answer === undefined) {
    return { state, ...(answer === undefined ? {} : { answer }), mark: 0, points: 0, right: false };
  }
  const { mark, idea } = grader.grade(index, answer);
  return {
    state,
    answer,
    mark,
    points: toPoints((mark / 100) * points),
    right: mark >= GOOD_MARK,
    ...(idea === undefined ? {} : { idea }),
  };
}

/** Marks a sitting. */
export function markSitting(handout: Handout, grader: Grader, sitting: Sitting): MarkedSitting {
  const given = new Map(sitting.answers.map((answer) => [answer.drill, answer]));
  const marks = handout.questions.map((question, index) =>
    markQuestion(grader, index, question, given.get(question.drill.id)),
  );
  const points = toPoints(marks.reduce((sum, mark) => sum + mark.points, 0));
  const possible = toPoints(handout.questions.reduce((sum, question) => sum + question.points, 0));
  return {
    marks,
    answered: marks.filter(({ state }) => state === 'answered').length,
    right: marks.filter(({ right }) => right).length,
    points,
    possible,
    percent: Math.round((points / possible) * 1000) / 10,
  };
}
