/** What keys do on the bench; here the colour is shown as it changes. Pure. */
import { WAYS } from '../../washes/index.js';
import { dueCautions } from '../kit/cautions.js';
import {
  type Binding,
  back,
  type Command,
  close,
  commandIn,
  enter,
  KEYS,
  LESS_MORE,
  leftRight,
  letter,
  stop,
  upDown,
} from '../kit/keys.js';
import { step, stepBy, turn } from '../kit/moves.js';
import type { Happening } from '../kit/program.js';
import { INTERRUPTED, type World } from '../kit/stage.js';
import {
  AMOUNTS,
  type BenchSlot,
  type BenchState,
  benchOrder,
  STRENGTH_STEP,
  THINS,
  WATER_ROW,
  WAY_ROW,
} from './state.js';

const STOP = stop('stop at once; answers are saved');

/** The keys that work now, most used first. */
export function benchKeys({ overlay, picking, focus }: BenchState): Binding[] {
  if (overlay !== undefined) return [close(), STOP];
  const own =
    picking === undefined
      ? [
          upDown('row'),
          leftRight(LESS_MORE),
          enter(focus < WAY_ROW ? 'pick a paint' : 'next row'),
          letter('c', 'caution', 'about these paints', true),
          back('home'),
        ]
      : [upDown('paint'), enter('take it'), back('keep what was there')];
  return [...own, KEYS, STOP];
}

function change(screen: BenchState, by: number): BenchState {
  const { focus, way } = screen;
  if (focus === 0) {
    const strength = Math.min(100, Math.max(STRENGTH_STEP, screen.strength + by * STRENGTH_STEP));
    return { ...screen, strength };
  }
  if (focus === WAY_ROW) {
    return { ...screen, way: WAYS[turn(WAYS.indexOf(way), by, WAYS.length)] ?? 'puddle' };
  }
  if (focus === WATER_ROW) {
    const at = (THINS as readonly number[]).indexOf(screen.thin);
    return way === 'puddle' ? { ...screen, thin: THINS[step(at, by, THINS.length)] ?? 1 } : screen;
  }
  const slots = screen.slots.map(
    (slot, index): BenchSlot =>
      index === focus ? { ...slot, amount: step(slot.amount, by, AMOUNTS[way].length) } : slot,
  );
  return { ...screen, slots };
}

/** The paint that is highlighted, on the bench; its caution over it where it has not been told. */
function pick(state: BenchState, world: World): BenchState {
  const { picking = 0, ...rest } = state;
  const id = picking === 0 ? undefined : benchOrder(world, state.settings.palette)[picking - 1];
  const slots = rest.slots.map(
    (slot, index): BenchSlot =>
      index === rest.focus ? { ...(id === undefined ? {} : { pigment: id }), amount: slot.amount } : slot,
  );
  const { due, told } = dueCautions({ ...rest, slots }, world, id === undefined ? [] : [id]);
  return due.length === 0 ? told : { ...told, overlay: { name: 'caution', pigments: due } };
}

function onPicker(state: BenchState, world: World, command: Command): BenchState {
  const { picking = 0, ...closed } = state;
  const last = benchOrder(world, state.settings.palette).length;
  switch (command) {
    case 'up':
    case 'down':
      return { ...state, picking: stepBy(command, picking, last + 1) };
    case 'confirm':
      return pick(state, world);
    default:
      return command === 'back' ? closed : state;
  }
}

function onBench(state: BenchState, world: World, command: Command): BenchState {
  const { focus } = state;
  switch (command) {
    case 'up':
      return { ...state, focus: step(focus, -1, WATER_ROW + 1) };
    case 'down':
      return { ...state, focus: step(focus, 1, WATER_ROW + 1) };
    case 'less':
      return change(state, -1);
    case 'more':
      return change(state, 1);
    case 'confirm': {
      if (focus >= WAY_ROW) return { ...state, focus: turn(focus, 1, WATER_ROW + 1) };
      const held = state.slots[focus]?.pigment;
      const order = benchOrder(world, state.settings.palette);
      return { ...state, picking: held === undefined ? 0 : order.indexOf(held) + 1 };
    }
    case 'caution': {
      const pigments = [...new Set(state.slots.flatMap(({ pigment }) => pigment ?? []))];
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
  return state.picking === undefined ? onBench(state, world, command) : onPicker(state, world, command);
}

/** The state after what came to it. */
export function updateBench(state: BenchState, world: World, action: Happening): BenchState {
  if (action.type === 'resize') return { ...state, size: action.size };
  return action.type === 'key' ? onKey(state, world, action.key) : state;
}
