/** What lies behind laid paint: the films that made it, the part of the light that all its paints swallow, and what that does. */
import { type Spectrum, WAVELENGTHS_NM } from '../optics/index.js';
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
import { comingBack, type Run, swallowedByAll } from '../words/spectrum.js';
import { tell } from '../words/tell.js';
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

/** Nm that the eye makes something of. */
const isSeen = (band: number): boolean => {
  const nm = WAVELENGTHS_NM[band] ?? 0;
  return nm >= 400 && nm <= 700;
};

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

/** Paints of one film, each alone and as strong as the whole. */
export function paintsAlone(studio: Studio, { loads }: Seen): ResultSwatch[] {
  const all = loads.flat();
  const strength = Math.min(1, strengthOf(all));
  return [...new Map(all.map(({ pigment }) => [pigment.id, pigment.name]))].map(([id, name]) => ({
    label: `${name} alone`,
    reflectance: seeAlone(studio, id, strength).reflectance,
  }));
}

/** What the paints of one film all swallow. */
export const sharedBy = (studio: Studio, films: readonly ResultSwatch[]): Run[] =>
  films.length < 2
    ? []
    : swallowedByAll(
        films.map(({ reflectance }) => reflectance),
        studio.paper.reflectance,
      );

function puddleWhy(studio: Studio, seen: Seen): Why {
  const paints = paintsAlone(studio, seen);
  if (paints.length < 2) {
    return {
      films: [{ label: paints[0]?.label ?? 'the wash', reflectance: seen.reflectance }],
      told: [tell('why-one-paint', {})],
      swallowed: [],
    };
  }
  const swallowed = sharedBy(studio, paints);
  return {
    films: whyFilms([...paints, { label: 'the mixture', reflectance: seen.reflectance }]),
    told: [
      tell('why-mixture', {
        paints: paints.length,
        swallowed,
        left: comingBack(seen.reflectance),
        chroma: seen.colour.chroma,
      }),
    ],
    swallowed,
  };
}

/** Light that an upper film adds of its own, share 0-1, from which it covers rather than filters. */
const COVERS = 0.01;

function glazeWhy(studio: Studio, laid: Layered): Why {
  const top = laid.layers.at(-1) as Layered['layers'][number];
  const below = seeLaid(studio, { layers: laid.layers.slice(0, -1) }).reflectance;
  const above = seeLaid(studio, top);
  const both = seeLaid(studio, laid).reflectance;
  const over = both.reduce(
    (most, band, at) => (isSeen(at) ? Math.max(most, band - (below[at] ?? 0)) : most),
    0,
  );
  const swallowed = swallowedByAll([below, above.reflectance], studio.paper.reflectance);
  return {
    films: whyFilms([
      { label: laid.layers.length > 2 ? 'the films below' : 'the film below', reflectance: below },
      { label: `${namesOf(studio, top)} alone`, reflectance: above.reflectance },
      { label: 'one over the other', reflectance: both },
    ]),
    told: [tell('why-glaze', { covers: over > COVERS, swallowed })],
    swallowed,
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
    swallowed: [],
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
export function dryingFilms(studio: Studio, passages: readonly { label: string; laid: Laid }[]): Why {
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
    swallowed: [],
  };
}
