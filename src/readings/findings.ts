/** What readings tell and what is asked for, as findings. */
import { type Pigment, paintOf, type Studio } from '../paints/index.js';
import { type Laid, partsOf, type Wash, waterOf } from '../washes/index.js';
import { type Finding, tell } from '../words/tell.js';
import { readBy } from './patch.js';
import { SEEMS_UNLIKE } from './table.js';
import type { Reading, Standing, Told, TubeStrength } from './types.js';

/** Small amounts as they are halved on the palette, by how many of them make one part. */
const SHARES: Readonly<Record<number, string>> = {
  2: 'half a part',
  4: 'a quarter of a part',
  8: 'an eighth of a part',
  16: 'a sixteenth of a part',
  32: 'a thirty-second of a part',
};

/** "2 parts ultramarine blue", "half a part", "1 part". */
function partsWords(parts: number, name: string): string {
  const shown = Number(parts < 1 ? parts.toPrecision(2) : parts.toFixed(2));
  const named = shown === 1 ? '1 part' : SHARES[Number((1 / parts).toFixed(3))];
  return `${named ?? `${shown} parts`} ${name}`;
}

/**
 * A puddle with something stirred in, as it is measured out of the owner's tubes: of a tube twice as strong as the library's a wash takes half.
 * @param studio of the box, at its strengths
 * @returns undefined for anything else, and for a wash that would take more paint than the tube is thick
 */
export function paintable(studio: Studio, laid: Laid): (Wash & { readonly add: Wash['paints'] }) | undefined {
  if (!('paints' in laid) || laid.add === undefined) return undefined;
  const { paints, add } = laid;
  const parts = partsOf(studio, paints);
  const volume = (times: (pigment: Pigment) => number): number =>
    parts.reduce((sum, each) => sum + each.parts / (each.pigment.fullStrength * times(each.pigment)), 0);
  const strength = (laid.strength * volume(({ timesLibrary = 1 }) => timesLibrary)) / volume(() => 1);
  return strength > 1 ? undefined : { ...laid, paints, add, strength };
}

/** What to do to paint a mixture out. @param studio whose paints bear the owner's names */
export function paintingTold(studio: Studio, { paints, strength, add = {}, thin = 1 }: Wash): Finding[] {
  const parts = (of: Readonly<Record<string, number>>): string[] =>
    Object.entries(of).map(([id, amount]) => partsWords(amount, paintOf(studio, id).name));
  const all = Object.values(paints).reduce((sum, amount) => sum + amount, 0);
  const water = Number((all * waterOf(strength)).toFixed(waterOf(strength) < 5 ? 1 : 0));
  return [
    tell('wash-to-paint', { wash: parts(paints).join(' and '), water: `${water}` }),
    ...(Object.keys(add).length === 0 ? [] : [tell('then-stir-in', { doses: parts(add), thin })]),
  ];
}

/** Whether a tube looks unlike the library's and cannot be called so yet. */
const isOpen = ({ standing, factor, interval: [low, high] }: TubeStrength): boolean =>
  standing === 'unsure' ||
  (standing === 'known' && low <= 1 && high >= 1 && Math.abs(Math.log(factor)) > SEEMS_UNLIKE);

/** Tubes whose strengths can be told; of two alone their ratio, which is all that is known of them. */
function strengthsTold(tubes: readonly TubeStrength[], nameOf: (id: string) => string): Finding[] {
  if (tubes.length === 0) return [];
  const [one, two] = tubes.toSorted((a, b) => b.factor - a.factor);
  if (tubes.length === 2 && one !== undefined && two !== undefined) {
    // The middle lies half-way between the two: each stands away from it by the root of their ratio.
    const [low, high] = one.interval;
    return [
      tell('tubes-ratio', {
        name: nameOf(one.id),
        other: nameOf(two.id),
        factor: one.factor ** 2,
        interval: [low ** 2, high ** 2],
        isSure: one.standing === 'known',
      }),
    ];
  }
  return [
    ...tubes.map(({ id, standing, factor, interval }) =>
      tell(standing === 'known' ? 'tube-known' : 'tube-unsure', { name: nameOf(id), factor, interval }),
    ),
    tell('tubes-middle', {}),
  ];
}

/** What the readings tell, in the order it is said. @param first number of the first reading */
export function readingsTold(
  studio: Studio,
  { tubes, offset, disagreements, isAtOdds }: Told,
  readings: readonly Reading[],
  first = 1,
): Finding[] {
  const nameOf = (id: string): string => paintOf(studio, id).name;
  const namesOf = (wanted: Standing): string[] =>
    tubes.filter(({ standing }) => standing === wanted).map(({ id }) => nameOf(id));
  const apart = disagreements.map(({ reading, part, darker }) =>
    tell('reading-disagrees', { which: first + reading, part, darker }),
  );
  if (isAtOdds) return [tell('readings-at-odds', { count: readings.length }), ...apart];
  const strengths = strengthsTold(
    tubes.filter(({ standing }) => standing === 'known' || standing === 'unsure'),
    nameOf,
  );
  const [silent, single] = [namesOf('cannot-tell'), namesOf('no-other')];
  const movesOfSilent = Math.max(
    0,
    ...tubes.filter(({ standing }) => standing === 'cannot-tell').map(({ moves }) => moves),
  );
  const byValue = readings.some(({ mixed }) => readBy(mixed) === 'value');
  return [
    ...strengths,
    ...(tubes.some(isOpen) ? [tell('strengths-narrow', { byValue })] : []),
    ...(silent.length === 0
      ? []
      : [tell('tube-cannot-tell', { names: silent, byValue, moves: movesOfSilent })]),
    ...(single.length === 0 ? [] : [tell('tube-no-other', { names: single })]),
    ...apart,
    ...(offset === undefined ? [] : [tell('reader-offset', offset)]),
  ];
}
