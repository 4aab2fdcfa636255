/** Everything that practice shows, as one value. Only the reducer makes a new one. */
import type { DrillCommon } from '../../drills/types.js';
import type { Answered, SetSummary } from '../../practice/index.js';
import type { Wash } from '../../washes/index.js';
import type { BoxesScreen } from '../boxes/state.js';
import type { Question } from '../drill/question.js';
import type { Glyphs } from '../kit/glyphs.js';
import type { Binding, Command } from '../kit/keys.js';
import type { View } from '../kit/program.js';
import type { Stage, World } from '../kit/stage.js';
import type { Judged } from '../result/judged.js';
import type { SheetPanel } from '../sheet/keys.js';
import type { BoxChange, PatchTexts, SetChoice, SetItem, SettingsPatch } from './deps.js';

/** What the reducer may look up: fixed for the run, but for the studio, which follows the box in use. */
export interface PracticeWorld extends World {
  readonly drills: ReadonlyMap<string, DrillCommon>;
  readonly families: readonly { readonly id: string; readonly name: string; readonly drills: number }[];
  placingIsOpen(): boolean;
  /** What is due, what was last done and what rose: a few lines that fit into the columns. */
  glance(columns: number): readonly string[];
  /** What dried on the learner's paper can be kept. */
  readonly keepsReadings: boolean;
  /** Something outside the settings decides about colour. */
  readonly colourIsForced?: boolean;
  readonly learner?: string;
}

/** A drill being answered. */
export interface DrillScreen extends Question {
  readonly name: 'drill';
  readonly item: SetItem;
  readonly attempt: number;
  /** Its place among the set's first answers. */
  readonly place: number;
  readonly shownAt: number;
  readonly worked: boolean;
  /** Set between laying it down and the result: the answer is being saved. */
  readonly laying: boolean;
}

export interface ResultScreen extends Judged {
  readonly name: 'result';
  readonly answered: Answered;
  /** Its place among the set's first answers. */
  readonly place: number;
  readonly worked: boolean;
  /** Where `next` goes: on in the set, or back to the summary. */
  readonly from: 'set' | 'summary';
}

export interface WhyScreen {
  readonly name: 'why';
  readonly back: ResultScreen;
}

/** The mixture of a result on the learner's own paper. */
export interface PaintingScreen {
  readonly name: 'painting';
  readonly back: ResultScreen;
  /** Which of the mixtures that can be painted. */
  readonly at: number;
  /** What was typed of each of them. */
  readonly typed: readonly PatchTexts[];
  readonly field: keyof PatchTexts;
  /** Set while it is being kept. */
  readonly keeping?: boolean;
  /** What came of it, and the first line of that which is seen. */
  readonly told?: readonly string[];
  readonly top: number;
}

export interface SummaryScreen {
  readonly name: 'summary';
  readonly selected: number;
}

/** Steps of the welcome, in order. */
export type WelcomeStep = 'greeting' | 'colours' | 'palette' | 'scale' | 'placing';

export interface WelcomeScreen {
  readonly name: 'welcome';
  readonly step: WelcomeStep;
  readonly selected: number;
}

export type Screen =
  /** A menu stands at its first entry where none is picked. */
  | { readonly name: 'home'; readonly selected?: number }
  /** The level is the learner's own where none is picked. */
  | { readonly name: 'families'; readonly selected: number; readonly level?: number }
  | WelcomeScreen
  | { readonly name: 'settings'; readonly selected?: number }
  | BoxesScreen
  | { readonly name: 'progress'; readonly text?: string; readonly top: number }
  | { readonly name: 'help'; readonly top: number }
  | { readonly name: 'waiting' }
  | DrillScreen
  | ResultScreen
  | WhyScreen
  | PaintingScreen
  | SummaryScreen;

/** A panel over the screen. */
export type Overlay =
  | { readonly name: 'keys' }
  | SheetPanel
  | { readonly name: 'leave' }
  | {
      readonly name: 'caution';
      readonly pigments: readonly string[];
      readonly onward: 'lay' | 'paint' | 'close';
    };

/** A set under way. */
export interface SetRun {
  readonly items: readonly SetItem[];
  readonly index: number;
  /** First answers, in order. */
  readonly answers: readonly Answered[];
  /** Answers whose results are still kept back, as indexes into `answers`. */
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
  | { readonly type: 'change-box'; readonly id: string; readonly change: BoxChange }
  | { readonly type: 'copy-box'; readonly id: string; readonly from: string }
  | { readonly type: 'read-progress' }
  | { readonly type: 'keep-reading'; readonly wash: Wash; readonly texts: PatchTexts }
  | { readonly type: 'summarise'; readonly answers: readonly Answered[] };

export interface State extends Stage<Effect> {
  readonly screen: Screen;
  readonly overlay?: Overlay;
  readonly set?: SetRun;
  /** Paints that were last laid, the first wash first. */
  readonly lastPaints?: readonly string[];
  /** Answers handed over in this run, for the line printed after leaving. */
  readonly answered: number;
  readonly unsaved: number;
}

/** What comes to practice from its ports. */
export type Action =
  | {
      readonly type: 'set-ready';
      readonly items: readonly SetItem[];
      readonly choice?: SetChoice;
      readonly minutes?: number;
      /** To be said with the first drill. */
      readonly note?: string;
      readonly at: number;
    }
  | {
      readonly type: 'laid';
      readonly answered: Answered;
      readonly place: number;
      readonly worked: boolean;
      readonly at: number;
    }
  | { readonly type: 'laying-failed'; readonly message: string }
  | { readonly type: 'progress-ready'; readonly text: string }
  | { readonly type: 'reading-kept'; readonly told: readonly string[] }
  /** The boxes are others now: what is shown of them is drawn anew. One that was called `before` may be called `id`. */
  | { readonly type: 'boxes-changed'; readonly before: string; readonly id: string }
  | { readonly type: 'summary-ready'; readonly summary: SetSummary }
  | { readonly type: 'notice'; readonly text: string };

/** What practice knows of one of its screens. */
export interface PracticeScreen<N extends Screen['name']> {
  keys(state: State, world: PracticeWorld, screen: Screen & { readonly name: N }): readonly Binding[];
  /** The state after one of its keys. Pure. */
  update(state: State, world: PracticeWorld, screen: Screen & { readonly name: N }, pressed: Pressed): State;
  view(state: State, world: PracticeWorld, screen: Screen & { readonly name: N }, glyphs: Glyphs): View;
}

/** A key with what it asks for. */
export interface Pressed {
  readonly command: Command;
  readonly key: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}
