/** What lies behind an order. */
import type { Rated } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { Why } from '../../types.js';
import { comparedWhy, mixtureFinding } from '../../why.js';
import type { OrderDrill } from './schema.js';

/** The three films, with what each paint of the mixtures swallows; wet and dry where drying decides. @param rated the best first */
export function orderWhy(studio: Studio, { by, items }: OrderDrill, rated: readonly Rated[]): Why {
  const mixed = items.flatMap(({ name, laid }) =>
    'layers' in laid || 'strokes' in laid ? [] : (mixtureFinding(studio, seeLaid(studio, laid), name) ?? []),
  );
  const named = items.map(({ name, laid }) => ({ label: name, laid }));
  return comparedWhy(studio, by, named, rated, mixed);
}
