/**
 * The order kind: see schema.ts. The six orders of three things are the options of one field, so that no answer can
 * name a thing twice.
 */

import {
  type Comparison,
  type Context,
  type CriterionId,
  compare,
  criterionOf,
  overall,
  pickMark,
  type Rated,
  togetherMark,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { laidLabel, laidNote } from '../../../words/laid.js';
import { reasonFor } from '../../../words/reasons.js';
import { plainly } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field, Grade, Kind } from '../../types.js';
import type { OrderDrill, OrderItem } from './schema.js';
import { orderWhy } from './why.js';

const PERMUTATIONS: readonly (readonly [number, number, number])[] = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
];

/** Marks by the number of pairs that stand the wrong way round. */
const BY_PAIRS_WRONG = [1, 0.5, 0.2, 0] as const;

const orderId = (items: readonly OrderItem[]): string => items.map(({ id }) => id).join('_');

function orders({ items }: OrderDrill): readonly (readonly OrderItem[])[] {
  return PERMUTATIONS.map((places) => places.map((place) => items[place] as OrderItem));
}

function fields(drill: OrderDrill): readonly Field[] {
  const order: Field = {
    id: 'order',
    label: `order by ${criterionOf(drill.by).order}`,
    shape: 'list',
    options: orders(drill).map((items) => ({
      id: orderId(items),
      label: items.map(({ name }) => name).join(' > '),
    })),
  };
  if (drill.also === undefined) return [order];
  return [
    order,
    {
      id: 'also',
      label: `which has ${criterionOf(drill.also).most}`,
      shape: 'list',
      options: drill.items.map(({ id, name, laid }) => ({ id, label: name, note: laidNote(laid) })),
    },
  ];
}

function contextOf(studio: Studio, { start, target }: OrderDrill): Context {
  return { studio, start: start === undefined ? undefined : seeLaid(studio, start).colour, target };
}

function compared(studio: Studio, drill: OrderDrill, by: CriterionId): Comparison {
  return compare(
    drill.items.map(({ id, name, laid }) => ({ id, label: name, laid })),
    by,
    contextOf(studio, drill),
  );
}

/** Pairs that the answer has the wrong way round by more than the model can be off. */
function pairsWrong(order: readonly string[], { rated, tolerance }: Comparison): readonly [Rated, Rated][] {
  const wrong: [Rated, Rated][] = [];
  for (const [index, better] of rated.entries()) {
    for (const worse of rated.slice(index + 1)) {
      const isTurned = order.indexOf(better.id) > order.indexOf(worse.id);
      if (isTurned && better.score - worse.score > tolerance) wrong.push([better, worse]);
    }
  }
  return wrong;
}

function best(studio: Studio, drill: OrderDrill): Answer {
  const order = compared(studio, drill, drill.by)
    .rated.map(({ id }) => id)
    .join('_');
  return drill.also === undefined
    ? { order }
    : { order, also: (compared(studio, drill, drill.also).rated[0] as Rated).id };
}

function figures(studio: Studio, { rated }: Comparison, by: CriterionId, drill: OrderDrill): string {
  const context = contextOf(studio, drill);
  return rated.map(({ label, seen }) => `${label}, ${criterionOf(by).words(seen, context)}`).join('; ');
}

function alsoLines(
  studio: Studio,
  drill: OrderDrill,
  picked: string,
): { readonly lines: string[]; readonly score: number } {
  if (drill.also === undefined) return { lines: [], score: 1 };
  const all = compared(studio, drill, drill.also);
  const yours = all.rated.find(({ id }) => id === picked) as Rated;
  const first = all.rated[0] as Rated;
  const { mark } = pickMark(
    yours.score,
    all.rated.map(({ score }) => score),
    all.tolerance,
  );
  const line =
    mark === 100
      ? `${yours.label} has ${criterionOf(drill.also).most}, as you said: ${figures(studio, all, drill.also, drill)}.`
      : `You named ${yours.label} for ${criterionOf(drill.also).most}; it is ${first.label}: ${figures(studio, all, drill.also, drill)}.`;
  return { lines: [line], score: mark / 100 };
}

function grade(studio: Studio, drill: OrderDrill, answer: Answer): Grade {
  const open = fields(drill);
  requireComplete(open, answer);
  const order = chosen(open, answer, 'order').id.split('_');
  const all = compared(studio, drill, drill.by);
  const wrong = pairsWrong(order, all);
  const also = alsoLines(studio, drill, answer['also'] ?? '');
  const score = BY_PAIRS_WRONG[wrong.length] ?? 0;
  const mark = drill.also === undefined ? Math.round(100 * score) : togetherMark([score, also.score]);
  const idea = wrong.length > 0 ? 'order-slipped' : also.score < 0.5 ? 'misread-value' : undefined;
  const lines = [
    `You put them in the order ${chosen(open, answer, 'order').label.replaceAll(' > ', ', ')}.`,
    `By ${criterionOf(drill.by).order}: ${figures(studio, all, drill.by, drill)}.`,
    ...(wrong.length === 0
      ? ['The order is right.']
      : wrong.map(
          ([better, worse]) =>
            `${better.label} stands before ${worse.label}: ${criterionOf(drill.by).gap(better.score, worse.score, contextOf(studio, drill))}.`,
        )),
    ...also.lines,
  ];
  const last = all.rated.at(-1) as Rated;
  for (const rated of [all.rated[0] as Rated, last]) {
    const reason = reasonFor(studio, rated.seen.laid);
    if (reason !== undefined) lines.push(`${rated.label}: ${reason}`);
  }
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  if (next !== undefined) lines.push(next);
  const bestAnswer = best(studio, drill);
  return {
    mark,
    verdict: overall(mark),
    told: plainly(lines),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches: all.rated.map(({ label: name, seen }) => ({ label: name, reflectance: seen.reflectance })),
    evidence: all.evidence,
  };
}

function label(drill: OrderDrill, answer: Answer): string {
  const open = fields(drill);
  const order = chosen(open, answer, 'order').label;
  return drill.also === undefined ? order : `${order}; ${chosen(open, answer, 'also').label}`;
}

/** The three must differ by more than the model can be off, but for one pair; so must the answer to the second question. */
function faults(studio: Studio, drill: OrderDrill): string[] {
  const { rated, tolerance } = compared(studio, drill, drill.by);
  const close = rated.filter(
    ({ score }, index) => index > 0 && (rated[index - 1] as Rated).score - score <= tolerance,
  ).length;
  const second = drill.also === undefined ? undefined : compared(studio, drill, drill.also);
  const tied = second?.rated.filter(
    ({ score }) => (second.rated[0] as Rated).score - score <= second.tolerance,
  ).length;
  return [
    ...(close > 1 ? ['the three are too close to call: there is no order to find'] : []),
    ...(tied !== undefined && tied > 2 ? ['the second question has three answers too close to call'] : []),
  ];
}

export const orderKind = (studio: Studio): Kind<OrderDrill> => ({
  kind: 'order',
  fields: (drill) => fields(drill),
  given: ({ start }) =>
    start === undefined ? [] : [{ label: 'start', reflectance: seeLaid(studio, start).reflectance }],
  goalLines: (drill) =>
    plainly([
      `order: ${criterionOf(drill.by).order}`,
      ...drill.items.map(({ name, laid }) => `${name}: ${laidLabel(studio, laid)}, ${laidNote(laid)}`),
    ]),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(drill, answer),
  why: (drill) => orderWhy(studio, drill),
  faults: (drill) => faults(studio, drill),
});
