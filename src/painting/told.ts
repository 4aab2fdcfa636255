/** All that is said of a painting, a paragraph each: how far the reading can be trusted, the diagnosis, the next steps. */
import { findFamily } from '../drills/families.js';
import type { Studio } from '../paints/index.js';
import { type Finding, sayAll, sayFinding, tell } from '../words/tell.js';
import type { Voice } from '../words/voice.js';
import type { Advice } from './advice.js';
import { diagnosisOf } from './diagnosis.js';
import { massTold } from './from-mass.js';
import type { PaintingReading } from './types.js';

/** What to do, how to mix it, what to practise for it. */
function adviceLines(
  studio: Studio,
  { finding, recipe, family }: Advice,
  at: number,
  voice: Voice,
): string[] {
  const drills = findFamily(family)?.name ?? family;
  return [
    '',
    `${at + 1}. ${sayFinding(finding, voice)}`,
    ...(recipe === undefined ? [] : sayAll(massTold(studio, recipe), voice)),
    `Practise it: ${drills} (mudlark practise ${family}).`,
  ];
}

/** How far the reading is to be believed, and why not further. */
export const doubtsTold = ({ trust, doubts }: PaintingReading): Finding[] =>
  doubts.length === 0
    ? []
    : [
        tell('painting-trust', { trust }),
        ...doubts.map(({ id, figures = {} }) => tell('painting-doubt', { id, figures })),
      ];

/** Paragraphs; '' is a blank line. */
export function paintingTold(
  studio: Studio,
  reading: PaintingReading,
  advice: readonly Advice[],
  voice: Voice,
): string[] {
  const doubts = sayAll(doubtsTold(reading), voice);
  const found = sayAll(diagnosisOf(reading), voice);
  // What is not to be trusted far is not said before that.
  const [first, then] = reading.trust === 'low' ? [doubts, found] : [found, doubts];
  return [
    ...first,
    ...(then.length === 0 ? [] : ['', ...then]),
    ...(advice.length === 0 ? ['', 'Nothing here has to be repaired.'] : []),
    ...advice.flatMap((each, at) => adviceLines(studio, each, at, voice)),
  ];
}
