/** The mixing bench: a first wash and up to two paints brought to it, and what lies there. Pure. */
import { type Laid, layMixture, type Way } from '../../washes/index.js';
import { ratioWords, strengthWords, thinWords } from '../../words/laid.js';
import type { Stage, World } from '../kit/stage.js';

export interface BenchSlot {
  /** Absent for an empty slot. */
  readonly pigment?: string;
  /** Place on the scale of the way; of no account for the wash itself. */
  readonly amount: number;
}

/** What lies on the bench. */
export interface Mixture {
  /** The wash, then two further paints. */
  readonly slots: readonly BenchSlot[];
  /** Of the wash and of strokes, hundredths, 5-100. */
  readonly strength: number;
  readonly way: Way;
  /** Water after stirring: one part in so many. */
  readonly thin: number;
}

export interface BenchState extends Stage, Mixture {
  /** 0-2 the slots, then way, then water. */
  readonly focus: number;
  /** Set while a paint is picked from the list: the highlighted index, 0 is "no paint". */
  readonly picking?: number;
  readonly overlay?:
    | { readonly name: 'keys' }
    | { readonly name: 'caution' | 'about'; readonly pigments: readonly string[] };
}

/** Amounts of a further paint in each way: parts to one of the wash's paint, strength of the glaze, share of the paper. */
export const AMOUNTS: Readonly<Record<Way, readonly number[]>> = {
  puddle: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2],
  glaze: [0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.8],
  strokes: [0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4],
};
/** Water after stirring, one part in so many. */
export const THINS = [1, 2, 3, 4, 8] as const;
export const STRENGTH_STEP = 5;
/** Rows: the wash, two further paints, way, water. */
export const WAY_ROW = 3;
export const WATER_ROW = 4;

/** The example of the README: burnt sienna with half as much alizarin crimson. */
const EXAMPLE = ['burnt-sienna', 'alizarin-crimson'];
const EXAMPLE_AMOUNT = 4;

/** The bench with the paints that were last laid, or with an example; with two of the box where it holds none of them. */
export function freshBench(
  world: Pick<World, 'studio'>,
  palette: string,
  lastPaints: readonly string[] = EXAMPLE,
): Omit<BenchState, keyof Stage> {
  const order = benchOrder(world, palette);
  const there = lastPaints.filter((id) => order.includes(id));
  const known = there.length > 0 ? there : order.slice(0, 2);
  const amount = lastPaints === EXAMPLE ? EXAMPLE_AMOUNT : 3;
  return {
    slots: [0, 1, 2].map((slot) => ({
      ...(known[slot] && { pigment: known[slot] }),
      amount: slot === 1 ? amount : 3,
    })),
    strength: 30,
    way: 'puddle',
    thin: 1,
    focus: 0,
  };
}

/** What lies on the bench, or undefined with no wash in the first place. */
export function benchLaid({ slots, strength, way, thin }: Mixture): Laid | undefined {
  const [wash, ...others] = slots;
  if (wash?.pigment === undefined) return undefined;
  const first = { paints: { [wash.pigment]: 1 }, strength: strength / 100 };
  const added = others.flatMap(({ pigment, amount }) =>
    pigment === undefined ? [] : [{ id: pigment, amount: AMOUNTS[way][amount] ?? 0 }],
  );
  if (added.length === 0) return way === 'puddle' && thin > 1 ? { ...first, thin } : first;
  return layMixture(first, { way, added, strength: strength / 100, thin: way === 'puddle' ? thin : 1 });
}

/** The value of a paint's row: the wash by its strength, the others by how much of them goes on. */
export function slotWords({ strength, way, slots }: Mixture, row: number): string {
  if (row === 0) return `at ${strength} %`;
  const amount = AMOUNTS[way][slots[row]?.amount ?? 0] ?? 0;
  if (way === 'puddle') return ratioWords(amount);
  return way === 'glaze' ? `at ${strengthWords(amount)}` : `on ${strengthWords(amount)} of it`;
}

/** The water row in words. */
export function waterWords({ way, thin }: Mixture): string {
  return way === 'puddle' ? thinWords(thin) : 'in the strength of each wash';
}

/** Paints in the order the picker lists them: of a learner's own box these alone, of any other first. */
export function benchOrder({ studio }: Pick<World, 'studio'>, palette: string): readonly string[] {
  const { pigments = [], isOwn } = studio.palettes.find(({ id }) => id === palette) ?? {};
  const known = pigments.filter((id) => studio.paints.some((pigment) => pigment.id === id));
  if (isOwn === true) return known;
  return [...known, ...studio.paints.map(({ id }) => id).filter((id) => !known.includes(id))];
}
