/** Mistaken ideas counted over a quiz: against the students and the answers that could have shown them, and no others. */
import { ideasIn } from '../drills/ideas-in.js';
import { IDEAS } from '../words/ideas.js';
import type { Handout } from './handout.js';
import { byCodePoint } from './names.js';

/** A whole answer to a question. */
export interface Shown {
  /** Index in the handout. */
  readonly question: number;
  /** 0-100; hands for none of the answers offered mark 0. */
  readonly mark: number;
  /** Id of the mistaken idea that it shows. */
  readonly idea?: string | undefined;
  /** How many gave it: 1 for a student's own, the hands of a room. */
  readonly times: number;
  /** Whose it is; hands are nobody's. */
  readonly student?: number;
}

/** A mistaken idea and how widely it was shown. */
export interface Misconception {
  readonly id: string;
  /** Answers that show it, of the answers to questions where some answer would show it. */
  readonly answers: number;
  readonly ofAnswers: number;
  /** Marks of 100 that those answers lost, all together: a near miss weighs little. */
  readonly cost: number;
  /** Students who showed it, of those who answered such a question; absent for hands. */
  readonly students?: number;
  readonly ofStudents?: number;
  /** Where it was shown, most often first: index in the handout and how often. */
  readonly shownIn: readonly { readonly question: number; readonly count: number }[];
  /** "9 of 12 students stayed near …, on 18 of the 67 answers where it could show". */
  readonly words: string;
  /** Completes "9 of 12 …". */
  readonly did: string;
  readonly instead: string;
}

const sumTimes = (shown: readonly Shown[]): number => shown.reduce((sum, { times }) => sum + times, 0);

const studentsIn = (shown: readonly Shown[]): number =>
  new Set(shown.flatMap(({ student }) => (student === undefined ? [] : [student]))).size;

function shownIn(shown: readonly Shown[]): Misconception['shownIn'] {
  const counts = new Map<number, number>();
  for (const { question, times } of shown) counts.set(question, (counts.get(question) ?? 0) + times);
  return [...counts]
    .map(([question, count]) => ({ question, count }))
    .sort((a, b) => b.count - a.count || a.question - b.question);
}

/** Counts the mistaken ideas, the one that cost most marks first. @param all complete answers only */
export function tallyIdeas({ studio, questions }: Handout, all: readonly Shown[]): Misconception[] {
  const ofQuestion = questions.map((_, index) => all.filter(({ question }) => question === index));
  const can = questions.map(({ drill }, index) =>
    (ofQuestion[index]?.length ?? 0) > 0 ? ideasIn(studio, drill) : new Set<string>(),
  );
  const isOfHands = all.every(({ student }) => student === undefined);
  const ids = [...new Set(all.flatMap(({ idea, times }) => (times > 0 ? (idea ?? []) : [])))];
  return ids
    .flatMap((id): Misconception[] => {
      const idea = IDEAS.get(id);
      if (idea === undefined) return [];
      const open = ofQuestion.filter((_, index) => can[index]?.has(id) === true).flat();
      const shown = open.filter((each) => each.idea === id && each.times > 0);
      const answers = sumTimes(shown);
      const ofAnswers = sumTimes(open);
      const cost = shown.reduce((sum, { mark, times }) => sum + (100 - mark) * times, 0);
      const common = {
        id,
        answers,
        ofAnswers,
        cost,
        shownIn: shownIn(shown),
        did: idea.did,
        instead: idea.instead,
      };
      if (isOfHands)
        return [{ ...common, words: `${answers} of the ${ofAnswers} hands where it could show ${idea.did}` }];
      const students = studentsIn(shown);
      const ofStudents = studentsIn(open);
      const words = `${students} of ${ofStudents} students ${idea.did}, on ${answers} of the ${ofAnswers} answers where it could show`;
      return [{ ...common, students, ofStudents, words }];
    })
    .sort((a, b) => b.cost - a.cost || byCodePoint(a.id, b.id));
}
