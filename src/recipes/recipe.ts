/** A mixture that was found, as a recipe: its amounts rounded to what is told, and its colour with these. */
import { deltaE00 } from '../colour/difference.js';
import { type ColourReading, readColour } from '../colour/reading.js';
import { relationOf } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import {
  type Found,
  glazeReflectance,
  type Laid,
  type Load,
  layAmounts,
  puddleReflectance,
  type Seen,
  seeLaid,
  strengthOf,
  washesOf,
} from '../washes/index.js';
import type { Recipe, RecipePart } from './types.js';

/** Figures of an amount that are told and kept. */
const DIGITS = 3;
const rounded = (amount: number): number => Number(amount.toPrecision(DIGITS));

/** Water so near to none that none is meant. */
const NO_WATER = 1.02;

/** What a mixture lays, its amounts as they are told. */
function laidOf(studio: Studio, { first, line, amounts }: Found): Laid {
  const kept = amounts.map((amount, at) =>
    line.last === 'water' && at === line.ids.length && amount < NO_WATER ? 1 : rounded(amount),
  );
  const laid = layAmounts(studio, first, line, kept);
  if (line.last !== 'strength' || !('paints' in laid)) return laid;
  // The least of the parts is one.
  const least = Math.min(...Object.values(laid.paints));
  const paints = Object.entries(laid.paints).map(([id, parts]) => [id, rounded(parts / least)] as const);
  return { ...laid, paints: Object.fromEntries(paints.sort((a, b) => b[1] - a[1])) };
}

/** Loads over the whole stretch of paper, of each paint once, before the water. */
function loadsOn({ laid, loads }: Seen, thin: number): Load[] {
  const shares = 'strokes' in laid ? laid.strokes.map(({ share }) => share) : undefined;
  const sums = new Map<string, Load>();
  for (const [at, film] of loads.entries()) {
    for (const { pigment, load } of film) {
      const sum = (sums.get(pigment.id)?.load ?? 0) + load * (shares?.[at] ?? 1) * thin;
      sums.set(pigment.id, { pigment, load: sum });
    }
  }
  return [...sums.values()];
}

/** Strengths that each paint brings, strongest first. */
const byStrength = (loads: readonly Load[]): Load[] =>
  loads.toSorted((a, b) => b.load / b.pigment.fullStrength - a.load / a.pigment.fullStrength);

function partsOfRecipe(studio: Studio, found: Found, loads: readonly Load[]): RecipePart[] {
  const isMade = found.line.last === 'strength';
  const [strongest] = byStrength(loads);
  const base: Readonly<Record<string, number>> = isMade
    ? { [strongest?.pigment.id ?? '']: 1 }
    : found.first.paints;
  // The parts of a wash that is there stay as they were given.
  const unit = isMade
    ? Math.min(...loads.map(({ load }) => load))
    : loads.reduce((sum, { pigment, load }) => sum + (pigment.id in base ? load : 0), 0) /
      Object.values(base).reduce((sum, parts) => sum + parts, 0);
  return loads.map(({ pigment, load }) => ({
    pigment: pigment.id,
    parts: Number((load / unit).toPrecision(DIGITS + 1)),
    ...(pigment.id in base
      ? found.line.ids.includes(pigment.id)
        ? { relation: 'own' as const }
        : {}
      : { relation: relationOf(studio, base, pigment.id).kind }),
  }));
}

/** A mixture as a recipe. @param keptOf C* that it is held against */
export function recipeOf(studio: Studio, found: Found, keptOf: number): Recipe {
  const laid = laidOf(studio, found);
  const seen = seeLaid(studio, laid);
  const thin = 'paints' in laid ? (laid.thin ?? 1) : 1;
  const loads = loadsOn(seen, thin);
  return {
    laid,
    way: found.line.way,
    parts: partsOfRecipe(studio, found, loads),
    strength: strengthOf(loads),
    thin,
    colour: seen.colour,
    kept: keptOf > 0.5 ? seen.colour.chroma / keptOf : 1,
  };
}

/** The passage without one of its paints, the others as they are; undefined where nothing else lies there, or beside it. */
function without(studio: Studio, { laid, loads }: Seen, id: string): ColourReading | undefined {
  if ('strokes' in laid) return undefined;
  const films = loads
    .map((film) => film.filter(({ pigment }) => pigment.id !== id))
    .filter(({ length }) => length > 0);
  const [only] = films;
  if (only === undefined) return undefined;
  return readColour(
    films.length === 1 ? puddleReflectance(only, studio.paper) : glazeReflectance(films, studio.paper),
  );
}

/** Paints that have a part in the colour of what is laid for anyone to see. @param least CIEDE2000 */
export function matteringPaints(studio: Studio, seen: Seen, least: number): string[] {
  const ids = [
    ...new Set(
      washesOf(seen.laid).flatMap(({ paints, add }) => [...Object.keys(paints), ...Object.keys(add ?? {})]),
    ),
  ];
  return ids.filter((id) => {
    const rest = without(studio, seen, id);
    return rest === undefined || deltaE00(rest.lab, seen.colour.lab) >= least;
  });
}
