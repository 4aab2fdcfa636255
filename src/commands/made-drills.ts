/** Drills made while practising: each about another thing than those shown shortly before. */
import { seededDraw, seedOf } from '../chance/draw.js';
import type { Drill } from '../drills/kinds/index.js';
import { kindOf } from '../drills/kinds/index.js';
import { generateDrill } from '../drills/make/index.js';
import { randomAnswer } from '../drills/random-answer.js';
import type { Studio } from '../paints/index.js';

/** How many drills back a thing is not to come again. */
const THINGS_APART = 24;
/** Drills made at most for one that suits; each takes about a twentieth of a second. */
const MOST_MADE = 6;
/** Random answers that are graded to see whether a drill can show a mistake. */
const TRIED = 30;

/** The things that a title names: "Apples, farther off" and "Apples and 2 more" are about apples. */
export function thingsIn(title: string): string[] {
  const [named = ''] = title.toLowerCase().split(',');
  return named.split(' and ').filter((thing) => thing !== '' && !/^(the rest|\d+ more)$/.test(thing));
}

/** Whether some answer to a drill shows an idea. */
export function canShow(studio: Studio, drill: Drill, idea: string): boolean {
  const kind = kindOf(studio, drill);
  const fields = kind.fields(drill);
  const draw = seededDraw(1);
  return Array.from({ length: TRIED }, () => kind.grade(drill, randomAnswer(fields, draw))).some(
    (grade) => grade.idea === idea,
  );
}

/** What a made drill has to be. */
export interface MadeRequest {
  readonly family: string;
  readonly level: number;
  readonly seed: number;
  readonly palette: readonly string[];
  /** An idea that it has to be able to show. */
  readonly idea?: string | undefined;
}

/** Makes drills, and remembers what they were about. */
export class MadeDrills {
  readonly #studio: Studio;
  readonly #written: readonly Drill[];
  /** Things shown, the latest last. */
  #shown: string[] = [];

  constructor(studio: Studio, written: readonly Drill[]) {
    this.#studio = studio;
    this.#written = written;
  }

  /** Remembers that a drill of this title is shown. */
  note({ title }: { readonly title: string }): void {
    this.#shown = [...this.#shown, ...thingsIn(title)].slice(-THINGS_APART);
  }

  /** A drill as requested, about something new where that can be made; its title is noted. */
  make(request: MadeRequest): Drill {
    let best: Drill | undefined;
    let bestFaults = Number.POSITIVE_INFINITY;
    for (let n = 0; n < MOST_MADE && bestFaults > 0; n += 1) {
      const drill = this.#one({ ...request, seed: n === 0 ? request.seed : seedOf(request.seed, n) });
      const faults = this.#faults(drill, request.idea);
      if (faults < bestFaults) [best, bestFaults] = [drill, faults];
    }
    this.note(best as Drill);
    return best as Drill;
  }

  /** 0 for a drill that suits; more the shorter ago its things were shown. */
  #faults(drill: Drill, idea: string | undefined): number {
    const places = thingsIn(drill.title).map((thing) => this.#shown.lastIndexOf(thing) + 1);
    const isDeaf = idea !== undefined && !canShow(this.#studio, drill, idea);
    return Math.max(0, ...places) + (isDeaf ? 2 * THINGS_APART : 0);
  }

  /** A box of few paints may hold no drill of a kind: then a written one stands in, whatever its paints. */
  #one({ family, level, seed, palette }: MadeRequest): Drill {
    try {
      return generateDrill(this.#studio, { seed, family, level, palette });
    } catch (error) {
      const written = this.#written.filter((drill) => drill.family === family);
      written.sort((one, other) => Math.abs(one.level - level) - Math.abs(other.level - level));
      const [nearest] = written;
      if (nearest === undefined || !(error instanceof RangeError)) throw error;
      return nearest;
    }
  }
}
