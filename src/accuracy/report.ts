/**
 * The accuracy report. What concerns the library is worked out from the carried data, in a second or two; errors that take refits
 * (blind mixtures, thinnest films, error of a change) are carried as `npm run pigments:refit` wrote them.
 */

import { quantileSorted } from 'simple-statistics';
import { deltaE00 } from '../colour/difference.js';
import { chromaOf, hueDifference, hueOf, reflectanceToLab } from '../colour/index.js';
import { NEUTRAL_CHROMA } from '../judgement/table.js';
import { appearanceOf } from '../paints/catalogue.js';
import { TINT_STRENGTH } from '../paints/constants.js';
import { type Pigment, paintOf, type Studio } from '../paints/index.js';
import { puddleReflectance } from '../washes/index.js';
import blindData from './data/blind.json' with { type: 'json' };
import complementData from './data/complements.json' with { type: 'json' };
import { leastChromatic, leastOf, mixingLine, sideOfLine } from './neutral.js';
import { tintingStrength } from './tinting.js';
import type {
  AccuracyReport,
  HueShiftRow,
  NeutralRow,
  NonComplementRow,
  OtherPairs,
  Spread,
} from './types.js';

/** Published shifts smaller than this are within the spread between makers. */
const TELLING_SHIFT_DEG = 5;

/** Middle hue angles of the stated leanings; a line leans that way within 60 degrees of it. */
const LEANINGS: readonly (readonly [string, number])[] = [
  ['blue-violet', 290],
  ['violet', 305],
  ['bluish green', 180],
  ['green', 160],
];
const LEANS_WITHIN_DEG = 60;

function round(value: number, digits = 2): number {
  return Number(value.toFixed(digits));
}

function known(studio: Studio, id: string): Pigment {
  return paintOf(studio, id);
}

function masstone(studio: Studio, pigment: Pigment, observer: 'D65-2' | 'D50-10', strength = 1) {
  const load = strength * pigment.fullStrength;
  return reflectanceToLab(puddleReflectance([{ pigment, load }], studio.paper), observer);
}

function spreadOf(differences: readonly number[]): Spread {
  const sorted = differences.toSorted((a, b) => a - b);
  return {
    n: sorted.length,
    median: round(quantileSorted(sorted, 0.5)),
    p90: round(quantileSorted(sorted, 0.9)),
    max: round(quantileSorted(sorted, 1)),
  };
}

function masstones(studio: Studio): AccuracyReport['masstones'] {
  const rows = studio.paints.flatMap((pigment) => {
    const published = appearanceOf(pigment.id).masstone;
    if (published === undefined) return [];
    const [l = Number.NaN, a = Number.NaN, b = Number.NaN] = published;
    return [{ id: pigment.id, deltaE00: round(deltaE00(masstone(studio, pigment, 'D50-10'), { l, a, b })) }];
  });
  return { ...spreadOf(rows.map((row) => row.deltaE00)), rows };
}

function neutralRow(studio: Studio, a: string, b: string): NeutralRow {
  const { lab, share, strength } = leastChromatic(studio, known(studio, a), known(studio, b));
  return { a, b, minChroma: round(chromaOf(lab)), at: share, lstar: round(lab.l, 1), strength };
}

function within(rows: readonly NeutralRow[], most: number): number {
  return rows.filter(({ minChroma }) => minChroma <= most).length;
}

function pairKey(a: string, b: string): string {
  return [a, b].toSorted().join(' ');
}

function otherPairs(
  studio: Studio,
  named: ReadonlySet<string>,
): { others: OtherPairs; othersChromatic: OtherPairs } {
  const chromatic = new Set(
    studio.paints
      .filter((pigment) => chromaOf(masstone(studio, pigment, 'D65-2')) > NEUTRAL_CHROMA)
      .map(({ id }) => id),
  );
  const counts = { all: 0, allWithin: 0, chromatic: 0, chromaticWithin: 0 };
  for (const [index, a] of studio.paints.entries()) {
    for (const b of studio.paints.slice(index + 1)) {
      if (named.has(pairKey(a.id, b.id))) continue;
      const reached = chromaOf(leastChromatic(studio, a, b).lab) <= 8 ? 1 : 0;
      counts.all++;
      counts.allWithin += reached;
      if (chromatic.has(a.id) && chromatic.has(b.id)) {
        counts.chromatic++;
        counts.chromaticWithin += reached;
      }
    }
  }
  return {
    others: { n: counts.all, withinC8: counts.allWithin },
    othersChromatic: { n: counts.chromatic, withinC8: counts.chromaticWithin },
  };
}

function pairsNamed(): ReadonlySet<string> {
  return new Set(
    [...complementData.pairs, ...complementData.nonComplements].map(([a, b]) =>
      pairKey(String(a), String(b)),
    ),
  );
}

function complements(studio: Studio): AccuracyReport['complements'] {
  const rows = complementData.pairs.map(([a, b]) => neutralRow(studio, String(a), String(b)));
  return {
    n: rows.length,
    withinC5: within(rows, 5),
    withinC8: within(rows, 8),
    median: spreadOf(rows.map((row) => row.minChroma)).median,
    rows,
    ...otherPairs(studio, pairsNamed()),
  };
}

/** Whether a hue is on the stated side. */
function leansTo(stated: string, hueDeg: number): boolean {
  const leaning = LEANINGS.find(([word]) => stated.includes(word));
  return leaning !== undefined && Math.abs(hueDifference(leaning[1], hueDeg)) <= LEANS_WITHIN_DEG;
}

function nonComplements(studio: Studio): AccuracyReport['nonComplements'] {
  const rows = complementData.nonComplements.map(([a, b, stated]): NonComplementRow => {
    const row = neutralRow(studio, String(a), String(b));
    const hueDeg = round(sideOfLine(studio, known(studio, row.a), known(studio, row.b), row.strength), 0);
    return {
      ...row,
      stated: String(stated),
      hueDeg,
      holds: row.minChroma > 5 && leansTo(String(stated), hueDeg),
    };
  });
  return { n: rows.length, held: rows.filter((row) => row.holds).length, rows };
}

/** Hue angle of the tint less that of the masstone, degrees. */
function tintShift(studio: Studio, pigment: Pigment): number {
  return hueDifference(
    hueOf(masstone(studio, pigment, 'D65-2')),
    hueOf(masstone(studio, pigment, 'D65-2', TINT_STRENGTH)),
  );
}

function hueShifts(studio: Studio): AccuracyReport['hueShifts'] {
  const rows = studio.paints.flatMap((pigment): HueShiftRow[] => {
    const published = appearanceOf(pigment.id).hueShiftDeg;
    if (published === undefined || Math.abs(published) < TELLING_SHIFT_DEG) return [];
    return [{ id: pigment.id, published, predicted: round(tintShift(studio, pigment), 1) }];
  });
  return {
    n: rows.length,
    signRight: rows.filter(({ published, predicted }) => published * predicted > 0).length,
    rows,
  };
}

function darkGreys(studio: Studio): AccuracyReport['darkGreys'] {
  return [
    ['phthalo-green-blue-shade', 'pyrrole-red'],
    ['phthalo-green-blue-shade', 'pyrrole-scarlet'],
  ].map(([a = '', b = '']) => {
    const grey = leastOf(mixingLine(studio, known(studio, a), known(studio, b), 1));
    const darker = Math.min(
      masstone(studio, known(studio, a), 'D65-2').l,
      masstone(studio, known(studio, b), 'D65-2').l,
    );
    return { a, b, lstar: round(grey.lab.l, 1), darkerLstar: round(darker, 1) };
  });
}

function tintHueShift(studio: Studio): AccuracyReport['tintHueShift'] {
  const shifts = studio.paints.flatMap((pigment): HueShiftRow[] => {
    const { masstone: published, hueShiftDeg } = appearanceOf(pigment.id);
    if (pigment.evidence !== 'measured' || published === undefined || hueShiftDeg === undefined) return [];
    return [{ id: pigment.id, published: hueShiftDeg, predicted: tintShift(studio, pigment) }];
  });
  const squares = shifts.reduce((sum, { published, predicted }) => sum + (predicted - published) ** 2, 0);
  return {
    n: shifts.length,
    strength: TINT_STRENGTH,
    rmsDeg: round(Math.sqrt(squares / shifts.length), 1),
    rows: shifts.map((row) => ({ ...row, predicted: round(row.predicted, 1) })),
  };
}

/** The whole report. */
export function accuracyReport(studio: Studio): AccuracyReport {
  return {
    schemaVersion: 2,
    blind: blindData.blind,
    thinnest: blindData.thinnest,
    modelError: blindData.modelError,
    tintHueShift: tintHueShift(studio),
    masstones: masstones(studio),
    complements: complements(studio),
    nonComplements: nonComplements(studio),
    hueShifts: hueShifts(studio),
    darkGreys: darkGreys(studio),
    tintingStrength: tintingStrength(studio),
  };
}
