/** The accuracy report: predictions set against published figures. Colour differences are CIEDE2000. */

/** Spread of a set of differences. */
export interface Spread {
  readonly n: number;
  readonly median: number;
  readonly p90: number;
  readonly max: number;
}

export interface MasstoneRow {
  readonly id: string;
  readonly deltaE00: number;
}

/** The least chromatic mixture of two pigments. */
export interface NeutralRow {
  readonly a: string;
  readonly b: string;
  /** C*ab, D65, 2 degrees. */
  readonly minChroma: number;
  /** Share of `b` in it, counted by strength (each paint's load over its own masstone's): 0-1. */
  readonly at: number;
  readonly lstar: number;
  /** 1 full, 0.5 half strength. */
  readonly strength: number;
}

export interface NonComplementRow extends NeutralRow {
  /** The colour that the pair is said to make. */
  readonly stated: string;
  /** Hue angle where the mixing line is farthest in hue from both paints, degrees. */
  readonly hueDeg: number;
  /** Stays above C* 5 and leans the stated way. */
  readonly holds: boolean;
}

export interface HueShiftRow {
  readonly id: string;
  readonly published: number;
  readonly predicted: number;
}

/** Greatest K of a paint over that of ultramarine blue in the same medium, equal amounts as sold. */
export interface TintingRow {
  readonly id: string;
  readonly acrylic: number;
  readonly predicted: number;
  /** Predicted over acrylic. */
  readonly ratio: number;
}

export interface TintingRows {
  readonly n: number;
  readonly medianRatio: number;
  readonly rows: readonly TintingRow[];
}

/** How many of n pairs reach a chroma of 8 or less. */
export interface OtherPairs {
  readonly n: number;
  readonly withinC8: number;
}

/** Root mean square error of a change: painter's steps of value, and C*ab. */
export interface ChangeError {
  readonly value: number;
  readonly chroma: number;
}

/** Error of the change that a second paint makes in a wash of this strength, measured paints only. Carried. */
export interface ModelErrorRow extends ChangeError {
  readonly from: number;
  /** Beyond any measured film where null. */
  readonly to: number | null;
  /** Against measured films, or only from the spread of the fits. */
  readonly how: string;
  /** Changes it is taken over. */
  readonly n: number;
  /** By paint of the wash, and by paint stirred in. */
  readonly byFirst: Readonly<Record<string, ChangeError>>;
  readonly bySecond: Readonly<Record<string, ChangeError>>;
}

export interface AccuracyReport {
  readonly schemaVersion: 2;
  readonly masstones: Spread & { readonly rows: readonly MasstoneRow[] };
  readonly complements: {
    readonly n: number;
    /** How many pairs reach C*ab 5 or less, and 8 or less. */
    readonly withinC5: number;
    readonly withinC8: number;
    readonly median: number;
    readonly rows: readonly NeutralRow[];
    /** All pairs that no published list names, and those of them whose two paints are themselves colours (C* above 12). */
    readonly others: OtherPairs;
    readonly othersChromatic: OtherPairs;
  };
  readonly nonComplements: {
    readonly n: number;
    readonly held: number;
    readonly rows: readonly NonComplementRow[];
  };
  readonly hueShifts: {
    readonly n: number;
    readonly signRight: number;
    readonly rows: readonly HueShiftRow[];
  };
  /** Phthalo green with pyrrole reds at full strength: L* of the grey and of the darker paint of the two. */
  readonly darkGreys: readonly {
    readonly a: string;
    readonly b: string;
    readonly lstar: number;
    readonly darkerLstar: number;
  }[];
  /** The anchored paints, which the acrylics set; and the measured ones, which nothing set. */
  readonly tintingStrength: TintingRows & { readonly measured: TintingRows };
  /** Mixtures of two measured paints, each predicted by a fit that saw no mixture of the two. Carried, not worked out again. */
  readonly blind: Spread & {
    readonly pairs: number;
    readonly mean: number;
    readonly folds: readonly {
      readonly n: number;
      readonly mean: number;
      readonly pairs: readonly (readonly string[])[];
    }[];
  };
  /** The thinnest measured film of each paint, predicted by a fit that saw none of them. Carried. */
  readonly thinnest: {
    readonly n: number;
    readonly mean: number;
    /** Mean of predicted less measured C*ab over the films that are colours. */
    readonly chromaBias: number;
    readonly chromaFilms: number;
    readonly rows: readonly {
      readonly id: string;
      readonly deltaE00: number;
      readonly chromaError: number;
    }[];
  };
  readonly modelError: readonly ModelErrorRow[];
  /** Hue shift on thinning of the measured paints. Not an outside check: the model was chosen on it. */
  readonly tintHueShift: {
    readonly n: number;
    readonly strength: number;
    readonly rmsDeg: number;
    readonly rows: readonly HueShiftRow[];
  };
}
