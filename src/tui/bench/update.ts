/** What keys do on the bench; here the colour is shown as it changes. Pure. */
import { USUAL_DARKER } from '../../recipes/index.js';
import { strengthOf, WAYS, washLoads } from '../../washes/index.js';
import { type Command, commandIn } from '../kit/keys.js';
import { stepBy, turn } from '../kit/moves.js';
import type { Happening } from '../kit/program.js';
import { INTERRUPTED, type World } from '../kit/stage.js';
import { onDoing } from './doing.js';
import { benchKeys } from './keys.js';
import { laid } from './lay.js';
import { benchLaid, broughtAs, sooner, stepped } from './mixture.js';
import {
  type BenchAction,
  type BenchState,
  benchPaints,
  MOST_PINS,
  type Panel,
  pickable,
  ROWS,
  WAY_ROW,
} from './state.js';

function changed(state: BenchState, world: World, by: number): BenchState {
  const { focus, mixture } = state;
  if (focus !== WAY_ROW) {
    const next = stepped(mixture, focus, by);
    const isUseless =
      focus > WAY_ROW ? mixture.way !== 'puddle' : mixture.slots[focus]?.pigment === undefined;
    return isUseless || JSON.stringify(next) === JSON.stringify(mixture) ? state : laid(state, world, next);
  }
  const way = WAYS[turn(WAYS.indexOf(mixture.way), by, WAYS.length)] ?? 'puddle';
  return laid(state, world, broughtAs(world.studio, mixture, way));
}

const asPanel = (state: BenchState, panel: Panel): BenchState => ({
  ...state,
  panel: state.panel === panel ? 'colour' : panel,
});

/** Asks for recipes from what lies here; it has to be one puddle. */
function asking(state: BenchState, world: World): BenchState {
  const { way } = state.mixture;
  const paints = benchPaints(state.mixture);
  if (way !== 'puddle' && paints.length > 1)
    return { ...state, notice: 'Recipes start from one puddle: set the way to stirred first.' };
  if (paints.length > 3) return { ...state, notice: 'Recipes start from three paints at most.' };
  const lies = benchLaid(state.mixture);
  if (lies === undefined || !('paints' in lies)) return state;
  if (strengthOf(washLoads(world.studio, lies)) > 1)
    return { ...state, notice: 'This puddle is thicker than the tube: make the wash weaker first.' };
  return { ...state, doing: { name: 'asking', row: 0, aim: 'rich', darker: USUAL_DARKER.rich } };
}

function onBench(state: BenchState, world: World, command: Command): BenchState {
  const { focus, mixture, past, pins } = state;
  switch (command) {
    case 'up':
    case 'down':
      return { ...state, focus: stepBy(command, focus, ROWS) };
    case 'less':
    case 'more':
      return changed(state, world, command === 'less' ? -1 : 1);
    case 'confirm': {
      if (focus >= WAY_ROW) return { ...state, focus: turn(focus, 1, ROWS) };
      const order = pickable(world, state.settings.palette, '');
      const at = Math.max(0, order.indexOf(mixture.slots[focus]?.pigment));
      return { ...state, doing: { name: 'picking', at, text: '' } };
    }
    case 'undo': {
      const before = past.at(-1);
      return before === undefined ? state : { ...state, mixture: before, past: past.slice(0, -1) };
    }
    case 'path':
      return asPanel(state, 'path');
    case 'ways':
      return asPanel(state, 'ways');
    case 'aside':
      return pins.length === MOST_PINS
        ? { ...state, notice: `${MOST_PINS} are set aside; v shows them, x takes one away.` }
        : {
            ...state,
            pins: [...pins, mixture],
            notice: `Set aside: ${pins.length + 1} of ${MOST_PINS}. v shows them.`,
          };
    case 'asides':
      return { ...state, doing: { name: 'pins', at: 0 } };
    case 'recipes':
      return asking(state, world);
    case 'sooner': {
      const swapped = sooner(mixture, focus);
      return swapped === undefined ? state : { ...laid(state, world, swapped), focus: focus - 1 };
    }
    case 'name':
      return { ...state, doing: { name: 'naming', text: '' } };
    case 'names':
      return { ...state, doing: { name: 'kept', at: 0 } };
    case 'caution': {
      const pigments = benchPaints(mixture);
      return pigments.length === 0
        ? { ...state, notice: 'No paint is on the bench.' }
        : { ...state, overlay: { name: 'about', pigments } };
    }
    default:
      return command === 'back' ? { ...state, ending: 'practice' } : state;
  }
}

function onKey(before: BenchState, world: World, key: string): BenchState {
  const command = commandIn(benchKeys(before), key);
  if (command === undefined) return before;
  const { notice: _read, overlay, ...state } = before;
  if (command === 'stop') return { ...state, ending: INTERRUPTED };
  if (overlay !== undefined) return state;
  if (command === 'keys') return { ...state, overlay: { name: 'keys' } };
  return state.doing === undefined
    ? onBench(state, world, command)
    : onDoing(state, state.doing, world, command, key);
}

/** The state after what came to it. */
export function updateBench(state: BenchState, world: World, action: BenchAction | Happening): BenchState {
  switch (action.type) {
    case 'resize':
      return { ...state, size: action.size };
    case 'key':
      return onKey(state, world, action.key);
    case 'found': {
      const { doing } = state;
      if (doing?.name !== 'recipes' || doing.wish !== action.wish) return state;
      const { doing: _left, ...bench } = state;
      const { found, told } = action;
      if (found === undefined || found.recipes.length === 0)
        return { ...bench, notice: told ?? 'Nothing was found with these paints.' };
      return { ...state, doing: { ...doing, found } };
    }
    case 'kept':
      return { ...state, kept: action.kept, notice: action.told };
    default:
      return state;
  }
}
