/** A colour as a person writes it: on a screen, in CIELAB or in Munsell notation. Imports culori and the Munsell tables. */
import { converter, parse } from 'culori';
import { ILLUMINANT_D65, mhvcToXyz } from 'munsell';
import { InputError } from '../errors.js';
import { type Lab, xyzToLab } from './lab.js';
import { xyzOfScreen } from './screen.js';
import { yFromMunsellValue } from './value.js';
import { whiteOf } from './xyz.js';

const WHITE = whiteOf('D65-2');
const toXyz = converter('xyz65');

/** Longest text that is looked at, in characters. */
const MOST_CHARACTERS = 80;
const TAKES = "write '#6b4a2f', 'lab(40 10 20)' (D65, 2 degrees) or '7.5YR 4/4'";

const HUES = ['R', 'YR', 'Y', 'GY', 'G', 'BG', 'B', 'PB', 'P', 'RP'];
/** The renotation goes no further than this at any hue and value. */
const MOST_MUNSELL_CHROMA = 50;

const NUMBER = String.raw`([-+]?\d*\.?\d+)`;
const LAB = new RegExp(String.raw`^lab\s*\(\s*${NUMBER}%?[\s,]+${NUMBER}[\s,]+${NUMBER}\s*\)$`, 'i');
const MUNSELL = /^(\d*\.?\d+)\s*(R|YR|Y|GY|G|BG|B|PB|P|RP)\s*(\d*\.?\d+)\s*\/\s*(\d*\.?\d+)$/i;
const SCREEN = /^#[\da-f]{3,8}$/i;
const NEUTRAL = /^N\s*(\d*\.?\d+)\s*\/?$/i;

function readLab(parts: RegExpExecArray): Lab {
  const [l, a, b] = parts.slice(1).map(Number) as [number, number, number];
  if (!(l >= 0 && l <= 100 && Math.hypot(a, b) <= 200))
    throw new InputError(
      'lab(L a b) takes L* from 0 to 100 and a*, b* that are no further than 200 from grey',
    );
  return { l, a, b };
}

function readMunsell(hue: number, family: string, value: number, chroma: number): Lab {
  if (!(hue <= 10 && value <= 10 && chroma <= MOST_MUNSELL_CHROMA))
    throw new InputError(
      `Munsell notation takes a hue of 0 to 10, a value of 0 to 10 and a chroma of 0 to ${MOST_MUNSELL_CHROMA}, as in 7.5YR 4/4`,
    );
  const [x, y, z] = mhvcToXyz(10 * HUES.indexOf(family) + hue, value, chroma, ILLUMINANT_D65);
  return xyzToLab({ x: 100 * x, y: 100 * y, z: 100 * z }, WHITE);
}

/**
 * Reads a colour: `lab(40 10 20)` is CIELAB under D65 for the 2-degree observer, as everywhere in the program (not the D50 of
 * CSS); `7.5YR 4/4` and `N 5` are Munsell notation, adapted from illuminant C (Bradford); `#6b4a2f` is a
 * screen's, whose white is matched to our white. Nothing else is read: no names of the web.
 * @throws InputError for what is no colour
 */
export function readColourText(text: string): Lab {
  const typed = text.trim();
  const refused = (why: string): InputError => new InputError(`"${typed.slice(0, 40)}" ${why}; ${TAKES}`);
  if (typed.length > MOST_CHARACTERS) throw refused('is too long for a colour');
  const lab = LAB.exec(typed);
  if (lab !== null) return readLab(lab);
  const neutral = NEUTRAL.exec(typed);
  if (neutral !== null) {
    const value = Number(neutral[1]);
    if (value > 10) throw refused('is no value: N goes from 0 to 10');
    const share = yFromMunsellValue(value) / 100;
    return xyzToLab({ x: WHITE.x * share, y: WHITE.y * share, z: WHITE.z * share }, WHITE);
  }
  const [, hue, family = '', value, chroma] = MUNSELL.exec(typed) ?? [];
  if (hue !== undefined) return readMunsell(Number(hue), family.toUpperCase(), Number(value), Number(chroma));
  // CSS knows a brown, and Lab under D50: neither is the colour that a painter means by it.
  if (!SCREEN.test(typed)) throw refused('is no colour that is read here');
  const css = parse(typed);
  if (css === undefined) throw refused('is no colour');
  if ((css.alpha ?? 1) < 1) throw refused('lets through what lies behind');
  const { x, y, z } = toXyz(css);
  if (![x, y, z].every(Number.isFinite)) throw refused('is no colour');
  return xyzToLab(xyzOfScreen({ x, y, z }), WHITE);
}
