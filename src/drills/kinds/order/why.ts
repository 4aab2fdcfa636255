/** What lies behind an order. */
import type { Rated } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { Why } from '../../types.js';
import { comparedFinding, dryingFilms, mixtureFinding, whyFilms } from '../../why.js';
import type { OrderDrill } from './schema.js';

/** The three films, with what each paint of the mixtures swallows; wet and dry where drying decides. @param rated the best first */
export function orderWhy(studio: Studio, { by, items }: OrderDrill, rated: readonly Rated[]): Why {
  if (by === 'dries-most') {
    return dryingFilms(
      studio,
      items.map(({ name, laid }) => ({ label: name, laid })),
    );
  }
  const films = items.map(({ name, laid }) => ({
    label: name,
    reflectance: seeLaid(studio, laid).reflectance,
  }));
  const mixed = items.flatMap(({ name, laid }) =>
    'layers' in laid || 'strokes' in laid ? [] : (mixtureFinding(studio, seeLaid(studio, laid), name) ?? []),
  );
  return {
    films: whyFilms(films),
    told: mixed.length > 0 ? mixed : [comparedFinding(studio, by, rated)],
    swallowed: [],
  };
}
