/**
 * What a painter has at hand: paints, paper, boxes. Everything that predicts or grades is handed one, so that another
 * paper or a painter's own paints change no code.
 */
import type { Ground } from '../optics/index.js';
import { LIBRARY } from './library.js';
import { PALETTES, type Palette } from './palettes.js';
import { PAPER } from './paper.js';
import type { Pigment } from './types.js';

export interface Studio {
  readonly paints: readonly Pigment[];
  readonly paper: Ground;
  readonly palettes: readonly Palette[];
}

/** The studio of the shipped library. Only the entries of the program take it; everything else is handed one. */
export function libraryStudio(): Studio {
  return SHIPPED;
}
const SHIPPED: Studio = { paints: LIBRARY, paper: PAPER, palettes: PALETTES };

const INDEX = new WeakMap<readonly Pigment[], ReadonlyMap<string, Pigment>>();

/** The paint with this id, or undefined. */
export function findPaint({ paints }: Pick<Studio, 'paints'>, id: string): Pigment | undefined {
  let index = INDEX.get(paints);
  if (index === undefined) {
    index = new Map(paints.map((paint) => [paint.id, paint]));
    INDEX.set(paints, index);
  }
  return index.get(id);
}

/** The paint with this id. @throws RangeError when the studio has none */
export function paintOf(studio: Pick<Studio, 'paints'>, id: string): Pigment {
  const paint = findPaint(studio, id);
  if (paint === undefined) throw new RangeError(`no paint is called "${id}"`);
  return paint;
}

/** The box with this id, or undefined. */
export function findPalette({ palettes }: Pick<Studio, 'palettes'>, id: string): Palette | undefined {
  return palettes.find((palette) => palette.id === id);
}

/** Something that each studio keeps for itself, made when first asked for. */
export function perStudio<T>(make: (studio: Studio) => T): (studio: Studio) => T {
  const known = new WeakMap<Studio, T>();
  return (studio) => {
    const kept = known.get(studio) ?? make(studio);
    known.set(studio, kept);
    return kept;
  };
}

/**
 * A function of a studio and an object, computed once for each of the two: what a drill's best answer or a passage's colour
 * costs is paid once.
 */
export function once<K extends object, T>(
  compute: (studio: Studio, key: K) => T,
): (studio: Studio, key: K) => T {
  const knownIn = perStudio(() => new WeakMap<K, T>());
  return (studio, key) => {
    const known = knownIn(studio);
    if (!known.has(key)) known.set(key, compute(studio, key));
    return known.get(key) as T;
  };
}
