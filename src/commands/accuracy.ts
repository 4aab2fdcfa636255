/** `mudlark accuracy`: how well predictions agree with published figures. */

import type {
  AccuracyReport,
  HueShiftRow,
  ModelErrorRow,
  NeutralRow,
  TintingRow,
} from '../accuracy/types.js';
import type { Studio } from '../paints/index.js';
import { padText } from '../text/wrap.js';

const percent = (share: number) => `${(share * 100).toFixed(0)} %`;

function neutralLine({ a, b, minChroma, at, lstar, strength }: NeutralRow, note = ''): string {
  const where = `${percent(1 - at)} : ${percent(at)}`;
  return `  ${padText(a, 27)}${padText(b, 27)}${padText(minChroma.toFixed(1), 5, 'left')}  L* ${padText(lstar.toFixed(0), 3)} ${padText(where, 12, 'left')} ${strength === 1 ? 'full' : 'half'}${note}`;
}

function masstoneLines(studio: Studio, { masstones }: AccuracyReport): string[] {
  const evidence = new Map(studio.paints.map((pigment) => [pigment.id, pigment.evidence]));
  return [
    'Masstones against the published means (CIEDE2000; D50, 10 degrees)',
    `  ${masstones.n} pigments: median ${masstones.median}, 90th percentile ${masstones.p90}, largest ${masstones.max}`,
    ...masstones.rows
      .toSorted((x, y) => y.deltaE00 - x.deltaE00)
      .map(
        ({ id, deltaE00 }) =>
          `  ${padText(id, 27)}${padText(deltaE00.toFixed(2), 5, 'left')}  ${evidence.get(id)}`,
      ),
  ];
}

function complementLines({ complements: c }: AccuracyReport): string[] {
  return [
    'Published complements: least chroma on the mixing line at full or half strength',
    `  ${c.n} pairs: ${percent(c.withinC5 / c.n)} reach C* 5, ${percent(c.withinC8 / c.n)} reach C* 8, median ${c.median}`,
    `  for scale: of ${c.others.n} other pairs ${percent(c.others.withinC8 / c.others.n)} reach C* 8; of the ${c.othersChromatic.n} without a neutral paint in them ${percent(c.othersChromatic.withinC8 / c.othersChromatic.n)}`,
    '  shares count strength, not parts',
    ...c.rows.toSorted((x, y) => y.minChroma - x.minChroma).map((row) => neutralLine(row)),
  ];
}

function tintingLine({ id, predicted, acrylic, ratio }: TintingRow): string {
  const figures = [predicted, acrylic, ratio].map((figure) => padText(figure.toFixed(2), 5, 'left'));
  return `  ${padText(id, 27)}here ${figures[0]}  acrylic ${figures[1]}  ratio ${figures[2]}`;
}

function tintingLines({ tintingStrength: { n, medianRatio, rows, measured } }: AccuracyReport): string[] {
  return [
    'Tinting strength against ultramarine blue, equal amounts of paint as sold (greatest K, ASTM D4838)',
    `  ${measured.n} measured paints, an outside check: median ratio to acrylics ${measured.medianRatio}`,
    ...measured.rows.map(tintingLine),
    `  ${n} anchored paints, set by the acrylics and so no check: median ratio ${medianRatio}; trust them to a factor of two`,
    ...rows.map(tintingLine),
    '  all others are assumed from like paints: their masstones and greys hold, their amounts are a guess',
  ];
}

function signed(value: number): string {
  return value < 0 ? value.toString() : `+${value}`;
}

function shiftLine({ id, published, predicted }: HueShiftRow): string {
  return `  ${padText(id, 27)}published ${padText(published.toFixed(1), 6, 'left')}  predicted ${padText(predicted.toFixed(1), 6, 'left')}`;
}

function otherLines(report: AccuracyReport): string[] {
  const { nonComplements, hueShifts, darkGreys } = report;
  return [
    'Published non-complements: stay above C* 5 and lean the stated way',
    `  ${nonComplements.held} of ${nonComplements.n} hold`,
    ...nonComplements.rows.map((row) =>
      neutralLine(row, `  ${row.holds ? 'holds' : 'fails'} (${row.stated}, hue ${row.hueDeg})`),
    ),
    '',
    'Hue shift from masstone to tint, where the published one is 5 degrees or more',
    `  sign right for ${hueShifts.signRight} of ${hueShifts.n}`,
    ...hueShifts.rows.map(shiftLine),
    '',
    'Phthalo green with pyrrole reds: the grey is far darker than either paint',
    ...darkGreys.map(
      ({ b, lstar, darkerLstar }) =>
        `  ${padText(b, 27)}grey L* ${lstar.toFixed(0)}, darker paint L* ${darkerLstar.toFixed(0)}`,
    ),
    '',
    ...tintingLines(report),
    '',
    'Makers differ: for one-shade codes the published spread between makers is 3.3 in L* and 3.1 degrees of hue, for codes',
    'that cover several shades 7.0 and 9.7. No prediction for an unnamed maker can be nearer than that.',
  ];
}

function strengthRange({ from, to }: ModelErrorRow): string {
  if (to === null) return 'masstone and thicker';
  return from === 0 ? `below ${to}` : `${from} to ${to}`;
}

function worstSecond({ bySecond }: ModelErrorRow): string {
  const rows = Object.entries(bySecond).toSorted(([, x], [, y]) => y.value - x.value);
  return rows
    .slice(0, 2)
    .map(([id, { value, chroma }]) => `${id} ${value.toFixed(2)} and ${chroma.toFixed(1)}`)
    .join(', ');
}

function measuredLines({ blind, thinnest, modelError, tintHueShift }: AccuracyReport): string[] {
  const [worst] = thinnest.rows.toSorted((x, y) => Math.abs(y.chromaError) - Math.abs(x.chromaError));
  return [
    'The measured paints against films that the fit did not see (CIEDE2000; D65, 2 degrees)',
    'Source: Chen, Huang, Chang, Ouhyoung 2019, arXiv:1904.00275. K and S are fitted to all of its 156 films of one paint and 620 of',
    'two, and to transmittance; for this check the fit was made again without what it had to predict',
    `  blind mixtures: ${blind.pairs} pairs in ${blind.folds.length} folds, ${blind.n} mixtures at masstone and thicker: mean ${blind.mean}, median ${blind.median}, 90th percentile ${blind.p90}, largest ${blind.max}`,
    `  thinnest films (0.01 mL) of ${thinnest.n} paints left out together: mean ${thinnest.mean}; C* ${signed(thinnest.chromaBias)} over ${thinnest.chromaFilms} colours${worst === undefined ? '' : `, most for ${worst.id} (${signed(worst.chromaError)})`}`,
    '',
    "Error of the change when a second measured paint is stirred into a wash (root mean square; painter's steps, C*)",
    ...modelError.map((row) => {
      const { value, chroma, how, n } = row;
      const basis =
        how === 'measured'
          ? `against ${n} measured changes`
          : 'computed from the spread of fits; not measured';
      return `  wash ${padText(strengthRange(row), 21)}value ${value.toFixed(2)}  chroma ${chroma.toFixed(1)}  ${basis}`;
    }),
    ...modelError.map((row) => `  most for, wash ${strengthRange(row)}: ${worstSecond(row)}`),
    '  Nobody measured a wash below strength 0.3: expect about 5 units of colour there, not measured',
    '',
    `Hue shift from masstone to a tint at strength ${tintHueShift.strength}, ${tintHueShift.n} measured paints (published: MacEvoy, handprint.com)`,
    `  root mean square ${tintHueShift.rmsDeg.toFixed(1)} degrees; not an outside check, for the model and that strength were chosen on it`,
    ...tintHueShift.rows.map(shiftLine),
  ];
}

/** The report as text. */
export function accuracyText(studio: Studio, report: AccuracyReport): string {
  return `${[...measuredLines(report), '', ...masstoneLines(studio, report), '', ...complementLines(report), '', ...otherLines(report)].join('\n')}\n`;
}
