/** What lies behind an order. */
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { tell } from '../../../words/tell.js';
import type { Why } from '../../types.js';
import { dryingFilms, paintsAlone, sharedBy, whyFilms } from '../../why.js';
import type { OrderDrill } from './schema.js';

/** The three films, with what the paints of each swallow together; wet and dry where drying decides. */
export function orderWhy(studio: Studio, { by, items }: OrderDrill): Why {
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
  const mixed = items.flatMap(({ name, laid }) => {
    if ('layers' in laid || 'strokes' in laid) return [];
    const paints = paintsAlone(studio, seeLaid(studio, laid));
    return paints.length < 2 ? [] : [tell('why-shared', { name, swallowed: sharedBy(studio, paints) })];
  });
  return { films: whyFilms(films), told: mixed.length > 0 ? mixed : [tell('why-films', {})], swallowed: [] };
}
