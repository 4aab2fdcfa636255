/**
 * A colour in words, so that nothing has to be seen: 'dark reddish brown', 'pale bluish grey', 'olive'.
 *
 * The plan (modifier, then hue; brown, olive and pink as names of their own) is that of the ISCC-NBS method of
 * designating colours. The boundaries are ours, in CIELAB under D65, few and simple on purpose:
 *
 * - Neutral, C* up to 5: white from L* 88, light grey from 68, middle grey from 45,
 *   dark grey from 25, else black.
 * - Near neutral, C* up to 12: the same greys with a tinge: 'bluish grey', 'brownish black'.
 * - Brown, h 20-90, dark and not too strong for its hue (`isBrown`): reddish brown up to h 45, brown to 65,
 *   yellowish brown to 78, olive brown above.
 * - Olive, h 90-106 and L* under 60; olive green to h 126 and L* under 50.
 * - Pink, C* under 62: h 340-38 from L* 58, purplish before h 5; yellowish pink h 38-60 from L* 68, from h 48 only
 *   under C* 48.
 * - Any other: the name on the hue wheel after a modifier for lightness and strength (`modifier`).
 *
 * There is one scale of strength, by what the hue can reach: a 'strong blue' has less chroma than a 'strong orange'. The
 * names and `chromaWord` both stand on it.
 */
import { hueName } from './hue.js';
import { chromaOf, hueOf, type Lab } from './lab.js';

/** Upper bound in degrees of each tinge of a grey. */
const TINGES: readonly (readonly [number, string])[] = [
  [15, 'purplish'],
  [45, 'reddish'],
  [75, 'brownish'],
  [105, 'yellowish'],
  [130, 'olive'],
  [200, 'greenish'],
  [285, 'bluish'],
  [360, 'purplish'],
];

function grey(lightness: number): string {
  if (lightness >= 88) return 'white';
  if (lightness >= 68) return 'light grey';
  if (lightness >= 45) return 'middle grey';
  return lightness >= 25 ? 'dark grey' : 'black';
}

function tinge(lightness: number, hue: number): string {
  const word = TINGES.find(([bound]) => hue < bound)?.[1] ?? 'purplish';
  if (lightness < 68) return word;
  if (hue >= 340 || hue < 60) return 'pinkish';
  return word === 'brownish' || word === 'olive' ? 'yellowish' : word;
}

function tingedGrey(lightness: number, hue: number): string {
  const tinged = tinge(lightness, hue);
  if (lightness >= 88) return `${tinged} white`;
  if (lightness >= 68) return `pale ${tinged} grey`;
  if (lightness < 25) return `${tinged} black`;
  return lightness >= 45 ? `${tinged} grey` : `dark ${tinged} grey`;
}

const between = (from: number, to: number, share: number): number =>
  from + (to - from) * Math.min(1, Math.max(0, share));

/** Browns are dark oranges and yellows: the yellower the hue, the lighter and stronger one may be and still be brown. */
function isBrown(lightness: number, chroma: number, hue: number): boolean {
  if (hue < 20 || hue >= 90) return false;
  const lightest = between(44, 66, (hue - 20) / 45);
  const strongest = hue < 40 ? between(30, 52, (hue - 20) / 20) : between(52, 58, (hue - 40) / 25);
  return lightness < lightest && chroma < strongest;
}

function brownKind(hue: number): string {
  if (hue < 45) return 'reddish brown';
  if (hue < 65) return 'brown';
  return hue < 78 ? 'yellowish brown' : 'olive brown';
}

/** Lower bound in L* of each row; along a row strength rises: dull, moderate, strong, vivid. */
const MODIFIERS: readonly (readonly [number, readonly [string, string, string, string]])[] = [
  [80, ['very pale', 'light', 'bright', 'vivid']],
  [65, ['pale', 'light', 'bright', 'vivid']],
  [38, ['greyish', 'moderate', 'strong', 'vivid']],
  [18, ['dark greyish', 'dark', 'deep', 'vivid']],
  [Number.NEGATIVE_INFINITY, ['blackish', 'very dark', 'very deep', 'vivid']],
];

/** A colour by its own name where it has one, by its hue otherwise. */
function nameOf(lightness: number, chroma: number, hue: number): string {
  if (chroma < 62) {
    if (lightness >= 58 && (hue >= 340 || hue < 38)) return hue >= 5 && hue < 38 ? 'pink' : 'purplish pink';
    // A strong wash of an orange paint is light, but nobody calls it a pink.
    if (lightness >= 68 && hue >= 38 && hue < 60 && chroma < (hue < 48 ? 62 : 48)) return 'yellowish pink';
  }
  if (hue >= 90 && hue < 106 && lightness < 60) return 'olive';
  if (hue >= 106 && hue < 126 && lightness < 50) return 'olive green';
  return hueName(hue);
}

/** Names that stand in for dark and weak oranges, yellows and greens. */
const isEarth = (name: string): boolean => name.endsWith('brown') || name.startsWith('olive');

/** A colour by its own name where it has one, by its hue otherwise. */
function ownName(lightness: number, chroma: number, hue: number): string {
  return isBrown(lightness, chroma, hue) ? brownKind(hue) : nameOf(lightness, chroma, hue);
}

/** C* above which a colour stops being dull, becomes strong, becomes vivid: by what the hue can reach. */
function strengths(name: string, hue: number): readonly [number, number, number] {
  if (isEarth(name)) return [18, 40, Number.POSITIVE_INFINITY];
  if (hue >= 45 && hue < 106) return [25, 47, 80];
  if (hue < 130 || hue >= 340) return [25, 47, 66];
  return [18, 38, 58];
}

const STRENGTHS = ['dull', 'moderate', 'strong', 'vivid'] as const;

/** How strong a colour is, in a word: what its name says of its strength, whatever its lightness. */
export type ChromaWord = 'neutral' | 'near neutral' | (typeof STRENGTHS)[number];

/** C* up to which a colour is neutral. */
const NEUTRAL = 5;
/** C* up to which a colour is a grey with a tinge. */
const NEAR_NEUTRAL = 12;

const strengthOf = (name: string, chroma: number, hue: number): 0 | 1 | 2 | 3 =>
  strengths(name, hue).filter((bound) => chroma > bound).length as 0 | 1 | 2 | 3;

/** How strong a colour is, in words; see the scale above. @param lab CIELAB, D65, 2 degrees */
export function chromaWord(lab: Lab): ChromaWord {
  const [chroma, hue] = [chromaOf(lab), hueOf(lab)];
  if (chroma <= NEUTRAL) return 'neutral';
  if (chroma <= NEAR_NEUTRAL) return 'near neutral';
  return STRENGTHS[strengthOf(ownName(lab.l, chroma, hue), chroma, hue)];
}

/** The modifier of a brown or an olive; the plain name is the middle of them. */
function earthModifier(lightness: number, strength: number): string {
  if (lightness >= 52) return strength === 0 ? 'light greyish' : 'light';
  if (strength >= 2) return lightness >= 30 ? 'strong' : 'deep';
  if (lightness >= 33) return strength === 0 ? 'greyish' : '';
  return lightness >= 14 ? 'dark' : 'very dark';
}

function modifier(lightness: number, strength: number): string {
  return MODIFIERS.find(([from]) => lightness >= from)?.[1][strength] ?? '';
}

/**
 * A colour in words.
 * @param lab CIELAB, D65, 2 degrees
 * @returns lower case, one to four words
 * @throws RangeError when a coordinate is not a number
 * Worked example: L* 30, a* 17, b* 13 is 'dark reddish brown'.
 */
export function colourInWords(lab: Lab): string {
  const chroma = chromaOf(lab);
  const hue = hueOf(lab);
  if (!Number.isFinite(lab.l + chroma)) {
    throw new RangeError(`colour in words: (${lab.l}, ${lab.a}, ${lab.b}) is not a colour`);
  }
  if (chroma <= NEUTRAL) return grey(lab.l);
  if (chroma <= NEAR_NEUTRAL) return tingedGrey(lab.l, hue);
  const name = ownName(lab.l, chroma, hue);
  const strength = strengthOf(name, chroma, hue);
  return `${(isEarth(name) ? earthModifier : modifier)(lab.l, strength)} ${name}`.trim();
}
