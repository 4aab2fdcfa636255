/** The paints that a command keeps to: some by id, or those of a box. */
import { UsageError } from '../errors.js';
import type { Palette, Studio } from '../paints/index.js';
import { readPaint } from './read-parts.js';

interface BoxFlags {
  readonly flag: string;
  readonly texts?: readonly string[] | undefined;
  readonly boxName?: string | undefined;
}

/**
 * Paints and what they are called together.
 * @param flag with what was typed after it, paints by id with commas between, and after `--box`
 * @param box where no paint is named
 * @param most paints that may be named
 * @throws UsageError for what is not there
 */
export function readPaints(
  studio: Studio,
  { flag, texts = [], boxName }: BoxFlags,
  { name, pigments }: Pick<Palette, 'name' | 'pigments'>,
  most: number,
): { readonly paints: readonly string[]; readonly box: string } {
  const named = texts.flatMap((text) => text.split(',')).map((id) => id.trim());
  if (named.length > 0 && boxName !== undefined)
    throw new UsageError(`${flag} and --box are both given; leave one out`);
  const paints = named.length > 0 ? [...new Set(named.map((id) => readPaint(studio, id).id))] : pigments;
  if (paints.length > most)
    throw new UsageError(
      named.length > 0
        ? `${flag} takes at most ${most} paints, got ${paints.length}`
        : `the ${name} has ${paints.length} paints, and at most ${most} are taken; name those that may be with ${flag}`,
    );
  if (named.length === 0) return { paints, box: `the ${name}` };
  return { paints, box: paints.length === 1 ? 'the one paint named' : `the ${paints.length} paints named` };
}
