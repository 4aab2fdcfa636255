/** Home: where everything starts. */
import { innerColumns, isAiry } from '../kit/layout.js';
import { Menu } from '../kit/menu.js';
import { type MenuItem, menuKeys, pickIn } from '../kit/menu-keys.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { ask, show, startSet } from '../practice/moves.js';
import { goOn } from '../practice/set.js';
import type { PracticeScreen, PracticeWorld, Pressed, Screen, State } from '../practice/state.js';

/** The home menu; a set under way comes first. Neither it nor the placing round, while they are open, moves another entry's number. */
export function homeMenu(
  { set }: Pick<State, 'set'>,
  { placingIsOpen }: Pick<PracticeWorld, 'placingIsOpen'>,
): MenuItem[] {
  const isOpen = set !== undefined && set.index < set.items.length;
  const today = { value: 'practise', label: isOpen ? 'Begin another set' : "Practise today's set" };
  return [
    ...(isOpen
      ? [{ value: 'go-on', label: `Go on with the set, ${set.index + 1} of ${set.items.length}` }]
      : [today]),
    { value: 'families', label: 'Choose what to practise' },
    { value: 'bench', label: 'Mixing bench' },
    { value: 'progress', label: 'Progress' },
    { value: 'settings', label: 'Settings' },
    { value: 'help', label: 'How to read the screens' },
    ...(isOpen ? [today] : []),
    ...(placingIsOpen() && !(isOpen && set.choice.placing === true)
      ? [{ value: 'placing', label: 'Placing round: eight decisions, to find your level' }]
      : []),
    { value: 'quit', label: 'Quit' },
  ];
}

/** Goes where a choice of the menu leads. */
function chooseAtHome(state: State, world: PracticeWorld, value: string, at: number): State {
  switch (value) {
    case 'go-on':
      return goOn(state, world, at);
    case 'practise':
      return startSet(state, {});
    case 'placing':
      return startSet(state, { placing: true });
    case 'families':
      return show(state, { name: 'families', selected: 0 });
    case 'bench':
      return { ...state, ending: 'bench' };
    case 'progress':
      return ask(show(state, { name: 'progress', top: 0 }), { type: 'read-progress' });
    case 'settings':
      return show(state, { name: 'settings' });
    case 'help':
      return show(state, { name: 'help', top: 0 });
    case 'quit':
      return { ...state, ending: 0 };
    default:
      return state;
  }
}

function updateHome(
  state: State,
  world: PracticeWorld,
  screen: Screen & { readonly name: 'home' },
  pressed: Pressed,
): State {
  if (pressed.command === 'quit') return { ...state, ending: 0 };
  const picked = pickIn(homeMenu(state, world), screen.selected ?? 0, pressed);
  if (picked === undefined) return state;
  const { selected, chosen } = picked;
  const moved = { ...state, screen: { ...screen, selected } };
  return chosen === undefined ? moved : chooseAtHome(moved, world, chosen, pressed.at);
}

interface HomeProps {
  readonly items: readonly MenuItem[];
  readonly selected: number;
  /** What is due, what was last done, what rose. */
  readonly glance: readonly string[];
}

function Home({ items, selected, glance }: HomeProps): React.JSX.Element {
  const { state } = useSurroundings();
  const airy = isAiry(state.size) && !state.settings.screenReader;
  return (
    <>
      <Row pieces={[{ text: 'Decide the mixture before the brush touches the paper.', role: 'muted' }]} />
      {airy && glance.length > 0 ? <Row pieces={[{ text: ' ' }]} /> : null}
      <Rows lines={glance.map((text): Piece[] => [{ text }])} />
      {airy ? <Row pieces={[{ text: ' ' }]} /> : null}
      <Menu items={items} selected={selected} />
    </>
  );
}

export const home: PracticeScreen<'home'> = {
  keys: () => [
    ...menuKeys('choose'),
    { keys: { q: 'quit', escape: 'quit' }, show: 'Esc', does: 'quit', stays: true },
  ],
  update: updateHome,
  view: (state, world, { selected = 0 }) => ({
    title: 'Mudlark',
    ...(world.learner === undefined ? {} : { side: `the record of ${world.learner}` }),
    body: (
      <Home
        items={homeMenu(state, world)}
        selected={selected}
        glance={world.glance(innerColumns(state.size))}
      />
    ),
  }),
};
