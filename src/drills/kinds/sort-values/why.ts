/** What lies behind a scene sorted by value. */
import { VALUE_BOUNDS } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { tell } from '../../../words/tell.js';
import type { Why } from '../../types.js';
import { classOf, sharesOf, spanOf } from './classes.js';
import type { SortValuesDrill } from './schema.js';

/** The areas from the lightest to the darkest, and where light, middle and dark begin. */
export function sortWhy(studio: Studio, drill: SortValuesDrill): Why {
  const seen = drill.areas
    .map(({ name, laid }) => ({ name, ...seeLaid(studio, laid) }))
    .sort((a, b) => a.colour.step - b.colour.step);
  return {
    films: [],
    patches: seen.map(({ name, reflectance }) => ({ label: name, reflectance })),
    told: [
      tell('why-sorted', {
        bounds: VALUE_BOUNDS,
        areas: seen.map(({ name, colour }) => ({ name, is: classOf(colour.step) })),
      }),
      tell('sort-squint', {}),
      tell('why-plan', {
        shares: sharesOf(studio, drill.areas),
        span: spanOf(studio, drill.areas),
      }),
    ],
  };
}
