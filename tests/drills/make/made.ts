/** Made-up mix drills for the tests of the generator: a few in the quick run, many in the long one. */
import * as v from 'valibot';
import { checkDrill } from '../../../src/drills/check.js';
import { drillWithFamilySchema } from '../../../src/drills/format.js';
import { generateDrill } from '../../../src/drills/generate/index.js';
import { SCENES } from '../../../src/drills/generate/scene.js';
import type { Drill } from '../../../src/drills/kinds.js';
import { LIBRARY, PALETTES } from '../../../src/paints/index.js';

/** The families whose generators are made of mix drills. */
export const MIX_FAMILIES = Object.keys(SCENES);
/** Every measured paint. */
export const ALL = LIBRARY.filter(({ evidence }) => evidence === 'measured').map(({ id }) => id);
/** Boxes of paints, taken in turn. */
export const BOXES: readonly (readonly string[])[] = [...PALETTES.map(({ pigments }) => pigments), ALL];

const LEVELS = [1, 2, 3, 4, 5];

/** Drills of a family at every level, of the seeds that are wanted at each. */
export function made(family: string, seedsAt: (level: number) => readonly number[]): Drill[] {
  return LEVELS.flatMap((level) =>
    seedsAt(level).map((seed) =>
      generateDrill({ seed, family, level, palette: BOXES[seed % BOXES.length] as readonly string[] }),
    ),
  );
}

/** What the checker and the file format have against drills. */
export function faultsOf(family: string, drills: readonly Drill[]): string[] {
  return drills.flatMap((drill) => {
    const { family: _family, ask, ...rest } = drill as Drill & { readonly hint?: string };
    const read = v.safeParse(drillWithFamilySchema, { family, drill: { ...rest, ask } });
    return [
      ...checkDrill(drill, 2).faults.map((fault) => `${drill.id}: ${fault}`),
      ...(read.success ? [] : [`${drill.id}: ${read.issues[0].message}`]),
    ];
  });
}

/** Texts of a drill that do not read well: no sentence, doubled blanks or words, blanks before a stop. */
export function oddWords(drill: Drill): string[] {
  const { title, scene } = drill;
  const hint = 'hint' in drill ? (drill.hint ?? '') : '';
  return [
    ...(/^[A-Z].*\.$/.test(scene) ? [] : [scene]),
    ...(/^[A-Z][^.]*$/.test(title) && title.length <= 60 ? [] : [title]),
    ...[title, scene, hint].filter((text) => /\s{2}|\s[.,;:]|undefined|\b(\w+) \1\b/.test(text)),
  ];
}
