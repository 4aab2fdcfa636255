/** The paints that a command keeps to: some by id, or a box. */
import { UsageError } from '../errors.js';
import { findPalette, type Studio } from '../paints/index.js';
import { listWords } from '../text/list-words.js';
import { didYouMean } from '../text/nearest.js';
import { readPaint } from './read-parts.js';

/** What was typed, under the names that the command has for it. */
export interface BoxWords {
  /** "--within": paints by id, with commas between. */
  readonly paints: readonly [flag: string, texts: readonly string[]];
  /** "--palette": id of a box. */
  readonly box: readonly [flag: string, id: string | undefined];
}

/**
 * Paints and what they are called together.
 * @param usual id of the box where nothing is named @param most paints that may be named
 * @throws UsageError for what is not there
 */
export function readBox(
  studio: Studio,
  { paints: [flag, texts], box: [boxFlag, chosen] }: BoxWords,
  usual: string,
  most: number,
): { readonly paints: readonly string[]; readonly box: string } {
  const named = texts.flatMap((text) => text.split(',')).map((id) => id.trim());
  if (named.length > 0 && chosen !== undefined)
    throw new UsageError(`${flag} and ${boxFlag} are both given; leave one out`);
  if (named.length > 0) {
    const paints = [...new Set(named.map((id) => readPaint(studio, id).id))];
    if (paints.length > most)
      throw new UsageError(`${flag} takes at most ${most} paints, got ${paints.length}`);
    return { paints, box: paints.length === 1 ? 'the one paint named' : `the ${paints.length} paints named` };
  }
  const id = chosen ?? usual;
  const box = findPalette(studio, id);
  if (box === undefined) {
    const ids = studio.palettes.map((known) => known.id);
    throw new UsageError(
      `no palette is called "${id.slice(0, 60)}"; there are ${listWords(ids)}.${didYouMean(id, ids)}`,
    );
  }
  return { paints: box.pigments, box: `the ${box.name}` };
}
