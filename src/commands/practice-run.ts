/** One run of practice: which drills are drawn, what an answer becomes in the record, what a set comes to. */

import { seedOf } from '../chance/draw.js';
import type { Drill } from '../drills/kinds/index.js';
import { GENERATED_FAMILIES } from '../drills/make/index.js';
import type { Studio } from '../paints/index.js';
import {
  type Answered,
  atAGlance,
  chooseMend,
  chooseSet,
  comparedWithLast,
  copyStanding,
  entryOf,
  glanceLines,
  type HistoryEntry,
  type Kept,
  type Mistake,
  nextPlacing,
  type Pick,
  PLACING_DECISIONS,
  placingIsOpen,
  type Standing,
  summariseSet,
} from '../practice/index.js';
import type { Profile } from '../profile/index.js';
import type { PracticePlan } from '../quiz/plan.js';
import type { SetChoice, SetItem } from '../tui/practice/deps.js';
import { FAMILY_REFS } from './family-refs.js';
import { canShow, MadeDrills } from './made-drills.js';
import { planPicks } from './plan-picks.js';
import { RunBox } from './run-box.js';

/** Drills of a set when no time is given. */
const SET_SIZE = 8;
/** Drills that fill a minute at most; the screens stop at the time, not at the count. */
const DRILLS_A_MINUTE = 3;

const REASONS: Readonly<Record<Pick['reason'], string>> = {
  new: 'new to you',
  weak: 'one to work on',
  due: 'due for review',
  begun: 'begun a short while ago',
  rising: 'on the way up',
  steady: 'to go on with',
  known: 'to keep it fresh',
  placing: 'to find your level',
  mend: 'to mend what went wrong',
};

/** What a run is told beside the learner and the drills. */
export interface RunOptions {
  /** Version of the prediction, kept with every answer. */
  readonly engine: string;
  readonly minutes: number | undefined;
  /** Draws the same sets again from the same record; by the clock when absent. */
  readonly seed: number | undefined;
  readonly plan: PracticePlan | undefined;
  /** Chance, 0-1, that a drill is guessed, by id, as the build counted it; counted with the answer where it is not there. */
  readonly chances?: Readonly<Record<string, number>>;
}

/** An item whose drill is chosen or made when it is first read. */
function lazyItem(item: Omit<SetItem, 'drill'>, choose: () => Drill | undefined): SetItem {
  let chosen: { readonly drill: Drill | undefined } | undefined;
  return {
    ...item,
    get drill() {
      chosen ??= { drill: choose() };
      return chosen.drill;
    },
  };
}

/** Practice for one run: what is drawn, saved and summed up. */
export class PracticeRun {
  readonly #profile: Profile;
  readonly #written: ReadonlyMap<string, Drill>;
  readonly #options: RunOptions;
  #plan: PracticePlan | undefined;
  #set = '';
  #setsDrawn = 0;
  /** When each drill of the set was answered first. */
  readonly #firstAt = new Map<string, number>();
  #before: Standing;
  #isPlacing = false;
  readonly box: RunBox;
  readonly #made: MadeDrills;

  constructor(studio: Studio, profile: Profile, drills: readonly Drill[], options: RunOptions) {
    this.#profile = profile;
    this.#written = new Map(drills.map((drill) => [drill.id, drill]));
    this.#options = options;
    this.#plan = options.plan;
    this.#before = copyStanding(profile.standing);
    this.box = new RunBox(studio, profile, drills, options.engine);
    this.#made = new MadeDrills();
  }

  /** The paints as the box in use has them, and all boxes. */
  get studio(): Studio {
    return this.box.studio;
  }

  /** Whether the placing round can be begun or gone on with. */
  get placingIsOpen(): boolean {
    return placingIsOpen(this.#profile.standing);
  }

  /** Takes another box, or the one in use as it is now. */
  takeBox(id?: string): void {
    this.box.take(id);
  }

  /** How many written drills the box leaves out, where it was not said yet. */
  leftOutNote(): string | undefined {
    return this.box.leftOutNote();
  }

  nextSet(choice: SetChoice = {}): SetItem[] {
    const now = new Date();
    this.#set = now.toISOString();
    this.#firstAt.clear();
    this.#before = copyStanding(this.#profile.standing);
    this.#isPlacing = choice.placing === true;
    const seed = seedOf(this.#options.seed ?? now.getTime(), this.#setsDrawn++);
    if (this.#isPlacing) return this.#placing(seed);
    if (choice.mend !== undefined) return this.#mend(choice.mend, seed);
    const picks = this.#picks(choice, seed);
    for (const { drill = '' } of picks) {
      const known = this.#written.get(drill);
      if (known !== undefined) this.#made.note(known);
    }
    return picks.flatMap((pick) => this.#item(pick));
  }

  #source(seed: number) {
    return {
      standing: this.#profile.standing,
      families: FAMILY_REFS,
      drills: this.box.refs,
      now: new Date(),
      seed,
      generated: new Set(GENERATED_FAMILIES),
    };
  }

  #picks({ family, level }: SetChoice, seed: number): Pick[] {
    const isOpen = family === undefined && level === undefined;
    const plan = isOpen ? this.#plan : undefined;
    // A plan is followed once.
    if (isOpen) this.#plan = undefined;
    if (plan !== undefined) return planPicks(plan, this.#source(seed));
    const { minutes } = this.#options;
    const count = minutes === undefined ? SET_SIZE : Math.min(500, minutes * DRILLS_A_MINUTE);
    return chooseSet({
      ...this.#source(seed),
      count,
      ...(family !== undefined && { family }),
      ...(level !== undefined && { level }),
    });
  }

  /** The placing round: each decision is chosen when it is shown, from the answers before it; none once it is over. */
  #placing(seed: number): SetItem[] {
    const left = PLACING_DECISIONS - this.#profile.standing.placing.length;
    return Array.from(
      { length: left },
      (_, place): SetItem =>
        lazyItem({ drillId: `placing-${place}`, feedback: 'each', why: REASONS.placing }, () => {
          const pick = nextPlacing(this.#source(seed));
          return pick && this.#drillOf(pick);
        }),
    );
  }

  #mend(mistakes: readonly Mistake[], seed: number): SetItem[] {
    const shows = (id: string, { idea }: Mistake): boolean => {
      const drill = this.#written.get(id);
      return drill !== undefined && canShow(this.studio, drill, idea);
    };
    return chooseMend(this.#source(seed), mistakes, shows).flatMap((pick) => this.#item(pick));
  }

  #drillOf({ family, level, drill, make, idea }: Pick): Drill | undefined {
    if (make === undefined) {
      const known = drill === undefined ? undefined : this.#written.get(drill);
      if (known !== undefined) this.#made.note(known);
      return known;
    }
    const { pigments: palette, standIns } = this.box;
    return this.#made.make(this.studio, { family, level, seed: make.seed, palette, idea, standIns });
  }

  #item(pick: Pick): SetItem[] {
    const { family, level, drill, make, feedback, reason } = pick;
    const common = { feedback, why: REASONS[reason] };
    if (drill !== undefined) return [{ drillId: drill, ...common }];
    if (make === undefined) return [];
    // Made when it is shown: making a whole set takes longer than drawing the first screen.
    const drillId = `made-${family}-${level}-${make.seed}`;
    return [lazyItem({ drillId, ...common }, () => this.#drillOf(pick))];
  }

  /** A drill that a long set shows again is tried again: its answer has been seen. */
  #tryOf({ drill: { id }, attempt, answeredAt }: Answered): number {
    if (!this.#firstAt.has(id)) this.#firstAt.set(id, answeredAt);
    return Math.max(attempt, this.#firstAt.get(id) === answeredAt ? 1 : 2);
  }

  /** The line that the record keeps of an answer. */
  #entryOf(answered: Answered): HistoryEntry {
    const { drill } = answered;
    const { engine, chances } = this.#options;
    return entryOf(answered, {
      set: this.#set,
      engine,
      try: this.#tryOf(answered),
      guess: this.box.guessOf(drill as Drill, chances?.[drill.id]),
      placing: this.#isPlacing,
      box: this.box.stamp,
    });
  }

  save(answered: Answered): Kept {
    const entry = this.#entryOf(answered);
    const compared = comparedWithLast(this.#profile.standing.families.get(entry.family)?.last, entry);
    const { saved, problem } = this.#profile.save(entry);
    return {
      saved,
      ...(problem !== undefined && { note: problem }),
      ...(compared !== undefined && { compared }),
    };
  }

  /** Lines for the head of the home screen. */
  glance(columns: number): readonly string[] {
    return glanceLines(atAGlance(this.#profile.standing, FAMILY_REFS, new Date()), columns);
  }

  summarise(answers: readonly Answered[]): ReturnType<typeof summariseSet> {
    return summariseSet(
      this.#before,
      answers.map((answered) => this.#entryOf(answered)),
      FAMILY_REFS,
      new Date(),
    );
  }
}
