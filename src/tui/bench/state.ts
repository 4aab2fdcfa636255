/** The mixing bench: what lies there, what is being done to it and what was set aside. Pure. */
import { type Pigment, paintOf, type Studio } from '../../paints/index.js';
import type { RecipeAim, Recipes, Wish } from '../../recipes/index.js';
import type { Laid } from '../../washes/index.js';
import type { Stage, World } from '../kit/stage.js';
import { type Mixture, SLOTS, washOf, withPaint } from './mixture.js';

/** Rows: the paints, way, water. */
export const WAY_ROW = SLOTS;
export const ROWS = SLOTS + 2;
/** Swatches that can be set aside. */
export const MOST_PINS = 6;
/** Changes that can be taken back. */
export const MOST_PAST = 100;
/** Letters of a name. */
export const MOST_NAME = 40;

/** What stands beside the mixture: its colour, the way it moves, or the three ways of bringing the same paint. */
export type Panel = 'colour' | 'path' | 'ways';

/** A mixture that was kept under a name. */
export interface KeptMixture {
  readonly name: string;
  readonly laid: Laid;
}

/** What is being done beside changing the mixture. */
export type Doing =
  /** A paint is picked; `at` counts those that the typed text leaves, 0 is "no paint". */
  | { readonly name: 'picking'; readonly at: number; readonly text: string }
  | { readonly name: 'pins'; readonly at: number }
  /** What recipes are to be looked for: row 0 the aim, row 1 the steps. */
  | { readonly name: 'asking'; readonly row: number; readonly aim: RecipeAim; readonly darker: number }
  /** Absent `found`: still looking. */
  | { readonly name: 'recipes'; readonly at: number; readonly wish: Wish; readonly found?: Recipes }
  | { readonly name: 'naming'; readonly text: string }
  | { readonly name: 'kept'; readonly at: number };

export type BenchEffect =
  | { readonly type: 'find'; readonly wish: Wish }
  | { readonly type: 'keep'; readonly mixture: KeptMixture }
  | { readonly type: 'remove'; readonly name: string };

export type BenchAction =
  /** @remarks `told`: why nothing could be looked for */
  | {
      readonly type: 'found';
      readonly wish: Wish;
      readonly found: Recipes | undefined;
      readonly told?: string;
    }
  | { readonly type: 'kept'; readonly kept: readonly KeptMixture[]; readonly told: string };

export interface BenchState extends Stage<BenchEffect> {
  readonly mixture: Mixture;
  /** Mixtures before it, the last one last. */
  readonly past: readonly Mixture[];
  readonly pins: readonly Mixture[];
  /** Undefined where nothing can be kept. */
  readonly kept?: readonly KeptMixture[];
  readonly focus: number;
  readonly panel: Panel;
  readonly doing?: Doing;
  readonly overlay?:
    | { readonly name: 'keys' }
    | { readonly name: 'caution' | 'about'; readonly pigments: readonly string[] };
}

/** The example in the picture of the README: burnt sienna with half as much alizarin crimson. */
const EXAMPLE = ['burnt-sienna', 'alizarin-crimson'];
const EXAMPLE_AMOUNT = 0.5;
const FIRST_STRENGTH = 0.3;

/** The bench with the paints that were last laid, or with an example; with two of the box where it holds none of them. */
export function freshBench(
  world: Pick<World, 'studio'>,
  palette: string,
  lastPaints: readonly string[] = EXAMPLE,
): Omit<BenchState, keyof Stage> {
  const order = benchOrder(world, palette);
  const there = lastPaints.filter((id) => order.includes(id)).slice(0, SLOTS);
  const known = there.length > 0 ? there : order.slice(0, 2);
  const wash = washOf(known[0], FIRST_STRENGTH);
  const amount = lastPaints === EXAMPLE ? EXAMPLE_AMOUNT : undefined;
  const mixture = known.slice(1).reduce((mixed, id, at) => withPaint(mixed, at + 1, id, amount), wash);
  return { mixture, past: [], pins: [], focus: 0, panel: 'colour' };
}

/** Paints in the order the picker lists them: of a learner's own box these alone, of any other first. */
function benchOrder({ studio }: Pick<World, 'studio'>, palette: string): readonly string[] {
  const { pigments = [], isOwn } = studio.palettes.find(({ id }) => id === palette) ?? {};
  const known = pigments.filter((id) => studio.paints.some((pigment) => pigment.id === id));
  if (isOwn === true) return known;
  return [...known, ...studio.paints.map(({ id }) => id).filter((id) => !known.includes(id))];
}

const wordsOf = ({ name, ci }: Pigment): string => `${name} ${ci.join(' ')}`.toLowerCase();

/** What can be picked: no paint, then those whose name or code holds each word that was typed. */
export function pickable(
  world: Pick<World, 'studio'>,
  palette: string,
  text: string,
): readonly (string | undefined)[] {
  const words = text.toLowerCase().split(' ').filter(Boolean);
  const order = benchOrder(world, palette).filter((id) => {
    const paint = wordsOf(paintOf(world.studio, id));
    return words.every((word) => paint.includes(word));
  });
  return words.length === 0 ? [undefined, ...order] : order;
}

/** Paints on the bench, each once. */
export const benchPaints = ({ slots }: Mixture): string[] => [
  ...new Set(slots.flatMap(({ pigment }) => pigment ?? [])),
];

/** Paints that recipes may bring: the learner's palette, or where it is not known all. */
export function paintsAtHand(studio: Studio, palette: string): readonly string[] {
  return studio.palettes.find(({ id }) => id === palette)?.pigments ?? studio.paints.map(({ id }) => id);
}
