/** The reason for what a mixture did: how the second paint stands to the first, and which light is left. */
import { paintOf, type Studio } from '../../../paints/index.js';
import { strengthOf, washLoads } from '../../../washes/index.js';
import { namesOf, sentence } from '../../../words/laid.js';
import { pairFigures, pairSentence, reasonFor } from '../../../words/reasons.js';
import { isMoreOfTheSame } from './label.js';
import type { MixDrill } from './schema.js';
import type { Outcome } from './solve.js';

/** One or two sentences on why it came out so. */
export function mixReason(studio: Studio, drill: MixDrill, { choice, seen }: Outcome): string | undefined {
  const { start } = drill;
  const { second, how } = choice;
  if (how.way !== 'puddle') return reasonFor(studio, seen.laid);
  const { name } = paintOf(studio, second);
  const mixed = seen.loads[0] ?? [];
  if (isMoreOfTheSame(drill, choice)) {
    const first = washLoads(studio, start);
    const change = strengthOf(mixed) >= strengthOf(first) ? 'stronger' : 'weaker, with so much water';
    return `${sentence(name)} is the wash itself: it only gets ${change}.`;
  }
  if (second in start.paints) return `${sentence(name)} is already in the wash: its share in it grew.`;
  const other = mixed.filter(({ pigment }) => pigment.id === second);
  const one = mixed.filter(({ pigment }) => pigment.id !== second);
  return pairSentence(pairFigures(studio, [namesOf(studio, start), name], one, other));
}
