import { type ColourReading, colourInWords, readColour } from '../colour/index.js';
import type { Spectrum } from '../optics/index.js';
import type { Pigment, Studio } from '../paints/index.js';
import { padText, widthOf } from '../text/wrap.js';
import { puddleReflectance } from '../washes/index.js';
import { SCHEMA_VERSION } from './run.js';

/** Reflectance of a pigment alone, at a share of its masstone. */
export function masstoneSpectrum(studio: Studio, pigment: Pigment, strength = 1): Spectrum {
  return puddleReflectance([{ pigment, load: strength * pigment.fullStrength }], studio.paper);
}

/** A colour as JSON; CIELAB, D65, 2 degrees. */
export function colourJson({ lab, value, step, chroma, hue }: ColourReading) {
  return { l: lab.l, a: lab.a, b: lab.b, value, step, chroma, hue, words: colourInWords(lab) };
}

/** What the library knows of a pigment, as JSON. */
export function summaryJson(studio: Studio, pigment: Pigment) {
  const { id, name, ci, ciNote, evidence, fullStrength, strengthEvidence, provenance, handling, hazard } =
    pigment;
  return {
    id,
    name,
    ci,
    ...(ciNote === undefined ? {} : { ciNote }),
    evidence,
    fullStrength,
    strengthEvidence,
    masstone: colourJson(readColour(masstoneSpectrum(studio, pigment))),
    provenance,
    handling,
    ...(hazard === undefined ? {} : { hazard }),
  };
}

/** The list as a JSON document; masstones are CIELAB, D65, 2 degrees. */
export function pigmentsJson(studio: Studio): object {
  return {
    schemaVersion: SCHEMA_VERSION,
    pigments: studio.paints.map((paint) => summaryJson(studio, paint)),
  };
}

const codes = ({ ci }: Pigment): string => ci.join(' ') || '-';

/** @param texts before the figures @param columns of these */
function listLine(
  studio: Studio,
  pigment: Pigment,
  texts: readonly string[],
  columns: readonly number[],
): string {
  const { lab, step, chroma } = readColour(masstoneSpectrum(studio, pigment));
  return [
    ...texts.map((text, at) => padText(text, columns[at] as number)),
    padText(step.toFixed(1), 4, 'left'),
    padText(chroma.toFixed(0), 8, 'left'),
    `  ${colourInWords(lab)}`,
  ].join('');
}

/** The list as text, one pigment a line. */
export function pigmentsText(studio: Studio): string {
  const heads = ['id', 'Colour Index', 'evidence'];
  const rows = studio.paints.map((paint) => [paint.id, codes(paint), paint.evidence]);
  const columns = heads.map(
    (head, at) => 2 + Math.max(...[head, ...rows.map((row) => row[at] ?? '')].map(widthOf)),
  );
  const heading = `${heads.map((head, at) => padText(head, columns[at] as number)).join('')}step  chroma  masstone`;
  return `${[
    heading,
    ...studio.paints.map((paint, at) => listLine(studio, paint, rows[at] ?? [], columns)),
    '',
    `${studio.paints.length} pigments. step: 1 paper white, 10 darkest. More of one: mudlark pigments show <id>`,
  ].join('\n')}\n`;
}
