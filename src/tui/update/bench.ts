/** The mixing bench: up to three paints, parts, strength and way; here the colour is shown as it changes. */
import { WAYS } from '../../paints/index.js';
import type { Command } from '../keys.js';
import type { BenchScreen, BenchSlot, State, World } from '../state.js';
import { show, step, turn, withOverlay } from './common.js';
import { cautionText, withCaution } from './drill.js';

/** Parts that the bench offers; a ratio of 1:32 is at hand. */
export const PARTS = [1, 2, 3, 4, 6, 8, 12, 16, 24, 32] as const;
const STRENGTH_STEP = 5;
/** Rows: three slots, strength, way. */
export const STRENGTH_ROW = 3;
export const WAY_ROW = 4;

/** The bench with the palette's first two paints on it. */
export function freshBench(world: World, palette: string): BenchScreen {
  const box = world.palettes.find(({ id }) => id === palette)?.pigments ?? [];
  const known = box.filter((id) => world.pigments.some((pigment) => pigment.id === id));
  const [first = world.pigments[0]?.id, second] = known;
  return {
    name: 'bench',
    slots: [
      { ...(first === undefined ? {} : { pigment: first }), parts: 4 },
      { ...(second === undefined ? {} : { pigment: second }), parts: 1 },
      { parts: 1 },
    ],
    strength: 50,
    way: 'puddle',
    focus: 0,
  };
}

/** Paints in the order the picker lists them: the learner's palette first. */
export function benchOrder(world: World, palette: string): readonly string[] {
  const box = world.palettes.find(({ id }) => id === palette)?.pigments ?? [];
  const known = box.filter((id) => world.pigments.some((pigment) => pigment.id === id));
  return [...known, ...world.pigments.map(({ id }) => id).filter((id) => !known.includes(id))];
}

function change(screen: BenchScreen, by: number): BenchScreen {
  if (screen.focus === STRENGTH_ROW) {
    const strength = Math.min(100, Math.max(STRENGTH_STEP, screen.strength + by * STRENGTH_STEP));
    return { ...screen, strength };
  }
  if (screen.focus === WAY_ROW) {
    return { ...screen, way: WAYS[turn(WAYS.indexOf(screen.way), by, WAYS.length)] ?? 'puddle' };
  }
  const slots = screen.slots.map((slot, index): BenchSlot => {
    if (index !== screen.focus) return slot;
    const at = (PARTS as readonly number[]).indexOf(slot.parts);
    return { ...slot, parts: PARTS[step(at, by, PARTS.length)] ?? 1 };
  });
  return { ...screen, slots };
}

function pick(state: State, world: World, screen: BenchScreen): State {
  const { picking = 0, ...rest } = screen;
  const id = picking === 0 ? undefined : benchOrder(world, state.settings.palette)[picking - 1];
  const slots = screen.slots.map(
    (slot, index): BenchSlot =>
      index === screen.focus ? { ...(id === undefined ? {} : { pigment: id }), parts: slot.parts } : slot,
  );
  const next: State = { ...state, screen: { ...rest, slots } };
  const due = withCaution(world, id === undefined ? [] : [id]).filter(
    (each) => !state.cautioned.includes(cautionText(world, each)),
  );
  if (due.length === 0) return next;
  const cautioned = [...state.cautioned, ...due.map((each) => cautionText(world, each))];
  return withOverlay({ ...next, cautioned }, { name: 'caution', pigments: due, onward: 'close' });
}

export function updateBench(state: State, world: World, screen: BenchScreen, command: Command): State {
  const order = benchOrder(world, state.settings.palette);
  if (screen.picking !== undefined) {
    const { picking, ...closed } = screen;
    if (command === 'up' || command === 'down') {
      const by = command === 'up' ? -1 : 1;
      return { ...state, screen: { ...screen, picking: step(picking, by, order.length + 1) } };
    }
    if (command === 'confirm') return pick(state, world, screen);
    return command === 'back' ? { ...state, screen: closed } : state;
  }
  switch (command) {
    case 'up':
      return { ...state, screen: { ...screen, focus: step(screen.focus, -1, WAY_ROW + 1) } };
    case 'down':
      return { ...state, screen: { ...screen, focus: step(screen.focus, 1, WAY_ROW + 1) } };
    case 'less':
      return { ...state, screen: change(screen, -1) };
    case 'more':
      return { ...state, screen: change(screen, 1) };
    case 'confirm': {
      if (screen.focus >= STRENGTH_ROW)
        return { ...state, screen: { ...screen, focus: turn(screen.focus, 1, WAY_ROW + 1) } };
      const held = screen.slots[screen.focus]?.pigment;
      return { ...state, screen: { ...screen, picking: held === undefined ? 0 : order.indexOf(held) + 1 } };
    }
    case 'caution': {
      const pigments = withCaution(
        world,
        screen.slots.flatMap(({ pigment }) => pigment ?? []),
      );
      return pigments.length === 0
        ? { ...state, notice: 'No special caution is on record for these paints; the usual hygiene holds.' }
        : withOverlay(state, { name: 'caution', pigments, onward: 'close' });
    }
    case 'back':
      return show(state, { name: 'home' });
    default:
      return state;
  }
}
