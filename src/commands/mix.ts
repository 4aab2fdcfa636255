/** `mudlark mix`: predicts a mixture. */
import type { ColourDescription } from '../colour/describe.js';
import { describeColour } from '../colour/describe.js';
import { UsageError } from '../errors.js';
import { WAVELENGTHS_NM } from '../optics/index.js';
import {
  evidenceOf,
  findPigment,
  LIBRARY,
  type Load,
  loadsFromParts,
  loadsGiven,
  type Part,
  predict,
  WAYS,
  type Way,
} from '../paints/index.js';
import { nearestNames } from '../text/nearest.js';
import { cautionLines } from './cautions.js';
import { document, usage } from './run.js';

/** Options as typed. */
export interface MixOptions {
  readonly strength?: string;
  readonly apply?: string;
  readonly loads?: boolean;
  readonly json?: boolean;
}

/** Most paints in one mixture. */
const MOST_PAINTS = 12;

/** A number written in decimal digits; "1e308", "0x10", "" and "Infinity" are refused with their own words. */
function readNumber(text: string, what: string): number {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (!Number.isFinite(value) || !/^[-+]?[0-9.]+(e[-+]?[0-9]+)?$/i.test(text.trim())) {
    throw new UsageError(`${what} must be a number, got "${text.slice(0, 40)}"`);
  }
  return value;
}

/** Reads `burnt-sienna=4`. */
function readPart(text: string): Part {
  const at = text.lastIndexOf('=');
  if (at <= 0)
    throw new UsageError(`"${text.slice(0, 60)}" must be written paint=parts, like burnt-sienna=4`);
  const id = text.slice(0, at);
  const pigment = findPigment(id);
  if (pigment === undefined) {
    throw new UsageError(
      `no paint is called "${id.slice(0, 60)}".${nearestNames(
        id,
        LIBRARY.map((paint) => paint.id),
      )} See: mudlark pigments`,
    );
  }
  return { pigment, parts: readNumber(text.slice(at + 1), `parts of ${id}`) };
}

/** Reads the way of applying. */
function readWay(text: string | undefined): Way {
  const way = WAYS.find((known) => known === (text ?? 'puddle'));
  if (way === undefined)
    throw new UsageError(`--apply takes ${WAYS.join(', ')}; not "${String(text).slice(0, 40)}"`);
  return way;
}

function readParts(texts: readonly string[]): Part[] {
  if (texts.length === 0)
    throw new UsageError('name at least one paint, like: mudlark mix burnt-sienna=4 ultramarine-blue=1');
  if (texts.length > MOST_PAINTS)
    throw new UsageError(`a mixture takes at most ${MOST_PAINTS} paints, got ${texts.length}`);
  const parts = texts.map(readPart);
  const twice = parts.find(
    ({ pigment }, index) => parts.findIndex((part) => part.pigment === pigment) !== index,
  );
  if (twice !== undefined) throw new UsageError(`${twice.pigment.id} is named twice; add its parts together`);
  return parts;
}

function wordLines(loads: readonly Load[], way: Way, colour: ColourDescription): string[] {
  const { value, step, chroma, hue, lab } = colour;
  return [
    `${colour.words}`,
    `value   step ${step.toFixed(1)} (1 paper white, 10 darkest); Munsell value ${value.toFixed(2)}`,
    `chroma  ${chroma.toFixed(1)}   hue ${hue.toFixed(0)}°   Munsell ${colour.munsell}`,
    `CIELAB  L* ${lab.l.toFixed(1)}  a* ${lab.a.toFixed(1)}  b* ${lab.b.toFixed(1)}  (D65, 2 degrees)`,
    `screen  ${colour.hex}${colour.inScreenGamut ? '' : ' (brought into the screen’s range)'}`,
    `laid    ${loads.map(({ pigment, load }) => `${pigment.name} ${load.toPrecision(3)}`).join(', ')} (${way})`,
    `evidence ${evidenceOf(loads)}`,
  ];
}

/** Predicts the mixture; text, or the JSON document. @throws UsageError for anything that cannot be mixed */
export async function mixCommand(texts: readonly string[], options: MixOptions): Promise<string> {
  const way = readWay(options.apply);
  const parts = readParts(texts);
  const strength = options.strength === undefined ? 1 : readNumber(options.strength, '--strength');
  const loads = usage(() =>
    options.loads === true
      ? loadsGiven(parts.map(({ pigment, parts: load }) => ({ pigment, load })))
      : loadsFromParts(parts, strength),
  );
  const reflectance = predict(loads, way);
  const colour = await describeColour(reflectance);
  if (options.json !== true) {
    return `${[...wordLines(loads, way, colour), ...cautionLines(loads.map(({ pigment }) => pigment))].join('\n')}\n`;
  }
  const { value, step, chroma, hue, munsell, words, lab, hex, inScreenGamut } = colour;
  return document({
    parts: loads.map(({ pigment, load }, index) => ({
      pigment: pigment.id,
      parts: parts[index]?.parts,
      load,
    })),
    apply: way,
    ...(options.loads === true ? {} : { strength }),
    value,
    step,
    chroma,
    hue,
    munsell,
    words,
    lab,
    hex,
    inScreenGamut,
    reflectance: { wavelengths: WAVELENGTHS_NM, values: [...reflectance] },
    evidence: evidenceOf(loads),
  });
}
