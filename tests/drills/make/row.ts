/** Drills made one after the other, as a set of practice is, and what they use twice. */
import { seedOf } from '../../../src/chance/draw.js';
import type { Drill } from '../../../src/drills/kinds/index.js';
import { generateDrill, usedBefore } from '../../../src/drills/make/index.js';
import { usedBy } from '../../../src/drills/make/sentences.js';
import { STUDIO } from '../../studio.js';
import { BOXES } from './lexicon-drills.js';

/** Eight drills, each made with those before it in sight. */
export function madeInRow(n: number, families: readonly string[], level: number, box: number): Drill[] {
  const drills: Drill[] = [];
  for (let i = 0; i < 8; i++) {
    drills.push(
      generateDrill(STUDIO, {
        seed: seedOf(n, i),
        family: families[i % families.length] as string,
        level,
        palette: BOXES[box] as readonly string[],
        avoid: usedBefore(drills),
      }),
    );
  }
  return drills;
}

/** Subjects of mix drills and sentences that were used more than once. */
export function repeated(drills: readonly Drill[]): string[] {
  const used = drills.flatMap((drill) => [
    ...(drill.kind === 'mix' ? [drill.subject ?? ''] : []),
    ...usedBy(drill).filter((key) => key.includes('/')),
  ]);
  return used.filter((key, at) => used.indexOf(key) !== at);
}
