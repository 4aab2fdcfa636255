/** Trying thousands of amounts: the same prediction as film.ts, without making anything on the way. */
import { type ColourReading, readColour } from '../colour/reading.js';
import {
  type Coefficients,
  filmReflectance,
  GRID,
  layInto,
  mixCoefficients,
  type Spectrum,
  throughSurface,
} from '../optics/index.js';
import { type Pigment, paintOf, type Studio } from '../paints/index.js';
import { puddleReflectance } from './film.js';
import type { FirstWash, Mixture } from './mixture.js';
import { type Load, leftOfFirst, madeUp, paintIn, partsOf, strengthOf } from './puddle.js';

/** Paints, a way, the strength of strokes and the water: along it only the amounts are left to choose. */
export interface Line extends Omit<Mixture, 'added'> {
  readonly ids: readonly string[];
  /**
   * One amount more after those of the further paints: the water after stirring, or the strength to which the first wash is
   * made up. A puddle is then made up of all its paints at once, the further ones counted in strengths to one of the first.
   */
  readonly last?: 'water' | 'strength';
}

/** The colour along a line, for the amount of each further paint and the last amount where the line has one. */
export type Trial = (amounts: readonly number[]) => ColourReading;

function sumOf(loads: readonly Load[]): Coefficients {
  return mixCoefficients(loads.map(({ pigment, load }) => ({ paint: pigment, load })));
}

/** `out = base · by + Σ amount · paint · each` in every band. */
function sumInto(
  out: Spectrum,
  which: 'K' | 'S',
  base: Coefficients,
  by: number,
  paints: readonly Coefficients[],
  amounts: readonly number[],
  each: number,
): void {
  for (let band = 0; band < GRID.count; band++) out[band] = by * (base[which][band] as number);
  for (let at = 0; at < paints.length; at++) {
    const curve = (paints[at] as Coefficients)[which];
    const amount = each * (amounts[at] as number);
    for (let band = 0; band < GRID.count; band++) {
      out[band] = (out[band] as number) + amount * (curve[band] as number);
    }
  }
}

/** Loads of each paint for each of its amounts, and of the first wash: what a puddle holds. */
type Share = (amounts: readonly number[]) => { readonly left: number; readonly each: number };

/** Stirred into a first wash, and thinned. */
function stirredShare(loads: readonly Load[], count: number, thin: number, isWaterOpen: boolean): Share {
  const strength = strengthOf(loads);
  const paint = paintIn(loads);
  return (amounts) => {
    let ratio = 0;
    for (let at = 0; at < count; at++) ratio += amounts[at] as number;
    const left = leftOfFirst(strength, ratio) / (isWaterOpen ? (amounts[count] as number) : thin);
    return { left, each: left * paint };
  };
}

/** All made up together to the last amount; the loads of the first wash are at strength 1. */
function madeUpShare(count: number): Share {
  return (amounts) => {
    let sum = 1;
    for (let at = 0; at < count; at++) sum += amounts[at] as number;
    const left = (amounts[count] as number) / sum;
    return { left, each: left };
  };
}

function puddleTrial(
  { paper }: Studio,
  loads: readonly Load[],
  paints: readonly Coefficients[],
  share: Share,
): Trial {
  const first = sumOf(loads);
  const [K, S, out] = [0, 1, 2].map(() => new Float64Array(GRID.count)) as [Spectrum, Spectrum, Spectrum];
  return (amounts) => {
    const { left, each } = share(amounts);
    sumInto(K, 'K', first, left, paints, amounts, each);
    sumInto(S, 'S', first, left, paints, amounts, each);
    layInto(out, K, S, paper);
    return readColour(out);
  };
}

/**
 * Writes the internal reflectance of the dry wash at each thickness of the tooth: what glazes are laid over.
 * @param by how many times its strength it lies there
 */
function dryInto(
  out: readonly Spectrum[],
  { tooth, inside }: Studio['paper'],
  { K, S }: Coefficients,
  by = 1,
): void {
  for (let node = 0; node < tooth.length; node++) {
    const thickness = (tooth[node] as number) * by;
    const below = out[node] as Spectrum;
    for (let band = 0; band < GRID.count; band++) {
      const [k, s] = [(K[band] as number) * thickness, (S[band] as number) * thickness];
      below[band] = filmReflectance(k, s, inside[band] as number);
    }
  }
}

function glazeTrial(
  { paper }: Studio,
  loads: readonly Load[],
  paints: readonly Pigment[],
  isStrengthOpen: boolean,
): Trial {
  const { tooth, surface } = paper;
  const first = sumOf(loads);
  const below = tooth.map(() => new Float64Array(GRID.count));
  if (!isStrengthOpen) dryInto(below, paper, first);
  let known = Number.NaN;
  const out = new Float64Array(GRID.count);
  return (amounts) => {
    const open = amounts[paints.length] as number;
    if (isStrengthOpen && open !== known) {
      dryInto(below, paper, first, open);
      known = open;
    }
    for (let band = 0; band < GRID.count; band++) {
      let sum = 0;
      for (let node = 0; node < tooth.length; node++) {
        let inside = (below[node] as Spectrum)[band] as number;
        for (let at = 0; at < paints.length; at++) {
          const { K, S, fullStrength } = paints[at] as Pigment;
          const load = (amounts[at] as number) * fullStrength * (tooth[node] as number);
          inside = filmReflectance((K[band] as number) * load, (S[band] as number) * load, inside);
        }
        sum += throughSurface(inside, surface);
      }
      out[band] = sum / tooth.length;
    }
    return readColour(out);
  };
}

function strokesTrial(
  { paper }: Studio,
  loads: readonly Load[],
  paints: readonly Pigment[],
  strength: number,
  isStrengthOpen: boolean,
): Trial {
  const alone = paints.map((pigment) => [{ pigment, load: pigment.fullStrength }]);
  /** What the first wash and each paint reflect apart. */
  const apartAt = (firstBy: number, by: number): readonly [Spectrum, readonly Spectrum[]] => [
    puddleReflectance(scaled(loads, firstBy), paper),
    alone.map((paint) => puddleReflectance(scaled(paint, by), paper)),
  ];
  let [first, apart] = isStrengthOpen ? [new Float64Array(), []] : apartAt(1, strength);
  let known = Number.NaN;
  const out = new Float64Array(GRID.count);
  return (amounts) => {
    const open = amounts[paints.length] as number;
    if (isStrengthOpen && open !== known) {
      [first, apart] = apartAt(open, open);
      known = open;
    }
    for (let band = 0; band < GRID.count; band++) {
      let rest = 1;
      let sum = 0;
      for (let at = 0; at < apart.length; at++) {
        const share = amounts[at] as number;
        rest -= share;
        sum += share * ((apart[at] as Spectrum)[band] as number);
      }
      out[band] = sum + rest * (first[band] as number);
    }
    return readColour(out);
  };
}

const scaled = (loads: readonly Load[], by: number): Load[] =>
  loads.map(({ pigment, load }) => ({ pigment, load: load * by }));

/** The paint in the film that it makes at strength 1. */
const atMasstone = ({ K, S, fullStrength }: Pigment): Coefficients =>
  mixCoefficients([{ paint: { K, S }, load: fullStrength }]);

/** Makes ready to try amounts along a line; the same colours as `seeLaid(layMixture(…))` to rounding. */
export function trialOf(studio: Studio, first: FirstWash, { way, ids, strength, thin, last }: Line): Trial {
  const isStrengthOpen = last === 'strength';
  const loads = madeUp(partsOf(studio, first.paints), isStrengthOpen ? 1 : first.strength);
  const paints = ids.map((id) => paintOf(studio, id));
  if (way === 'glaze') return glazeTrial(studio, loads, paints, isStrengthOpen);
  if (way === 'strokes') return strokesTrial(studio, loads, paints, strength, isStrengthOpen);
  return isStrengthOpen
    ? puddleTrial(studio, loads, paints.map(atMasstone), madeUpShare(ids.length))
    : puddleTrial(studio, loads, paints, stirredShare(loads, ids.length, thin, last === 'water'));
}

/** Strength of a puddle that is stirred into, before the water, for the amounts along a line; of one made up it is the last amount. */
export function strengthAlong(
  studio: Studio,
  first: FirstWash,
  { ids, last }: Line,
): (amounts: readonly number[]) => number {
  if (last === 'strength') return (amounts) => amounts[ids.length] as number;
  const loads = madeUp(partsOf(studio, first.paints), first.strength);
  const [strength, paint] = [strengthOf(loads), paintIn(loads)];
  const thick = ids.map((id) => paint / paintOf(studio, id).fullStrength);
  return (amounts) => {
    let ratio = 0;
    let sum = strength;
    for (let at = 0; at < ids.length; at++) {
      ratio += amounts[at] as number;
      sum += (amounts[at] as number) * (thick[at] as number);
    }
    return sum * leftOfFirst(strength, ratio);
  };
}
