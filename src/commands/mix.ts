/** `mudlark mix`: predicts a mixture. */
import type { ColourDescription } from '../colour/describe.js';
import { describeColour } from '../colour/describe.js';
import { UsageError } from '../errors.js';
import { type Spectrum, WAVELENGTHS_NM } from '../optics/index.js';
import { evidenceOf, type Studio } from '../paints/index.js';
import {
  glazeReflectance,
  type Load,
  loadsGiven,
  madeUp,
  type Part,
  puddleReflectance,
  stirIn,
  strengthOf,
  strokesReflectance,
  thinned,
  WAYS,
  type Way,
} from '../washes/index.js';
import { cautionLines, correctionLines } from './cautions.js';
import { readNumber, readParts } from './read-parts.js';
import { document, usage } from './run.js';

/** Options as typed. */
export interface MixOptions {
  readonly strength?: string;
  /** `paint=parts` each, stirred in. */
  readonly add?: readonly string[];
  readonly thin?: string;
  readonly apply?: string;
  readonly loads?: boolean;
  readonly json?: boolean;
}

const EXAMPLE = 'mudlark mix burnt-sienna=4 ultramarine-blue=1';

/** Reads the way of applying. */
function readWay(text: string | undefined): Way {
  const way = WAYS.find((known) => known === (text ?? 'puddle'));
  if (way === undefined)
    throw new UsageError(`--apply takes ${WAYS.join(', ')}; not "${String(text).slice(0, 40)}"`);
  return way;
}

/** The reflectance of loads laid in a way, and of nothing else. */
function laidReflectance({ paper }: Studio, loads: readonly Load[], way: Way): Spectrum {
  if (way === 'glaze')
    return glazeReflectance(
      loads.map((load) => [load]),
      paper,
    );
  return way === 'strokes' ? strokesReflectance(loads, paper) : puddleReflectance(loads, paper);
}

function wordLines(loads: readonly Load[], way: Way, colour: ColourDescription): string[] {
  const { value, step, chroma, hue, lab } = colour;
  return [
    `${colour.words}`,
    `value   step ${step.toFixed(1)} (1 paper white, 10 darkest); Munsell value ${value.toFixed(2)}`,
    `chroma  ${chroma.toFixed(1)}   hue ${hue.toFixed(0)}°   Munsell ${colour.munsell}`,
    `CIELAB  L* ${lab.l.toFixed(1)}  a* ${lab.a.toFixed(1)}  b* ${lab.b.toFixed(1)}  (D65, 2 degrees)`,
    `screen  ${colour.hex}${colour.inScreenGamut ? '' : ' (brought into the screen’s range)'}`,
    `laid    ${loads.map(({ pigment, load }) => `${pigment.name} ${load.toPrecision(3)}`).join(', ')} (${way}), strength ${Math.round(100 * strengthOf(loads))} %`,
    `evidence ${evidenceOf(loads.map(({ pigment }) => pigment))}`,
  ];
}

/** What the flags ask for: the first puddle, then what is stirred in, then the water. */
interface MixRequest {
  readonly first: readonly Part[];
  readonly added: readonly Part[];
  readonly way: Way;
  readonly loads: readonly Load[];
}

function readRequest(studio: Studio, texts: readonly string[], options: MixOptions): MixRequest {
  const way = readWay(options.apply);
  const first = readParts(studio, texts, EXAMPLE);
  const added =
    options.add === undefined || options.add.length === 0 ? [] : readParts(studio, options.add, EXAMPLE);
  if (added.length > 0 && way !== 'puddle')
    throw new UsageError(`--add stirs into the puddle; leave out --apply ${way}`);
  const strength = options.strength === undefined ? 1 : readNumber(options.strength, '--strength');
  const thin = options.thin === undefined ? 1 : readNumber(options.thin, '--thin');
  const loads = usage(() => {
    const wash =
      options.loads === true
        ? loadsGiven(first.map(({ pigment, parts: load }) => ({ pigment, load })))
        : madeUp(first, strength);
    return thinned(stirIn(wash, added), thin);
  });
  return { first, added, way, loads };
}

/** Predicts the mixture; text, or the JSON document. @throws UsageError for anything that cannot be mixed */
export async function mixCommand(
  studio: Studio,
  texts: readonly string[],
  options: MixOptions,
): Promise<string> {
  const { first, added, way, loads } = readRequest(studio, texts, options);
  const reflectance = laidReflectance(studio, loads, way);
  const colour = await describeColour(reflectance);
  if (options.json !== true) {
    const paints = loads.map(({ pigment }) => pigment);
    return `${[...wordLines(loads, way, colour), ...correctionLines(paints), ...cautionLines(paints)].join('\n')}\n`;
  }
  const { value, step, chroma, hue, munsell, words, lab, hex, inScreenGamut } = colour;
  const of = (parts: readonly Part[], load: Load) =>
    parts.find(({ pigment }) => pigment === load.pigment)?.parts;
  return document({
    parts: loads.map((load) => ({
      pigment: load.pigment.id,
      parts: of(first, load),
      added: of(added, load),
      load: load.load,
    })),
    apply: way,
    strength: strengthOf(loads),
    loads: loads.map(({ pigment, load }) => ({ pigment: pigment.id, load })),
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
    evidence: evidenceOf(loads.map(({ pigment }) => pigment)),
  });
}
