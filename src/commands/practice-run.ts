/** One run of practice: which drills are drawn, what an answer becomes in the record, what a set comes to. */

import { seedOf } from '../chance/draw.js';
import type { Drill } from '../drills/kinds/index.js';
import { GENERATED_FAMILIES, generateDrill, usedBefore } from '../drills/make/index.js';
import type { Studio } from '../paints/index.js';
import {
  chooseSet,
  copyStanding,
  entryFromGrade,
  type Feedback,
  type HistoryEntry,
  type Pick,
  type Standing,
  summariseSet,
} from '../practice/index.js';
import type { Profile } from '../profile/index.js';
import type { PracticePlan } from '../quiz/plan.js';
import type { AnswerEntry, FeedbackTiming, SaveOutcome, SetItem } from '../tui/deps.js';
import { chanceByGuessing, drillRefs, drillsWithin, FAMILY_REFS, palettePaints } from './learner.js';
import { planPicks } from './plan-picks.js';

/** Drills of a set when no time is given. */
const SET_SIZE = 8;
/** Drills that fill a minute at most; the screens stop at the time, not at the count. */
const DRILLS_A_MINUTE = 3;

const TIMINGS: Readonly<Record<Feedback, FeedbackTiming>> = {
  complete: 'each',
  'every-third': 'third',
  'end-of-set': 'end',
};

const REASONS: Readonly<Record<Pick['reason'], string>> = {
  new: 'new to you',
  weak: 'one to work on',
  due: 'due for review',
  rising: 'on the way up',
  known: 'to keep it fresh',
};

/** What a run is told beside the learner and the drills. */
export interface RunOptions {
  /** Version of the prediction, kept with every answer. */
  readonly engine: string;
  readonly minutes: number | undefined;
  /** Draws the same sets again from the same record; by the clock when absent. */
  readonly seed: number | undefined;
  readonly plan: PracticePlan | undefined;
}

/** Practice for one run: what is drawn, saved and summed up. */
export class PracticeRun {
  readonly #studio: Studio;
  readonly #profile: Profile;
  readonly #drills: readonly Drill[];
  readonly #options: RunOptions;
  #plan: PracticePlan | undefined;
  #palette: string;
  #set = '';
  #setsDrawn = 0;
  #before: Standing;

  constructor(studio: Studio, profile: Profile, drills: readonly Drill[], options: RunOptions) {
    this.#studio = studio;
    this.#profile = profile;
    this.#drills = drills;
    this.#options = options;
    this.#plan = options.plan;
    this.#palette = profile.settings.values.palette;
    this.#before = copyStanding(profile.standing);
  }

  takePalette(id: string): void {
    this.#palette = id;
  }

  nextSet(family?: string): SetItem[] {
    const now = new Date();
    const paints = palettePaints(this.#studio, this.#palette);
    const drills = drillsWithin(this.#drills, paints);
    this.#set = now.toISOString();
    this.#before = copyStanding(this.#profile.standing);
    const request = {
      standing: this.#profile.standing,
      families: FAMILY_REFS,
      drills: drillRefs(this.#studio, drills),
      now,
      seed: seedOf(this.#options.seed ?? now.getTime(), this.#setsDrawn++),
      generated: new Set(GENERATED_FAMILIES),
    };
    const plan = family === undefined ? this.#plan : undefined;
    this.#plan = family === undefined ? undefined : this.#plan;
    const { minutes } = this.#options;
    const count = minutes === undefined ? SET_SIZE : Math.min(500, minutes * DRILLS_A_MINUTE);
    const picks =
      plan === undefined
        ? chooseSet({ ...request, count, ...(family === undefined ? {} : { family }) })
        : planPicks(plan, request);
    const items: SetItem[] = [];
    for (const pick of picks) items.push(...this.#item(pick, paints, [...items]));
    return items;
  }

  #item(
    { family, level, drill, make, feedback, reason }: Pick,
    paints: readonly string[],
    before: readonly SetItem[],
  ): SetItem[] {
    const common = { feedback: TIMINGS[feedback], why: REASONS[reason] };
    if (drill !== undefined) return [{ drillId: drill, ...common }];
    if (make === undefined) return [];
    // Made when it is shown: making a whole set takes longer than drawing the first screen.
    let made: Drill | undefined;
    const drillNow = (): Drill => {
      made ??= this.#make(family, level, make.seed, paints, this.#drillsOf(before));
      return made;
    };
    return [
      {
        drillId: `made-${family}-${level}-${make.seed}`,
        ...common,
        get drill() {
          return drillNow();
        },
      },
    ];
  }

  /** The drills of items, made where they have to be: a set shows no subject and no sentence twice. */
  #drillsOf(items: readonly SetItem[]): Drill[] {
    return items.flatMap((item) => {
      const drill = item.drill ?? this.#drills.find(({ id }) => id === item.drillId);
      return drill === undefined ? [] : [drill as Drill];
    });
  }

  /** A box of few paints may hold no drill of a kind: then a written one stands in, whatever its paints. */
  #make(
    family: string,
    level: number,
    seed: number,
    palette: readonly string[],
    before: readonly Drill[],
  ): Drill {
    try {
      return generateDrill(this.#studio, { seed, family, level, palette, avoid: usedBefore(before) });
    } catch (error) {
      const written = this.#drills.filter((drill) => drill.family === family);
      written.sort((one, other) => Math.abs(one.level - level) - Math.abs(other.level - level));
      const [nearest] = written;
      if (nearest === undefined || !(error instanceof RangeError)) throw error;
      return nearest;
    }
  }

  entryOf({ drill, answer, grade, hints, attempt, answeredAt }: AnswerEntry): HistoryEntry {
    return entryFromGrade(grade, {
      drill: { id: drill.id, family: drill.family, level: drill.level },
      answer,
      at: new Date(answeredAt),
      hints,
      attempt,
      set: this.#set,
      engine: this.#options.engine,
      guess: chanceByGuessing(this.#studio, drill as Drill),
    });
  }

  save(entry: AnswerEntry): SaveOutcome {
    const { saved, problem } = this.#profile.save(this.entryOf(entry));
    return { saved, ...(problem === undefined ? {} : { note: problem }) };
  }

  summarise(entries: readonly AnswerEntry[]): ReturnType<typeof summariseSet> {
    return summariseSet(
      this.#before,
      entries.map((entry) => this.entryOf(entry)),
      FAMILY_REFS,
      new Date(),
    );
  }
}
