/** What lies behind the washes of one paint. */
import type { Studio } from '../../../paints/index.js';
import { tell } from '../../../words/tell.js';
import type { Answer, Why } from '../../types.js';
import { whyFilms, whyOf } from '../../why.js';
import type { WashesDrill } from './schema.js';
import { blockResults, CANNOT } from './score.js';

/** The films that were laid; over a dry wash the strongest of them with what it covers. */
export function washesWhy(studio: Studio, drill: WashesDrill, answer: Answer): Why {
  const results = blockResults(studio, drill, answer);
  const laid = results.filter(({ choice }) => choice !== CANNOT);
  const darkest = laid.toSorted((a, b) => b.seen.colour.step - a.seen.colour.step)[0];
  if (drill.over !== undefined && darkest !== undefined) return whyOf(studio, darkest.seen.laid);
  return {
    films: whyFilms(
      results.map(({ block, choice, seen }) => ({
        label: choice === CANNOT ? `the darkest it does (${block.name})` : `${block.name}, ${choice}`,
        reflectance: seen.reflectance,
      })),
    ),
    told: [tell('why-one-paint', {})],
  };
}
