/** How what lies in the areas looks: predicted by the washes, shown as screen colours, or left open. */
import { type ColourReading, readColour } from '../colour/reading.js';
import { greyOfValue, toScreen } from '../colour/screen.js';
import { once, perStudio, type Studio } from '../paints/index.js';
import { type Laid, seeLaid, type Wash } from '../washes/index.js';
import type { Covering, Picture, Reflecting } from './types.js';

/** A flat colour: read, and as a screen shows it. */
export interface Tone {
  readonly colour: ColourReading;
  /** '#rrggbb'. */
  readonly hex: string;
  /** The grey of the same value. */
  readonly grey: string;
}

/** How an area looks. */
export type AreaLook =
  | { readonly kind: 'open' }
  | {
      readonly kind: 'laid';
      /** Of the whole area, as the eye fuses it. */
      readonly tone: Tone;
      /** Strokes side by side, where it is laid so; the first takes what the others leave. */
      readonly strokes?: readonly { readonly tone: Tone; readonly share: number }[];
      /** Of the wash at a share of its strength; where no one wash lies there, the same everywhere. */
      readonly graded: (share: number) => Tone;
    };

/** The areas of a picture and the paper between and under them. */
export interface Painted {
  readonly picture: Picture;
  readonly paper: Tone;
  /** By id of the area. */
  readonly looks: Readonly<Record<string, AreaLook>>;
}

/** A colour as it is shown. */
export function toneOf(colour: ColourReading): Tone {
  return { colour, ...toScreen(colour.xyz), grey: greyOfValue(colour.value) };
}

const laidTone = once((studio: Studio, laid: Laid): Tone => toneOf(seeLaid(studio, laid).colour));
const paperTone = perStudio((studio) => toneOf(readColour(studio.paper.reflectance)));

/** Steps in which a gradation is predicted: finer ones cannot be told apart on a small sheet. */
const STEPS = 16;

function gradedTones(studio: Studio, wash: Wash): (share: number) => Tone {
  const known = new Map<number, Tone>();
  return (share) => {
    const step = Math.round(share * STEPS);
    if (step === STEPS) return laidTone(studio, wash);
    let tone = known.get(step);
    if (tone === undefined) {
      const strength = Math.min(1, wash.strength * Math.max(1 / (2 * STEPS), step / STEPS));
      tone = laidTone(studio, { ...wash, strength });
      known.set(step, tone);
    }
    return tone;
  };
}

const lookOf = once((studio: Studio, laid: Laid | Reflecting): AreaLook => {
  if ('reflectance' in laid) {
    const tone = toneOf(readColour(laid.reflectance));
    return { kind: 'laid', tone, graded: () => tone };
  }
  const tone = laidTone(studio, laid);
  if ('strokes' in laid) {
    const strokes = laid.strokes.map(({ share, ...wash }) => ({ tone: laidTone(studio, wash), share }));
    return { kind: 'laid', tone, strokes, graded: () => tone };
  }
  if ('layers' in laid) return { kind: 'laid', tone, graded: () => tone };
  return { kind: 'laid', tone, graded: gradedTones(studio, laid) };
});

/**
 * A picture with what lies in it.
 * @param coverings by area: what the drill lays there, or `open`; the picture's own wash everywhere else
 * @throws RangeError for an area that the picture does not have, and for unknown paints
 */
export function painted(
  studio: Studio,
  picture: Picture,
  coverings: Readonly<Record<string, Covering>> = {},
): Painted {
  const stranger = Object.keys(coverings).find((id) => !picture.areas.some((area) => area.id === id));
  if (stranger !== undefined) throw new RangeError(`${picture.id} has no area "${stranger}"`);
  const looks = picture.areas.map(({ id, wash }): [string, AreaLook] => {
    const covering = Object.hasOwn(coverings, id) ? (coverings[id] as Covering) : wash;
    return [id, covering === 'open' ? { kind: 'open' } : lookOf(studio, covering)];
  });
  return { picture, paper: paperTone(studio), looks: Object.fromEntries(looks) };
}
