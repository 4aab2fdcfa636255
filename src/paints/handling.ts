/** Handling, lightfastness and cautions of a pigment, from the carried figures. */
import { APPEARANCE_SOURCE, appearanceOf } from './catalogue.js';
import hazards from './data/hazards.json' with { type: 'json' };
import lightfastness from './data/lightfastness.json' with { type: 'json' };
import type { Handling, Hazard, Lightfastness, Sourced } from './types.js';

interface Grade {
  readonly paints: number;
  readonly tint: number;
  readonly full: number;
  readonly verdict: string;
  readonly note?: string;
}

const GRADES: Readonly<Record<string, Grade>> = lightfastness.grades;
const HAZARDS = hazards.codes as Readonly<Record<string, Hazard>>;
/** Of paints that hold none of what most tubes of their name do. */
const HAZARDS_OF_NAMES = hazards.names as Readonly<Record<string, Hazard>>;

/** Worst first: a mixture is as harmful and as fugitive as its worst part. */
const WORST: readonly Hazard['level'][] = ['avoid', 'care', 'low'];

function lightfastnessOf(ci: readonly string[]): Sourced<Lightfastness> | undefined {
  const grades = ci.flatMap((code) => GRADES[code] ?? []).toSorted((a, b) => a.tint - b.tint);
  const worst = grades[0];
  if (worst === undefined) return undefined;
  return {
    value: {
      blueWoolTint: worst.tint,
      blueWoolFull: worst.full,
      test: lightfastness.test,
      verdict: worst.verdict,
    },
    source: lightfastness.source,
    ...(worst.note === undefined ? {} : { note: worst.note }),
  };
}

/** What is published of how a paint handles; empty where nothing is. */
export function handlingOf(id: string, ci: readonly string[]): Handling {
  const figures = appearanceOf(id);
  const note =
    figures.paints === undefined
      ? undefined
      : `mean of ${figures.paints} ${figures.paints === 1 ? 'paint' : 'paints'}`;
  const sourced = (value: number): Sourced<number> => ({
    value,
    source: note === undefined ? 'common practice, no source' : APPEARANCE_SOURCE,
    ...(note === undefined ? {} : { note }),
  });
  const light = lightfastnessOf(ci);
  return {
    ...(figures.transparency === undefined ? {} : { transparency: sourced(figures.transparency) }),
    ...(figures.staining === undefined ? {} : { staining: sourced(figures.staining) }),
    ...(figures.granulation === undefined ? {} : { granulation: sourced(figures.granulation) }),
    ...(figures.valueRange === undefined ? {} : { valueRange: sourced(figures.valueRange) }),
    ...(figures.hueShiftDeg === undefined ? {} : { hueShiftDeg: sourced(figures.hueShiftDeg) }),
    ...(light === undefined ? {} : { lightfastness: light }),
  };
}

/** The caution that goes with a paint's name, else that of its most harmful code; undefined where there is none. */
export function hazardOf(id: string, ci: readonly string[]): Hazard | undefined {
  const ofName = HAZARDS_OF_NAMES[id];
  if (ofName !== undefined) return ofName;
  const found = ci.flatMap((code) => HAZARDS[code] ?? []);
  return found.toSorted((a, b) => WORST.indexOf(a.level) - WORST.indexOf(b.level))[0];
}
