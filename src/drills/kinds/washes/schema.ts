/** The drill that sets the water of one paint for each of several blocks, on bare paper or as a glaze over a dry wash. */
import * as v from 'valibot';
import { WATERS, type Wash, type Water } from '../../../washes/index.js';
import { commonEntries, distinctList, paintIdSchema, textSchema } from '../../fields-schema.js';
import { washSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';

/** A block and its value: a painter's step, or the shaded side or cast shadow of something lit at that step. */
export interface Block {
  readonly name: string;
  readonly step?: number | undefined;
  readonly shadeOf?: number | undefined;
  readonly castOf?: number | undefined;
}

export interface WashesDrill extends DrillCommon {
  readonly kind: 'washes';
  readonly paint: string;
  /** A dry wash that all the blocks are laid over. */
  readonly over?: Wash | undefined;
  readonly waters: readonly Water[];
  /** Opens the answer "this paint cannot reach it". */
  readonly cannot: boolean;
  /** Asks which block ends with the strongest colour. */
  readonly strongest: boolean;
  readonly blocks: readonly Block[];
}

const stepSchema = v.pipe(
  v.number('must be a painter’s step'),
  v.minValue(0.5, 'a step is 0.5 to 10.5'),
  v.maxValue(10.5, 'a step is 0.5 to 10.5'),
);

const blockSchema = v.pipe(
  v.strictObject({
    name: textSchema(24),
    step: v.optional(stepSchema),
    shadeOf: v.optional(stepSchema),
    castOf: v.optional(stepSchema),
  }),
  v.check(
    ({ step, shadeOf, castOf }) =>
      [step, shadeOf, castOf].filter((target) => target !== undefined).length === 1,
    'a block has exactly one of step, shadeOf and castOf',
  ),
);

/** The `washes` part of a drill file. */
export const washesSchema = v.pipe(
  v.strictObject({
    kind: v.literal('washes'),
    ...commonEntries,
    paint: paintIdSchema,
    over: v.optional(washSchema),
    waters: v.optional(distinctList(v.picklist(WATERS, `a water is one of ${WATERS.join(', ')}`), 2, 6), [
      ...WATERS,
    ]),
    cannot: v.optional(v.boolean('cannot must be true or false'), false),
    strongest: v.optional(v.boolean('strongest must be true or false'), false),
    blocks: v.pipe(
      v.array(blockSchema, 'blocks must be a list'),
      v.minLength(1, 'blocks needs one to five'),
      v.maxLength(5, 'blocks needs one to five'),
      v.check(
        (blocks) => new Set(blocks.map(({ name }) => name)).size === blocks.length,
        'two blocks have the same name',
      ),
    ),
    note: v.optional(textSchema(300)),
  }),
  v.transform(({ note: _note, ...drill }) => drill),
);
