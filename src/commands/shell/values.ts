/** What can stand after an option or as an argument, where that is known before the program runs. */
import { CHARTS } from '../../charts/types.js';
import { FAMILY_IDS } from '../../drills/families.js';
import { libraryStudio } from '../../paints/index.js';
import { RECIPE_AIMS } from '../../recipes/types.js';
import { WAYS } from '../../washes/index.js';
import type { Taken } from './tree.js';

export const SHELLS = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof SHELLS)[number];

/** Ids by what stands for them in the help of a command: lists of them and `paint=parts` are begun with one. */
export type Values = ReadonlyMap<string, readonly string[]>;

export function knownValues(): Values {
  const { paints, palettes } = libraryStudio();
  const boxes = palettes.map(({ id }) => id);
  const ids = paints.map(({ id }) => id);
  return new Map<string, readonly string[]>([
    ['family', FAMILY_IDS],
    ['--families', FAMILY_IDS],
    ['--family', FAMILY_IDS],
    ['paint', ids],
    ['paints', ids],
    ['paint=parts', ids.map((id) => `${id}=`)],
    ['goal', RECIPE_AIMS],
    ['ways', WAYS],
    ['way', WAYS],
    ['chart', CHARTS],
    ['--box', boxes],
    ['--palette', boxes],
    ['--size', ['a4', 'letter']],
    ['shell', SHELLS],
  ]);
}

/** By the option's own name first; boxes are those that the program brings, since a learner's own are not known here. */
export const valuesOf = ({ name, value }: Taken, known: Values): readonly string[] =>
  known.get(name) ?? known.get(value ?? '') ?? [];
