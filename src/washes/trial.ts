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
}

/** The colour along a line, for the amount of each further paint. */
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
  paints: readonly Pigment[],
  amounts: readonly number[],
  each: number,
): void {
  for (let band = 0; band < GRID.count; band++) out[band] = by * (base[which][band] as number);
  for (let at = 0; at < paints.length; at++) {
    const curve = (paints[at] as Pigment)[which];
    const amount = each * (amounts[at] as number);
    for (let band = 0; band < GRID.count; band++) {
      out[band] = (out[band] as number) + amount * (curve[band] as number);
    }
  }
}

function puddleTrial(
  { paper }: Studio,
  loads: readonly Load[],
  paints: readonly Pigment[],
  thin: number,
): Trial {
  const first = sumOf(loads);
  const strength = strengthOf(loads);
  const paint = paintIn(loads);
  const [K, S, out] = [0, 1, 2].map(() => new Float64Array(GRID.count)) as [Spectrum, Spectrum, Spectrum];
  return (amounts) => {
    let ratio = 0;
    for (let at = 0; at < paints.length; at++) ratio += amounts[at] as number;
    const left = leftOfFirst(strength, ratio) / thin;
    sumInto(K, 'K', first, left, paints, amounts, left * paint);
    sumInto(S, 'S', first, left, paints, amounts, left * paint);
    layInto(out, K, S, paper);
    return readColour(out);
  };
}

/** Internal reflectance of the dry wash at each thickness of the tooth: what glazes are laid over. */
function dryBelow({ paper }: Studio, loads: readonly Load[]): readonly Spectrum[] {
  const { K, S } = sumOf(loads);
  return paper.tooth.map((thickness) =>
    paper.inside.map((inside, band) =>
      filmReflectance((K[band] as number) * thickness, (S[band] as number) * thickness, inside),
    ),
  );
}

function glazeTrial(studio: Studio, loads: readonly Load[], paints: readonly Pigment[]): Trial {
  const { tooth, surface } = studio.paper;
  const below = dryBelow(studio, loads);
  const out = new Float64Array(GRID.count);
  return (amounts) => {
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
): Trial {
  const first = puddleReflectance(loads, paper);
  const apart = paints.map((pigment) =>
    puddleReflectance([{ pigment, load: strength * pigment.fullStrength }], paper),
  );
  const out = new Float64Array(GRID.count);
  return (amounts) => {
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

/** Makes ready to try amounts along a line; the same colours as `seeLaid(layMixture(…))` to rounding. */
export function trialOf(studio: Studio, first: FirstWash, { way, ids, strength, thin }: Line): Trial {
  const loads = madeUp(partsOf(studio, first.paints), first.strength);
  const paints = ids.map((id) => paintOf(studio, id));
  if (way === 'glaze') return glazeTrial(studio, loads, paints);
  if (way === 'strokes') return strokesTrial(studio, loads, paints, strength);
  return puddleTrial(studio, loads, paints, thin);
}
