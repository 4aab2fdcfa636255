/** What a generator of drills is. */
import type { Draw } from '../../chance/draw.js';
import type { Studio } from '../../paints/index.js';
import type { Drill } from '../kinds/index.js';
import type { Level } from './levels.js';

/** What is wanted of a made-up drill. */
export interface Wanted {
  readonly level: Level;
  /** Ids of the paints to use. */
  readonly palette: readonly string[];
  /** Drawn once for the whole drill: which of its aims a family tries, so that the easy one does not crowd out the others. */
  readonly turn: number;
  /** What the drills just before used, see `usedBy`: paints should not make the start on their own, subjects and sentences not come again. */
  readonly avoid: readonly string[];
}

type WithoutNaming<D> = D extends unknown
  ? Omit<D, 'id' | 'family' | 'level' | 'ask'> & { readonly ask?: string }
  : never;

/** A drill without what the registry gives it: id, family, level, and the family's question unless it words its own. */
export type DrillDraft = WithoutNaming<Drill>;

/**
 * Makes one attempt.
 * @param draw the only source of chance, so that a seed makes the same drill on every machine
 * @returns undefined when this attempt led nowhere
 */
export type Generator = (studio: Studio, wanted: Wanted, draw: Draw) => DrillDraft | undefined;
