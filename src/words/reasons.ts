/** Why laid paint looks as it does: one finding, computed, that never says what the swatch does not show. */
import { type HueName, hueName } from '../colour/hue.js';
import { hueDifference } from '../colour/lab.js';
import { type ColourReading, readColour } from '../colour/reading.js';
import { colourInWords } from '../colour/words.js';
import { NEUTRAL_CHROMA, NO_HUE_CHROMA, relationBetween, WHITE_STEP } from '../judgement/index.js';
import type { Spectrum } from '../optics/index.js';
import type { Studio } from '../paints/index.js';
import {
  atStrength,
  glazeReflectance,
  type Laid,
  type Layered,
  type Load,
  puddleReflectance,
  type Stroked,
  seeLaid,
  strengthOf,
  type Wash,
  washLoads,
} from '../washes/index.js';
import { asShown, namesOf } from './laid.js';
import type { Covering } from './sentences/mixture.js';
import { lightOf } from './spectrum.js';
import { type Finding, tell } from './tell.js';

/** Degrees from both paints at which a mixture has a hue of its own. */
const OWN_HUE_DEG = 20;

/** What two colours made between them: a brown or an olive where a painter says so, else a hue by name. */
function madeOf({ lab, hue }: ColourReading): HueName | 'brown' | 'olive' {
  const words = colourInWords(lab);
  return (['olive', 'brown'] as const).find((name) => words.includes(name)) ?? hueName(hue);
}

/**
 * What two sides did to each other in one film, each a paint or a wash of several.
 * @param one,other loads in the film
 * @param start C* that the change is held against; left out, that of `one` as it lies there
 */
export function pairReason(
  studio: Studio,
  names: readonly [string, string],
  one: readonly Load[],
  other: readonly Load[],
  start?: number,
): Finding {
  const { paper } = studio;
  const { kind, ends } = relationBetween(studio, one, other);
  if (kind === 'neutral')
    return neutralReason(names, ends, readColour(puddleReflectance([...one, ...other], paper)));
  const mixed = [...one, ...other];
  const whole = strengthOf(mixed);
  const share = strengthOf(other) / whole;
  const films = [one, other].map((loads) => puddleReflectance(atStrength(loads, whole), paper)) as [
    Spectrum,
    Spectrum,
  ];
  const [a, b] = films.map(readColour) as [ColourReading, ColourReading];
  const reflectance = puddleReflectance(mixed, paper);
  const mixture = readColour(reflectance);
  const mean = (1 - share) * a.chroma + share * b.chroma;
  const made = mixture.chroma < NEUTRAL_CHROMA ? hueName(mixture.hue) : madeOf(mixture);
  const asTheyLie = [one, other].map((loads) => readColour(puddleReflectance(loads, paper)));
  return tell('pair', {
    names,
    kind,
    share,
    left: mean > 0 ? mixture.chroma / mean : 1,
    before: start ?? asTheyLie[0]?.chroma ?? 0,
    alone: [a.chroma, b.chroma],
    chroma: mixture.chroma,
    made,
    isOwn: [a, b, ...asTheyLie].every(
      (side) => madeOf(side) !== made && Math.abs(hueDifference(side.hue, mixture.hue)) >= OWN_HUE_DEG,
    ),
    light: lightOf(films, reflectance, paper.reflectance),
  });
}

/** What a black, a grey or a white does to a colour, or a colour to it. */
function neutralReason(
  names: readonly [string, string],
  [a, b]: readonly [ColourReading, ColourReading],
  mixture: ColourReading,
): Finding {
  const isColourAdded = a.chroma < NEUTRAL_CHROMA && b.chroma >= NEUTRAL_CHROMA;
  // Where no hue is left nothing set it.
  if (isColourAdded && mixture.chroma >= NO_HUE_CHROMA)
    return tell('sets-hue', { neutral: names[0], colour: names[1] });
  const [name, reading] = b.chroma < NEUTRAL_CHROMA ? [names[1], b] : [names[0], a];
  return tell('neutral', { name, isWhite: reading.step < WHITE_STEP });
}

/** The paints of one wash, the last of them against the rest. */
function puddleReason(studio: Studio, wash: Wash, start?: number): Finding | undefined {
  const loads = washLoads(studio, wash);
  const last = loads.at(-1);
  if (loads.length < 2 || last === undefined) return undefined;
  const rest = loads.slice(0, -1);
  const names = [rest.map(({ pigment }) => pigment.name).join(' with '), last.pigment.name] as const;
  return pairReason(studio, names, rest, [last], start);
}

/** What the upper film sends back by itself: as it looks over black, and its share of all the light that comes back. */
function upperFilm(studio: Studio, laid: Layered): { readonly overBlack: number; readonly share: number } {
  const dark = studio.paper.reflectance.map(() => 0);
  const upper = washLoads(studio, laid.layers.at(-1) as Wash);
  const alone = readColour(glazeReflectance([upper], { ...studio.paper, reflectance: dark, inside: dark }));
  // The matt surface sends back the same white light from every film: it says nothing of what the paint does.
  const surface = 100 * studio.paper.surface.k1;
  const all = seeLaid(studio, laid).colour.xyz.y - surface;
  return { overBlack: alone.step, share: (alone.xyz.y - surface) / Math.max(0.1, all) };
}

/**
 * A film covers where it shows over black, as a painter tries it over a line of ink, and sends back so much of what comes
 * back from the passage; where it lightens it covers in part at least. Our bounds: the opaque paints of the usual box show
 * over black at step 8 or lighter when laid thick.
 */
const COVERS = { overBlack: 8, fromAbove: 0.5 } as const;
const COVERS_IN_PART = { overBlack: 8.2, fromAbove: 0.25 } as const;

/** How the upper film of a passage treats what lies below, and its share of the light that comes back, 0-1. */
export function coveringOf(
  studio: Studio,
  laid: Layered,
): { readonly does: Covering; readonly share: number } {
  const { overBlack, share } = upperFilm(studio, laid);
  const is = (bounds: typeof COVERS | typeof COVERS_IN_PART): boolean =>
    overBlack <= bounds.overBlack && share >= bounds.fromAbove;
  const does = is(COVERS)
    ? 'covers'
    : darkened(studio, laid) <= -0.05 || is(COVERS_IN_PART)
      ? 'in-part'
      : 'filters';
  return { does, share: Math.min(1, share) };
}

const belowOf = (studio: Studio, { layers }: Layered): ColourReading =>
  seeLaid(studio, { layers: layers.slice(0, -1) }).colour;

/** Steps that the upper film darkened, as they are shown. */
const darkened = (studio: Studio, laid: Layered): number =>
  asShown(seeLaid(studio, laid).colour.step) - asShown(belowOf(studio, laid).step);

function layersReason(studio: Studio, laid: Layered): Finding {
  return tell('layer', {
    paint: namesOf(studio, laid.layers.at(-1) as Wash),
    does: coveringOf(studio, laid).does,
    darker: darkened(studio, laid),
    chroma: seeLaid(studio, laid).colour.chroma - belowOf(studio, laid).chroma,
  });
}

/** The paint of strokes as one puddle. */
function stirred(studio: Studio, { strokes }: Stroked): ColourReading {
  const loads = strokes.flatMap(({ share, ...wash }) =>
    washLoads(studio, wash).map(({ pigment, load }) => ({ pigment, load: load * share })),
  );
  return readColour(puddleReflectance(loads, studio.paper));
}

function strokesReason(studio: Studio, laid: Stroked): Finding {
  const { colour } = seeLaid(studio, laid);
  const puddle = stirred(studio, laid);
  return tell('strokes', {
    hue: colour.chroma < NEUTRAL_CHROMA ? 'grey' : hueName(colour.hue),
    lighter: asShown(puddle.step) - asShown(colour.step),
    stronger: colour.chroma - puddle.chroma,
  });
}

/** Why it looks so, or undefined for one paint alone in one wash. @param start C* of the wash that a puddle was made from, if told */
export function reasonFor(studio: Studio, laid: Laid, start?: number): Finding | undefined {
  if ('layers' in laid) return layersReason(studio, laid);
  if ('strokes' in laid) return strokesReason(studio, laid);
  return puddleReason(studio, laid, start);
}
