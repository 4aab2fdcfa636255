/** Which mistaken ideas the answers to a drill can show at all: what a tally of them is counted against. */
import { once, type Studio } from '../paints/index.js';
import { everyAnswer } from './answers.js';
import { type Drill, kindOf } from './kinds/index.js';

/** Ids of the ideas that some answer to the drill shows. Exact: every answer is graded, where the kind has no shorter way. */
export const ideasIn: (studio: Studio, drill: Drill) => ReadonlySet<string> = once(findIdeas);

function findIdeas(studio: Studio, drill: Drill): ReadonlySet<string> {
  const kind = kindOf(studio, drill);
  if (kind.ideas !== undefined) return kind.ideas(drill);
  const found = new Set<string>();
  for (const answer of everyAnswer(kind.fields(drill))) {
    const { idea } = kind.grade(drill, answer);
    if (idea !== undefined) found.add(idea);
  }
  return found;
}
