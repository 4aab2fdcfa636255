/**
 * What a drill looks like to whoever writes it: the colours that it shows, its best answer, and the wrong answers that tempt.
 * The checker judges by these figures and the contact sheet shows them.
 */
import { shadingLine } from '../colour/chroma.js';
import { type ColourReading, readColour } from '../colour/reading.js';
import { GOOD_MARK, type Goal } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import { type Drill, kindOf } from './kinds/index.js';
import type { Answer, Field, Grade, Kind, ResultSwatch } from './types.js';

/** An answer with what the program says and shows of it. */
export interface SeenAnswer {
  readonly answer: Answer;
  readonly label: string;
  readonly grade: Grade;
  /** The colour that it gives; absent for kinds whose answers give none. */
  readonly swatch?: ResultSwatch;
  readonly colour?: ColourReading;
}

/** A drill as it is seen. */
export interface DrillLook {
  /** The colours of the question, then those that the result shows whatever was answered. */
  readonly swatches: readonly ResultSwatch[];
  /** What the colour is changed from; absent where nothing is changed. */
  readonly start?: ColourReading;
  /** Asked of a mixture; absent for other kinds. */
  readonly goal?: Goal;
  /** Degrees that the hue of a mixture may turn; absent where none is asked. */
  readonly hueBound?: number;
  /** C* that a plain shade of the start has at the value of the best mixture. */
  readonly shadingLine?: number;
  readonly best: SeenAnswer;
  /** Wrong answers that tempt, in the order of the choices; of those that a kind names the worst neighbour of the best stands last. */
  readonly traps: readonly SeenAnswer[];
  /** The worst answer that differs from the best in one choice only; the best where there is no other. */
  readonly worst: SeenAnswer;
}

/** Answers that differ from a given one in a single field. */
export function neighbours(fields: readonly Field[], answer: Answer): Answer[] {
  return fields.flatMap(({ id, options }) =>
    options.filter((option) => option.id !== answer[id]).map((option) => ({ ...answer, [id]: option.id })),
  );
}

/** An answer as a key: the same choices give the same text, whatever their order. */
export function answerKey(fields: readonly Field[], answer: Answer): string {
  return fields.map(({ id }) => answer[id]).join(' ');
}

/** Swatches that a result names after the learner's own answer, and after the best. */
const OF_AN_ANSWER = /^(yours|best)(,|$)/;

/** The colour that an answer gives, or the part of it that is judged; absent for kinds whose answers give none. */
export const ownSwatch = ({ swatches }: Grade): ResultSwatch | undefined =>
  swatches.find(({ label }) => /^yours(,|$)/.test(label));

/** The wrong ones of some answers: the nearest miss of each idea first, then the nearest of all. */
export function misses(answers: readonly SeenAnswer[]): SeenAnswer[] {
  const near = answers
    .filter(({ grade }) => grade.mark < GOOD_MARK)
    .sort((one, other) => other.grade.mark - one.grade.mark);
  const first = near.filter(({ grade }, at) => near.findIndex((one) => one.grade.idea === grade.idea) === at);
  return [...first, ...near.filter((each) => !first.includes(each))];
}

function seen(kind: Kind<Drill>, drill: Drill, answer: Answer): SeenAnswer {
  const grade = kind.grade(drill, answer);
  const swatch = ownSwatch(grade);
  return {
    answer,
    label: kind.label(drill, answer),
    grade,
    ...(swatch === undefined ? {} : { swatch, colour: readColour(swatch.reflectance) }),
  };
}

const areAlike = (one: ResultSwatch, other: ResultSwatch): boolean =>
  one.reflectance.every((band, at) => band === other.reflectance[at]);

/** The colours given, and what the result adds whatever was answered: the same colour is shown once. */
function shown(given: readonly ResultSwatch[], { grade }: SeenAnswer): ResultSwatch[] {
  const after = grade.swatches.filter(
    (swatch) => !OF_AN_ANSWER.test(swatch.label) && !given.some((one) => areAlike(one, swatch)),
  );
  return [...given, ...after];
}

/** What of a mix drill a painter has to know before judging it. */
function asked(drill: Drill, start: ColourReading | undefined, { grade, colour }: SeenAnswer) {
  if (drill.kind !== 'mix' || start === undefined || colour === undefined) return {};
  return {
    goal: drill.goal,
    shadingLine: shadingLine(start.chroma, start.lab.l, colour.lab.l),
    ...(grade.hue === undefined ? {} : { hueBound: grade.hue.asked.within }),
  };
}

/** What a colour is changed from, by the name that a kind gives it. */
export const STARTS: readonly string[] = ['start', 'lit'];

/** How a drill looks. */
export function lookAt(studio: Studio, drill: Drill): DrillLook {
  const kind = kindOf(studio, drill);
  const fields = kind.fields(drill);
  const isSame = (one: Answer, other: Answer): boolean => answerKey(fields, one) === answerKey(fields, other);
  const best = seen(kind, drill, kind.best(drill));
  const near = neighbours(fields, best.answer).map((answer) => seen(kind, drill, answer));
  const worst = near.reduce((low, next) => (next.grade.mark < low.grade.mark ? next : low), near[0] ?? best);
  const given = kind.given(drill);
  const first = given.find(({ label }) => STARTS.includes(label));
  const start = first === undefined ? undefined : readColour(first.reflectance);
  const tempting = kind
    .tempting?.(drill)
    .filter((answer) => !isSame(answer, best.answer) && !isSame(answer, worst.answer))
    .map((answer) => seen(kind, drill, answer));
  return {
    swatches: shown(given, best),
    ...(start === undefined ? {} : { start }),
    ...asked(drill, start, best),
    best,
    traps: tempting === undefined ? near : worst === best ? tempting : [...tempting, worst],
    worst,
  };
}
