/** Named boxes of paints that drills and practice can be limited to. */

/** A box of paints by pigment id. */
export interface Palette {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly pigments: readonly string[];
  /** Put together by a learner: these are the paints that there are. */
  readonly isOwn?: true;
  /** What its owner calls a paint, by id. */
  readonly names?: Readonly<Record<string, string>>;
  /** How many times as strong as the library's a paint tints, by id; 1 where nothing is said. */
  readonly strengths?: Readonly<Record<string, number>>;
}

export const PALETTES: readonly Palette[] = [
  {
    id: 'six',
    name: 'six paints',
    note: 'a yellow, a red, a crimson, two blues and an earth: fifteen pairs to know well',
    pigments: [
      'cadmium-yellow',
      'cadmium-red',
      'alizarin-crimson',
      'ultramarine-blue',
      'prussian-blue',
      'burnt-sienna',
    ],
  },
  {
    id: 'twelve',
    name: 'twelve paints',
    note: 'the six with a lemon, a second earth, a green, two blues and a black: sixty-six pairs',
    pigments: [
      'lemon-yellow',
      'cadmium-yellow',
      'raw-sienna',
      'burnt-sienna',
      'cadmium-red',
      'alizarin-crimson',
      'ultramarine-blue',
      'cobalt-blue',
      'cerulean-blue',
      'prussian-blue',
      'sap-green',
      'ivory-black',
    ],
  },
  {
    id: 'harbour',
    name: 'harbour box',
    note: 'earths, quiet greens and three blues: greys by the dozen, for weather, stone and water',
    pigments: [
      'yellow-ochre',
      'raw-sienna',
      'burnt-sienna',
      'burnt-umber',
      'raw-umber',
      'venetian-red',
      'ultramarine-blue',
      'indanthrone-blue',
      'cerulean-blue-chromium',
      'viridian',
      'perylene-green',
      'neutral-tint',
    ],
  },
  {
    id: 'clear',
    name: 'clear box',
    note: 'transparent staining pigments round the circle: the widest range of value and chroma, and the strongest tinters',
    pigments: [
      'hansa-yellow-light',
      'quinacridone-gold',
      'pyrrole-red',
      'quinacridone-rose',
      'dioxazine-violet',
      'ultramarine-blue',
      'indanthrone-blue',
      'phthalo-blue-green-shade',
      'phthalo-green-blue-shade',
      'viridian',
      'burnt-sienna',
      'perylene-maroon',
    ],
  },
];
