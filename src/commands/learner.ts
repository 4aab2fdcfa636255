/** What the learner's commands share: families and drills as practice wants them, and the flags of the profile. */
import { FAMILIES } from '../drills/families.js';
import { type Drill, kindOf } from '../drills/kinds.js';
import { UsageError } from '../errors.js';
import { findPalette, findPigment, PALETTES } from '../pigments/index.js';
import type { DrillRef, FamilyRef } from '../practice/index.js';
import { didYouMean } from '../text/nearest.js';

/** Families in the order they are taught. */
export const FAMILY_REFS: readonly FamilyRef[] = FAMILIES.map(({ id, name, alike }) => ({
  id,
  title: name,
  lookAlike: alike,
}));

/** Ids of all paints that a drill names, wherever it names them. */
export function paintsOf(drill: Drill): Set<string> {
  const found = new Set<string>();
  const walk = (value: unknown): void => {
    if (typeof value === 'string') {
      if (findPigment(value) !== undefined) found.add(value);
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) {
        if (findPigment(key) !== undefined) found.add(key);
        walk(inner);
      }
    }
  };
  walk(drill);
  return found;
}

/** Drills that can be done with the paints of a palette. */
export function drillsWithin(drills: readonly Drill[], palette: readonly string[]): Drill[] {
  const box = new Set(palette);
  return drills.filter((drill) => [...paintsOf(drill)].every((id) => box.has(id)));
}

/** Paints of a palette by id. @throws UsageError with the nearest ids */
export function palettePaints(id: string): readonly string[] {
  const palette = findPalette(id);
  if (palette !== undefined) return palette.pigments;
  const ids = PALETTES.map((known) => known.id);
  throw new UsageError(
    `no palette is called "${id.slice(0, 60)}".${didYouMean(id, ids)} There are: ${ids.join(', ')}`,
  );
}

/** Chance that blind choices answer a drill well: known only where the choices are few. */
function guessOf(drill: Drill): number | undefined {
  const answers = kindOf(drill)
    .fields(drill)
    .reduce((product, { options }) => product * options.length, 1);
  return answers <= 4 ? 1 / answers : undefined;
}

/** Drills as practice wants them. */
export function drillRefs(drills: readonly Drill[]): DrillRef[] {
  return drills.map((drill) => {
    const guess = guessOf(drill);
    return {
      id: drill.id,
      family: drill.family,
      level: drill.level,
      ...(guess === undefined ? {} : { guess }),
    };
  });
}
