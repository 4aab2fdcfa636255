/** Votes of a room on lettered answers: taken into its counts, and told in words. Pure. */
import { canonicalJson } from '../text/canonical-json.js';
import type { LetteredAnswer } from './lettered.js';
import type { Hands, RoomCounts, RoomQuestion } from './room-counts.js';

/** Which vote: `second` comes after the room has talked. */
export type Turn = 'first' | 'second';

/** Hands of one vote in the order of the letters; those for none of them come last. */
export type Vote = readonly number[];

type Letters = readonly LetteredAnswer[];

const sum = (hands: Vote): number => hands.reduce((total, each) => total + each, 0);

/** The counts of one question; undefined where none are kept. */
export const countedIn = ({ questions }: RoomCounts, drill: string): RoomQuestion | undefined =>
  questions.find((question) => question.drill === drill);

/** The votes that were taken on a question, one or two; none without counts. */
export function votesOf(counted: RoomQuestion | undefined): Partial<Record<Turn, Vote>> {
  if (counted === undefined) return {};
  const { offered, none } = counted;
  const inTurn = (turn: Turn): Vote => [...offered, none].map((hands) => hands?.[turn] ?? 0);
  const isTwice = offered.some(({ second }) => second !== undefined);
  return { first: inTurn('first'), ...(isTwice ? { second: inTurn('second') } : {}) };
}

/** A question with its votes; undefined where nobody voted. A second vote without hands is none. */
function questionWith(
  drill: string,
  letters: Letters,
  votes: Partial<Record<Turn, Vote>>,
): RoomQuestion | undefined {
  const { first, second } = votes;
  if (first === undefined || sum(first) === 0) return undefined;
  const isTwice = second !== undefined && sum(second) > 0;
  const handsAt = (at: number): Hands => ({
    first: first[at] ?? 0,
    ...(isTwice ? { second: second[at] ?? 0 } : {}),
  });
  const none = handsAt(letters.length);
  return {
    drill,
    offered: letters.map(({ answer }, at) => ({ answer, ...handsAt(at) })),
    ...(none.first + (none.second ?? 0) > 0 ? { none } : {}),
  };
}

/** Counts with a vote on one question in place of what it had in that turn. @param order ids of all drills, as the handout has them */
export function withVote(
  counts: RoomCounts,
  order: readonly string[],
  { drill, letters, turn, vote }: { drill: string; letters: Letters; turn: Turn; vote: Vote },
): RoomCounts {
  const before = votesOf(countedIn(counts, drill));
  const next = questionWith(drill, letters, turn === 'first' ? { first: vote } : { ...before, second: vote });
  const all = [...counts.questions.filter((each) => each.drill !== drill), ...(next ? [next] : [])];
  return { ...counts, questions: all.sort((a, b) => order.indexOf(a.drill) - order.indexOf(b.drill)) };
}

/**
 * Counts with their answers in the order of the letters.
 * @param lettersOf the lettered answers of a drill by its id
 * @returns undefined where a question was counted with other answers than it has letters for now
 */
export function inLetters(
  counts: RoomCounts,
  lettersOf: (drill: string) => Letters | undefined,
): RoomCounts | undefined {
  const questions = counts.questions.flatMap((question): RoomQuestion[] => {
    const letters = lettersOf(question.drill);
    const byAnswer = new Map(question.offered.map((each) => [canonicalJson(each.answer), each]));
    const offered = letters?.flatMap(({ answer }) => byAnswer.get(canonicalJson(answer)) ?? []) ?? [];
    const isSame = offered.length === letters?.length && offered.length === question.offered.length;
    return isSame ? [{ ...question, offered }] : [];
  });
  return questions.length === counts.questions.length ? { ...counts, questions } : undefined;
}

/** Places with the most hands: several in a tie, none without hands. */
export function leading(vote: Vote): number[] {
  const most = Math.max(0, ...vote);
  return most === 0 ? [] : vote.flatMap((hands, at) => (hands === most ? [at] : []));
}

export const NONE = 'none of these';

const nameAt = (letters: Letters, at: number): string => letters[at]?.letter ?? NONE;

/** "B and C", "A, B and C". */
const joined = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** "12 of 24 for C", "a tie: B and C with 9 of 24 each". */
export function voteWords(letters: Letters, vote: Vote): string {
  const lead = leading(vote);
  const hands = `${vote[lead[0] ?? 0] ?? 0} of ${sum(vote)}`;
  if (lead.length === 0) return 'no hands';
  const names = joined(lead.map((at) => nameAt(letters, at)));
  return lead.length === 1 ? `${hands} for ${names}` : `a tie: ${names} with ${hands} each`;
}

/** Hands for one answer: "12 hands", "12 hands, then 15". */
export function handsWords({ first, second }: Partial<Record<Turn, Vote>>, at: number): string {
  const hands = first?.[at] ?? 0;
  const said = `${hands} ${hands === 1 ? 'hand' : 'hands'}`;
  return second === undefined ? said : `${said}, then ${second[at] ?? 0}`;
}
