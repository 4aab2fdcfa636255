/** The drill that shows a solved case, computed, and asks which of several statements about it is true. */
import * as v from 'valibot';
import type { Laid } from '../../../washes/index.js';
import { commonEntries, idSchema, textSchema } from '../../fields-schema.js';
import { laidSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';
import { distinctIds } from '../choose/schema.js';
import { FACT_IDS, type FactId, factOf } from './facts.js';

/** One thing of the case; its name stands in the statements. */
export interface CaseItem {
  readonly id: string;
  readonly name: string;
  readonly laid: Laid;
}

/** A statement: a fact and the things it is about. */
export interface Statement {
  readonly fact: FactId;
  readonly of: readonly string[];
}

export interface WorkedDrill extends DrillCommon {
  readonly kind: 'worked';
  readonly case: readonly CaseItem[];
  readonly statements: readonly Statement[];
}

/** The `worked` part of a drill file. */
export const workedSchema = v.pipe(
  v.strictObject({
    kind: v.literal('worked'),
    ...commonEntries,
    case: v.pipe(
      v.array(
        v.strictObject({ id: idSchema, name: textSchema(14), laid: laidSchema }),
        'case must be a list',
      ),
      v.minLength(1, 'case needs one to four things'),
      v.maxLength(4, 'case needs one to four things'),
      v.check((list) => distinctIds(list), 'two things of the case have the same id'),
    ),
    statements: v.pipe(
      v.array(
        v.pipe(
          v.strictObject({
            fact: v.picklist(FACT_IDS, `fact must be one of ${FACT_IDS.join(', ')}`),
            of: v.array(idSchema, 'of must list things of the case'),
          }),
          v.check(
            ({ fact, of }) => of.length === factOf(fact).takes,
            ({ input }) => {
              const fact = (input as { fact?: FactId }).fact;
              return `this fact is about ${fact === undefined ? 'a number of' : factOf(fact).takes} things of the case`;
            },
          ),
        ),
        'statements must be a list',
      ),
      v.minLength(2, 'statements needs two to four'),
      v.maxLength(4, 'statements needs two to four'),
    ),
    note: v.optional(textSchema(300)),
  }),
  v.check(
    (drill) =>
      drill.statements.every(({ of }) => of.every((id) => drill.case.some((item) => item.id === id))),
    'a statement is about something that the case does not have',
  ),
  v.transform(({ note: _note, ...drill }) => drill),
);
