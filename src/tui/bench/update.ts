/** The mixing bench: a first wash and up to two paints brought to it; here the colour is shown as it changes. */
import { type Laid, layMixture, WAYS, type Way } from '../../washes/index.js';
import { ratioWords, strengthWords, thinWords } from '../../words/laid.js';
import { cautionText, withCaution } from '../drill/update.js';
import type { Command } from '../kit/keys.js';
import { show, step, turn, withOverlay } from '../kit/moves.js';
import type { BenchScreen, BenchSlot, State, World } from '../kit/state.js';

/** Amounts of a further paint in each way: parts to one of the wash's paint, strength of the glaze, share of the paper. */
export const AMOUNTS: Readonly<Record<Way, readonly number[]>> = {
  puddle: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2],
  glaze: [0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.8],
  strokes: [0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4],
};
/** Water after stirring, one part in so many. */
const THINS = [1, 2, 3, 4, 8] as const;
const STRENGTH_STEP = 5;
/** Rows: the wash, two further paints, way, water. */
export const WAY_ROW = 3;
export const WATER_ROW = 4;

/** The bench with the palette's first two paints on it. */
export function freshBench(world: World, palette: string): BenchScreen {
  const box = world.studio.palettes.find(({ id }) => id === palette)?.pigments ?? [];
  const known = box.filter((id) => world.studio.paints.some((pigment) => pigment.id === id));
  const [first = world.studio.paints[0]?.id, second] = known;
  return {
    name: 'bench',
    slots: [
      { ...(first === undefined ? {} : { pigment: first }), amount: 0 },
      { ...(second === undefined ? {} : { pigment: second }), amount: 3 },
      { amount: 3 },
    ],
    strength: 30,
    way: 'puddle',
    thin: 1,
    focus: 0,
  };
}

/** What lies on the bench, or undefined with no wash in the first place. */
export function benchLaid({ slots, strength, way, thin }: BenchScreen): Laid | undefined {
  const [wash, ...others] = slots;
  if (wash?.pigment === undefined) return undefined;
  const first = { paints: { [wash.pigment]: 1 }, strength: strength / 100 };
  const added = others.flatMap(({ pigment, amount }) =>
    pigment === undefined ? [] : [{ id: pigment, amount: AMOUNTS[way][amount] ?? 0 }],
  );
  if (added.length === 0) return way === 'puddle' && thin > 1 ? { ...first, thin } : first;
  return layMixture(first, { way, added, strength: strength / 100, thin: way === 'puddle' ? thin : 1 });
}

/** The value of a paint's row: the wash by its strength, the others by how much of them goes on. */
export function slotWords({ strength, way, slots }: BenchScreen, row: number): string {
  if (row === 0) return `at ${strength} %`;
  const amount = AMOUNTS[way][slots[row]?.amount ?? 0] ?? 0;
  if (way === 'puddle') return ratioWords(amount);
  return way === 'glaze' ? `at ${strengthWords(amount)}` : `on ${strengthWords(amount)} of it`;
}

/** The water row in words. */
export function waterWords({ way, thin }: BenchScreen): string {
  return way === 'puddle' ? thinWords(thin) : 'in the strength of each wash';
}

/** Paints in the order the picker lists them: the learner's palette first. */
export function benchOrder(world: World, palette: string): readonly string[] {
  const box = world.studio.palettes.find(({ id }) => id === palette)?.pigments ?? [];
  const known = box.filter((id) => world.studio.paints.some((pigment) => pigment.id === id));
  return [...known, ...world.studio.paints.map(({ id }) => id).filter((id) => !known.includes(id))];
}

function change(screen: BenchScreen, by: number): BenchScreen {
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

function pick(state: State, world: World, screen: BenchScreen): State {
  const { picking = 0, ...rest } = screen;
  const id = picking === 0 ? undefined : benchOrder(world, state.settings.palette)[picking - 1];
  const slots = screen.slots.map(
    (slot, index): BenchSlot =>
      index === screen.focus ? { ...(id === undefined ? {} : { pigment: id }), amount: slot.amount } : slot,
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
      return { ...state, screen: { ...screen, focus: step(screen.focus, -1, WATER_ROW + 1) } };
    case 'down':
      return { ...state, screen: { ...screen, focus: step(screen.focus, 1, WATER_ROW + 1) } };
    case 'less':
      return { ...state, screen: change(screen, -1) };
    case 'more':
      return { ...state, screen: change(screen, 1) };
    case 'confirm': {
      if (screen.focus >= WAY_ROW)
        return { ...state, screen: { ...screen, focus: turn(screen.focus, 1, WATER_ROW + 1) } };
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
