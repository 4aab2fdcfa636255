/** What dried on a learner's own paper after a drill, in the file of boxes. */
import { UsageError } from '../errors.js';
import type { Palette, Studio } from '../paints/index.js';
import type { Profile } from '../profile/index.js';
import { type Part, type Reading, readingsTold } from '../readings/index.js';
import type { PatchTexts, ReadingShelf } from '../tui/practice/deps.js';
import type { Wash } from '../washes/index.js';
import { sayAll } from '../words/tell.js';
import { scaleUnit, type Voice } from '../words/voice.js';
import { against, correctLines } from './dried.js';
import { readPatch } from './dried-read.js';
import { type DriedPlace, keepReadings, readingsOf, toldOf } from './dried-store.js';

const NAMES: Readonly<Record<Part, string>> = { alone: 'the wash alone', mixed: 'the mixture' };

/** @throws UsageError for what cannot be read */
function readingOf(wash: Wash, texts: PatchTexts, { scale }: Voice): Reading {
  const of = (part: Part) => (texts[part] === '' ? undefined : readPatch(texts[part], NAMES[part], scale));
  const [alone, mixed] = [of('alone'), of('mixed')];
  if (mixed !== undefined) return { wash, ...(alone === undefined ? {} : { alone }), mixed };
  if (alone === undefined) throw new UsageError('Type first what you read of the dry patches.');
  // One patch is the whole of a puddle that nothing was stirred into.
  const { add: _not, thin: _painted, ...first } = wash;
  return { wash: first, mixed: alone };
}

/** "The mixture: yours 6.0, predicted 6.2.", a patch each. */
function comparedTexts(place: DriedPlace, reading: Reading, voice: Voice): string[] {
  const line = (name: string, part: Part): string[] => {
    const { [part]: dried } = reading;
    return dried === undefined
      ? []
      : [`${name}, ${scaleUnit(voice)}: ${against(place, reading, part, dried, { voice })}.`];
  };
  if (reading.wash.add === undefined) return line('The wash alone', 'mixed');
  return [...line('The wash alone', 'alone'), ...line('The mixture', 'mixed')];
}

/** @param run whose box is in use, and its paints as the owner has them */
export function readingShelf(
  profile: Profile,
  run: { readonly box: Palette; readonly studio: Studio },
  library: Studio,
): ReadingShelf {
  return {
    keep: (wash, texts, voice) => {
      const place: DriedPlace = { profile, box: run.box, studio: run.studio, library };
      const reading = readingOf(wash, texts, voice);
      keepReadings(place, [reading], new Date());
      const told = toldOf(place);
      return [
        ...comparedTexts(place, reading, voice),
        ...sayAll(readingsTold(run.studio, told, readingsOf(place).used), voice),
        ...correctLines(place, told),
      ];
    },
  };
}
