/** Made-up drills for the tests of the generators: a few in the quick run, many in the long one. */
import * as v from 'valibot';
import { expect } from 'vitest';
import { checkDrill } from '../../../src/drills/check.js';
import { drillWithFamilySchema } from '../../../src/drills/format.js';
import type { Drill } from '../../../src/drills/kinds/index.js';
import { GENERATED_FAMILIES, generateDrill } from '../../../src/drills/make/index.js';
import { MIX_GENERATORS } from '../../../src/drills/make/mix-generators.js';
import { STUDIO } from '../../studio.js';

/** The families whose generators are made of mix drills, and those of all other kinds. */
export const MIX_FAMILIES = Object.keys(MIX_GENERATORS);
export const OTHER_FAMILIES = GENERATED_FAMILIES.filter((family) => !MIX_FAMILIES.includes(family));
/** Every measured paint. */
export const ALL = STUDIO.paints.filter(({ evidence }) => evidence === 'measured').map(({ id }) => id);
/** Boxes of paints, taken in turn. */
export const BOXES: readonly (readonly string[])[] = [
  ...STUDIO.palettes.map(({ pigments }) => pigments),
  ALL,
];

export const LEVELS = [1, 2, 3, 4, 5];

/** A box of paints by seed. */
export const boxOf = (seed: number): readonly string[] => BOXES[seed % BOXES.length] as readonly string[];

/** A drill of one level for each seed. */
function madeAt(family: string, level: number, seeds: readonly number[]): Drill[] {
  return seeds.map((seed) => generateDrill(STUDIO, { seed, family, level, palette: boxOf(seed) }));
}

/** Drills of a family at every level, of the seeds that are wanted at each. */
export function made(family: string, seedsAt: (level: number) => readonly number[]): Drill[] {
  return LEVELS.flatMap((level) => madeAt(family, level, seedsAt(level)));
}

/** What the checker, with this seed of its own, and the file format have against drills, also after a trip through JSON. */
export function faultsOf(drills: readonly Drill[], checkSeed: number): string[] {
  return drills.flatMap((made) => {
    const { family, ...drill } = JSON.parse(JSON.stringify(made)) as Drill;
    const read = v.safeParse(drillWithFamilySchema, { family, drill });
    return [
      ...checkDrill(STUDIO, made, checkSeed).faults.map((fault) => `${made.id}: ${fault}`),
      ...(read.success ? [] : [`${made.id}: ${read.issues[0].message}`]),
    ];
  });
}

/** What a drill is beside the seed in its id. */
function bodyOf({ id: _id, ...body }: Drill): string {
  return JSON.stringify(body);
}

/** Makes drills of one level and looks at them: sound, varied, and written as a file would hold them. */
export function expectSound(family: string, level: number, seeds: number): void {
  const drills = madeAt(
    family,
    level,
    Array.from({ length: seeds }, (_, seed) => seed),
  );
  expect(faultsOf(drills, 5)).toEqual([]);
  for (const drill of drills) {
    expect(drill.level).toBe(level);
    expect(drill.hint === undefined, drill.id).toBe(level === 5);
  }
  expect(new Set(drills.map(bodyOf)).size).toBe(drills.length);
}

/** Texts of a drill that do not read well: no sentence, doubled blanks or words, blanks before a stop. */
export function oddWords({ title, scene, hint = '' }: Drill): string[] {
  return [
    ...(/^[A-Z].*[.?]$/.test(scene) ? [] : [scene]),
    ...(/^[A-Z][^.]*$/.test(title) && title.length <= 60 ? [] : [title]),
    ...[title, scene, hint].filter((text) => /\s{2}|\s[.,;:]|undefined|\b(\w+) \1\b/.test(text)),
  ];
}
