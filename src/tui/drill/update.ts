/** Answering a drill. */

import { chosenIndex, digitField, showsAs, sideField, withOption } from '../kit/fields.js';
import type { Command } from '../kit/keys.js';
import { ask, offerPlacing, step, turn, withOverlay } from '../kit/moves.js';
import type { DrillScreen, State, World } from '../kit/state.js';

/** Paints chosen in the answer that have a caution, each text once. */
export function cautionsFor(world: World, screen: DrillScreen): string[] {
  const pigments = screen.fields.flatMap(
    (field) => field.options[chosenIndex(field, screen.answer)]?.pigment ?? [],
  );
  return withCaution(world, pigments);
}

/** Of these paints, those whose handling asks for care. */
export function withCaution(world: World, ids: readonly string[]): string[] {
  return [...new Set(ids)].filter((id) => {
    const hazard = world.studio.paints.find((pigment) => pigment.id === id)?.hazard;
    return hazard !== undefined && hazard.level !== 'low';
  });
}

/** The caution text of a paint: what is remembered as shown. */
export function cautionText(world: World, id: string): string {
  return world.studio.paints.find((pigment) => pigment.id === id)?.hazard?.note ?? '';
}

const choose = (screen: DrillScreen, by: number, field = screen.fields[screen.focus]): DrillScreen =>
  field === undefined
    ? screen
    : { ...screen, answer: withOption(screen.answer, field, chosenIndex(field, screen.answer) + by) };

function upOrDown(screen: DrillScreen, by: number): DrillScreen {
  const field = screen.fields[screen.focus];
  if (field !== undefined && showsAs(field) === 'tray') return choose(screen, by, field);
  return { ...screen, focus: step(screen.focus, by, screen.fields.length) };
}

function pickDigit(screen: DrillScreen, key: string): DrillScreen {
  const field = digitField(screen.fields, screen.focus);
  const index = Number(key) - 1;
  if (field === undefined || index >= field.options.length) return screen;
  return { ...screen, answer: withOption(screen.answer, field, index) };
}

/** Lays the answer down, after a caution where one is due. */
export function lay(state: State, world: World, screen: DrillScreen, at: number): State {
  const due = cautionsFor(world, screen).filter((id) => !state.cautioned.includes(cautionText(world, id)));
  if (due.length > 0 && !screen.worked) {
    const cautioned = [...state.cautioned, ...due.map((id) => cautionText(world, id))];
    return withOverlay({ ...state, cautioned }, { name: 'caution', pigments: due, onward: 'lay' });
  }
  return ask({ ...state, screen: { ...screen, laying: true } }, { type: 'lay', screen, at });
}

export function updateDrill(
  state: State,
  world: World,
  screen: DrillScreen,
  command: Command,
  key: string,
  at: number,
): State {
  const to = (next: DrillScreen): State => ({ ...state, screen: next });
  // In the worked example the choice is made; only laying it down and leaving work.
  if (screen.worked && command !== 'confirm' && command !== 'back') return state;
  switch (command) {
    case 'up':
      return to(upOrDown(screen, -1));
    case 'down':
      return to(upOrDown(screen, 1));
    case 'less':
      return to(choose(screen, -1, sideField(screen.fields, screen.focus)));
    case 'more':
      return to(choose(screen, 1, sideField(screen.fields, screen.focus)));
    case 'next-field':
      return to({ ...screen, focus: turn(screen.focus, 1, screen.fields.length) });
    case 'previous-field':
      return to({ ...screen, focus: turn(screen.focus, -1, screen.fields.length) });
    case 'digit':
      return to(pickDigit(screen, key));
    case 'hint':
      return to({ ...screen, hint: screen.hint === 'hidden' ? 'offered' : 'shown' });
    case 'caution': {
      const pigments = cautionsFor(world, screen);
      return pigments.length === 0
        ? { ...state, notice: 'No special caution is on record for this paint; the usual hygiene holds.' }
        : withOverlay(state, { name: 'caution', pigments, onward: 'close' });
    }
    case 'confirm':
      return lay(state, world, screen, at);
    case 'back':
      return screen.worked ? offerPlacing(state, world) : withOverlay(state, { name: 'leave' });
    default:
      return state;
  }
}
