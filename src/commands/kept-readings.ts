/** What dried on a learner's own paper after a drill, in the file of boxes. */
import type { ValueScaleId } from '../colour/value.js';
import { InputError, UsageError } from '../errors.js';
import type { Palette, Studio } from '../paints/index.js';
import type { Profile } from '../profile/index.js';
import { type Dried, type Part, type Reading, readingsTold } from '../readings/index.js';
import { cleanText } from '../text/sanitize.js';
import type { PatchTexts, ReadingShelf } from '../tui/practice/deps.js';
import type { Wash } from '../washes/index.js';
import { sayAll } from '../words/tell.js';
import { scaleUnit, type Voice } from '../words/voice.js';
import { against, correctLines } from './dried.js';
import { readDried } from './dried-read.js';
import { type DriedPlace, keepReadings, readingsOf, toldOf } from './dried-store.js';

const NAMES: Readonly<Record<Part, string>> = { alone: 'The wash alone', mixed: 'The mixture' };

/** What dried, in words that go on one line of the narrowest screen. @throws UsageError for what cannot be read */
function readText(text: string, part: Part, scale: ValueScaleId): Dried {
  try {
    return readDried(text, scale);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const takes = scale === 'paper-first' ? 'step from 1 to 10' : 'value from 0 to 10';
    throw new UsageError(`${NAMES[part]}: "${cleanText(text, 10)}" is no ${takes}.`, { cause: error });
  }
}

/** @throws UsageError for what cannot be read */
function readingOf(wash: Wash, texts: PatchTexts, { scale }: Voice): Reading {
  const of = (part: Part) => (texts[part] === '' ? undefined : readText(texts[part], part, scale));
  const [alone, mixed] = [of('alone'), of('mixed')];
  if (mixed !== undefined) return { wash, ...(alone === undefined ? {} : { alone }), mixed };
  if (alone === undefined) throw new UsageError('Type first what you read of the dry patches.');
  // One patch is the whole of a puddle that nothing was stirred into.
  const { add: _not, thin: _painted, ...first } = wash;
  return { wash: first, mixed: alone };
}

/** "The mixture: yours 6.0, predicted 6.2.", a patch each. */
function comparedTexts(place: DriedPlace, reading: Reading, voice: Voice): string[] {
  const line = (name: Part, part: Part = name): string[] => {
    const { [part]: dried } = reading;
    const text = dried && against(place, reading, part, dried, { voice });
    return text === undefined ? [] : [`${NAMES[name]}, ${scaleUnit(voice)}: ${text}.`];
  };
  return reading.wash.add === undefined ? line('alone', 'mixed') : [...line('alone'), ...line('mixed')];
}

/** @param run whose box is in use, and its paints as the owner has them */
export function readingShelf(
  profile: Profile,
  run: { readonly box: Palette; readonly studio: Studio },
  library: Studio,
) {
  return {
    keep(wash: Wash, texts: PatchTexts, voice: Voice): readonly string[] {
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
  } satisfies ReadingShelf;
}
