/** What lies behind laid paint: the films that made it, the part of the light that all its paints swallow, and what that does. */
import { readColour } from '../colour/reading.js';
import { type CriterionId, NEUTRAL_CHROMA, type Rated, RELATION, WHITE_STEP } from '../judgement/index.js';
import type { Spectrum } from '../optics/index.js';
import type { Studio } from '../paints/index.js';
import {
  type Laid,
  type Layered,
  type Seen,
  type Stroked,
  seeAlone,
  seeLaid,
  seeWet,
  strengthOf,
} from '../washes/index.js';
import { namesOf, sentence } from '../words/laid.js';
import { coveringOf } from '../words/reasons.js';
import type { ComparedFilm, Taken } from '../words/sentences/why.js';
import { isSeen, lightOf, type Run, swallowedBy } from '../words/spectrum.js';
import { type Finding, tell } from '../words/tell.js';
import type { ResultSwatch, Why } from './types.js';

/** Two films are drawn as one where their curves are nowhere further apart, 0-1. */
const ALIKE = 0.005;

const areAlike = (one: Spectrum, other: Spectrum): boolean =>
  one.every((band, at) => Math.abs(band - (other[at] ?? 0)) <= ALIKE);

/** Films for curves: those that cannot be told apart become one, named for all of them. */
export function whyFilms(films: readonly ResultSwatch[]): ResultSwatch[] {
  const kept: ResultSwatch[] = [];
  for (const film of films) {
    const at = kept.findIndex(({ reflectance }) => areAlike(reflectance, film.reflectance));
    const same = kept[at];
    if (same === undefined) kept.push(film);
    else kept[at] = { ...same, label: `${same.label} = ${film.label}` };
  }
  return kept;
}

/** How much came back in the darkest and in the lightest part of a film, before and after a change, shares 0-1. */
export interface Lift {
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
}

/** What a change did to a film at the two ends of its curve. */
export function liftedBy(before: Spectrum, after: Spectrum): Lift {
  const bands = [...before.keys()].filter(isSeen).sort((a, b) => (before[a] ?? 0) - (before[b] ?? 0));
  const at = (band: number | undefined): [number, number] => [before[band ?? 0] ?? 0, after[band ?? 0] ?? 0];
  return { low: at(bands[0]), high: at(bands.at(-1)) };
}

/** The paints of one film, in the order they lie there. */
const paintsOf = ({ loads }: Seen): (readonly [id: string, name: string])[] => [
  ...new Map(loads.flat().map(({ pigment }) => [pigment.id, pigment.name])),
];

const strengthAsAll = ({ loads }: Seen): number => Math.min(1, strengthOf(loads.flat()));

/** Paints of one film, each alone and as strong as the whole. */
function paintsAlone(studio: Studio, seen: Seen): ResultSwatch[] {
  return paintsOf(seen).map(([id, name]) => ({
    label: `${name} alone`,
    reflectance: seeAlone(studio, id, strengthAsAll(seen)).reflectance,
  }));
}

/** What a film takes. @param as the film by which a black, a white and a colour are told apart */
function takenBy(studio: Studio, name: string, film: Spectrum, as: Spectrum = film): Taken {
  const { chroma, step } = readColour(as);
  const is = chroma >= NEUTRAL_CHROMA ? 'colour' : step < WHITE_STEP ? 'white' : 'black';
  return { name, is, swallows: is === 'colour' ? swallowedBy(film, studio.paper.reflectance) : [] };
}

/** What each paint of a mixture does to the light; undefined for one paint. @param of whose mixture it is, where there are several */
export function mixtureFinding(studio: Studio, seen: Seen, of?: string): Finding | undefined {
  const paints = paintsOf(seen).map(([id, name]) =>
    takenBy(
      studio,
      name,
      seeAlone(studio, id, strengthAsAll(seen)).reflectance,
      seeAlone(studio, id, RELATION.strength).reflectance,
    ),
  );
  if (paints.length < 2) return undefined;
  return { ...tell('why-mixture', { paints }), ...(of === undefined ? {} : { of }) };
}

/** The criteria that go by how much light comes back, and those that go by how far a curve rises. */
const BY: Readonly<Partial<Record<CriterionId, 'value' | 'chroma'>>> = {
  darkest: 'value',
  lightest: 'value',
  'most-chroma': 'chroma',
  greyest: 'chroma',
  'keeps-colour': 'chroma',
};

/** What of films side by side decided, the best first. */
function comparedFinding(
  studio: Studio,
  by: CriterionId,
  films: readonly { readonly label: string; readonly seen: Seen }[],
): Finding {
  const compared = films.map(({ label, seen }): ComparedFilm => {
    const light = [...seen.reflectance].filter((_, band) => isSeen(band));
    return {
      ...takenBy(studio, label, seen.reflectance),
      all: seen.colour.xyz.y / 100,
      ends: [Math.min(...light), Math.max(...light)],
    };
  });
  return tell('why-films', { by: BY[by] ?? 'hue', isGreyFirst: by === 'greyest', films: compared });
}

function puddleWhy(studio: Studio, seen: Seen): Why {
  const paints = paintsAlone(studio, seen);
  const finding = mixtureFinding(studio, seen);
  if (finding === undefined) {
    return {
      films: [{ label: paints[0]?.label ?? 'the wash', reflectance: seen.reflectance }],
      told: [tell('why-one-paint', {})],
    };
  }
  return {
    films: whyFilms([...paints, { label: 'the mixture', reflectance: seen.reflectance }]),
    told: [finding],
    swallowed: sharedIn(studio, seen),
  };
}

/** What the paints of one film all swallow. */
export function sharedIn(studio: Studio, seen: Seen): readonly Run[] {
  const films = paintsAlone(studio, seen).map(({ reflectance }) => reflectance);
  return films.length < 2 ? [] : lightOf(films, seen.reflectance, studio.paper.reflectance).both;
}

function glazeWhy(studio: Studio, laid: Layered): Why {
  const top = laid.layers.at(-1) as Layered['layers'][number];
  const under = laid.layers.slice(0, -1);
  const below = seeLaid(studio, { layers: under }).reflectance;
  const above = seeLaid(studio, top).reflectance;
  const both = seeLaid(studio, laid).reflectance;
  const name = namesOf(studio, top);
  const lies = under.length > 1 ? 'what has dried' : namesOf(studio, under[0] as typeof top);
  return {
    films: whyFilms([
      { label: under.length > 1 ? 'the films below' : 'the film below', reflectance: below },
      { label: `${name} alone`, reflectance: above },
      { label: 'one over the other', reflectance: both },
    ]),
    told: [
      tell('why-glaze', {
        ...coveringOf(studio, laid),
        upper: takenBy(studio, name, above),
        below: takenBy(studio, lies === name ? 'the same paint' : lies, below),
      }),
    ],
    swallowed: lightOf([below, above], both, studio.paper.reflectance).both,
  };
}

function strokesWhy(studio: Studio, laid: Stroked): Why {
  const strokes = laid.strokes.map((stroke) => ({
    label: namesOf(studio, stroke),
    reflectance: seeLaid(studio, stroke).reflectance,
    share: stroke.share,
  }));
  return {
    films: whyFilms([
      ...strokes.map(({ label, reflectance }) => ({ label, reflectance })),
      { label: 'their mean', reflectance: seeLaid(studio, laid).reflectance },
    ]),
    told: [tell('why-strokes', { strokes: strokes.map(({ label, share }) => ({ name: label, share })) })],
  };
}

/** What lies behind a passage. */
export function whyOf(studio: Studio, laid: Laid): Why {
  if ('layers' in laid) {
    return laid.layers.length > 1 ? glazeWhy(studio, laid) : whyOf(studio, laid.layers[0] as Laid);
  }
  return 'strokes' in laid ? strokesWhy(studio, laid) : puddleWhy(studio, seeLaid(studio, laid));
}

/** Passages wet and dry, and what drying took from each. */
function dryingFilms(studio: Studio, passages: readonly { label: string; laid: Laid }[]): Why {
  const both = passages.map(({ label, laid }) => ({
    label,
    wet: seeWet(studio, laid),
    dry: seeLaid(studio, laid),
  }));
  return {
    films: whyFilms(
      both.flatMap(({ label, wet, dry }) => [
        { label: `${label}, wet`, reflectance: wet.reflectance },
        { label: `${label}, dry`, reflectance: dry.reflectance },
      ]),
    ),
    told: both.map(({ label, wet, dry }) =>
      tell('why-loss', { name: sentence(label), wet: wet.colour.chroma, dry: dry.colour.chroma }),
    ),
  };
}

/**
 * Passages compared: wet and dry where drying decides, else side by side, with what decided.
 * @param rated the best first
 * @param told in place of what decided
 */
export function comparedWhy(
  studio: Studio,
  by: CriterionId,
  passages: readonly { readonly label: string; readonly laid: Laid }[],
  rated: readonly Rated[],
  told: readonly Finding[] = [],
): Why {
  if (by === 'dries-most') return dryingFilms(studio, passages);
  return {
    films: whyFilms(
      passages.map(({ label, laid }) => ({ label, reflectance: seeLaid(studio, laid).reflectance })),
    ),
    told: told.length > 0 ? told : [comparedFinding(studio, by, rated)],
  };
}
