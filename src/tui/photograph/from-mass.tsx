/** From the mass in front to a mixture: what is asked, and the recipes. */
import { massBasis } from '../../painting/index.js';
import { wrapText } from '../../text/wrap.js';
import { sayAll } from '../../words/tell.js';
import { Asking, RecipeList } from '../bench/doings.js';
import { textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import type { Looking } from './state.js';

type Of<K extends Looking['name']> = Extract<Looking, { name: K }>;

export function MassAsking({ asking }: { readonly asking: Of<'asking'> }): React.JSX.Element {
  const { state } = useSurroundings();
  return (
    <Asking
      doing={asking}
      columns={textColumns(state.size)}
      about="The mass in front is where it starts. Recipes keep to the paints of the painting; another comes in only where these do not reach."
    />
  );
}

export function MassRecipeList({ looking }: { readonly looking: Of<'recipes'> }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { found: mass, at, aim, darker, told } = looking;
  const columns = textColumns(state.size);
  const rows = bodyRows(state);
  const lines = (texts: readonly string[]): Piece[][] =>
    texts.flatMap((text) => wrapText(text, columns)).map((text) => [{ text }]);
  if (mass === undefined) return <Rows lines={lines([told ?? 'Looking for recipes...'])} />;
  const before = sayAll(massBasis(world.studio, mass), voiceOf(state.settings));
  const { from, found } = mass;
  if (from === undefined || found === undefined) return <Rows lines={lines(before)} />;
  const doing = { name: 'recipes', at, wish: { from, aim, darker }, found } as const;
  return <RecipeList doing={doing} columns={columns} rows={rows} before={before} />;
}
