/** The drill that asks how much chroma a shade has: a number, then which swatch, then whether the hue may turn. */
import * as v from 'valibot';
import type { Laid } from '../../../washes/index.js';
import { commonEntries, textSchema } from '../../fields-schema.js';
import { laidSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';

export interface ShadeChromaDrill extends DrillCommon {
  readonly kind: 'shade-chroma';
  readonly lit: Laid;
  /** Painter's step of the shade. */
  readonly shade: number;
  /** Chromas to choose from; absent, the tens up to above the lit chroma. */
  readonly chromas?: readonly number[] | undefined;
  /** Which of the questions are asked. */
  readonly asks: readonly ShadeAsk[];
}

const SHADE_ASKS = ['chroma', 'swatch', 'turn'] as const;
export type ShadeAsk = (typeof SHADE_ASKS)[number];

/** The `shade-chroma` part of a drill file. */
export const shadeChromaSchema = v.pipe(
  v.strictObject({
    kind: v.literal('shade-chroma'),
    ...commonEntries,
    lit: laidSchema,
    shade: v.pipe(
      v.number('shade must be a painter’s step'),
      v.minValue(2, 'shade is a step 2 to 10'),
      v.maxValue(10, 'shade is a step 2 to 10'),
    ),
    chromas: v.optional(
      v.pipe(
        v.array(
          v.pipe(v.number('a chroma must be a number'), v.minValue(0), v.maxValue(120)),
          'chromas must be a list',
        ),
        v.minLength(2, 'chromas needs two to nine'),
        v.maxLength(9, 'chromas needs two to nine'),
        v.check((list) => new Set(list).size === list.length, 'chromas lists one twice'),
      ),
    ),
    asks: v.optional(
      v.pipe(
        v.array(v.picklist(SHADE_ASKS, `asks are ${SHADE_ASKS.join(', ')}`), 'asks must be a list'),
        v.minLength(1, 'asks needs at least one'),
        v.check((list) => new Set(list).size === list.length, 'asks lists one twice'),
      ),
      ['chroma'],
    ),
    note: v.optional(textSchema(300)),
  }),
  v.transform(({ note: _note, ...drill }) => drill),
);
