/** A page of paper as data: what stands where, in points (1/72 inch) from the left upper corner. Layout makes it, `pdf.ts` draws it. */

/** Width and height of a sheet, in points. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
}

/** ISO 216 A4 (210 by 297 mm) and the North American letter format (8.5 by 11 in, ANSI/ASME Y14.1 size A). */
export const PAGE_SIZES = {
  a4: { width: 595.28, height: 841.89 },
  letter: { width: 612, height: 792 },
} as const satisfies Record<string, PageSize>;

export type PaperId = keyof typeof PAGE_SIZES;

/** Points in a millimetre. */
export const MM = 72 / 25.4;

export type Face = 'regular' | 'bold';

/** How a text is set. */
export interface Type {
  /** In points; never below {@link LEAST_TYPE}. */
  readonly size: number;
  readonly face?: Face;
  /** '#rrggbb'. */
  readonly colour?: string;
  /** From one line to the next, as a share of the size. */
  readonly leading?: number;
}

/** Smallest type, in points: smaller is not read at arm's length. */
export const LEAST_TYPE = 7;

/** Width of a text in points. @throws nothing; what the font does not have counts as its box */
export type Ruler = (text: string, type: Pick<Type, 'size' | 'face'>) => number;

/** A drawn line. */
export interface Edge {
  /** '#rrggbb'. */
  readonly colour: string;
  /** In points. */
  readonly width: number;
}

export type Spot = readonly [x: number, y: number];

/** What bounds a figure; `path` is open and only drawn along. */
export type Outline =
  | { readonly box: readonly [x: number, y: number, width: number, height: number] }
  | { readonly polygon: readonly Spot[] }
  | { readonly ellipse: readonly [x: number, y: number, halfWidth: number, halfHeight: number] }
  | { readonly path: readonly Spot[] };

/** One colour, '#rrggbb', or a run of them along an axis, in even steps. */
export type Fill =
  | string
  | { readonly from: Spot; readonly to: Spot; readonly colours: readonly [string, string, ...string[]] };

export type Mark =
  | {
      readonly kind: 'text';
      readonly x: number;
      /** Of the base line. */
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly face: Face;
      readonly colour: string;
    }
  | { readonly kind: 'figure'; readonly outline: Outline; readonly fill?: Fill; readonly edge?: Edge }
  | { readonly kind: 'clipped'; readonly outline: Outline; readonly marks: readonly Mark[] };

/** Ink of texts and lines; greys, so that a printer without colour loses nothing. */
export const INK = { plain: '#1a1a1a', muted: '#4d4d4d', line: '#8c8c8c', pale: '#c4c4c4' } as const;

/** A document that is ready to be drawn. */
export interface PaperDocument {
  readonly title: string;
  readonly size: PageSize;
  readonly pages: readonly (readonly Mark[])[];
  /** When it was made, milliseconds since 1970: the same gives the same bytes. */
  readonly madeMs: number;
}
