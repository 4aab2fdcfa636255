/** A picture as data: shapes painted from back to front in a grid of units, each naming an area that a wash is laid in. */
import type { Spectrum } from '../optics/index.js';
import type { Laid, Wash } from '../washes/index.js';

/** Units across and down that shapes are drawn in, at whatever size they are shown. */
export const GRID = { columns: 48, rows: 28 } as const;

/** Across and down from the left upper corner, in units. */
export type Point = readonly [number, number];
/** Left, top, right, bottom, in units. */
export type Box = readonly [number, number, number, number];
/** Middle across and down, half width, half height, in units. */
export type Ellipse = readonly [number, number, number, number];

/** Where a wash runs to. */
export const TOWARDS = ['down', 'up', 'left', 'right'] as const;

/** A wash that gets weaker, or stronger, from one side of a shape to the other. */
export interface Graded {
  /** Strength at the far side, as a share of the wash's own: 0.3 leaves three tenths. */
  readonly to: number;
  readonly towards: (typeof TOWARDS)[number];
}

/** One stroke of the drawing: figures of one form in one area. Exactly one of the forms is there. */
export interface Shape {
  readonly area: string;
  readonly rects?: readonly Box[] | undefined;
  readonly polygons?: readonly (readonly Point[])[] | undefined;
  readonly ellipses?: readonly Ellipse[] | undefined;
  readonly lines?: readonly (readonly Point[])[] | undefined;
  /** Of lines, in units. */
  readonly width?: number | undefined;
  readonly graded?: Graded | undefined;
}

/** A part of the picture that is one wash. */
export interface Area {
  readonly id: string;
  /** "the roof's turned side": for the ear. */
  readonly words: string;
  /** What else scenes call it, without an article. */
  readonly also?: readonly string[] | undefined;
  /** What lies there where a drill says nothing else. */
  readonly wash: Wash;
  /** The area of the same thing in the light, where this is its turned side. */
  readonly turned?: string | undefined;
}

/** Where the colours of a drill lie. */
export interface Lies {
  /** The colour that is there. */
  readonly start: string;
  /** The passage that is asked for. */
  readonly passage: string;
}

/** A picture. */
export interface Picture {
  readonly id: string;
  readonly place: string;
  readonly title: string;
  /** Area that the eye goes to. */
  readonly centre: string;
  /** Area that the centre stands out against. */
  readonly behind: string;
  readonly lies: Lies;
  /** By subject of a drill, where its colours lie elsewhere. */
  readonly subjects: Readonly<Record<string, Lies>>;
  /** In the order in which they are read out. */
  readonly areas: readonly Area[];
  /** From back to front. */
  readonly shapes: readonly Shape[];
}

/** A colour that is known by what it reflects only, 0-1 in the bands of the grid. */
export interface Reflecting {
  readonly reflectance: Spectrum;
}

/** What lies in an area: paint, a colour, or nothing yet. */
export type Covering = Laid | Reflecting | 'open';
