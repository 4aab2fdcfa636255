/** The worked kind: see schema.ts. */

import type { Evidence } from '../../pigments/index.js';
import { chosen, requireComplete } from '../answers.js';
import { IDEAS } from '../ideas.js';
import { overall } from '../laid/marks.js';
import { seeLaid } from '../laid/predict.js';
import { reasonFor } from '../laid/reasons.js';
import { laidLabel, readingWords, sentence } from '../laid/words.js';
import { MODEL_ERROR } from '../mix/score.js';
import type { Answer, Field, Grade, Kind } from '../types.js';
import { type Fact, factOf, type Named } from './facts.js';
import type { Statement, WorkedDrill } from './schema.js';

/** A statement and what the prediction says of it. */
interface Weighed {
  readonly id: string;
  readonly short: string;
  readonly text: string;
  readonly figures: string;
  readonly isTrue: boolean;
  readonly tooCloseToCall: boolean;
  readonly margin: number;
}

/** How far off a margin may be by the model, in its own unit. */
function roomOf(unit: Fact['unit'], evidence: Evidence): number {
  const { step, chroma } = MODEL_ERROR[evidence];
  return { step: step / 2, chroma: chroma / 2, degrees: 5, percent: 2 }[unit];
}

function named(drill: WorkedDrill, { of }: Statement): Named[] {
  return of.map((id) => {
    const item = drill.case.find((candidate) => candidate.id === id);
    if (item === undefined) throw new RangeError(`the case has nothing called ${id}`);
    return { name: item.name, seen: seeLaid(item.laid) };
  });
}

function weigh(drill: WorkedDrill): Weighed[] {
  return drill.statements.map((statement, index) => {
    const things = named(drill, statement);
    const fact = factOf(statement.fact);
    const margin = fact.margin(things);
    const room = Math.max(...things.map(({ seen }) => roomOf(fact.unit, seen.evidence)));
    return {
      id: `s${index + 1}`,
      short: fact.short(things),
      text: fact.text(things),
      figures: fact.figures(things),
      isTrue: margin > 0,
      tooCloseToCall: Math.abs(margin) <= room,
      margin: margin / room,
    };
  });
}

function fields(drill: WorkedDrill): readonly Field[] {
  return [
    {
      id: 'why',
      label: 'which is true of this case',
      shape: 'list',
      options: weigh(drill).map(({ id, short, text }) => ({ id, label: short, note: text })),
    },
  ];
}

/** True statements count, and so do those that the model cannot decide. */
const counts = ({ isTrue, tooCloseToCall }: Weighed): boolean => isTrue || tooCloseToCall;

function bestOf(drill: WorkedDrill): Weighed {
  return weigh(drill).reduce((best, next) => (next.margin > best.margin ? next : best));
}

function grade(drill: WorkedDrill, answer: Answer): Grade {
  const open = fields(drill);
  requireComplete(open, answer);
  const id = chosen(open, answer, 'why').id;
  const all = weigh(drill);
  const picked = all.find((one) => one.id === id) as Weighed;
  const best = bestOf(drill);
  const mark = counts(picked) ? 100 : 0;
  const idea = mark === 100 ? undefined : 'wrong-reason';
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const verdict = picked.isTrue
    ? 'true'
    : picked.tooCloseToCall
      ? 'too close to call, so it counts'
      : 'not so';
  const lines = [`You said: ${picked.text}. That is ${verdict}: ${picked.figures}.`];
  if (picked.id !== best.id) lines.push(`True is: ${best.text}: ${best.figures}.`);
  for (const other of all) {
    if (other.id !== picked.id && other.id !== best.id) {
      lines.push(`${other.isTrue ? 'Also true' : 'Not so'}: ${other.text}: ${other.figures}.`);
    }
  }
  const mixed = drill.case
    .map((item) => ({ name: item.name, reason: reasonFor(item.laid) }))
    .find(({ reason }) => reason !== undefined);
  if (mixed?.reason !== undefined) lines.push(`${sentence(mixed.name)}: ${mixed.reason}`);
  if (next !== undefined) lines.push(next);
  const weakest = drill.case.map((item) => seeLaid(item.laid).evidence);
  return {
    mark,
    verdict: overall(mark),
    explanation: lines,
    ...(idea === undefined ? {} : { idea }),
    best: { answer: { why: best.id }, label: best.short, mark: 100 },
    swatches: drill.case.map((item) => ({ label: item.name, reflectance: seeLaid(item.laid).reflectance })),
    evidence: (['estimated', 'transferred'] as const).find((one) => weakest.includes(one)) ?? 'measured',
  };
}

/** Exactly one statement may be true, and by more than the model can be off; a lesson must not hang on a hair. */
function faults(drill: WorkedDrill): string[] {
  const all = weigh(drill);
  const right = all.filter(counts);
  return [
    ...(right.length === 1 ? [] : [`${right.length} of the statements count as true; there must be one`]),
    ...all.filter(({ tooCloseToCall }) => tooCloseToCall).map(({ text }) => `too close to call: ${text}`),
  ];
}

export const workedKind: Kind<WorkedDrill> = {
  kind: 'worked',
  fields,
  given: (drill) =>
    drill.case.map((item) => ({ label: item.name, reflectance: seeLaid(item.laid).reflectance })),
  goalLines: (drill) => [
    ...drill.case.map((item) => {
      const label = laidLabel(item.laid);
      const paints = label === item.name ? '' : `${label}: `;
      return `${item.name}: ${paints}${readingWords(seeLaid(item.laid).colour)}`;
    }),
  ],
  grade,
  best: (drill) => ({ why: bestOf(drill).id }),
  label: (drill, answer) => chosen(fields(drill), answer, 'why').label,
  faults,
};
