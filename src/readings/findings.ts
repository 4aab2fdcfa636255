/** What readings tell and what is asked for, as findings. */
import { paintOf, type Studio } from '../paints/index.js';
import { MASSTONE_WATER, type Wash } from '../washes/index.js';
import { type Finding, tell } from '../words/tell.js';
import { readBy } from './patch.js';
import type { Reading, Standing, Told, TubeStrength } from './types.js';

/** "2 parts ultramarine blue", "half a part", "1 part". */
function partsWords(parts: number, name: string): string {
  const shown = Number(parts.toFixed(2));
  const named = { 0.25: 'a quarter of a part', 0.5: 'half a part', 1: '1 part' }[shown];
  return `${named ?? `${shown} parts`} ${name}`;
}

/** Parts of water to one of paint, for a wash of that strength. */
const waterParts = (strength: number): number => (1 + MASSTONE_WATER) / strength - 1;

/** What to do to paint a mixture out. @param studio whose paints bear the owner's names */
export function paintingTold(studio: Studio, { paints, strength, add = {} }: Wash): Finding[] {
  const parts = (of: Readonly<Record<string, number>>): string[] =>
    Object.entries(of).map(([id, amount]) => partsWords(amount, paintOf(studio, id).name));
  const all = Object.values(paints).reduce((sum, amount) => sum + amount, 0);
  const water = Number((all * waterParts(strength)).toFixed(waterParts(strength) < 5 ? 1 : 0));
  return [
    tell('wash-to-paint', { wash: parts(paints).join(' and '), water: `${water}` }),
    ...(Object.keys(add).length === 0 ? [] : [tell('then-stir-in', { doses: parts(add) })]),
  ];
}

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
    ...(silent.length === 0
      ? []
      : [tell('tube-cannot-tell', { names: silent, byValue, moves: movesOfSilent })]),
    ...(single.length === 0 ? [] : [tell('tube-no-other', { names: single })]),
    ...apart,
    ...(offset === undefined ? [] : [tell('reader-offset', offset)]),
  ];
}
