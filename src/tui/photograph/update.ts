/** What keys do over a photographed painting. Pure. */
import { RECIPE_AIMS, USUAL_DARKER } from '../../recipes/index.js';
import { type Command, commandIn } from '../kit/keys.js';
import { step, stepBy, turn } from '../kit/moves.js';
import { scrolled } from '../kit/page.js';
import type { Happening } from '../kit/program.js';
import { INTERRUPTED } from '../kit/stage.js';
import { photographKeys } from './keys.js';
import {
  LOOKS,
  type Looking,
  type PhotographState,
  type PhotographWorld,
  paintingIn,
  type RecipesFound,
} from './state.js';
import { toldPage } from './told.js';

/** Most steps lighter or darker that are asked for. */
const MOST_DARKER = 6;

type Of<K extends Looking['name']> = Extract<Looking, { name: K }>;

const left = ({ looking: _done, ...state }: PhotographState): PhotographState => state;

/** Masses are walked as a page is read: rows of thirds from the top, each from the left. */
function walk(world: PhotographWorld, state: PhotographState): number[] {
  const { masses } = paintingIn(world, state).reading;
  const row = (mass: number): number => Math.min(2, Math.floor((masses[mass]?.y ?? 0) * 3));
  return masses
    .map((_, index) => index)
    .sort((one, other) => row(one) - row(other) || (masses[one]?.x ?? 0) - (masses[other]?.x ?? 0));
}

function onPicture(state: PhotographState, world: PhotographWorld, command: Command): PhotographState {
  const { mass, look, painting } = state;
  switch (command) {
    case 'less':
    case 'more': {
      const order = walk(world, state);
      const at = turn(order.indexOf(mass), command === 'less' ? -1 : 1, order.length);
      return { ...state, mass: order[at] ?? 0 };
    }
    case 'grey':
      return { ...state, look: look === 'grey' ? 'colour' : 'grey' };
    case 'values': {
      // Two, three, five, and the colours again.
      const at = typeof look === 'number' ? LOOKS.indexOf(look) : 1;
      return { ...state, look: LOOKS[at + 1] ?? 'colour' };
    }
    case 'best': {
      const next = turn(painting, 1, world.paintings.length);
      const count = world.paintings[next]?.reading.masses.length ?? 0;
      return { ...state, painting: next, mass: step(mass, 0, count) };
    }
    case 'confirm':
      return { ...state, looking: { name: 'told', top: 0 } };
    case 'recipes':
      return { ...state, looking: { name: 'asking', row: 0, aim: 'rich', darker: USUAL_DARKER.rich } };
    default:
      return command === 'back' ? { ...state, ending: 0 } : state;
  }
}

function onAsking(state: PhotographState, asking: Of<'asking'>, command: Command): PhotographState {
  const { row, aim, darker } = asking;
  const changed = (to: Partial<Of<'asking'>>): PhotographState => ({
    ...state,
    looking: { ...asking, ...to },
  });
  if (command === 'up' || command === 'down') return changed({ row: stepBy(command, row, 2) });
  if (command === 'confirm') {
    const { painting, mass } = state;
    return {
      ...state,
      looking: { name: 'recipes', at: 0, aim, darker },
      effects: [{ type: 'find', painting, mass, aim, darker }],
    };
  }
  const by = command === 'less' ? -1 : 1;
  if (row === 1) return changed({ darker: Math.min(MOST_DARKER, Math.max(-MOST_DARKER, darker + by)) });
  const next = RECIPE_AIMS[turn(RECIPE_AIMS.indexOf(aim), by, RECIPE_AIMS.length)] ?? aim;
  return changed({ aim: next, darker: USUAL_DARKER[next] });
}

function onLooking(
  state: PhotographState,
  looking: Looking,
  world: PhotographWorld,
  command: Command,
): PhotographState {
  if (command === 'back') return left(state);
  switch (looking.name) {
    case 'told':
      return {
        ...state,
        looking: { ...looking, top: scrolled(toldPage(world, state), looking.top, command) },
      };
    case 'asking':
      return onAsking(state, looking, command);
    case 'recipes': {
      const count = looking.found?.found?.recipes.length ?? 0;
      if (command !== 'up' && command !== 'down') return state;
      return { ...state, looking: { ...looking, at: stepBy(command, looking.at, count) } };
    }
  }
}

function onKey(before: PhotographState, world: PhotographWorld, key: string): PhotographState {
  const command = commandIn(photographKeys(world, before), key);
  if (command === undefined) return before;
  const { notice: _read, overlay, ...state } = before;
  if (command === 'stop') return { ...state, ending: INTERRUPTED };
  if (overlay !== undefined) return state;
  if (command === 'keys') return { ...state, overlay: 'keys' };
  return state.looking === undefined
    ? onPicture(state, world, command)
    : onLooking(state, state.looking, world, command);
}

function onFound(state: PhotographState, { asked, found, told }: RecipesFound): PhotographState {
  const { looking, mass, painting } = state;
  const isWanted =
    looking?.name === 'recipes' &&
    mass === asked.mass &&
    painting === asked.painting &&
    looking.aim === asked.aim &&
    looking.darker === asked.darker;
  if (!isWanted) return state;
  return {
    ...state,
    looking: { ...looking, ...(found === undefined ? { told: told ?? 'Nothing was found.' } : { found }) },
  };
}

/** The state after what came to it. */
export function updatePhotograph(
  state: PhotographState,
  world: PhotographWorld,
  action: RecipesFound | Happening,
): PhotographState {
  switch (action.type) {
    case 'resize':
      return { ...state, size: action.size };
    case 'key':
      return onKey(state, world, action.key);
    case 'found':
      return onFound(state, action);
    default:
      return state;
  }
}
