/**
 * Whole answers with a letter each, for paper and for the room: all of them where a drill allows few, else the best among wrong ones that
 * tempt. The same drill and seed give the same letters, so that what was printed can be typed in.
 */
import { seededDraw, seedOf, shuffled } from '../chance/draw.js';
import { countAnswers, everyAnswer } from '../drills/answers.js';
import { type Drill, kindOf, markOf } from '../drills/kinds/index.js';
import { answerKey, lookAt, misses, neighbours, type SeenAnswer } from '../drills/look.js';
import type { Answer, Field } from '../drills/types.js';
import { GOOD_MARK } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import { cleanText } from '../text/sanitize.js';
import { type Voice, WRITTEN } from '../words/voice.js';
import type { Handout } from './handout.js';

/** A whole answer that is called by its letter. */
export interface LetteredAnswer {
  /** A to F. */
  readonly letter: string;
  readonly answer: Answer;
  /** What it is, in words. */
  readonly label: string;
}

/** Most letters of one question: more are not read by a room, nor told apart on paper. */
export const MOST_LETTERS = 6;

const LETTERS = 'ABCDEF';

/** What an answer is, in words: of a single choice all that is said of it, but of a paint its name alone. */
function labelOf(
  studio: Studio,
  drill: Drill,
  fields: readonly Field[],
  answer: Answer,
  voice: Voice,
): string {
  const [only, ...others] = fields;
  const option = only?.options.find(({ id }) => id === answer[only.id]);
  const label = kindOf(studio, drill).label(drill, answer, voice);
  if (option?.note === undefined || option.pigment !== undefined || others.length > 0)
    return cleanText(label, 240);
  // The note of a statement is the statement in full.
  return cleanText(drill.kind === 'worked' ? option.note : `${label} (${option.note})`, 240);
}

/** The nearest miss in one choice, for each choice that has one; those of new ideas first. */
function slips(fields: readonly Field[], best: Answer, traps: readonly SeenAnswer[]): Answer[] {
  const left = misses(traps);
  const differsIn = ({ answer }: SeenAnswer): string | undefined =>
    fields.find(({ id }) => answer[id] !== best[id])?.id;
  const firsts = left.filter(
    (each, at) => left.findIndex((one) => differsIn(one) === differsIn(each)) === at,
  );
  return [...firsts, ...left.filter((each) => !firsts.includes(each))].map(({ answer }) => answer);
}

/** Two slips in one answer; undefined where both are of one choice. */
function both(fields: readonly Field[], best: Answer, one: Answer, other: Answer): Answer | undefined {
  const clashes = fields.some(({ id }) => one[id] !== best[id] && other[id] !== best[id]);
  if (clashes) return undefined;
  return Object.fromEntries(
    fields.map(({ id }): [string, string] => [id, (one[id] !== best[id] ? one[id] : other[id]) ?? '']),
  );
}

/**
 * Wrong answers about the best. Were each but one choice away from it, the best would be what most of them agree on, and be found without
 * looking at the question: so slips are also put together.
 */
function wrongAround(
  fields: readonly Field[],
  best: Answer,
  traps: readonly SeenAnswer[],
  mark: (answer: Answer) => number,
): Answer[] {
  const single = slips(fields, best, traps);
  // Two slips may make up for each other: then they are no wrong answer.
  const join = (one: Answer | undefined, other: Answer | undefined): Answer | undefined => {
    const joined = one && other && both(fields, best, one, other);
    return joined === undefined || mark(joined) >= GOOD_MARK ? undefined : joined;
  };
  const pairs = single.flatMap((one, at) => single.slice(at + 1).map((other) => [one, other] as const));
  const [first, second] = pairs.find(([one, other]) => join(one, other) !== undefined) ?? single;
  const [third, ...rest] = single.filter((each) => each !== first && each !== second);
  const pair = join(first, second);
  const trio = join(pair, third) ?? join(second, third) ?? join(first, third);
  return [first, second, pair, third, trio, ...rest].filter((answer) => answer !== undefined);
}

/** How many of the answers make the same first choice as one of them. */
const alike = (first: string, answers: readonly Answer[], one: Answer): number =>
  answers.filter((each) => each[first] === one[first]).length;

/**
 * The best with the tempting answers that a kind names. They differ in their first choice, a paint for the most part; were that of the best
 * met most often, it would be told: so a second answer with one of the other paints comes in.
 */
function withEcho(
  fields: readonly Field[],
  best: Answer,
  tempting: readonly Answer[],
  mark: (answer: Answer) => number,
): Answer[] {
  const [{ id: first } = { id: '' }, ...others] = fields;
  const kept = [best, ...tempting].slice(0, MOST_LETTERS);
  const isOther = (answer: Answer): boolean => answer[first] !== best[first];
  const isTold = kept.filter(isOther).every((each) => alike(first, kept, each) < alike(first, kept, best));
  if (!isTold || kept.length < 3) return kept;
  const known = new Set(kept.map((answer) => answerKey(fields, answer)));
  for (const trap of kept.filter(isOther)) {
    const echo = [{ ...best, [first]: trap[first] ?? '' }, ...neighbours(others, trap)].find(
      (answer) => !known.has(answerKey(fields, answer)) && mark(answer) < GOOD_MARK,
    );
    if (echo === undefined) continue;
    const isMet = alike(first, kept, best) > 2;
    const last = kept.findLastIndex(
      (answer) => answer !== best && answer !== trap && isOther(answer) !== isMet,
    );
    return isMet || kept.length >= MOST_LETTERS ? kept.with(last, echo) : [...kept, echo];
  }
  return kept;
}

function chosenAnswers(studio: Studio, drill: Drill, fields: readonly Field[], seed: number): Answer[] {
  const { best, traps } = lookAt(studio, drill);
  const mark = (answer: Answer): number => markOf(studio, drill, answer);
  const wrong =
    kindOf(studio, drill).tempting === undefined
      ? wrongAround(fields, best.answer, traps, mark)
      : withEcho(
          fields,
          best.answer,
          misses(traps).map(({ answer }) => answer),
          mark,
        ).slice(1);
  // A drill in which no slip costs a good mark still has something to choose from.
  const others = wrong.length > 0 ? wrong : traps.map(({ answer }) => answer);
  const distinct = new Map([best.answer, ...others].map((answer) => [answerKey(fields, answer), answer]));
  const kept = [...distinct.values()].slice(0, MOST_LETTERS);
  return shuffled(kept, seededDraw(seedOf(seed, drill.id, 'letters')));
}

/**
 * The lettered answers of a drill. Where it allows {@link MOST_LETTERS} or fewer they are all there, in the drill's own order; else the
 * best and what tempts, in an order by the seed.
 * @param seed that of the handout
 * @param voice of whoever reads them; letters and answers do not depend on it
 */
export function letteredAnswers(
  studio: Studio,
  drill: Drill,
  seed: number,
  voice: Voice = WRITTEN,
): readonly LetteredAnswer[] {
  const fields = kindOf(studio, drill).fields(drill);
  const answers =
    countAnswers(fields) <= MOST_LETTERS
      ? [...everyAnswer(fields)]
      : chosenAnswers(studio, drill, fields, seed);
  return answers.map((answer, at) => ({
    letter: LETTERS[at] as string,
    answer,
    label: labelOf(studio, drill, fields, answer, voice),
  }));
}

/** The lettered answers of every question of a handout, in its order. */
export function letteredHandout(
  { studio, questions, seed }: Pick<Handout, 'studio' | 'questions' | 'seed'>,
  voice?: Voice,
): readonly (readonly LetteredAnswer[])[] {
  return questions.map(({ drill }) => letteredAnswers(studio, drill, seed, voice));
}
