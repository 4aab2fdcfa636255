/** The drill that sorts the areas of a scene into light, middle and dark before any colour is thought of. */
import * as v from 'valibot';
import type { Laid } from '../../../washes/index.js';
import { commonEntries, textSchema } from '../../fields-schema.js';
import { laidSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';

/** An area, its local colour, and how much of the sheet it covers. */
export interface Area {
  readonly name: string;
  readonly laid: Laid;
  /** Share of the sheet, 0-1. */
  readonly share: number;
}

const SORT_ASKS = ['darkest', 'most', 'span'] as const;
/** Which area is darkest; which class covers most of the sheet; is the span from lightest to darkest wide enough. */
export type SortAsk = (typeof SORT_ASKS)[number];

export interface SortValuesDrill extends DrillCommon {
  readonly kind: 'sort-values';
  readonly areas: readonly Area[];
  /** What is asked beside the class of every area. */
  readonly asks: readonly SortAsk[];
}

/** The `sort-values` part of a drill file. */
export const sortValuesSchema = v.pipe(
  v.strictObject({
    kind: v.literal('sort-values'),
    ...commonEntries,
    areas: v.pipe(
      v.array(
        v.strictObject({
          name: textSchema(24),
          laid: laidSchema,
          share: v.pipe(
            v.number('share must be a number'),
            v.check((share) => share > 0 && share < 1, 'share must be above 0 and below 1'),
          ),
        }),
        'areas must be a list',
      ),
      v.minLength(2, 'areas needs two to six'),
      v.maxLength(6, 'areas needs two to six'),
      v.check(
        (areas) => new Set(areas.map(({ name }) => name)).size === areas.length,
        'two areas have the same name',
      ),
      v.check(
        (areas) => Math.abs(areas.reduce((sum, { share }) => sum + share, 0) - 1) < 1e-6,
        'the shares of the areas must add up to 1',
      ),
    ),
    asks: v.optional(
      v.pipe(
        v.array(v.picklist(SORT_ASKS, `asks are ${SORT_ASKS.join(', ')}`), 'asks must be a list'),
        v.check((list) => new Set(list).size === list.length, 'asks lists one twice'),
      ),
      [],
    ),
    note: v.optional(textSchema(300)),
  }),
  v.transform(({ note: _note, ...drill }) => drill),
);
