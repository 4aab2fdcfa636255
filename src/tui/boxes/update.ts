/** What keys do with the boxes: one is used, changed, or another is put together from it; each change is kept at once. Pure. */
import { BOX_PAINTS } from '../../paints/index.js';
import { cleanText } from '../../text/sanitize.js';
import { type Command, typed } from '../kit/keys.js';
import { step } from '../kit/moves.js';
import type { BoxChange } from '../practice/deps.js';
import { ask, show, withNotice } from '../practice/moves.js';
import type { Action, PracticeWorld, Pressed, State } from '../practice/state.js';
import { changeSettings } from '../settings/change.js';
import { type BoxesScreen, type BoxTyping, boxAt, freshName, openBox, type Said, saidOf } from './state.js';

const PAGE = 10;
const STEPS: Readonly<Partial<Record<Command, number>>> = {
  up: -1,
  down: 1,
  'page-up': -PAGE,
  'page-down': PAGE,
  top: Number.NEGATIVE_INFINITY,
  bottom: Number.POSITIVE_INFINITY,
};
/** Signs that are typed at most: a name, and a number. */
const MOST_SIGNS: Readonly<Record<BoxTyping['what'], number>> = { box: 30, name: 30, strength: 6 };

const changed = (state: State, id: string, change: BoxChange): State =>
  ask(state, { type: 'change-box', id, change });

/** A paint with what its owner says of it, as it is typed. */
const saying = (id: string, { name, strength }: Said): Omit<BoxChange, 'name'> => ({
  ...(name === undefined ? {} : { nameOf: [`${id}=${name}`] }),
  ...(strength === undefined ? {} : { strength: [`${id}=${strength}`] }),
});

type Shown = NonNullable<ReturnType<typeof openBox>>;

/** The paint in front goes into the box or out of it. */
function ticked(state: State, screen: BoxesScreen, { open, box, paint: { id } }: Shown): State {
  const { least, most } = BOX_PAINTS;
  const isIn = box.pigments.includes(id);
  const count = box.pigments.length + (isIn ? -1 : 1);
  if (count < least || count > most)
    return withNotice(state, `A box holds ${least} to ${most} paints, not ${count}.`);
  if (!isIn) return changed(state, box.id, { add: [id], ...saying(id, open.said[id] ?? {}) });
  const said = { ...open.said, [id]: saidOf(box, id) };
  return changed({ ...state, screen: { ...screen, open: { ...open, said } } }, box.id, { remove: [id] });
}

function onPaints(
  state: State,
  { studio }: PracticeWorld,
  screen: BoxesScreen,
  shown: Shown,
  command: Command,
): State {
  const { open, box, paint } = shown;
  const { [command]: by } = STEPS;
  if (by !== undefined) {
    const selected = step(open.selected, by, studio.paints.length);
    return { ...state, screen: { ...screen, open: { ...open, selected } } };
  }
  const { name = '', strength = '' } = saidOf(box, paint.id);
  switch (command) {
    case 'confirm':
      return ticked(state, screen, shown);
    case 'name':
      return { ...state, screen: { ...screen, typing: { what: 'name', text: name } } };
    case 'strength':
      return { ...state, screen: { ...screen, typing: { what: 'strength', text: `${strength}` } } };
    default: {
      const { open: _done, ...list } = screen;
      return { ...state, screen: list };
    }
  }
}

function onTyping(
  state: State,
  world: PracticeWorld,
  screen: BoxesScreen,
  { what, text }: BoxTyping,
  { command, key }: Pressed,
): State {
  const box = boxAt(world, screen);
  if (command === 'back' || box === undefined) return withoutTyping(state, screen);
  if (command !== 'confirm') {
    const next = typed(text, key, MOST_SIGNS[what]);
    return { ...state, screen: { ...screen, typing: { what, text: next } } };
  }
  const given = cleanText(text, MOST_SIGNS[what]).trim();
  if (what === 'box') return changed(state, box.id, { name: given });
  const id = openBox(world, screen)?.paint.id ?? '';
  const change = what === 'name' ? { nameOf: [`${id}=${given}`] } : { strength: [`${id}=${given || '1'}`] };
  return changed(state, box.id, change);
}

function withoutTyping(state: State, { typing: _done, ...screen }: BoxesScreen): State {
  return { ...state, screen };
}

/** The state once a box is kept as it was asked for: what was typed is done with, and a box in use stays so under a new name. */
export function afterBoxChange(
  state: State,
  { before, id }: Extract<Action, { type: 'boxes-changed' }>,
): State {
  const palette = state.settings.palette === before ? id : state.settings.palette;
  const next = { ...state, settings: { ...state.settings, palette } };
  return state.screen.name === 'boxes' ? withoutTyping(next, state.screen) : next;
}

/** The state with the reason why what was typed is not taken; undefined where nothing is typed. */
export function afterRefusal(state: State, refused: string): State | undefined {
  const { screen } = state;
  if (screen.name !== 'boxes' || screen.typing === undefined) return undefined;
  return { ...state, screen: { ...screen, typing: { ...screen.typing, refused } } };
}

export function updateBoxes(
  state: State,
  world: PracticeWorld,
  screen: BoxesScreen,
  pressed: Pressed,
): State {
  const { command } = pressed;
  if (screen.typing !== undefined) return onTyping(state, world, screen, screen.typing, pressed);
  const shown = openBox(world, screen);
  if (shown !== undefined) return onPaints(state, world, screen, shown, command);
  const box = boxAt(world, screen);
  const { palettes } = world.studio;
  switch (command) {
    case 'up':
    case 'down': {
      const selected = step(screen.selected, command === 'up' ? -1 : 1, palettes.length);
      return { ...state, screen: { name: 'boxes', selected } };
    }
    case 'confirm':
      return box === undefined ? state : changeSettings(state, world, { palette: box.id });
    case 'open':
      return { ...state, screen: { ...screen, open: { selected: 0, said: {} } } };
    case 'rename':
      return box === undefined
        ? state
        : { ...state, screen: { ...screen, typing: { what: 'box', text: box.id } } };
    case 'new': {
      if (box === undefined) return state;
      const id = freshName(world);
      // It comes last in the list.
      const next = { ...screen, selected: palettes.length, open: { selected: 0, said: {} } };
      return ask({ ...state, screen: next }, { type: 'copy-box', id, from: box.id });
    }
    default:
      return show(state, { name: 'settings' });
  }
}
