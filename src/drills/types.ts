/** The words that drills, their screens, quizzes and the record share. Everything here is plain data. */

import type { Aim, ChromaResult, HueResult, ValueResult, Verdict } from '../judgement/index.js';
import type { Spectrum } from '../optics/index.js';
import type { Evidence } from '../paints/index.js';
import type { Laid } from '../washes/index.js';
import type { Run } from '../words/spectrum.js';
import type { Finding } from '../words/tell.js';
import type { Voice } from '../words/voice.js';

/** A choice that a drill leaves open, shown as one row: which second paint, how much, which area, what value … */
export interface Field {
  readonly id: string;
  readonly label: string;
  /** `scale`: the options run from less to more and left/right walks along them; `list`: picked from a list. */
  readonly shape: 'scale' | 'list';
  readonly options: readonly FieldOption[];
}

/** One thing that can be chosen. The id is what an answer, a quiz file and the record hold. */
export interface FieldOption {
  readonly id: string;
  readonly label: string;
  /** Set when the option is a painter's step: screens write it on the learner's scale, in place of the label. */
  readonly step?: number;
  /** A second line: Colour Index code, evidence, what it means. */
  readonly note?: string;
  /** What the option looks like, measured-side reflectance; absent where there is nothing to look at. */
  readonly swatch?: Spectrum;
  /** Strength that a paint's swatch is laid at, 0-1: without it its value says nothing. */
  readonly swatchStrength?: number;
  /** Set when the option is a paint. */
  readonly pigment?: string;
}

/** An answer: for each field of the drill the id of the option chosen. */
export type Answer = Readonly<Record<string, string>>;

/** A paint and its amount in what was laid. */
export interface LaidPart {
  readonly pigment: string;
  readonly parts: number;
  readonly load: number;
}

/** A colour that the result shows: what it is called and what it reflects. */
export interface ResultSwatch {
  readonly label: string;
  readonly reflectance: Spectrum;
  /**
   * What may not be said of it before the answer: `value`: reading it is the exercise, so only its hue is said; `figures`: it is to be
   * looked at, so its colour is said in words, without numbers.
   */
  readonly unread?: 'value' | 'figures';
}

/** One of several things that an answer lays, each on its own: a rung of a ladder, a shadow. */
export interface GradeStep {
  readonly name: string;
  /** What it is laid over or turned from, where that is a colour of its own. */
  readonly before?: Spectrum;
  /** Absent where it was given up, and where giving it up is best. */
  readonly yours?: Spectrum;
  readonly best?: Spectrum;
}

/** A graded answer. Everything in it is computed from the prediction. */
export interface Grade {
  /** 0-100, by the formula in src/judgement/README.md; without hints and tries, which the session takes off. */
  readonly mark: number;
  readonly verdict: Verdict;
  readonly value?: ValueResult;
  readonly chroma?: ChromaResult;
  readonly hue?: HueResult;
  /** In order: what was chosen and what it gives, one reason, the better choice, what to try next. */
  readonly told: readonly Finding[];
  /** What the colour was changed for; absent where no colour is changed. */
  readonly aim?: Aim;
  /** The mistaken idea that the answer shows, an id of `IDEAS`; absent for a good answer. */
  readonly idea?: string;
  readonly best: { readonly answer: Answer; readonly label: string; readonly mark: number };
  /** Start, yours, best, as far as the kind of drill has them; `yours` is the answer's own, with what it is of behind a comma. */
  readonly swatches: readonly ResultSwatch[];
  /** Where an answer lays several things: all of them, in the order of the question; the swatches then show the worst. */
  readonly steps?: readonly GradeStep[];
  readonly laid?: readonly LaidPart[];
  readonly evidence: Evidence;
}

/** What lies behind a result, worked out only when it is asked for. */
export interface Why {
  /** What the curves or colours show, and the figures that the result had no room for. */
  readonly told: readonly Finding[];
  /** Films whose light is compared, drawn as curves; no two alike. */
  readonly films: readonly ResultSwatch[];
  /** Colours looked at side by side, where no light is compared. */
  readonly patches?: readonly ResultSwatch[];
  /** Parts of the light that every paint of the mixture swallows. */
  readonly swallowed?: readonly Run[];
}

/** A point on the value-chroma plane. */
export interface PlanePoint {
  readonly step: number;
  readonly chroma: number;
  readonly label: string;
}

/** What every drill has, whatever its kind. */
export interface DrillCommon {
  readonly id: string;
  readonly family: string;
  /** 1 worked - 5 cold. */
  readonly level: number;
  readonly title: string;
  readonly scene: string;
  /** The one question. */
  readonly ask: string;
  readonly hint?: string;
  /** The picture that the scene is set in. */
  readonly picture?: string | undefined;
  /** Areas of the picture in which its start lies and its passage is open, where the picture's own choice does not fit. */
  readonly lies?: { readonly start: string; readonly passage: string } | undefined;
}

/**
 * What a kind of drill can do. The screens, the checker, quizzes and the generator know drills only through this.
 * All functions are pure; unknown pigments were refused when the file was read.
 */
export interface Kind<D extends DrillCommon = DrillCommon> {
  readonly kind: string;
  /** The open choices, in the order they are shown. */
  fields(drill: D): readonly Field[];
  /** The colours that the question shows before anything is chosen. */
  given(drill: D): readonly ResultSwatch[];
  /** What is asked, one line each: "value: from step 4.1 to between 6.5 and 7.5". */
  goalLines(drill: D): readonly Finding[];
  /** @throws InputError when the answer does not fit the fields */
  grade(drill: D, answer: Answer): Grade;
  /** The mark of that grade alone, for kinds that find it without the words. */
  mark?(drill: D, answer: Answer): number;
  /** Every idea that some answer shows, for kinds that allow too many answers to grade them all; see ideas-in.ts. */
  ideas?(drill: D): ReadonlySet<string>;
  best(drill: D): Answer;
  /** What an answer lays on the paper, for kinds that lay one thing. @throws InputError when the answer does not fit the fields */
  laid?(drill: D, answer: Answer): Laid;
  /** The wrong answers that tempt; where a kind has no such list, every answer one choice away from the best. */
  tempting?(drill: D): readonly Answer[];
  /** Short words for an answer: "alizarin crimson 1:4"; in painter's steps, as tables and tallies have it, unless a voice is given. */
  label(drill: D, answer: Answer, voice?: Voice): string;
  /** The same question with the options that its author listed in another order; absent where their order has a meaning. */
  reordered?(drill: D, order: <T>(list: readonly T[]) => T[]): D;
  /** Why an answer comes out as it does. @throws InputError when the answer does not fit the fields */
  why?(drill: D, answer: Answer): Why;
  /** Where the goal and the mixture's path lie on the value-chroma plane, for kinds that have one. */
  plane?(drill: D, answer: Answer): PlaneView;
  /** What is wrong with the drill as a lesson, one line each: the checker reports it. */
  faults?(drill: D): readonly string[];
  /**
   * For kinds whose best answer is searched for: by how much random answers, not held to the shown steps, beat it.
   * @param draw source of whole numbers 0 … most
   */
  challenge?(drill: D, draw: (most: number) => number, tries: number): number;
}

/** The value-chroma plane of a mixture as its amount grows. */
export interface PlaneView {
  readonly start: PlanePoint;
  readonly path: readonly PlanePoint[];
  readonly yours: PlanePoint;
  readonly best: PlanePoint;
  readonly goal: { readonly step: readonly [number, number]; readonly chroma: readonly [number, number] };
}
