/** The box that a run of practice keeps to: its paints as their owner has them, and the drills that hold with it. */
import { chanceByGuessing } from '../drills/chance-by-guessing.js';
import type { Drill } from '../drills/kinds/index.js';
import { paintsIn } from '../drills/paint-names.js';
import {
  boxStudio,
  correctedIn,
  findPalette,
  type Palette,
  revisionOf,
  type Studio,
} from '../paints/index.js';
import type { DrillRef, HistoryEntry } from '../practice/index.js';
import type { Profile } from '../profile/index.js';
import { type BoxDrills, drillsOfBox, leftOutWords } from './box-drills.js';
import { drillRefs } from './drill-refs.js';
import { boxInUse, learnerStudio } from './learner.js';

export class RunBox {
  readonly #library: Studio;
  readonly #profile: Profile;
  readonly #written: readonly Drill[];
  /** Version of the prediction. */
  readonly #engine: string;
  /** The library's paints and the learner's boxes. */
  #shelf: Studio;
  #box: Palette;
  #held: BoxDrills | undefined;
  #refs: readonly DrillRef[] | undefined;
  /** What was last said of the drills left out. */
  #told: string | undefined;

  constructor(library: Studio, profile: Profile, written: readonly Drill[], engine: string) {
    this.#library = library;
    this.#profile = profile;
    this.#written = written;
    this.#engine = engine;
    this.#shelf = learnerStudio(profile, library);
    this.#box = boxInUse(this.#shelf, profile);
  }

  /** The paints as the owner has them, and all boxes. */
  get studio(): Studio {
    return boxStudio(this.#shelf, this.#box);
  }

  get box(): Palette {
    return this.#box;
  }

  /** Ids of its paints. */
  get pigments(): readonly string[] {
    return this.#box.pigments;
  }

  /** As the record keeps it. */
  get stamp(): NonNullable<HistoryEntry['box']> {
    return { id: this.#box.id, revision: revisionOf(this.#box) };
  }

  /** Takes another box, or this one as it is now; where none is called so, the one in use stays. */
  take(id: string = this.#box.id): void {
    this.#shelf = learnerStudio(this.#profile, this.#library);
    this.#box = findPalette(this.#shelf, id) ?? this.#box;
    this.#held = undefined;
    this.#refs = undefined;
  }

  get #drills(): BoxDrills {
    const path = this.#profile.saving ? this.#profile.files?.checked : undefined;
    this.#held ??= drillsOfBox(this.#shelf, this.#box, this.#written, { path, engine: this.#engine });
    return this.#held;
  }

  /** The drills that hold with it, as practice wants them. */
  get refs(): readonly DrillRef[] {
    this.#refs ??= drillRefs(this.studio, this.#drills.drills);
    return this.#refs;
  }

  /** Drills that stand in where none can be made: whoever owns these paints has no others. */
  get standIns(): readonly Drill[] {
    return this.#box.isOwn === true ? this.#drills.drills : this.#written;
  }

  /** How many written drills an own box leaves out: once, until it is another number. */
  leftOutNote(): string | undefined {
    const words = this.#box.isOwn === true ? leftOutWords(this.#box, this.#drills) : undefined;
    if (words === this.#told) return undefined;
    this.#told = words;
    return words;
  }

  /**
   * Chance, 0-1, that a drill is guessed.
   * @param counted by the build, at the library's strengths
   */
  guessOf(drill: Drill, counted: number | undefined): number {
    const corrected = correctedIn(this.#box);
    const isAsCounted = corrected.length === 0 || !paintsIn(drill).some((id) => corrected.includes(id));
    return (isAsCounted ? counted : undefined) ?? chanceByGuessing(this.studio, drill);
  }
}
