/** What a class's answers say about the questions and about what the class misunderstood. */
import { mean, standardDeviation } from 'simple-statistics';
import { kindOf } from '../drills/kinds/index.js';
import type { Answer } from '../drills/types.js';
import { canonicalJson } from '../text/canonical-json.js';
import { IDEAS } from '../words/ideas.js';
import type { ClassResult, Student } from './class.js';
import { type Lesson, lessonFrom } from './lesson.js';
import type { QuestionMark } from './marking.js';
import {
  correctedPointBiserial,
  cronbachAlpha,
  difficultyIndex,
  kr20,
  pointBiserial,
  standardErrorOfMeasurement,
  type UpperLower,
  upperLower,
} from './statistics.js';

/** From this many sittings on the groups are the classic 27 percent; below, halves. Common practice, no source. */
const CLASSIC_GROUPS_FROM = 30;

/** Item statistics are steady from here on (Brigham Young University Testing Services, item analysis guidance: 100 to 200). */
const STEADY_FROM = 100;

/** A whole answer, all its choices together, and how often it was given. */
export interface AnswerCount {
  readonly answer: Answer;
  readonly label: string;
  readonly mark: number;
  /** 85 or more. */
  readonly isGood: boolean;
  readonly count: number;
}

/** A mistaken idea and how many of those who answered one question showed it. */
export interface IdeaCount {
  readonly id: string;
  readonly count: number;
  readonly of: number;
  /** "7 of 12 went across the wheel where the colour had to stay". */
  readonly words: string;
  readonly instead: string;
}

export interface QuestionAnalysis {
  readonly id: string;
  readonly answered: number;
  /** Share right, 0-1; a question left open counts as not right. */
  readonly difficulty: number;
  readonly meanMark: number;
  readonly groups?: UpperLower;
  readonly pointBiserial?: number;
  readonly correctedPointBiserial?: number;
  /** Most frequent first. */
  readonly answers: readonly AnswerCount[];
  /** Most frequent first. */
  readonly ideas: readonly IdeaCount[];
  readonly bestLabel: string;
}

export interface Reliability {
  readonly kr20?: number;
  readonly alpha?: number;
  /** Of the points, from alpha. */
  readonly standardError?: number;
}

export interface ClassAnalysis {
  readonly sittings: number;
  readonly questions: readonly QuestionAnalysis[];
  readonly meanPercent?: number;
  readonly reliability: Reliability;
  readonly lesson: Lesson;
  readonly groupWords: string;
  readonly warnings: readonly string[];
}

/** Size of the upper and of the lower group. */
export function groupSize(sittings: number): number {
  return sittings >= CLASSIC_GROUPS_FROM ? Math.round(sittings * 0.27) : Math.floor(sittings / 2);
}

const maybe = <K extends string, T>(key: K, value: T | undefined): { [P in K]?: T } =>
  value === undefined ? {} : ({ [key]: value } as { [P in K]?: T });

function countIdeas(marks: readonly QuestionMark[], of: number): IdeaCount[] {
  const counts = new Map<string, number>();
  for (const { idea } of marks) if (idea !== undefined) counts.set(idea, (counts.get(idea) ?? 0) + 1);
  return [...counts]
    .flatMap(([id, count]) => {
      const idea = IDEAS.get(id);
      return idea === undefined
        ? []
        : [{ id, count, of, words: `${count} of ${of} ${idea.did}`, instead: idea.instead }];
    })
    .sort((a, b) => b.count - a.count || (a.id < b.id ? -1 : 1));
}

function analyse(result: ClassResult, index: number, totals: readonly number[]): QuestionAnalysis {
  const { handout, students } = result;
  const { drill } = handout.questions[index] as ClassResult['handout']['questions'][number];
  const kind = kindOf(handout.studio, drill);
  const best = kind.best(drill);
  const marks = students.map((each) => each.marks[index] as QuestionMark);
  const right = marks.map((mark) => mark.right);
  const given = marks.filter(({ state }) => state === 'answered');
  const size = groupSize(students.length);
  const answers = new Map<string, AnswerCount>();
  for (const { answer = {}, mark, right: isGood } of given) {
    const key = canonicalJson(answer);
    const before = answers.get(key) ?? { answer, label: kind.label(drill, answer), mark, isGood, count: 0 };
    answers.set(key, { ...before, count: before.count + 1 });
  }
  return {
    id: drill.id,
    answered: given.length,
    difficulty: difficultyIndex(right.filter(Boolean).length, students.length),
    meanMark: mean(marks.map(({ mark }) => mark)),
    ...maybe('groups', size > 0 ? upperLower(right, totals, size) : undefined),
    ...maybe('pointBiserial', pointBiserial(right, totals)),
    ...maybe(
      'correctedPointBiserial',
      correctedPointBiserial(
        right,
        totals,
        marks.map(({ points }) => points),
      ),
    ),
    answers: [...answers.values()].sort((a, b) => b.count - a.count || (a.label < b.label ? -1 : 1)),
    ideas: countIdeas(given, given.length),
    bestLabel: kind.label(drill, best),
  };
}

function reliabilityOf(students: readonly Student[]): Reliability {
  const alpha = cronbachAlpha(students.map(({ marks }) => marks.map(({ points }) => points)));
  const spread = students.length === 0 ? 0 : standardDeviation(students.map(({ points }) => points));
  return {
    ...maybe('kr20', kr20(students.map(({ marks }) => marks.map(({ right }) => right)))),
    ...maybe('alpha', alpha),
    ...maybe('standardError', alpha === undefined ? undefined : standardErrorOfMeasurement(spread, alpha)),
  };
}

function warningsFor(students: readonly Student[], { alpha, kr20: kr }: Reliability): string[] {
  const count = students.length;
  const partial = students.filter(({ isPartial }) => isPartial).length;
  return [
    ...(count > 0 && count < STEADY_FROM
      ? [
          `With ${count} sitting${count === 1 ? '' : 's'} these figures are hints: they are steady from ${STEADY_FROM} to 200 on. Drop no question on one figure.`,
        ]
      : []),
    ...(alpha === undefined && count > 0
      ? ['Reliability needs two questions, two sittings and totals that differ; here it says nothing.']
      : []),
    ...(alpha !== undefined && (alpha < 0 || (kr ?? 0) < 0)
      ? [
          'A reliability below 0 means that the questions pull against each other, or that the class is too small.',
        ]
      : []),
    ...(partial > 0
      ? [`${partial} partial sitting${partial === 1 ? '' : 's'}: questions left open count as not right.`]
      : []),
  ];
}

/** Analyses a marked class. Without a sitting there are no questions in it. */
export function analyseClass(result: ClassResult): ClassAnalysis {
  const { handout, students } = result;
  const totals = students.map(({ points }) => points);
  const reliability = reliabilityOf(students);
  const size = groupSize(students.length);
  return {
    sittings: students.length,
    questions:
      students.length === 0 ? [] : handout.questions.map((_, index) => analyse(result, index, totals)),
    ...maybe('meanPercent', students.length === 0 ? undefined : mean(students.map(({ percent }) => percent))),
    reliability,
    lesson: lessonFrom(result),
    groupWords:
      students.length >= CLASSIC_GROUPS_FROM
        ? `the best 27 % (${size}) against the weakest 27 %`
        : `the better half (${size}) against the weaker half`,
    warnings: warningsFor(students, reliability),
  };
}
