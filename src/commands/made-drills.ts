/** Drills made while practising: each about another thing than those shown shortly before. */
import { seededDraw, seedOf } from '../chance/draw.js';
import type { Drill } from '../drills/kinds/index.js';
import { kindOf } from '../drills/kinds/index.js';
import { generateDrill, usedBefore } from '../drills/make/index.js';
import { randomAnswer } from '../drills/random-answer.js';
import { InputError } from '../errors.js';
import type { Studio } from '../paints/index.js';

/** Drills remembered; more than a made drill looks back at. */
const MOST_REMEMBERED = 24;
/** Drills made at most for one that suits; each takes about a twentieth of a second. */
const MOST_MADE = 6;
/** Random answers that are graded to see whether a drill can show a mistake. */
const TRIED = 30;

/** Whether some answer to a drill shows an idea. */
export function canShow(studio: Studio, drill: Drill, idea: string): boolean {
  const kind = kindOf(studio, drill);
  const fields = kind.fields(drill);
  const draw = seededDraw(1);
  for (let tried = 0; tried < TRIED; tried += 1)
    if (kind.grade(drill, randomAnswer(fields, draw)).idea === idea) return true;
  return false;
}

/** What a made drill has to be. */
export interface MadeRequest {
  readonly family: string;
  readonly level: number;
  readonly seed: number;
  readonly palette: readonly string[];
  /** An idea that it has to be able to show. */
  readonly idea?: string | undefined;
  /** Written drills of which one may stand in where none can be made. */
  readonly standIns: readonly Drill[];
}

/** Makes drills, and remembers what they were about: drills in a row share no subject and no sentence. */
export class MadeDrills {
  /** Drills shown, the latest last. */
  #shown: Drill[] = [];

  /** Remembers that a drill is shown. */
  note(drill: Drill): void {
    this.#shown = [...this.#shown, drill].slice(-MOST_REMEMBERED);
  }

  /** A drill as requested, about something new where that can be made, and noted; the last try where none shows the idea. */
  make(studio: Studio, request: MadeRequest): Drill | undefined {
    const { idea } = request;
    for (let n = 0; ; n += 1) {
      const drill = this.#one(studio, { ...request, seed: n === 0 ? request.seed : seedOf(request.seed, n) });
      if (drill === undefined) return undefined;
      if (idea !== undefined && !canShow(studio, drill, idea) && n + 1 < MOST_MADE) continue;
      this.note(drill);
      return drill;
    }
  }

  /**
   * A box of few paints may hold no drill of a kind: then a written one stands in; undefined where there is none of the family.
   */
  #one(studio: Studio, { family, level, seed, palette, standIns }: MadeRequest): Drill | undefined {
    try {
      return generateDrill(studio, {
        seed,
        family,
        level,
        palette,
        avoid: usedBefore(this.#shown),
      });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const written = standIns.filter((drill) => drill.family === family);
      written.sort((one, other) => Math.abs(one.level - level) - Math.abs(other.level - level));
      return written[0];
    }
  }
}
