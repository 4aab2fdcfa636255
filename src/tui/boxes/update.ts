/** What keys do with the boxes: one is used, its paints are ticked, another is put together from it. Pure. */
import { BOX_PAINTS } from '../../paints/index.js';
import type { Command } from '../kit/keys.js';
import { step } from '../kit/moves.js';
import { ask, show, withNotice } from '../practice/moves.js';
import type { PracticeWorld, Pressed, State } from '../practice/state.js';
import { changeSettings } from '../settings/change.js';
import { type BoxesScreen, boxAt, freshName, type Ticking } from './state.js';

const PAGE = 10;
const STEPS: Readonly<Partial<Record<Command, number>>> = {
  up: -1,
  down: 1,
  'page-up': -PAGE,
  'page-down': PAGE,
  top: Number.NEGATIVE_INFINITY,
  bottom: Number.POSITIVE_INFINITY,
};

function onTicking(
  state: State,
  world: PracticeWorld,
  screen: BoxesScreen,
  ticking: Ticking,
  command: Command,
): State {
  const { paints: all } = world.studio;
  const { id, from, paints, selected } = ticking;
  const to = (next: Partial<Ticking>): State => ({
    ...state,
    screen: { ...screen, ticking: { ...ticking, ...next } },
  });
  const { [command]: by } = STEPS;
  if (by !== undefined) return to({ selected: step(selected, by, all.length) });
  if (command === 'confirm') {
    const at = all[selected]?.id;
    if (at === undefined) return state;
    return to({ paints: paints.includes(at) ? paints.filter((each) => each !== at) : [...paints, at] });
  }
  if (paints.length < BOX_PAINTS.least || paints.length > BOX_PAINTS.most)
    return withNotice(
      state,
      `A box holds ${BOX_PAINTS.least} to ${BOX_PAINTS.most} paints, not ${paints.length}.`,
    );
  const { ticking: _done, ...list } = screen;
  return ask(
    { ...state, screen: list },
    {
      type: 'keep-box',
      id,
      paints,
      ...(from === undefined ? {} : { from }),
    },
  );
}

export function updateBoxes(
  state: State,
  world: PracticeWorld,
  screen: BoxesScreen,
  { command }: Pressed,
): State {
  if (screen.ticking !== undefined) return onTicking(state, world, screen, screen.ticking, command);
  const box = boxAt(world, screen);
  const { palettes } = world.studio;
  switch (command) {
    case 'up':
    case 'down': {
      const by = command === 'up' ? -1 : 1;
      return { ...state, screen: { ...screen, selected: step(screen.selected, by, palettes.length) } };
    }
    case 'confirm':
      return box === undefined ? state : changeSettings(state, world, { palette: box.id });
    case 'open':
    case 'new': {
      if (box === undefined) return state;
      const isNew = command === 'new';
      const ticks = { paints: box.pigments, selected: 0 };
      const ticking = isNew ? { ...ticks, id: freshName(world), from: box.id } : { ...ticks, id: box.id };
      // A new one comes last in the list.
      const selected = isNew ? palettes.length : screen.selected;
      return { ...state, screen: { ...screen, selected, ticking } };
    }
    default:
      return show(state, { name: 'settings' });
  }
}
