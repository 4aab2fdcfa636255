/** The reason for what a mixture did: how the second paint stands to the first, and which light is left. */
import type { Studio } from '../../../paints/index.js';
import { partsOf, stirIn, strengthOf, thinned, washLoads } from '../../../washes/index.js';
import { namesOf, sentence } from '../../../words/laid.js';
import { pairFigures, pairSentence, reasonFor } from '../../../words/reasons.js';
import { laidBy } from './choice.js';
import { isMoreOfTheSame } from './label.js';
import type { MixDrill } from './schema.js';
import type { Outcome } from './solve.js';

/** One or two sentences on why it came out so. */
export function mixReason(studio: Studio, drill: MixDrill, { choice }: Outcome): string | undefined {
  const { start } = drill;
  const { second, how, thin } = choice;
  const [added] = partsOf(studio, { [second]: how.amount });
  if (added === undefined) return undefined;
  const { name } = added.pigment;
  if (how.way !== 'puddle') return reasonFor(studio, laidBy(drill, choice));
  const first = washLoads(studio, start);
  const mixed = thinned(stirIn(first, [added]), thin);
  if (isMoreOfTheSame(drill, choice)) {
    const change = strengthOf(mixed) >= strengthOf(first) ? 'stronger' : 'weaker, with so much water';
    return `${sentence(name)} is the wash itself: it only gets ${change}.`;
  }
  if (second in start.paints) return `${sentence(name)} is already in the wash: its share in it grew.`;
  const other = mixed.filter(({ pigment }) => pigment === added.pigment);
  const one = mixed.filter(({ pigment }) => pigment !== added.pigment);
  const figures = pairFigures(studio, [namesOf(studio, start), name], one, other);
  return pairSentence(figures);
}
