/** The reason for what a mixture did: how the second paint stands to the first, and which light is left. */
import { paintOf, type Studio } from '../../../paints/index.js';
import { strengthOf, washLoads } from '../../../washes/index.js';
import { namesOf } from '../../../words/laid.js';
import { pairReason, reasonFor } from '../../../words/reasons.js';
import { type Finding, tell } from '../../../words/tell.js';
import { isMoreOfTheSame } from './label.js';
import type { MixDrill } from './schema.js';
import type { Outcome } from './solve.js';

/** Why it came out so. */
export function mixReason(studio: Studio, drill: MixDrill, { choice, seen }: Outcome): Finding | undefined {
  const { start } = drill;
  const { second, how } = choice;
  if (how.way !== 'puddle') return reasonFor(studio, seen.laid);
  const { name } = paintOf(studio, second);
  const mixed = seen.loads[0] ?? [];
  if (isMoreOfTheSame(drill, choice))
    return tell('same-paint', {
      name,
      isStronger: strengthOf(mixed) >= strengthOf(washLoads(studio, start)),
    });
  if (second in start.paints) return tell('share-grew', { name });
  const other = mixed.filter(({ pigment }) => pigment.id === second);
  const one = mixed.filter(({ pigment }) => pigment.id !== second);
  return pairReason(studio, [namesOf(studio, start), name], one, other);
}
