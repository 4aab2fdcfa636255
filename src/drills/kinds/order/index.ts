/**
 * The order kind: see schema.ts. The six orders of three things are the options of one field, so that no answer can
 * name a thing twice.
 */

import {
  type Comparison,
  type Context,
  type CriterionId,
  compare,
  overall,
  pickMark,
  type Rated,
  togetherMark,
  tooNear,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { laidLabel, laidNote } from '../../../words/laid.js';
import { reasonFor } from '../../../words/reasons.js';
import { CRITERION_WORDS } from '../../../words/sentences/criteria.js';
import { type Finding, fitted, tell } from '../../../words/tell.js';
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
    label: `order by ${CRITERION_WORDS[drill.by].order}`,
    shape: 'list',
    options: orders(drill).map((items) => ({
      id: orderId(items),
      label: items.map(({ name }) => name).join(', then '),
    })),
  };
  if (drill.also === undefined) return [order];
  return [
    order,
    {
      id: 'also',
      label: `which has ${CRITERION_WORDS[drill.also].most}`,
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

const itemOf = ({ label, reading }: Rated) => ({ label, reading });

function alsoTold(
  studio: Studio,
  drill: OrderDrill,
  picked: string,
): { readonly finding?: Finding; readonly score: number } {
  if (drill.also === undefined) return { score: 1 };
  const by = drill.also;
  const all = compared(studio, drill, by);
  const yours = all.rated.find(({ id }) => id === picked) as Rated;
  const { mark } = pickMark(
    yours.score,
    all.rated.map(({ score }) => score),
    all.tolerance,
  );
  const items = all.rated.map(itemOf);
  if (mark < 100)
    return { finding: tell('also-wrong', { by, items, named: yours.label }), score: mark / 100 };
  const near = all.rated.find((one) => one !== yours && Math.abs(one.score - yours.score) <= all.tolerance);
  const finding =
    near === undefined
      ? tell('also-right', { by, items })
      : tell('also-tied', { by, items, other: near.label });
  return { finding, score: 1 };
}

const asTurned = ([better, worse]: readonly [Rated, Rated]) => ({ better: better.label, worse: worse.label });

/** Of the order: right, right but for two that are too close to call, or which stand the wrong way round. */
function orderTold(by: CriterionId, all: Comparison, wrong: readonly (readonly [Rated, Rated])[]): Finding {
  const items = all.rated.map(itemOf);
  if (wrong.length > 0) return tell('order-wrong', { by, items, turned: wrong.map(asTurned) });
  const pairs = all.rated.slice(1).flatMap((worse, index): (readonly [Rated, Rated])[] => {
    const better = all.rated[index] as Rated;
    return better.score - worse.score <= all.tolerance ? [[better, worse]] : [];
  });
  return pairs.length === 0
    ? tell('order-right', { by, items })
    : tell('order-tied', { by, items, pairs: pairs.map(asTurned) });
}

/** What decided: of the first pair that was turned round, else of what comes first. */
function reasonOf(
  studio: Studio,
  all: Comparison,
  wrong: readonly (readonly [Rated, Rated])[],
): Finding | undefined {
  const said = [...(wrong[0] ?? []), ...all.rated];
  for (const { label: of, seen } of said) {
    const reason = reasonFor(studio, seen.laid);
    if (reason !== undefined) return { ...reason, of };
  }
  return undefined;
}

function grade(studio: Studio, drill: OrderDrill, answer: Answer): Grade {
  const open = fields(drill);
  requireComplete(open, answer);
  const order = chosen(open, answer, 'order').id.split('_');
  const { by } = drill;
  const all = compared(studio, drill, by);
  const wrong = pairsWrong(order, all);
  const also = alsoTold(studio, drill, answer['also'] ?? '');
  const score = BY_PAIRS_WRONG[wrong.length] ?? 0;
  const mark = drill.also === undefined ? Math.round(100 * score) : togetherMark([score, also.score]);
  const idea = wrong.length > 0 ? 'order-slipped' : also.score < 0.5 ? 'misread-value' : undefined;
  const bestAnswer = best(studio, drill);
  return {
    mark,
    verdict: overall(mark),
    told: fitted([
      [0, orderTold(by, all, wrong)],
      [0, also.finding],
      [1, reasonOf(studio, all, wrong)],
      [0, idea === undefined ? undefined : tell('advice', { idea })],
    ]),
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

/** Neighbours must differ so that it is seen; so must the answer to the second question from the next. */
function faults(studio: Studio, drill: OrderDrill): string[] {
  const second = drill.also === undefined ? undefined : compared(studio, drill, drill.also);
  return [
    ...tooNear(compared(studio, drill, drill.by)),
    ...(second === undefined ? [] : tooNear(second).filter(([better]) => better === second.rated[0])),
  ].map(([better, worse]) => `${better.id} and ${worse.id} are too close to call`);
}

export const orderKind = (studio: Studio): Kind<OrderDrill> => ({
  kind: 'order',
  fields: (drill) => fields(drill),
  given: ({ start }) =>
    start === undefined ? [] : [{ label: 'start', reflectance: seeLaid(studio, start).reflectance }],
  goalLines: (drill) => [
    tell('order-goal', { by: drill.by }),
    ...drill.items.map(({ name, laid }) =>
      tell('order-item', { name, label: laidLabel(studio, laid), note: laidNote(laid) }),
    ),
  ],
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(drill, answer),
  reordered: (drill, order) => ({ ...drill, items: order(drill.items) }),
  why: (drill) => orderWhy(studio, drill, compared(studio, drill, drill.by).rated),
  faults: (drill) => faults(studio, drill),
});
