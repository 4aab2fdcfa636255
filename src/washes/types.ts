/** Paint as it is laid: what drill files, the bench and the command line all describe. Plain data, paints by id. */

/** Ways of applying a further paint: stirred into the puddle, glazed over the dry wash, in strokes beside it. */
export const WAYS = ['puddle', 'glaze', 'strokes'] as const;
export type Way = (typeof WAYS)[number];

/** One puddle, laid as one film: made up to a strength, then perhaps stirred into, then perhaps thinned. */
export interface Wash {
  /** Parts of tube paint by id. */
  readonly paints: Readonly<Record<string, number>>;
  /** Of the wash as it was made up: near 0 water, 1 masstone. */
  readonly strength: number;
  /** Stirred in afterwards without water: parts of tube paint to one part of the paint that the wash was made of. */
  readonly add?: Readonly<Record<string, number>> | undefined;
  /** Last of all thinned to one part in so many: 2 halves every load. */
  readonly thin?: number | undefined;
}

/** A wash that covers a share of the passage, 0-1. */
export interface Stroke extends Wash {
  readonly share: number;
}

/** Washes one over the other, each dry before the next, the first on the paper. */
export interface Layered {
  readonly layers: readonly Wash[];
}

/** Washes side by side. */
export interface Stroked {
  readonly strokes: readonly Stroke[];
}

/** What lies on the paper. */
export type Laid = Wash | Layered | Stroked;
