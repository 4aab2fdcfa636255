/** Why laid paint looks as it does: one finding, computed, that never says what the swatch does not show. */
import { type HueName, hueName } from '../colour/hue.js';
import { hueDifference } from '../colour/lab.js';
import { type ColourReading, readColour } from '../colour/reading.js';
import { colourInWords } from '../colour/words.js';
import { NEUTRAL_CHROMA, relationBetween, WHITE_STEP } from '../judgement/index.js';
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
import { comingBack, isNearlyAll, sentBack, swallowedByAll, without } from './spectrum.js';
import { type Finding, tell } from './tell.js';

/** Degrees from both paints at which a mixture has a hue of its own. */
const OWN_HUE_DEG = 20;

/** What two colours made between them: a brown or an olive where a painter says so, else a hue by name. */
function madeOf({ lab, hue }: ColourReading): HueName | 'brown' | 'olive' {
  const words = colourInWords(lab);
  return (['olive', 'brown'] as const).find((name) => words.includes(name)) ?? hueName(hue);
}

/** What two sides did to each other in one film, each a paint or a wash of several. @param one,other loads in the film */
export function pairReason(
  studio: Studio,
  names: readonly [string, string],
  one: readonly Load[],
  other: readonly Load[],
): Finding {
  const { paper } = studio;
  const { kind, ends } = relationBetween(studio, one, other);
  if (kind === 'neutral') return neutralReason(names, ends);
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
  const isGrey = mixture.chroma < NEUTRAL_CHROMA;
  const shared = swallowedByAll(films, paper.reflectance);
  const back = isGrey ? [] : comingBack(reflectance);
  const made = madeOf(mixture);
  const asTheyLie = [one, other].map((loads) => readColour(puddleReflectance(loads, paper)));
  const isOwn = [a, b, ...asTheyLie].every(
    (side) => madeOf(side) !== made && Math.abs(hueDifference(side.hue, mixture.hue)) >= OWN_HUE_DEG,
  );
  return tell('pair', {
    names,
    kind,
    share,
    left: mean > 0 ? mixture.chroma / mean : 1,
    chroma: mixture.chroma,
    made: !isGrey && isOwn ? made : undefined,
    both: isGrey ? shared : without(shared, sentBack(reflectance, 0.5)),
    isNearlyAll: isNearlyAll(shared),
    back,
  });
}

/** What a black, a grey or a white does to a colour, or a colour to it. */
function neutralReason(
  names: readonly [string, string],
  [a, b]: readonly [ColourReading, ColourReading],
): Finding {
  if (a.chroma < NEUTRAL_CHROMA && b.chroma >= NEUTRAL_CHROMA)
    return tell('sets-hue', { neutral: names[0], colour: names[1] });
  const [name, reading] = b.chroma < NEUTRAL_CHROMA ? [names[1], b] : [names[0], a];
  return tell('neutral', { name, isWhite: reading.step < WHITE_STEP });
}

/** The paints of one wash, the last of them against the rest. */
function puddleReason(studio: Studio, wash: Wash): Finding | undefined {
  const loads = washLoads(studio, wash);
  const last = loads.at(-1);
  if (loads.length < 2 || last === undefined) return undefined;
  const rest = loads.slice(0, -1);
  const names = [rest.map(({ pigment }) => pigment.name).join(' with '), last.pigment.name] as const;
  return pairReason(studio, names, rest, [last]);
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

function layersReason(studio: Studio, laid: Layered): Finding {
  const { layers } = laid;
  const below = seeLaid(studio, { layers: layers.slice(0, -1) }).colour;
  const all = seeLaid(studio, laid).colour;
  const { overBlack, share } = upperFilm(studio, laid);
  return tell('layer', {
    paint: namesOf(studio, layers.at(-1) as Wash),
    overBlack,
    fromAbove: share,
    darker: asShown(all.step) - asShown(below.step),
    chroma: all.chroma - below.chroma,
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

/** Why it looks so, or undefined for one paint alone in one wash. */
export function reasonFor(studio: Studio, laid: Laid): Finding | undefined {
  if ('layers' in laid) return layersReason(studio, laid);
  if ('strokes' in laid) return strokesReason(studio, laid);
  return puddleReason(studio, laid);
}
