/** The boxes of paints: a list of them, or the paints of one to be ticked. Pure. */
import type { Palette } from '../../paints/index.js';
import type { World } from '../kit/stage.js';

/** The paints of a box while they are ticked; kept when it is left. */
export interface Ticking {
  readonly id: string;
  /** The box that a new one is put together from: what its owner says of its paints goes along. */
  readonly from?: string;
  /** In the order in which they were ticked. */
  readonly paints: readonly string[];
  readonly selected: number;
}

export interface BoxesScreen {
  readonly name: 'boxes';
  readonly selected: number;
  readonly ticking?: Ticking;
}

/** The list, the box in use in front. */
export const boxesScreen = ({ studio }: Pick<World, 'studio'>, palette: string): BoxesScreen => ({
  name: 'boxes',
  selected: Math.max(
    0,
    studio.palettes.findIndex(({ id }) => id === palette),
  ),
});

export const boxAt = ({ studio }: Pick<World, 'studio'>, { selected }: BoxesScreen): Palette | undefined =>
  studio.palettes[selected];

/** A name that no box bears. */
export function freshName({ studio }: Pick<World, 'studio'>): string {
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? 'my-box' : `my-box-${n}`;
    if (!studio.palettes.some(({ id }) => id === name)) return name;
  }
}
