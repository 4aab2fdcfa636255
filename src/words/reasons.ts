/** Why laid paint looks as it does: one sentence, computed, that never says what the swatch does not show. */
import { hueName } from '../colour/hue.js';
import { type ColourReading, readColour } from '../colour/reading.js';
import {
  KEPT_LINE,
  NEUTRAL_CHROMA,
  NO_HUE_CHROMA,
  type Relation,
  relationBetween,
  WHITE_STEP,
} from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import {
  atStrength,
  type Laid,
  type Load,
  puddleReflectance,
  seeLaid,
  strengthOf,
  type Wash,
  washLoads,
} from '../washes/index.js';
import { asShown, namesOf, sentence, stepsWords } from './laid.js';
import { leftBy, runsWords, swallowedByAll, without } from './spectrum.js';

/** What two paints did to each other in one mixture. */
export interface PairFigures {
  readonly names: readonly [string, string];
  readonly relation: Relation;
  /** Share of the second in the film, by strength. */
  readonly share: number;
  /** C* of the mixture as a share of the mean of its two parts at the mixture's own strength, weighed by their shares. */
  readonly left: number;
  readonly mixture: ColourReading;
  /** Is there any part of the light that both swallow? */
  readonly isShared: boolean;
  /** Parts of the light that both swallow, in words, but for what still comes back in a colour; empty where there is none. */
  readonly both: string;
  /** What comes back from the mixture, in words. */
  readonly back: string;
}

/** The figures of one film of two paints or washes. @param one,other loads of each in the film */
export function pairFigures(
  studio: Studio,
  names: readonly [string, string],
  one: readonly Load[],
  other: readonly Load[],
): PairFigures {
  const { paper } = studio;
  const mixed = [...one, ...other];
  const whole = strengthOf(mixed);
  const share = strengthOf(other) / whole;
  const [a, b] = [one, other].map((loads) => puddleReflectance(atStrength(loads, whole), paper)) as [
    Float64Array,
    Float64Array,
  ];
  const reflectance = puddleReflectance(mixed, paper);
  const mean = (1 - share) * readColour(a).chroma + share * readColour(b).chroma;
  const mixture = readColour(reflectance);
  const shared = swallowedByAll([a, b], paper.reflectance);
  const back = leftBy(reflectance);
  return {
    names,
    relation: relationBetween(studio, one, other),
    share,
    left: mean > 0 ? mixture.chroma / mean : 1,
    mixture,
    isShared: runsWords(shared) !== '',
    both: runsWords(mixture.chroma < NEUTRAL_CHROMA ? shared : without(shared, back)),
    back: runsWords(back),
  };
}

/** "Both swallow blue to green (450-550 nm); mostly red (610-700 nm) comes back." */
function lightWords({ isShared, both, back, mixture }: PairFigures): string {
  if (back === '') return '';
  const comes =
    mixture.chroma < NEUTRAL_CHROMA
      ? 'what comes back is spread over the whole spectrum, so it looks grey'
      : `mostly ${back} comes back`;
  if (!isShared) return ` No part of the light is swallowed strongly by both; ${comes}.`;
  return both === '' ? ` ${sentence(comes)}.` : ` Both swallow ${both}; ${comes}.`;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** What a black, a grey or a white does to a colour, or a colour to it. */
function neutralSentence({ relation, names }: PairFigures): string {
  const [a, b] = relation.ends;
  if (a.chroma < NEUTRAL_CHROMA && b.chroma >= NEUTRAL_CHROMA)
    return `${sentence(names[0])} is close to neutral, so ${names[1]} sets the hue.`;
  const [neutral, reading] = b.chroma < NEUTRAL_CHROMA ? [names[1], b] : [names[0], a];
  return reading.step < WHITE_STEP
    ? `${sentence(neutral)} sends all parts of the light back alike: it makes a colour paler and chalkier.`
    : `${sentence(neutral)} is close to neutral: it swallows all parts of the light alike, and the colour goes with the value.`;
}

/** How two paints stand to each other, and what that did here. */
export function pairSentence(figures: PairFigures): string {
  const { relation, share, left, mixture, names } = figures;
  const [first, second] = names;
  if (relation.kind === 'neutral') return neutralSentence(figures);
  const kept = left >= KEPT_LINE;
  const lost = `${percent(left)} of the chroma between them is left`;
  const hue = mixture.chroma < NO_HUE_CHROMA ? 'grey' : hueName(mixture.hue);
  if (relation.kind === 'around') {
    const end = kept ? 'what one sends back the other lets pass, and the colour is kept' : lost;
    return `${sentence(first)} and ${second} go around the wheel: ${end}.${lightWords(figures)}`;
  }
  if (relation.kind === 'across') {
    const little =
      share <= 0.5 ? 'this little of it leaves most of the colour' : `${second} has nearly taken over`;
    const end = kept ? `but ${little}` : `each swallows what the other sends back, and ${lost}`;
    return `${sentence(first)} and ${second} go across the wheel: ${end}.${lightWords(figures)}`;
  }
  const end = kept ? 'most of the colour is kept' : lost;
  return `${sentence(first)} and ${second} go neither around nor across: between them lies ${hue}, and ${end}.${lightWords(figures)}`;
}

/** The paints of one wash, the last of them against the rest. */
function puddleReason(studio: Studio, wash: Wash): string | undefined {
  const loads = washLoads(studio, wash);
  const last = loads.at(-1);
  if (loads.length < 2 || last === undefined) return undefined;
  const rest = loads.slice(0, -1);
  const names = [rest.map(({ pigment }) => pigment.name).join(' with '), last.pigment.name] as const;
  return pairSentence(pairFigures(studio, names, rest, [last]));
}

function layersReason(studio: Studio, layers: readonly Wash[]): string {
  const below = seeLaid(studio, { layers: layers.slice(0, -1) }).colour;
  const all = seeLaid(studio, { layers }).colour;
  const paint = namesOf(studio, layers.at(-1) as Wash);
  const moved = asShown(all.step) - asShown(below.step);
  if (all.step - below.step < -0.1) {
    return `The last layer, ${paint}, covers: it sends back light of its own, so the passage gets ${stepsWords(moved)} lighter.`;
  }
  const chroma = all.chroma - below.chroma;
  const change =
    Math.abs(chroma) < 2
      ? 'leaves the chroma'
      : `${chroma > 0 ? 'adds' : 'takes'} ${Math.abs(chroma).toFixed(0)} chroma`;
  const value = moved < 0.05 ? 'the value hardly moves' : `${stepsWords(moved)} darker`;
  return `The last layer, ${paint}, filters what comes back from below: ${value}, and it ${change}.`;
}

function strokesReason(studio: Studio, laid: Laid): string {
  const { chroma, hue } = seeLaid(studio, laid).colour;
  return chroma < NEUTRAL_CHROMA
    ? 'The eye averages the light of the strokes, and the hues cancel to nearly grey.'
    : `The eye averages the light of the strokes: lighter than stirred, and no stronger than the two between them; it reads as ${hueName(hue)}.`;
}

/** One sentence on why it looks so, or undefined for one paint alone in one wash. */
export function reasonFor(studio: Studio, laid: Laid): string | undefined {
  if ('layers' in laid) return layersReason(studio, laid.layers);
  if ('strokes' in laid) return strokesReason(studio, laid);
  return puddleReason(studio, laid);
}
