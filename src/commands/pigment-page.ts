/** `mudlark pigments show`: one pigment on a page. */

import { leastChromatic } from '../accuracy/neutral.js';
import { chromaOf, colourInWords, readColour } from '../colour/index.js';
import { toScreen } from '../colour/screen.js';
import { UsageError } from '../errors.js';
import { NEUTRAL_CHROMA } from '../judgement/table.js';
import { GRID, type Spectrum, WAVELENGTHS_NM } from '../optics/index.js';
import { CAUTION_ADVICE, findPaint, type Pigment, type Studio } from '../paints/index.js';
import { nearestNames } from '../text/nearest.js';
import { padText, wrapText } from '../text/wrap.js';
import { cautionLines } from './cautions.js';
import { plotCurve } from './curve-plot.js';
import { colourJson, masstoneSpectrum, summaryJson } from './pigments.js';
import { SCHEMA_VERSION } from './run.js';

/** How a page may be drawn. */
export interface ShowStyle {
  /** Columns to use, 60-120. */
  readonly columns: number;
  /** Whether patches are coloured (24-bit) as well as described. */
  readonly colour: boolean;
}

const MOST_COLUMNS = 120;
const LEAST_COLUMNS = 60;

/** Steps of the ladder from water to masstone. */
const LADDER = [0.03, 0.08, 0.2, 0.4, 0.7, 1] as const;

/** Most partners listed. */
const MOST_PARTNERS = 8;

function requirePigment(studio: Studio, id: string): Pigment {
  const pigment = findPaint(studio, id);
  if (pigment !== undefined) return pigment;
  const ids = studio.paints.map((paint) => paint.id);
  throw new UsageError(
    `no pigment is called "${id.slice(0, 60)}".${nearestNames(id, ids)} See: mudlark pigments`,
  );
}

/** A pigment that greys another: the least chromatic mixture of the two. */
export interface Neutraliser {
  readonly id: string;
  readonly minChroma: number;
  readonly lstar: number;
  /** Parts of the other paint to one of this. */
  readonly partsToOne: number;
  readonly strength: number;
}

/** Pigments of the library that bring this one to chroma 5 or less, most neutral first; empty for a paint that is itself neutral. */
export function neutralisersOf(studio: Studio, pigment: Pigment): Neutraliser[] {
  const isChromatic = (paint: Pigment) => readColour(masstoneSpectrum(studio, paint)).chroma > NEUTRAL_CHROMA;
  if (!isChromatic(pigment)) return [];
  return studio.paints
    .filter((other) => other !== pigment && isChromatic(other))
    .map((other) => {
      const { lab, share, strength } = leastChromatic(studio, pigment, other);
      const partsToOne = (share * other.fullStrength) / ((1 - share) * pigment.fullStrength);
      return { id: other.id, minChroma: chromaOf(lab), lstar: lab.l, partsToOne, strength };
    })
    .filter(({ minChroma }) => minChroma <= 5)
    .toSorted((a, b) => a.minChroma - b.minChroma);
}

function ladderLines(studio: Studio, pigment: Pigment, colour: boolean): string[] {
  return LADDER.map((strength) => {
    const { xyz, lab, step, chroma } = readColour(masstoneSpectrum(studio, pigment, strength));
    const { hex } = toScreen(xyz);
    const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
    const patch = colour ? `\u001b[48;2;${r};${g};${b}m        \u001b[49m ` : '';
    const numbers = `step ${padText(step.toFixed(1), 4, 'left')}  chroma ${padText(chroma.toFixed(0), 3, 'left')}`;
    return `  ${padText(`${Math.round(strength * 100)} %`, 5, 'left')} ${patch}${numbers}  ${colourInWords(lab)}`;
  });
}

function rating(
  label: string,
  figure: { value: number; note?: string; source: string } | undefined,
  scale: string,
) {
  if (figure === undefined) return [];
  const note = figure.note ?? figure.source;
  return [`  ${padText(label, 14)}${Number(figure.value.toFixed(1))} ${scale}; ${note}`];
}

function handlingLines({ handling }: Pigment): string[] {
  const { lightfastness: light } = handling;
  return [
    ...rating('transparency', handling.transparency, 'of 4 (4 clear, 0 covering)'),
    ...rating('staining', handling.staining, 'of 4 (4 does not lift)'),
    ...rating('granulation', handling.granulation, 'of 4 (4 coarse)'),
    ...rating('value range', handling.valueRange, 'of 100 in lightness below white paper'),
    ...rating('hue shift', handling.hueShiftDeg, 'degrees from masstone to tint'),
    ...(light === undefined
      ? ['  lightfastness not tested in the sources read']
      : [
          `  lightfastness ${light.value.verdict}: Blue Wool ${light.value.blueWoolTint} as a tint, ${light.value.blueWoolFull} at full strength. Test: ${light.value.test}${light.note === undefined ? '' : `. Note: ${light.note}`}`,
        ]),
  ];
}

function neutraliserLines(studio: Studio, pigment: Pigment): string[] {
  const partners = neutralisersOf(studio, pigment);
  if (partners.length === 0) return ['  nothing here takes it to a neutral, or it is one itself'];
  const shown = partners.slice(0, MOST_PARTNERS).map(({ id, minChroma, lstar, partsToOne }) => {
    const ratio =
      partsToOne >= 1 ? `1 to ${partsToOne.toPrecision(2)}` : `${(1 / partsToOne).toPrecision(2)} to 1`;
    return `  ${padText(id, 27)} about ${padText(ratio, 10)} chroma ${minChroma.toFixed(1)} at lightness ${lstar.toFixed(0)}`;
  });
  const more = partners.length - shown.length;
  return more > 0 ? [...shown, `  and ${more} more`] : shown;
}

function evidenceLines({ evidence, strengthEvidence, provenance }: Pigment): string[] {
  const { residualDeltaE00, departure } = provenance;
  const residual =
    residualDeltaE00 === undefined
      ? 'no published masstone to compare with'
      : `colour difference ${residualDeltaE00.toFixed(1)} from the published mean masstone (makers differ by about 3)`;
  return [
    `  ${evidence}: ${provenance.method}`,
    `  ${residual}${departure === undefined ? '' : `; curve changed by ${(departure * 100).toFixed(0)} % (ln K, root mean square)`}`,
    `  strength ${strengthEvidence}: ${provenance.strengthMethod}${strengthEvidence === 'assumed' ? '. Amounts of this paint are a guess' : ''}`,
    `  ${provenance.source}`,
    `  ${provenance.licence}; ${provenance.date}`,
  ];
}

/** Breaks long lines at the columns given, keeping their indentation; a patch or a plot is never broken. */
function wrapped(lines: readonly string[], columns: number): string[] {
  return lines.flatMap((line) => {
    if (line.includes('\u001b')) return [line];
    const indent = /^ */.exec(line)?.[0] ?? '';
    if (line.length <= columns) return [line];
    return wrapText(line, columns - indent.length - 2).map(
      (part, index) => `${indent}${index === 0 ? '' : '  '}${part}`,
    );
  });
}

/** All of one pigment, as text. @throws UsageError for an unknown id */
export function pigmentShowText(studio: Studio, id: string, style: ShowStyle): string {
  const pigment = requirePigment(studio, id);
  const columns = Math.min(Math.max(style.columns, LEAST_COLUMNS), MOST_COLUMNS);
  const plot = { columns: columns - 2, rows: 8 };
  const scaled = (values: Spectrum) => values.map((value) => value * pigment.fullStrength);
  const indent = (lines: readonly string[]) => lines.map((line) => `  ${line}`);
  const code = pigment.ci.join(', ') || 'no Colour Index name stated';
  const cautions = cautionLines([pigment]);
  const lowHazard = pigment.hazard?.level === 'low' ? [`  ${pigment.hazard.note}`] : [];
  const lines = [
    `${pigment.name}   ${code}   full strength ${Number(pigment.fullStrength.toPrecision(4))}`,
    ...(pigment.ciNote === undefined ? [] : [`  ${pigment.ciNote}`]),
    '',
    'From water to masstone (share of full strength)',
    ...ladderLines(studio, pigment, style.colour),
    '',
    'Reflectance of the masstone',
    ...indent(plotCurve([{ mark: '*', values: masstoneSpectrum(studio, pigment) }], { ...plot, most: 1 })),
    '',
    'K (absorption, k) and S (scattering, s) of the masstone film, logarithmic',
    ...indent(
      plotCurve(
        [
          { mark: 's', values: scaled(pigment.S) },
          { mark: 'k', values: scaled(pigment.K) },
        ],
        { ...plot, logarithmic: true },
      ),
    ),
    '',
    'Evidence',
    ...evidenceLines(pigment),
    '',
    'Goes grey with (parts of this paint to parts of the other, computed)',
    ...neutraliserLines(studio, pigment),
    '',
    'Handling',
    ...handlingLines(pigment),
    '',
    'Cautions',
    ...lowHazard,
    ...(cautions.length > 0
      ? cautions.map((line) => `  ${line.replace(/^caution {2}/, '')}`)
      : CAUTION_ADVICE.map((line) => `  ${line}`)),
  ];
  return `${wrapped(lines, columns).join('\n')}\n`;
}

/** All of one pigment, as a JSON document. @throws UsageError for an unknown id */
export function pigmentShowJson(studio: Studio, id: string): object {
  const pigment = requirePigment(studio, id);
  const numbers = (values: Spectrum) =>
    Array.from({ length: GRID.count }, (_, band) => values[band] as number);
  return {
    schemaVersion: SCHEMA_VERSION,
    pigment: {
      ...summaryJson(studio, pigment),
      ladder: LADDER.map((strength) => ({
        strength,
        ...colourJson(readColour(masstoneSpectrum(studio, pigment, strength))),
      })),
      wavelengths: WAVELENGTHS_NM,
      K: numbers(pigment.K),
      S: numbers(pigment.S),
      reflectance: numbers(masstoneSpectrum(studio, pigment)),
      neutralises: neutralisersOf(studio, pigment),
    },
  };
}
