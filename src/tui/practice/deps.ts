/** What the screens need from outside. All input and output goes through these ports; src/commands fills them. */
import type { DrillCommon } from '../../drills/types.js';
import type { Answered, Feedback, Kept, Mistake, SetSummary } from '../../practice/index.js';
import type { Wash } from '../../washes/index.js';
import type { Voice } from '../../words/voice.js';
import type { MixtureShelf } from '../bench/outside.js';
import type { Settings, World } from '../kit/stage.js';

/** One drill of a set and why it was picked ("due", "weak", "new"). */
export interface SetItem {
  readonly drillId: string;
  /**
   * The drill itself when it is not one of the written ones; a getter is read when the drill is shown. Undefined then
   * when there is nothing more to ask: the item is passed over.
   */
  readonly drill?: DrillCommon | undefined;
  readonly feedback: Feedback;
  readonly why: string;
}

/** What a set is to be; today's set when nothing is said. */
export interface SetChoice {
  readonly family?: string;
  /** 1-5, whatever the learner's own. */
  readonly level?: number;
  /** The placing round. */
  readonly placing?: true;
  /** One drill for each of these. */
  readonly mend?: readonly Mistake[];
}

/** Settings to keep; `welcomed` once the first run is over. */
export type SettingsPatch = Partial<Settings> & { readonly welcomed?: true };

/** What became of settings that were to be kept. */
export type Saved = Pick<Kept, 'saved' | 'note'>;

/** A change to a box of the learner's own, as it is typed. */
export interface BoxChange {
  /** Ids of paints. */
  readonly add?: readonly string[];
  readonly remove?: readonly string[];
  /** `paint=name`, an empty one for the usual name, and `paint=times`. */
  readonly nameOf?: readonly string[];
  readonly strength?: readonly string[];
  /** What the box is called from now on. */
  readonly name?: string;
}

/** What became of a box: the id that it has now, where it is kept. */
export type BoxKept = Saved & { readonly id?: string };

/** What was read of two dry patches, as it was typed; one of them may be empty. */
export interface PatchTexts {
  /** The wash before anything was stirred in. */
  readonly alone: string;
  readonly mixed: string;
}

/** Readings of the box in use. */
export interface ReadingShelf {
  /**
   * Keeps what was read of a wash, as it was measured out.
   * @returns what came of it, a sentence a line: read against predicted, and what all readings tell of the tubes
   * @throws MudlarkError in one line for what cannot be read or kept
   */
  keep(wash: Wash, texts: PatchTexts, voice: Voice): readonly string[] | Promise<readonly string[]>;
}

export type StartAt =
  | { readonly screen: 'home' }
  | { readonly screen: 'practice'; readonly choice?: SetChoice; readonly minutes?: number };

/** The ports. A fault of ours that a method throws is shown as one line and practice goes on; any other ends the program. */
export interface TuiDeps extends Omit<World, 'colourLevelFor'> {
  readonly version: string;
  readonly drills: readonly DrillCommon[];
  readonly settings: Settings;
  saveSettings(patch: SettingsPatch): Saved | Promise<Saved>;
  readonly firstRun: boolean;
  /** Changes a box of the learner's own; a rule that it breaks is told in `note`. */
  changeBox(id: string, change: BoxChange): BoxKept | Promise<BoxKept>;
  /** Puts a new box together from another: its paints, and what the learner says of them. */
  copyBox(id: string, from: string): BoxKept | Promise<BoxKept>;
  nextSet(choice: SetChoice): readonly SetItem[];
  /** What is to be said with the first drill of the set that was drawn last. */
  setNote?(): string | undefined;
  /** Whether the placing round can be begun or gone on with. */
  placingIsOpen(): boolean;
  /** Must have the answer on disk when it returns or settles: the result is shown after it. */
  saveAnswer(answered: Answered): Kept | Promise<Kept>;
  /** What the first answers of a set come to, this time against before; undefined when there is nothing to say. */
  summarise(answers: readonly Answered[]): SetSummary | undefined;
  /** Shown on every screen when nothing is saved. */
  readonly savingNote?: string;
  /** What is due, what was done last and what rose: at most three lines that fit into the columns (60 and more). */
  glance(columns: number): readonly string[];
  progressText(columns: number): string;
  /** Mixtures of the bench that are kept; absent where nothing can be. */
  readonly mixtures?: MixtureShelf;
  /** What dried on the learner's own paper; absent where nothing can be kept. */
  readonly readings?: ReadingShelf;
  /** Milliseconds since 1970. */
  now(): number;
  readonly startAt?: StartAt;
  readonly learner?: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** `--no-color` was given. */
  readonly noColourFlag?: boolean;
}
