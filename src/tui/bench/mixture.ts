/** What lies on the bench: a first wash and up to three paints brought to it in one way, from one puddle or several. Pure. */
import { paintOf, type Studio } from '../../paints/index.js';
import {
  type Laid,
  layMixture,
  MASSTONE_WATER,
  partsToFirst,
  seeLaid,
  type Way,
  washLoads,
} from '../../washes/index.js';

export interface BenchSlot {
  /** Absent for an empty slot. */
  readonly pigment?: string;
  /**
   * Of the first slot the strength of the wash, 0-1. Of the others what the way counts: parts to one of the wash's paint, the
   * strength of a glaze, the share of the paper.
   */
  readonly amount: number;
}

export interface Mixture {
  /** The wash, then three further paints; glazes in the order they are laid. */
  readonly slots: readonly BenchSlot[];
  readonly way: Way;
  /** Water after stirring: one part in so many. */
  readonly thin: number;
  /** Of strokes, where they are not as strong as the wash. */
  readonly strokeStrength?: number;
}

/** Paints at most. */
export const SLOTS = 4;
const FURTHER = SLOTS - 1;

const STRENGTHS = Array.from({ length: 20 }, (_, at) => (at + 1) / 20);
/** Amounts of a further paint that the arrows step through. */
const AMOUNTS: Readonly<Record<Way, readonly number[]>> = {
  puddle: [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2],
  glaze: STRENGTHS,
  strokes: [0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3],
};
/** Of the paper at most, all strokes of further paints together. */
const MOST_STROKES = 0.9;
/** Of a paint that was just picked. */
const USUAL: Readonly<Record<Way, number>> = { puddle: 1 / 4, glaze: 0.15, strokes: 0.15 };
const THINS = [1, 2, 3, 4, 8] as const;

/** Amounts that a row steps through: of a slot, or of the water in the row after those. */
const scaleOf = ({ way }: Mixture, row: number): readonly number[] =>
  row >= SLOTS ? THINS : row === 0 ? STRENGTHS : AMOUNTS[way];

/** The next amount of a scale up or down; at an end it stays. */
function nextOn(scale: readonly number[], amount: number, by: number): number {
  const isBeyond = (one: number): boolean => by * (one - amount) > 1e-6 * amount;
  return (by > 0 ? scale.find(isBeyond) : scale.findLast(isBeyond)) ?? amount;
}

/** The wash with no further paint. */
export const washOf = (pigment: string | undefined, strength: number): Mixture => ({
  slots: [
    { ...(pigment === undefined ? {} : { pigment }), amount: strength },
    ...Array.from({ length: FURTHER }, () => ({ amount: USUAL.puddle })),
  ],
  way: 'puddle',
  thin: 1,
});

const amountIn = (mixture: Mixture, row: number): number =>
  row >= SLOTS ? mixture.thin : (mixture.slots[row] as BenchSlot).amount;

/** The same with another amount in a row. */
function withAmount(mixture: Mixture, row: number, amount: number): Mixture {
  if (row >= SLOTS) return { ...mixture, thin: amount };
  return { ...mixture, slots: mixture.slots.map((slot, at) => (at === row ? { ...slot, amount } : slot)) };
}

/** Less or more of what a row stands for. */
export const stepped = (mixture: Mixture, row: number, by: number): Mixture =>
  withAmount(mixture, row, nextOn(scaleOf(mixture, row), amountIn(mixture, row), by));

/** The same with another paint in a slot, or none; so much of it, else as much as there was or a usual amount. */
export const withPaint = (
  mixture: Mixture,
  row: number,
  pigment: string | undefined,
  wanted?: number,
): Mixture => ({
  ...mixture,
  slots: mixture.slots.map((slot, at): BenchSlot => {
    if (at !== row) return slot;
    const amount = wanted ?? (row === 0 || slot.pigment !== undefined ? slot.amount : USUAL[mixture.way]);
    return pigment === undefined ? { amount } : { pigment, amount };
  }),
});

/** What lies on the bench, or undefined with no wash in the first place. */
export function benchLaid({ slots, way, thin, strokeStrength }: Mixture): Laid | undefined {
  const [wash, ...others] = slots;
  if (wash?.pigment === undefined) return undefined;
  const first = { paints: { [wash.pigment]: 1 }, strength: wash.amount };
  const added = others.flatMap(({ pigment: id, amount }) => (id === undefined ? [] : [{ id, amount }]));
  if (added.length === 0) return way === 'puddle' && thin > 1 ? { ...first, thin } : first;
  return layMixture(first, {
    way,
    added,
    strength: strokeStrength ?? wash.amount,
    thin: way === 'puddle' ? thin : 1,
  });
}

/**
 * The same amounts of tube paint on the same stretch of paper, brought in another way: as near as that way can hold them, for a glaze
 * is no thicker than a masstone and strokes leave some of the wash bare. A puddle that was thinned is laid as a weaker wash.
 */
export function broughtAs(studio: Studio, mixture: Mixture, way: Way): Mixture {
  if (way === mixture.way) return mixture;
  const [made, ...others] = mixture.slots as [BenchSlot, ...BenchSlot[]];
  const wash = { ...made, amount: made.amount / mixture.thin };
  const full = (id: string | undefined): number => (id === undefined ? 1 : paintOf(studio, id).fullStrength);
  const inWash = wash.amount * full(wash.pigment);
  const paint = others.map(({ pigment, amount }) =>
    mixture.way === 'puddle'
      ? amount * inWash
      : amount * full(pigment) * (mixture.way === 'strokes' ? (mixture.strokeStrength ?? wash.amount) : 1),
  );
  const amounts = paint.map((load, at) => {
    const id = others[at]?.pigment;
    if (id === undefined) return USUAL[way];
    if (way === 'puddle') return load / inWash;
    return Math.min(1, load / full(id) / (way === 'strokes' ? wash.amount : 1));
  });
  const covered = amounts.reduce(
    (sum, share, at) => sum + (others[at]?.pigment === undefined ? 0 : share),
    0,
  );
  const fits = way === 'strokes' && covered > MOST_STROKES ? MOST_STROKES / covered : 1;
  const slots = others.map((slot, at) => ({ ...slot, amount: (amounts[at] as number) * fits }));
  return { slots: [wash, ...slots], way, thin: 1 };
}

/** A glaze laid sooner, before the one under it; the wash takes its place where it was the first. Undefined where nothing lies under it. */
export function sooner(mixture: Mixture, row: number): Mixture | undefined {
  const [below, own] = [mixture.slots[row - 1], mixture.slots[row]];
  if (mixture.way !== 'glaze' || below?.pigment === undefined || own?.pigment === undefined) return undefined;
  return {
    ...mixture,
    slots: mixture.slots.map((slot, at) => (at === row ? below : at === row - 1 ? own : slot)),
  };
}

/** How the colour moves as a row goes along its scale, from the least; nothing for a row without a scale. */
export function trail(studio: Studio, mixture: Mixture, row: number) {
  if (row < SLOTS && mixture.slots[row]?.pigment === undefined) return [];
  if (row >= SLOTS && mixture.way !== 'puddle') return [];
  return scaleOf(mixture, row).flatMap((amount) => {
    const laid = benchLaid(withAmount(mixture, row, amount));
    return laid === undefined ? [] : [seeLaid(studio, laid).colour];
  });
}

/**
 * Paint that is laid, as a mixture of the bench.
 * @returns undefined where it holds more paints than the bench, or layers or strokes that are stirred themselves
 */
export function fromLaid(studio: Studio, laid: Laid): Mixture | undefined {
  const filled = (slots: readonly BenchSlot[], way: Way, thin: number): Mixture | undefined =>
    slots.length > SLOTS
      ? undefined
      : {
          slots: [...slots, ...Array.from({ length: SLOTS - slots.length }, () => ({ amount: USUAL[way] }))],
          way,
          thin,
        };
  if ('layers' in laid || 'strokes' in laid) {
    const washes = 'layers' in laid ? laid.layers : laid.strokes;
    const isPlain = washes.every(({ paints, add }) => add === undefined && Object.keys(paints).length === 1);
    const strengths = washes.map(({ strength, thin = 1 }) => strength / thin);
    const strokes = new Set(strengths.slice(1));
    if (!isPlain || ('strokes' in laid && strokes.size > 1)) return undefined;
    const slots = washes.map(({ paints }, at): BenchSlot => {
      const amount = 'strokes' in laid && at > 0 ? laid.strokes[at]?.share : strengths[at];
      return { pigment: Object.keys(paints)[0] as string, amount: amount as number };
    });
    const [strokeStrength] = strokes;
    const mixture = filled(slots, 'layers' in laid ? 'glaze' : 'strokes', 1);
    return mixture && 'strokes' in laid && strokeStrength !== undefined && strokeStrength !== strengths[0]
      ? { ...mixture, strokeStrength }
      : mixture;
  }
  const { thin = 1, ...wash } = laid;
  const [first, ...others] = washLoads(studio, wash);
  if (first === undefined) return undefined;
  const told = partsToFirst(wash);
  // Where there is no row for each, a paint that comes in twice lies there once.
  const further =
    told.length < SLOTS
      ? told
      : others.map(({ pigment, load }) => ({ id: pigment.id, parts: load / first.load }));
  const sum = (ratios: typeof further): number => ratios.reduce((all, { parts }) => all + parts, 0);
  const own = sum(further.filter(({ id }) => id === first.pigment.id));
  // As if the first paint had been made up alone: the others take room in the puddle, so it was a little stronger.
  const left = first.load / first.pigment.fullStrength / (1 + own);
  const strength = left / Math.max(1e-9, 1 - (sum(further) * left) / (1 + MASSTONE_WATER));
  const slots = further.map(({ id, parts }): BenchSlot => ({ pigment: id, amount: parts }));
  return filled([{ pigment: first.pigment.id, amount: Math.min(1, strength) }, ...slots], 'puddle', thin);
}
