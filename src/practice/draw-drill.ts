/** One drill of a family at a level: a fresh written one, else one to be made, else the written one met longest ago. */
import { type Draw, fraction } from '../chance/draw.js';
import { atLevel, isFresh, type PickState, pickDrill } from './pick-drill.js';
import type { DrillRef, FamilyRef } from './refs.js';
import type { Standing } from './standing.js';

/** What drills are drawn from. */
export interface Source {
  readonly standing: Standing;
  /** In the order of the curriculum. */
  readonly families: readonly FamilyRef[];
  readonly drills: readonly DrillRef[];
  readonly now: Date;
  /** Any whole number of 32 bits. */
  readonly seed: number;
  /** Families for which new drills can be made: asked for when the written ones would only be recalled. */
  readonly generated?: ReadonlySet<string>;
}

/** A written drill, or the wish for one to be made. */
export interface Drawn {
  readonly level: number;
  /** Id of a written drill; absent when one has to be made. */
  readonly drill?: string;
  /** Seed that one has to be made from. */
  readonly make?: { readonly seed: number };
}

/** Draws drills one after another; none of them twice while others are left. */
export class DrillDrawer {
  readonly #source: Source;
  readonly #draw: Draw;
  readonly #byFamily = new Map<string, DrillRef[]>();
  readonly #used = new Map<string, number>();
  #last: string;

  constructor(source: Source, draw: Draw) {
    this.#source = source;
    this.#draw = draw;
    this.#last = source.standing.lastDrill;
    for (const drill of source.drills)
      this.#byFamily.set(drill.family, [...(this.#byFamily.get(drill.family) ?? []), drill]);
  }

  /** Whether there is any drill of a family; with a level, of that very level. */
  has(family: string, level?: number): boolean {
    if (this.#source.generated?.has(family) === true) return true;
    const written = this.#byFamily.get(family) ?? [];
    return level === undefined ? written.length > 0 : written.some((drill) => drill.level === level);
  }

  /** A written worked case of a family that would be more than recalled; undefined when there is none. */
  worked(family: string): Drawn | undefined {
    const state = this.#state();
    const pool = (this.#byFamily.get(family) ?? []).filter(
      (drill) => drill.isWorked === true && isFresh(drill, state),
    );
    const drill = pickDrill(pool, state, () => fraction(this.#draw));
    return drill && this.#take(drill);
  }

  /** @returns undefined when there is nothing else left than the drill just done */
  drill(family: string, level: number): Drawn | undefined {
    const { generated } = this.#source;
    const state = this.#state();
    const pool = atLevel(this.#byFamily.get(family) ?? [], level);
    const drill = pickDrill(pool, state, () => fraction(this.#draw));
    const seed = this.#draw(0x7fff_ffff);
    const isStale = drill === undefined || drill.level !== level || !isFresh(drill, state);
    if (isStale && generated?.has(family) === true) {
      this.#last = '';
      return { level, make: { seed } };
    }
    return drill && this.#take(drill);
  }

  #state(): PickState {
    const { standing, now } = this.#source;
    return { standing, nowMs: now.getTime(), last: this.#last, used: this.#used };
  }

  #take({ id, level }: DrillRef): Drawn {
    this.#used.set(id, (this.#used.get(id) ?? 0) + 1);
    this.#last = id;
    return { level, drill: id };
  }
}
