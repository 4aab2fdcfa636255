/** The room at every size and in every form: nothing is cut or out of sight, and every key is told. */
import { inAscii } from '../../src/tui/kit/glyphs.js';
import type { Size } from '../../src/tui/kit/stage.js';
import { letterSizes } from '../../src/tui/quiz/room/large.js';
import { slideLayout } from '../../src/tui/quiz/room/layout.js';
import { offeredIn } from '../../src/tui/quiz/room/offered.js';
import type { RoomState } from '../../src/tui/quiz/room/state.js';
import { frameFaults, keyFaults } from '../tui/fits.js';
import type { Stills } from '../tui/still.js';
import type { Form } from '../tui/walk.js';
import { everyKindHandout } from './fixture.js';
import { counted, press, type RoomProgram, roomOn } from './room-stands.js';

export const { handout } = everyKindHandout();
const { room: world } = roomOn(handout);
export const TIGHTEST: Size = { columns: 60, rows: 18 };

/** The question of each kind with the longest answers. */
export const FULLEST: readonly number[] = [...new Set(handout.questions.map(({ drill }) => drill.kind))].map(
  (kind) => {
    const { letters } = world;
    const burden = (place: number): number =>
      (letters[place] ?? []).reduce((sum, { label }) => sum + label.length, 0);
    return handout.questions
      .flatMap(({ drill }, place) => (drill.kind === kind ? [place] : []))
      .reduce((most, place) => (burden(place) > burden(most) ? place : most));
  },
);

/** Every stage of one question. */
function stagesOf(program: RoomProgram, place: number): Record<string, RoomState> {
  const asked: RoomState = { ...program.initial, place };
  const shown = counted(program, asked, [12, 9, 0, 4]);
  const twice = counted(program, press(program, shown, ['h']), [5, 16, 1, 4]);
  return {
    asked,
    timed: press(program, asked, ['t']),
    counting: press(program, asked, ['enter', '1', '2', 'enter', '7']),
    'without hands': press(program, asked, ['o']),
    shown,
    tied: counted(program, asked, [8, 8, 8]),
    'asked again': press(program, shown, ['h', 't']),
    'counted twice': twice,
    opened: press(program, twice, ['b']),
  };
}

const squeezed = (text: string): string => inAscii(text).replace(/\s+/g, '');

/** Answers of the slide that do not stand on it in full, nor on one of the slides that the arrow leads to. */
function unsaid(program: RoomProgram, state: RoomState, stills: Stills): string[] {
  const offered = offeredIn(program.room, state);
  const layoutAt = (at: number) => {
    const moved: RoomState = { ...state, stage: { name: 'question', at } };
    return { moved, ...slideLayout(program.room, moved, letterSizes(program.glyphs)) };
  };
  const slides = layoutAt(0).isAll ? [layoutAt(0)] : offered.map((_, at) => layoutAt(at));
  const seen = slides.map(({ moved, labelColumns }) => {
    const text = stills
      .of(moved, program)
      .lines.map((line) => line.slice(state.size.columns - 1 - labelColumns));
    return squeezed(text.join(' '));
  });
  return offered
    .filter(({ label }) => !seen.some((text) => text.includes(squeezed(label))))
    .map(({ label }) => label);
}

export function faultsOf(size: Size, form: Form, places: readonly number[], stills: Stills): string[] {
  const program = roomOn(handout, size, form);
  // Many stages have the same keys: each table is looked at once.
  const tables = new Set<string>();
  const keysOf = (state: RoomState, lines: readonly string[]): string[] => {
    const table = JSON.stringify([program.keys(state), state.stage.name]);
    if (tables.has(table) || form.isSpoken === true) return [];
    tables.add(table);
    return keyFaults({ program, stills, env: form.env }, state, lines);
  };
  return places.flatMap((place) =>
    Object.entries(stagesOf(program, place)).flatMap(([name, state]) => {
      const still = stills.of(state, program);
      return [
        ...frameFaults(still, state, form.env),
        ...keysOf(state, still.lines),
        ...(name === 'asked' && form.isSpoken !== true
          ? unsaid(program, state, stills).map((one) => `not said: ${one}`)
          : []),
      ].map(
        (fault) =>
          `${size.columns}x${size.rows}, ${form.name}, ${handout.questions[place]?.drill.id} ${name}: ${fault}`,
      );
    }),
  );
}
