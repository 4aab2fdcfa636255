/**
 * What a coach would say before a painting: does its value range reach, do its darks keep their colour, where does the eye go. Findings
 * in the order in which they are said.
 */
import { VALUE_BOUNDS } from '../judgement/index.js';
import { type Finding, tell } from '../words/tell.js';
import { nameOf } from './name.js';
import { COMPETES, EDGE, LIKE_SHARES, MOST_MIDDLE, REACH } from './table.js';
import type { Border, PaintingReading, Place } from './types.js';

/** Most masses that are asked about. */
const MOST_VEILED = 2;

/** Whether a place is so near to a side that it leads the eye out. */
const isAtRim = ({ x, y }: Place): boolean => Math.min(x, y, 1 - x, 1 - y) < EDGE;

/** The border of the strongest contrast of value, where the eye goes; undefined of one mass alone. */
const focusOf = ({ borders }: PaintingReading): Border | undefined =>
  borders.reduce<Border | undefined>(
    (best, border) => (best === undefined || border.steps > best.steps ? border : best),
    undefined,
  );

/** The faults of value that a painting has. */
export function valueFaults({ range: { light, dark }, shares }: PaintingReading) {
  const [least = 0, , most = 0] = [shares.light, shares.middle, shares.dark].sort(
    (one, other) => one - other,
  );
  const noDarks = dark < REACH.dark;
  return {
    noDarks,
    fewDarks: !noDarks && shares.dark < REACH.darks,
    noLights: light > REACH.light,
    allMiddle: shares.middle > MOST_MIDDLE,
    likeShares: most - least < LIKE_SHARES,
  };
}

/**
 * A mass at the rim that has as much colour as the brightest, and is not one of the two where the eye goes; undefined where none is. Small
 * accents at a rim are left alone.
 */
export function competing(reading: PaintingReading): number | undefined {
  const { masses } = reading;
  const focus: readonly number[] = focusOf(reading)?.between ?? [];
  const brightest = Math.max(...masses.map(({ colour }) => colour.chroma));
  const at = masses.findIndex(
    (mass, index) =>
      !focus.includes(index) &&
      isAtRim(mass) &&
      mass.share >= 0.05 &&
      mass.colour.chroma >= 20 &&
      mass.colour.chroma >= COMPETES * brightest,
  );
  return at < 0 ? undefined : at;
}

function rangeTold(reading: PaintingReading): Finding[] {
  const { range, shares } = reading;
  const { light, middle, dark } = shares;
  const faults = valueFaults(reading);
  const first = faults.noDarks
    ? tell('painting-no-darks', range)
    : faults.fewDarks
      ? tell('painting-few-darks', { ...range, share: dark })
      : faults.noLights
        ? tell('painting-no-lights', range)
        : tell(range.dark < REACH.deep ? 'painting-shallow' : 'painting-reach', range);
  return [
    first,
    ...(faults.noLights && (faults.noDarks || faults.fewDarks) ? [tell('painting-no-lights', range)] : []),
    ...(faults.allMiddle ? [tell('painting-all-middle', { share: middle })] : []),
    ...(faults.likeShares ? [tell('painting-like-shares', { shares: [light, middle, dark] })] : []),
  ];
}

function veilTold(reading: PaintingReading): Finding[] {
  const { veil, masses } = reading;
  const veiled = [...veil.masses].sort((one, other) => other.below - one.below).slice(0, MOST_VEILED);
  if (veiled.length > 0)
    return veiled.map(({ mass, from, below }) =>
      tell('painting-veil', { mass: nameOf(masses, mass), from: nameOf(masses, from), below }),
    );
  const hasDarks = masses.some(({ colour }) => colour.step > VALUE_BOUNDS[1]);
  return veil.slope === undefined || !hasDarks ? [] : [tell('painting-clear', {})];
}

function focusTold(reading: PaintingReading): Finding[] {
  const { masses } = reading;
  const focus = focusOf(reading);
  const rival = competing(reading);
  const told: Finding[] = [];
  if (focus !== undefined) {
    const [one, other] = focus.between.map((index) => nameOf(masses, index));
    if (one !== undefined && other !== undefined)
      told.push(tell('painting-focus', { one, other, steps: focus.steps, at: focus.at }));
    if (isAtRim(focus.at)) told.push(tell('painting-focus-edge', { at: focus.at }));
  }
  if (rival !== undefined) told.push(tell('painting-competes', { mass: nameOf(masses, rival) }));
  return told;
}

/** The whole diagnosis. */
export const diagnosisOf = (reading: PaintingReading): Finding[] => [
  ...rangeTold(reading),
  ...veilTold(reading),
  ...focusTold(reading),
];
