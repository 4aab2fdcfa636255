/**
 * A colour in words, so that nothing has to be seen: 'dark reddish brown', 'pale bluish grey', 'olive'.
 *
 * The plan (modifier, then hue; brown, olive and pink as names of their own) is that of the ISCC-NBS method of
 * designating colours. The boundaries are ours, in CIELAB under D65, simple on purpose:
 *
 * | step | rule |
 * | --- | --- |
 * | neutral | C* up to 5: white from L* 88, light grey from 68, middle grey from 45, dark grey from 25, else black |
 * | near neutral | C* up to 12: the same greys with a tinge (bluish grey, brownish black); tinges in {@link TINGES} |
 * | brown | h 20-88, dark and not too strong for its hue: see `isBrown`; reddish to 45, plain to 58, yellowish to 75, olive above |
 * | olive | h 88-120 and L* under 60; olive green from 106 |
 * | pink | h 340-60 and L* from 65 while C* is under 45; purplish before 5, yellowish from 38 |
 * | others | the name on the hue wheel with a modifier for its lightness and strength: see `modifier` |
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

const below = <T>(table: readonly (readonly [number, T])[], at: number): T | undefined =>
  table.find(([bound]) => at < bound)?.[1];

function grey(lightness: number): string {
  if (lightness >= 88) return 'white';
  if (lightness >= 68) return 'light grey';
  if (lightness >= 45) return 'middle grey';
  return lightness >= 25 ? 'dark grey' : 'black';
}

function tingedGrey(lightness: number, hue: number): string {
  let tinge = below(TINGES, hue) ?? 'purplish';
  if (lightness >= 68 && (hue >= 340 || hue < 60)) tinge = 'pinkish';
  else if (lightness >= 68 && tinge === 'brownish') tinge = 'yellowish';
  if (lightness >= 88) return `${tinge} white`;
  if (lightness < 25) return `${tinge} black`;
  if (lightness >= 68) return `pale ${tinge} grey`;
  return lightness >= 45 ? `${tinge} grey` : `dark ${tinge} grey`;
}

/** Browns are dark oranges and yellows: the yellower the hue, the lighter and stronger it may be and still look brown. */
function isBrown(lightness: number, chroma: number, hue: number): boolean {
  if (hue < 20 || hue >= 88) return false;
  const yellowness = Math.min(1, (hue - 20) / 45);
  return lightness < 44 + 22 * yellowness && chroma < 34 + 34 * yellowness;
}

function brownKind(hue: number): string {
  if (hue < 45) return 'reddish brown';
  if (hue < 58) return 'brown';
  return hue < 75 ? 'yellowish brown' : 'olive brown';
}

function earthModifier(lightness: number, chroma: number): string {
  const depth = lightness >= 52 ? 'light' : lightness >= 36 ? '' : lightness >= 20 ? 'dark' : 'very dark';
  if (chroma <= 18 && depth !== 'very dark') return `${depth} greyish`.trim();
  return chroma > 48 && depth === '' ? 'strong' : depth;
}

/** Lower bound in L* of each row; the words run with rising C*: up to 25, up to 45, up to vivid, above. */
const MODIFIERS: readonly (readonly [number, readonly [string, string, string, string]])[] = [
  [80, ['very pale', 'light', 'bright', 'vivid']],
  [65, ['pale', 'light', 'bright', 'vivid']],
  [45, ['greyish', 'moderate', 'strong', 'vivid']],
  [28, ['dark greyish', 'dark', 'deep', 'vivid']],
  [Number.NEGATIVE_INFINITY, ['blackish', 'very dark', 'very deep', 'vivid']],
];

/** C* above which a colour is vivid; oranges and yellows reach further than the rest of the wheel. */
const vividFrom = (hue: number): number => (hue >= 45 && hue < 106 ? 80 : 66);

function modifier(lightness: number, chroma: number, hue: number): string {
  const row = MODIFIERS.find(([from]) => lightness >= from)?.[1];
  const column = chroma <= 25 ? 0 : chroma <= 45 ? 1 : chroma <= vividFrom(hue) ? 2 : 3;
  return row?.[column] ?? '';
}

function pinkKind(hue: number): string {
  if (hue >= 340 || hue < 5) return 'purplish pink';
  return hue < 38 ? 'pink' : 'yellowish pink';
}

function plainName(hue: number, lightness: number, chroma: number): string {
  if ((hue >= 340 || hue < 60) && lightness >= 65 && chroma < 45) return pinkKind(hue);
  if (hue >= 88 && hue < 120 && lightness < 60) return hue < 106 ? 'olive' : 'olive green';
  return hueName(hue);
}

/**
 * A colour in words.
 * @param lab CIELAB, D65, 2 degrees
 * @returns lower case, one to four words
 * Worked example: L* 34, a* 17, b* 13 is 'dark reddish brown'.
 */
export function colourInWords(lab: Lab): string {
  const chroma = chromaOf(lab);
  const hue = hueOf(lab);
  if (chroma <= 5) return grey(lab.l);
  if (chroma <= 12) return tingedGrey(lab.l, hue);
  if (isBrown(lab.l, chroma, hue)) return `${earthModifier(lab.l, chroma)} ${brownKind(hue)}`.trim();
  const name = plainName(hue, lab.l, chroma);
  const words = name.startsWith('olive') ? earthModifier(lab.l, chroma) : modifier(lab.l, chroma, hue);
  return `${words} ${name}`.trim();
}
