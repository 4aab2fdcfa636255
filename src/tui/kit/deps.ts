/** What the screens need from outside. All input and output goes through these ports; src/commands fills them. */
import type { ValueScaleId } from '../../colour/index.js';
import type { Answer, DrillCommon, Grade, Kind } from '../../drills/types.js';
import type { Studio } from '../../paints/index.js';
import type { DrillScene } from '../../pictures/scene.js';
import type { Feedback, Mistake, SetSummary } from '../../practice/index.js';
import type { ColourSetting } from './colour-level.js';

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

export interface Settings {
  readonly valueScale: ValueScaleId;
  /** Id of a palette. */
  readonly palette: string;
  readonly screenReader: boolean;
  readonly colour: ColourSetting;
}

/** Settings to keep; `welcomed` once the first run is over. */
export type SettingsPatch = Partial<Settings> & { readonly welcomed?: true };

/** An answer as it is handed over for the record, before its result is shown. */
export interface AnswerEntry {
  readonly drill: DrillCommon;
  readonly answer: Answer;
  readonly grade: Grade;
  /** Marks after hints and tries; what the learner sees. */
  readonly mark: number;
  /** How many hints were taken, 0 or 1. */
  readonly hints: number;
  /** 1 for the first answer to this drill in this set, 2 for the second … */
  readonly attempt: number;
  readonly feedback: Feedback;
  readonly why: string;
  /** When the drill was shown and when it was answered, milliseconds since 1970. */
  readonly shownAt: number;
  readonly answeredAt: number;
}

export interface SaveOutcome {
  readonly saved: boolean;
  /** One line for the learner when it was not saved. */
  readonly note?: string;
  /** One line: how it compares with the learner's last time at that family. */
  readonly compared?: string;
}

export type StartAt =
  | { readonly screen: 'home' }
  | { readonly screen: 'practice'; readonly choice?: SetChoice; readonly minutes?: number };

/** The ports. Methods may throw: the message is shown as one line and practice goes on. */
export interface TuiDeps {
  readonly version: string;
  readonly drills: readonly DrillCommon[];
  kindOf(drill: DrillCommon): Kind;
  familyName(id: string): string;
  /** The picture of a drill, open or with an answer in it; undefined where nothing of the drill lies in one. The same one each time. */
  sceneOf?(drill: DrillCommon, answer?: Answer): DrillScene | undefined;
  readonly studio: Studio;
  readonly settings: Settings;
  saveSettings(patch: SettingsPatch): SaveOutcome | Promise<SaveOutcome>;
  readonly firstRun: boolean;
  nextSet(choice: SetChoice): readonly SetItem[];
  /** Whether the placing round can be begun or gone on with. */
  placingIsOpen(): boolean;
  /** Must have the answer on disk when it returns or settles: the result is shown after it. */
  saveAnswer(entry: AnswerEntry): SaveOutcome | Promise<SaveOutcome>;
  /** What the first answers of a set come to, this time against before; undefined when there is nothing to say. */
  summarise(entries: readonly AnswerEntry[]): SetSummary | undefined;
  /** Shown on every screen when nothing is saved. */
  readonly savingNote?: string;
  /** What is due, what was done last and what rose: at most three lines that fit into the columns (60 and more). */
  glance?(columns: number): readonly string[];
  progressText(columns: number): string;
  /** Milliseconds since 1970. */
  now(): number;
  readonly startAt?: StartAt;
  readonly learner?: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** `--no-color` was given. */
  readonly noColourFlag?: boolean;
}
