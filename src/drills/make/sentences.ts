/** Sentences of made-up scenes: patterns held as data, filled in for one thing or several; and which of them a scene was made of. */

import { type Draw, pick } from '../../chance/draw.js';
import { sentence as capitalised } from '../../words/laid.js';
import data from '../data/sentences.json' with { type: 'json' };
import type { Drill } from '../kinds/index.js';
import { hasTrait, SUBJECTS, type Subject, type Trait } from '../lexicon.js';

/** What a sentence is about: an aim, and for some aims how it is reached. */
export type Theme = keyof typeof data.sentences;

/** A pattern. */
export interface Sentence {
  readonly id: string;
  /** Second half of the title. */
  readonly aspect: string;
  readonly text: string;
  readonly for?: Trait;
  /** Sky, rain or sun are in it: not for what has a roof over it. */
  readonly outdoors?: true;
  /** Something stands, lies or shines on it: not for what is air. */
  readonly solid?: true;
  /** Which opening goes before it; none where the sentence says what the light does. */
  readonly light?: 'sun' | 'any';
  /** Bright light is in it: not for what is dark for a thing in daylight. */
  readonly lit?: true;
}

interface Opening {
  readonly id: string;
  readonly text: string;
  readonly sun: boolean;
  readonly places?: readonly string[];
  readonly indoors?: true;
  /** Little light: for what is dark for a thing in daylight, and for nothing else. */
  readonly dim?: true;
}

const OPENINGS = data.lights as readonly Opening[];
const SENTENCES = Object.entries(data.sentences as Readonly<Record<Theme, readonly Sentence[]>>).flatMap(
  ([theme, list]) => list.map((sentence) => ({ ...sentence, theme, key: `${theme}/${sentence.id}` })),
);

const SUN = 'sun';

/** Step from which a thing is dark for daylight, and steps by which it may be darker than it is when lit. Common practice, no source. */
const DIM = { step: 5.8, below: 1.6 } as const;

/** Whether a colour is too dark for bright light to be spoken of. @param lit step of the thing in the light, where that is known */
export const isDim = (step: number, lit = step): boolean => step >= DIM.step || step - lit > DIM.below;

/** Name of a thing without its article. */
export const bare = ({ name }: Subject): string => name.replace(/^the /, '');

/** "the mooring buoy in the harbour". */
export const placed = ({ name, where }: Subject): string => `${name} ${where}`;

/** How a title calls a subject: a grey or a dark is nothing by itself, so its place is told with it. */
function titled(subject: Subject): string {
  return capitalised(subject.hue === undefined ? `${bare(subject)} ${subject.where}` : bare(subject));
}

/**
 * What the light does over a subject, with a blank after it; empty when all that fits was said just before.
 * @param light `dim` for what is dark for a thing in daylight
 */
export function opening(
  subject: Subject,
  light: Sentence['light'] | 'dim',
  avoid: readonly string[],
  draw: Draw,
): string {
  // Fog and cloud are what the light does.
  if (light === undefined || (light === 'dim' && hasTrait(subject, 'air'))) return '';
  const { place } = subject;
  const isIndoors = hasTrait(subject, 'indoors');
  const fit = OPENINGS.filter(
    ({ id, sun, places, indoors, dim }) =>
      (indoors === true) === isIndoors &&
      (dim === true) === (light === 'dim') &&
      (light === SUN ? sun : place !== 'weather' || !sun) &&
      (places === undefined || places.includes(place)) &&
      !avoid.includes(`light/${id}`),
  );
  return fit.length === 0 ? '' : `${pick(fit, draw).text} `;
}

/** The paints of a first wash, in words. */
export interface PaintWords {
  readonly names: string;
  readonly several: boolean;
}

function filled(text: string, subject: Subject, { names, several }: PaintWords): string {
  return text
    .replaceAll('{the}', placed(subject))
    .replaceAll('{The}', capitalised(placed(subject)))
    .replaceAll('{paints}', names)
    .replaceAll('{Paints}', capitalised(names))
    .replace(/\[([^|\]]*)\|([^\]]*)\]/g, (_, one: string, many: string) => (subject.plural ? many : one))
    .replace(/<([^|>]*)\|([^>]*)>/g, (_, one: string, many: string) => (several ? many : one));
}

/**
 * Title and scene of a theme for a subject; undefined when every sentence that fits was used just before.
 * @param dim whether what is painted is dark for a thing in daylight
 */
export function sceneOf(
  theme: Theme,
  subject: Subject,
  paints: PaintWords,
  dim: boolean,
  avoid: readonly string[],
  draw: Draw,
): { readonly title: string; readonly scene: string } | undefined {
  const fit = SENTENCES.filter(
    (sentence) =>
      sentence.theme === theme &&
      (sentence.for === undefined || hasTrait(subject, sentence.for)) &&
      !(sentence.outdoors === true && hasTrait(subject, 'indoors')) &&
      !(sentence.solid === true && hasTrait(subject, 'air')) &&
      !(sentence.lit === true && dim) &&
      // What is painted for rain and fog has no sun to turn away from.
      (sentence.light !== SUN || subject.place !== 'weather') &&
      !avoid.includes(sentence.key),
  );
  if (fit.length === 0) return undefined;
  const sentence = pick(fit, draw);
  const light = opening(subject, dim && sentence.light === 'any' ? 'dim' : sentence.light, avoid, draw);
  return {
    title: `${titled(subject)}, ${sentence.aspect}`.slice(0, 60),
    scene: light + filled(sentence.text, subject, paints),
  };
}

/** A pattern as what it looks like filled in. */
const SHAPES: readonly (readonly [string, RegExp])[] = SENTENCES.map(({ key, text }) => {
  const shape = text
    .replace(/[.*+?^$()\\]/g, '\\$&')
    .replace(/\{\w+\}/g, '.+')
    .replace(/\[([^|\]]*)\|([^\]]*)\]|<([^|>]*)\|([^>]*)>/g, (_, a, b, c, d) => `(?:${a ?? c}|${b ?? d})`);
  return [key, new RegExp(`${shape}$`, 'u')] as const;
});

/**
 * What a drill, made or written, has used up for those that follow it: the paints of its first wash, its subjects, its
 * sentence and its opening. A request takes it as `avoid`.
 */
export function usedBy(drill: Drill): string[] {
  const { title, scene } = drill;
  const text = `${title}. ${scene}`.toLowerCase();
  const named = SUBJECTS.filter(({ name }) => new RegExp(`\\b${name.replace(/^the /, '')}\\b`).test(text));
  return [
    ...(drill.kind === 'mix' ? Object.keys(drill.start.paints) : []),
    ...named.map(({ id }) => id),
    ...SHAPES.filter(([, shape]) => shape.test(scene)).map(([key]) => key),
    ...OPENINGS.filter((one) => scene.startsWith(one.text)).map(({ id }) => `light/${id}`),
  ];
}
