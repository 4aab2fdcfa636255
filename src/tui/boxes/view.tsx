/** The boxes as they look: a list, or the paints of one with those that are in it ticked. */
import { Text } from 'ink';
import type { Palette } from '../../paints/index.js';
import { ItemList, type ListItem } from '../kit/list.js';
import { useSurroundings } from '../kit/surroundings.js';
import type { BoxesScreen, Ticking } from './state.js';

const counted = (n: number): string => `${n} paint${n === 1 ? '' : 's'}`;

/** What stays the same whatever box is in use. */
const usualName = (id: string): string => id.replaceAll('-', ' ');

const TYPED = 'Names of your own and strengths of tubes: mudlark box edit';

function Boxes({ selected }: { readonly selected: number }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { palettes } = world.studio;
  const sideOf = ({ id, pigments }: Palette): string =>
    id === state.settings.palette ? `${counted(pigments.length)}, in use` : counted(pigments.length);
  if (state.settings.screenReader) {
    const box = palettes[selected];
    return (
      <Text>
        {box === undefined
          ? ''
          : `${box.name}: ${box.note}. ${sideOf(box)}. ${selected + 1} of ${palettes.length}. ${TYPED}.`}
      </Text>
    );
  }
  const items = palettes.map(
    (box): ListItem => ({
      key: box.id,
      lead: { text: box.id === state.settings.palette ? '* ' : '  ' },
      text: box.name,
      side: sideOf(box),
    }),
  );
  const head = [
    'Practice, bench and recipes keep to a box of your own while it is in use.',
    palettes[selected]?.note ?? '',
    '',
  ];
  return <ItemList head={[...head, `${TYPED}.`, '']} items={items} selected={selected} />;
}

function Paints({ ticking }: { readonly ticking: Ticking }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { id: box, from = box, paints, selected } = ticking;
  const { names = {}, strengths = {} } = world.studio.palettes.find(({ id }) => id === from) ?? {};
  const all = world.studio.paints;
  const sideOf = (id: string): string => {
    const { [id]: factor } = strengths;
    return factor === undefined ? '' : `${factor} times`;
  };
  const here = all[selected];
  if (state.settings.screenReader) {
    const { [here?.id ?? '']: own } = names;
    const called = own === undefined ? '' : `, which you call ${own}`;
    return (
      <Text>
        {here === undefined
          ? ''
          : `${usualName(here.id)}${called}, ${paints.includes(here.id) ? 'in the box' : 'not in the box'}. ${selected + 1} of ${all.length}. The box holds ${counted(paints.length)}.`}
      </Text>
    );
  }
  const items = all.map(
    ({ id }): ListItem => ({
      key: id,
      lead: { text: paints.includes(id) ? '[x] ' : '[ ] ' },
      text: names[id] ?? usualName(id),
      side: sideOf(id),
    }),
  );
  const head = ['Which of these paints do you have?', `Here: ${usualName(here?.id ?? '')}`, ''];
  return <ItemList head={head} items={items} selected={selected} />;
}

export const BoxesBody = ({ selected, ticking }: BoxesScreen): React.JSX.Element =>
  ticking === undefined ? <Boxes selected={selected} /> : <Paints ticking={ticking} />;
