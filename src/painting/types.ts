/** What is known of the photograph of a painting. Plain data: steps are painter's (1 paper white to 10 the darkest), places shares of a side. */
import type { ColourReading } from '../colour/reading.js';

/** A photograph at working size, as light. */
export interface Photograph {
  /** Pixels across and down. */
  readonly width: number;
  readonly height: number;
  /**
   * Light of the three primaries of sRGB (IEC 61966-2-1), linear, red, green, blue of each pixel, row by row from the left upper corner; 1 is
   * the most that the file can hold.
   */
  readonly light: Float32Array;
}

/** A place: shares of the width and of the height, 0-1, from the left upper corner. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A rectangle, in shares. */
export interface Cut extends Place {
  readonly width: number;
  readonly height: number;
}

/** Corners of the sheet as the painter sees it: left upper, right upper, right lower, left lower. */
export type Corners = readonly [Place, Place, Place, Place];

/** What is said by hand of a photograph; the rest is found. Places are those of the photograph as it is seen, before it is cut. */
export interface ByHand {
  readonly cut?: Cut;
  readonly corners?: Corners;
  /** Where something of known value lies: `value` is its Munsell value, that of the library's paper where it is not given. */
  readonly white?: Place & { readonly value?: number };
}

/** The painting alone: upright, evenly lit, on the library's paper under D65. */
export interface Likeness {
  readonly width: number;
  readonly height: number;
  /** CIELAB (D65, 2 degrees), three a pixel, row by row. */
  readonly lab: Float32Array;
  /** Munsell value of each pixel, 0-10. */
  readonly value: Float32Array;
}

/** An area of the painting that the eye takes as one. */
export interface Mass extends Place {
  /** Share of the painting, 0-1. */
  readonly share: number;
  /** Its mean colour. */
  readonly colour: ColourReading;
}

/** Two masses that touch. */
export interface Border {
  /** Indices of masses, the lighter first. */
  readonly between: readonly [number, number];
  /** Where the border runs, its middle. */
  readonly at: Place;
  /** Length as a share of all borders. */
  readonly share: number;
  /** Painter's steps from one to the other, 0 and more. */
  readonly steps: number;
  readonly deltaE00: number;
}

/** A dark mass that is duller than the shade of a lighter one of its hue: a veil. */
export interface Veiled {
  /** Indices of masses: the dark one, and the lighter one of its hue that it is held against. */
  readonly mass: number;
  readonly from: number;
  /** C* under the shading line at its value. */
  readonly below: number;
}

/** How chroma goes as value falls. */
export interface Veil {
  /**
   * Chroma of the darks as a share of what the shading line keeps of the chroma of the lights, all of the painting together: 1 is as
   * light alone would have it; undefined where there is nothing of colour to tell it by.
   */
  readonly slope: number | undefined;
  /** Mean C* under the shading line of what is veiled, by share; 0 where nothing is. */
  readonly below: number;
  readonly masses: readonly Veiled[];
}

/** How far a reading is to be believed. */
export type Trust = 'good' | 'fair' | 'low';

/** What takes from the trust, as data; the sentence is made where it is said. */
export interface Doubt {
  readonly id: string;
  readonly trust: Exclude<Trust, 'good'>;
  /** Figures that its sentence needs. */
  readonly figures?: Readonly<Record<string, number>>;
}

/** Everything that is read of one photograph. */
export interface PaintingReading {
  readonly likeness: Likeness;
  /** Index of the mass of each pixel of the likeness. */
  readonly massAt: Uint8Array;
  /** Where the white was taken; `found` is false where it was given by hand or taken as that of sRGB. */
  readonly white: Place & { readonly found: boolean };
  /** The sheet in the photograph; the whole of it where none was found. */
  readonly corners: Corners;
  /** The painting on the sheet laid flat, its bare margin left out: what the likeness shows. */
  readonly area: Cut;
  /** Steps between which all but the last hundredths of the painting lie. */
  readonly range: { readonly light: number; readonly dark: number };
  /** Of the painting: light to step 3.5, middle to 6, dark beyond; together 1. */
  readonly shares: { readonly light: number; readonly middle: number; readonly dark: number };
  /** Share of each painter's step, 1 to 10; together 1. */
  readonly histogram: readonly number[];
  /** The largest first. */
  readonly masses: readonly Mass[];
  /** The strongest contrast first. */
  readonly borders: readonly Border[];
  readonly veil: Veil;
  readonly trust: Trust;
  readonly doubts: readonly Doubt[];
}
