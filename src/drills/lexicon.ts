/**
 * What scenes are made of: subjects with the colours that they can have, in light and in shade. A scene, written or made up,
 * that names its subject is held to them, so that no brick is turquoise and no ivy lemon.
 */
import * as v from 'valibot';
import { hueDifference } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import { type Aim, NEUTRAL_CHROMA } from '../judgement/index.js';
import { didYouMean } from '../text/nearest.js';
import data from './data/lexicon.json' with { type: 'json' };

/** Painter's steps and C* that a thing can have. */
export interface Range {
  readonly step: readonly [number, number];
  readonly chroma: readonly [number, number];
}

export interface Subject {
  readonly id: string;
  /** "the tiled roof"; with its article. */
  readonly name: string;
  /** "above the harbour". */
  readonly where: string;
  readonly plural: boolean;
  /** Middle and reach of its hues, CIELAB degrees; absent for greys. */
  readonly hue?: { readonly near: number; readonly within: number };
  readonly lit: Range;
  /** Turned away, in shade, in folds, wet. */
  readonly shaded: Range;
  /** The picture that shows it. */
  readonly picture: string;
  /** Where it stands: harbour, orchard, market, quarry, weather. */
  readonly place: string;
}

/**
 * What may be said of some subjects: `far` may lie farther off, `cloth` has folds, `painted` takes a new coat, `porous` darkens
 * when wet, `ripe` ripens, `round` has an underside, `level` has no side that turns away, `air` casts and takes no shadow,
 * `indoors` has no sky over it.
 */
export type Trait = keyof typeof data.traits;

/** True when a subject has a trait. */
export function hasTrait({ id }: Subject, trait: Trait): boolean {
  return data.traits[trait].includes(id);
}

/** All subjects, each id once. */
export const SUBJECTS = data.subjects as unknown as readonly Subject[];

const BY_ID = new Map(SUBJECTS.map((subject) => [subject.id, subject]));

/** The subject with this id, or undefined. */
export function findSubject(id: string): Subject | undefined {
  return BY_ID.get(id);
}

export const subjectSchema = v.pipe(
  v.string('must be the id of a subject'),
  v.check(
    (id) => BY_ID.has(id),
    ({ input }) =>
      `no subject is called "${String(input).slice(0, 60)}".${didYouMean(String(input), [...BY_ID.keys()])}`,
  ),
);

/** Which range of a subject an aim is held to: what is farther off or dulled may leave its chroma below. */
function fits(range: Range, { step, chroma }: ColourReading, mayBeGrey: boolean): boolean {
  const [light, dark] = range.step;
  const [dull, strong] = range.chroma;
  return step >= light && step <= dark && chroma <= strong && (mayBeGrey || chroma >= dull);
}

/** With less light, wet, dulled or through haze a hue turns a little: so many degrees more are its own. */
const TURN_DEG = 10;

function isHue({ hue }: Subject, colour: ColourReading, room: number): boolean {
  if (hue === undefined || colour.chroma < NEUTRAL_CHROMA) return true;
  return Math.abs(hueDifference(hue.near, colour.hue)) <= hue.within + room;
}

/** The air that lies before a far thing makes it lighter by up to so many steps, and leaves no more than such a share of its chroma. */
const AIR = { step: 1.5, chroma: 0.7 } as const;

/** Steps and C* of a thing that may lie farther off. */
function farRange({ lit }: Subject): Range {
  return {
    step: [Math.max(1, lit.step[0] - AIR.step), lit.step[1]],
    chroma: [0, AIR.chroma * lit.chroma[1]],
  };
}

/**
 * Whether a subject can have a colour in one of its lights.
 * @param light lit; shaded, wet or in folds; or far off
 * @param mayBeGrey chroma may fall below its own, as where it is dulled
 */
export function canBeIn(
  subject: Subject,
  light: 'lit' | 'shaded' | 'far',
  colour: ColourReading,
  mayBeGrey = false,
): boolean {
  const room = light === 'lit' && !mayBeGrey ? 0 : TURN_DEG;
  return (
    isHue(subject, colour, room) &&
    fits(light === 'far' ? farRange(subject) : subject[light], colour, mayBeGrey)
  );
}

/** Whether a subject can have a colour, lit or shaded. @param mayBeGrey as for {@link canBeIn} */
export function canBe(subject: Subject, colour: ColourReading, mayBeGrey: boolean): boolean {
  return canBeIn(subject, 'lit', colour, mayBeGrey) || canBeIn(subject, 'shaded', colour, mayBeGrey);
}

/** What is wrong with a colour as that of a subject, or undefined. */
export function subjectFault(id: string, aim: Aim, colour: ColourReading): string | undefined {
  const subject = findSubject(id);
  if (subject === undefined) return `no subject is called ${id}`;
  const mayBeGrey = aim === 'dull' || aim === 'distance' || aim === 'neutral' || aim === 'lean';
  if (canBe(subject, colour, mayBeGrey)) return undefined;
  if (aim === 'distance' && canBeIn(subject, 'far', colour)) return undefined;
  const { step, chroma, hue } = colour;
  return `the best answer, step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}, hue ${hue.toFixed(0)}, is no colour of ${id}`;
}
