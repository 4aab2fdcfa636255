/** Statements weighed against the prediction. */

import { MODEL_ERROR, SEEN_APART } from '../../../judgement/index.js';
import { type Evidence, once, type Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { Proof } from '../../../words/sentences/worked.js';
import { factOf } from './facts.js';
import type { Statement, WorkedDrill } from './schema.js';
import type { Fact, Named } from './things.js';

/** A statement and what the prediction says of it. */
export interface Weighed {
  readonly id: string;
  readonly statement: Statement;
  readonly short: string;
  readonly text: string;
  readonly proof: Proof;
  readonly isTrue: boolean;
  readonly tooCloseToCall: boolean;
  readonly margin: number;
}

/** How far off a margin may be by the model, in its own unit. */
function roomOf(unit: Fact['unit'], evidence: Evidence): number {
  const { step, chroma } = MODEL_ERROR[evidence];
  return { step: step / 2, chroma: chroma / 2, degree: SEEN_APART.hueDeg / 4, percent: 2 }[unit];
}

/** Names that take no article: "with crimson", "twice", "red alone", "sienna first". */
const BARE =
  /^(the|an?|with|both|equal|once|twice)\b|^(thin|thick|thicker|stirred)$|\w \b(alone|first|on top)$/i;
const withThe = (name: string): string => (BARE.test(name) ? name : `the ${name}`);

function named(studio: Studio, drill: Pick<WorkedDrill, 'case'>, { of }: Statement): Named[] {
  return of.map((id) => {
    const item = drill.case.find((candidate) => candidate.id === id);
    if (item === undefined) throw new RangeError(`the case has nothing called ${id}`);
    return { studio, name: withThe(item.name), seen: seeLaid(studio, item.laid) };
  });
}

/** Weighs every statement of a case, once. */
export const weigh = once(
  (studio: Studio, drill: Pick<WorkedDrill, 'case' | 'statements'>): readonly Weighed[] =>
    drill.statements.map((statement, index) => {
      const things = named(studio, drill, statement);
      const fact = factOf(statement.fact);
      const margin = fact.margin(things);
      const room = Math.max(...things.map(({ seen }) => roomOf(fact.unit, seen.evidence)));
      return {
        id: `s${index + 1}`,
        statement,
        short: fact.short(things),
        text: fact.text(things),
        proof: fact.figures(things),
        isTrue: margin > 0,
        tooCloseToCall: Math.abs(margin) <= room,
        margin: margin / room,
      };
    }),
);
