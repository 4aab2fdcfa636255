/** Everything the screens show, as one value. Only the reducer makes a new one. */
import type { Answer, DrillCommon, Field, Kind } from '../../drills/types.js';
import type { Studio } from '../../paints/index.js';
import type { DrillScene } from '../../pictures/scene.js';
import type { SetSummary } from '../../practice/index.js';
import type { Way } from '../../washes/index.js';
import type { ColourLevel } from './colour-level.js';
import type { AnswerEntry, SetChoice, SetItem, Settings, SettingsPatch } from './deps.js';

/** What the reducer may look up: fixed for the run. */
export interface World {
  readonly drills: ReadonlyMap<string, DrillCommon>;
  kindOf(drill: DrillCommon): Kind;
  readonly families: readonly { readonly id: string; readonly name: string; readonly drills: number }[];
  familyName(id: string): string;
  /** The picture of a drill, as of `TuiDeps`. */
  sceneOf(drill: DrillCommon, answer?: Answer): DrillScene | undefined;
  placingIsOpen(): boolean;
  /** The paints, the paper and the boxes at hand. */
  readonly studio: Studio;
  /** Something outside the settings decides about colour. */
  readonly colourIsForced?: boolean;
  /** What colour level a setting gives here. */
  colourLevelFor(setting: Settings['colour']): ColourLevel;
}

export interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** A drill being answered. */
export interface DrillScreen {
  readonly name: 'drill';
  readonly item: SetItem;
  readonly drill: DrillCommon;
  readonly fields: readonly Field[];
  readonly answer: Answer;
  /** Index of the field that the keys act on. */
  readonly focus: number;
  /** `offered`: the price has been named and the next press shows it. */
  readonly hint: 'hidden' | 'offered' | 'shown';
  readonly attempt: number;
  /** Its place among the set's first answers. */
  readonly place: number;
  readonly shownAt: number;
  /** The worked example of the welcome: the answer is set and nothing is recorded. */
  readonly worked: boolean;
  /** Set between laying it down and the result: the answer is being saved. */
  readonly laying: boolean;
  /** A line left from the drill before, where its result is kept back. */
  readonly message?: string;
  /** Set where a picture goes with it: `still`, one that no answer changes. */
  readonly sheet?: true | 'still';
  /** The picture in the greys of the value check. */
  readonly inGrey?: boolean;
}

/** An answer that has been graded and handed over for the record. */
export interface Attempt {
  readonly entry: AnswerEntry;
  readonly saved: boolean;
  readonly note?: string;
  /** How it compares with the learner's last time at that family. */
  readonly compared?: string;
  /** Set where a picture goes with it: `still`, one that no answer changes. */
  readonly sheet?: true | 'still';
}

export interface ResultScreen {
  readonly name: 'result';
  readonly attempt: Attempt;
  /** The first answer to the same drill, when this is a further try. */
  readonly first?: Attempt;
  /** Its place among the set's first answers. */
  readonly place: number;
  readonly worked: boolean;
  readonly top: number;
  /** Shows the plane in place of the swatches, where there is no room for both. */
  readonly plane?: boolean;
  /** The picture in the greys of the value check, and with the best answer in it. */
  readonly inGrey?: boolean;
  readonly ofBest?: boolean;
  /** Where `next` goes: on in the set, or back to the summary. */
  readonly from: 'set' | 'summary';
}

export interface WhyScreen {
  readonly name: 'why';
  readonly back: ResultScreen;
}

export interface SummaryScreen {
  readonly name: 'summary';
  readonly selected: number;
}

/** Steps of the welcome, in order. */
export type WelcomeStep = 'greeting' | 'colours' | 'palette' | 'scale' | 'placing';

export interface BenchSlot {
  /** Absent for an empty slot. */
  readonly pigment?: string;
  /** Place on the scale of the way; of no account for the wash itself. */
  readonly amount: number;
}

export interface BenchScreen {
  readonly name: 'bench';
  /** The wash, then two further paints. */
  readonly slots: readonly BenchSlot[];
  /** Of the wash and of strokes, hundredths, 5-100. */
  readonly strength: number;
  readonly way: Way;
  /** Water after stirring: one part in so many. */
  readonly thin: number;
  /** 0-2 the slots, then way, then water. */
  readonly focus: number;
  /** Set while a paint is picked from the list: the highlighted index, 0 is "no paint". */
  readonly picking?: number;
}

export type Screen =
  | { readonly name: 'home' }
  /** The level is the learner's own where none is picked. */
  | { readonly name: 'families'; readonly selected: number; readonly level?: number }
  | { readonly name: 'welcome'; readonly step: WelcomeStep; readonly selected: number }
  | { readonly name: 'settings' }
  | { readonly name: 'progress'; readonly text?: string; readonly top: number }
  | { readonly name: 'help'; readonly top: number }
  | { readonly name: 'waiting' }
  | DrillScreen
  | ResultScreen
  | WhyScreen
  | SummaryScreen
  | BenchScreen;

/** A panel over the screen. */
export type Overlay =
  | { readonly name: 'keys' }
  /** The picture as large as there is room. */
  | { readonly name: 'sheet' }
  /** What the drill says, in full; `top`: the first line that is seen. */
  | { readonly name: 'scene'; readonly top: number }
  | { readonly name: 'leave' }
  | { readonly name: 'caution'; readonly pigments: readonly string[]; readonly onward: 'lay' | 'close' };

/** A set under way. */
export interface SetRun {
  readonly items: readonly SetItem[];
  readonly index: number;
  /** First answers, in order. */
  readonly attempts: readonly Attempt[];
  /** Attempts whose results are still kept back, as indexes into `attempts`. */
  readonly held: readonly number[];
  /** Places whose results, kept back until now, come next, one after another. */
  readonly due: readonly number[];
  /** After this moment no new drill starts, milliseconds since 1970. */
  readonly deadline?: number;
  readonly choice: SetChoice;
  /** Asked for when the set ends. */
  readonly summary?: SetSummary;
}

/** What the reducer asks for: done by the app, in order, once each. */
export type Effect =
  | { readonly type: 'start-set'; readonly choice: SetChoice }
  | { readonly type: 'lay'; readonly screen: DrillScreen; readonly at: number }
  | { readonly type: 'save-settings'; readonly patch: SettingsPatch }
  | { readonly type: 'read-progress' }
  | { readonly type: 'summarise'; readonly entries: readonly AnswerEntry[] }
  | { readonly type: 'exit'; readonly code: number };

export interface State {
  readonly screen: Screen;
  readonly overlay?: Overlay;
  readonly size: Size;
  readonly settings: Settings;
  readonly colourLevel: ColourLevel;
  readonly set?: SetRun;
  /** Ids of the caution texts shown in this run. */
  readonly cautioned: readonly string[];
  /** Set when nothing can be saved; shown on every screen. */
  readonly savingNote?: string;
  /** One line at the foot, until the next key. */
  readonly notice?: string;
  /** Answers handed over in this run, for the line printed after leaving. */
  readonly answered: number;
  readonly unsaved: number;
  readonly effects: readonly (Effect & { readonly id: number })[];
  readonly nextEffectId: number;
}

export type Action =
  | { readonly type: 'key'; readonly key: string; readonly at: number }
  | { readonly type: 'resize'; readonly size: Size }
  /** A choice in one of the plain menus. */
  | { readonly type: 'menu'; readonly value: string; readonly at: number }
  | {
      readonly type: 'set-ready';
      readonly items: readonly SetItem[];
      readonly choice?: SetChoice;
      readonly minutes?: number;
      readonly at: number;
    }
  | {
      readonly type: 'laid';
      readonly attempt: Attempt;
      readonly place: number;
      readonly worked: boolean;
      readonly at: number;
    }
  | { readonly type: 'laying-failed'; readonly message: string }
  | { readonly type: 'progress-ready'; readonly text: string }
  | { readonly type: 'summary-ready'; readonly summary: SetSummary }
  | { readonly type: 'notice'; readonly text: string };
