/** The few answers that are shown: each another one, not a neighbour of one already taken. */
import { isSeenApart, RECIPE } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import { type Seen, seeLaid } from '../washes/index.js';
import { matteringPaints } from './recipe.js';
import type { Recipe } from './types.js';

/** A recipe with how good it is. */
export interface Candidate {
  readonly recipe: Recipe;
  readonly merit: number;
}

/** Of how many strengths the paint is that lies there. */
function strengthIn({ loads }: Seen, id: string): number {
  return loads
    .flat()
    .reduce((sum, { pigment, load }) => sum + (pigment.id === id ? load / pigment.fullStrength : 0), 0);
}

/** What a recipe is known by: its way, and the paints that lead it. */
interface Known {
  readonly candidate: Candidate;
  /** All paints that show. */
  readonly shows: string;
  /** The strongest of what is brought to the wash; made up from nothing, the two strongest. */
  readonly leads: string;
  readonly isPlain: boolean;
}

function knownBy(studio: Studio, candidate: Candidate, start: readonly string[] | undefined): Known {
  const { recipe } = candidate;
  const seen = seeLaid(studio, recipe.laid);
  const shows = matteringPaints(studio, seen, RECIPE.matters);
  const brought = recipe.parts
    .map(({ pigment }) => pigment)
    .filter((id) => start?.includes(id) !== true)
    .toSorted((a, b) => strengthIn(seen, b) - strengthIn(seen, a));
  const leads = brought.slice(0, start === undefined ? 2 : 1).sort();
  // More of its own paint is a stronger wash, in whatever way it goes on.
  const lead = leads.length === 0 ? 'own' : `${recipe.way} ${leads.join(' ')}`;
  const isPlain = recipe.parts.every(({ pigment }) => shows.includes(pigment));
  return {
    candidate,
    shows: leads.length === 0 ? lead : `${recipe.way} ${shows.sort().join(' ')}`,
    leads: lead,
    isPlain,
  };
}

/**
 * Best first, at most so many. The best is taken in any case; each further one is led by other paints, is laid in another way, or
 * is seen to be another colour; where there are too few of these, one that holds another paint which shows will do.
 * @param candidates best first
 * @param simpler by how much a paint less is preferred in the choice of the further ones, in merit
 * @param start paints of the wash that is there
 */
export function differentOnes(
  studio: Studio,
  candidates: readonly Candidate[],
  most: number,
  simpler: number,
  start?: readonly string[],
): Recipe[] {
  const [best, ...rest] = candidates.map((candidate) => knownBy(studio, candidate, start));
  if (best === undefined) return [];
  const plain = ({ candidate: { merit, recipe } }: Known): number => merit - simpler * recipe.parts.length;
  const others = rest.filter(({ isPlain }) => isPlain).sort((a, b) => plain(b) - plain(a));
  const taken = [best];
  const take = (isOther: (one: Known, other: Known) => boolean): void => {
    for (const one of others) {
      if (taken.length >= most) return;
      if (!taken.includes(one) && taken.every((other) => isOther(one, other))) taken.push(one);
    }
  };
  const differ = (one: Known, other: Known): boolean =>
    isSeenApart(other.candidate.recipe.colour, one.candidate.recipe.colour);
  take((one, other) => one.leads !== other.leads || differ(one, other));
  take((one, other) => one.shows !== other.shows || differ(one, other));
  return taken
    .map(({ candidate }) => candidate)
    .sort((a, b) => b.merit - a.merit)
    .map(({ recipe }) => recipe);
}
