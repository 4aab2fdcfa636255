/** The boxes of paints: a list of them, or the paints of one. What is changed is kept at once. Pure. */
import type { Palette } from '../../paints/index.js';
import type { World } from '../kit/stage.js';

/** What is typed in answer to a question. */
export interface BoxTyping {
  /** What a box is called; of a paint in front its name and its strength. */
  readonly what: 'box' | 'name' | 'strength';
  readonly text: string;
  /** Why it was not taken. */
  readonly refused?: string;
}

/** What the owner said of a paint that was taken out: it comes back with it. */
export interface Said {
  readonly name?: string;
  readonly strength?: number;
}

/** The paints of the box in front. */
export interface OpenBox {
  readonly selected: number;
  readonly said: Readonly<Record<string, Said>>;
}

export interface BoxesScreen {
  readonly name: 'boxes';
  readonly selected: number;
  readonly open?: OpenBox;
  readonly typing?: BoxTyping;
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

/** The box whose paints are shown, and the paint in front; undefined in the list, also where a new box could not be kept. */
export function openBox({ studio }: Pick<World, 'studio'>, screen: BoxesScreen) {
  const { open } = screen;
  const box = boxAt({ studio }, screen);
  const paint = studio.paints[open?.selected ?? 0];
  return open === undefined || box === undefined || paint === undefined ? undefined : { open, box, paint };
}

/** What the owner of a box says of a paint. */
export function saidOf({ names = {}, strengths = {} }: Palette, id: string): Said {
  const { [id]: name } = names;
  const { [id]: strength } = strengths;
  return { ...(name === undefined ? {} : { name }), ...(strength === undefined ? {} : { strength }) };
}

/** A name that no box bears. */
export function freshName({ studio }: Pick<World, 'studio'>): string {
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? 'my-box' : `my-box-${n}`;
    if (!studio.palettes.some(({ id }) => id === name)) return name;
  }
}
