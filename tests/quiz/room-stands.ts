/** The room on a stage: a handout, its program at a size and in a form, keys pressed one after another. */
import type { Handout } from '../../src/quiz/handout.js';
import type { RoomCounts } from '../../src/quiz/room-counts.js';
import type { Size } from '../../src/tui/kit/stage.js';
import { type RoomRequest, roomProgram } from '../../src/tui/quiz/room/program.js';
import type { RoomState } from '../../src/tui/quiz/room/state.js';
import { SHIPPED_PICTURES } from '../exercises.js';
import { COLOURED, type Form } from '../tui/walk.js';
import { NINE } from './fixture.js';

const pictures = SHIPPED_PICTURES;

export type RoomProgram = ReturnType<typeof roomProgram>;

/** A room that keeps its counts in memory. */
export function roomOn(
  handout: Handout,
  size: Size = { columns: 80, rows: 24 },
  form: Form = COLOURED,
  more: Partial<RoomRequest> = {},
): RoomProgram {
  return roomProgram(
    {
      deps: {
        settings: {
          valueScale: 'paper-first',
          palette: 'six',
          screenReader: form.isSpoken === true,
          colour: 'full',
        },
        env: form.env,
        noColourFlag: false,
        pictures,
        now: () => NINE,
      },
      handout,
      fresh: 'week3.room.json',
      save: () => {},
      ...more,
    },
    size,
  );
}

/** The state after keys, one a second. */
export const press = (program: RoomProgram, state: RoomState, keys: readonly string[]): RoomState =>
  keys.reduce((before, key) => program.update(before, { type: 'key', key, at: before.now + 1000 }), state);

/** Keys that type hands for each letter in order, and for none of them. */
export const typing = (hands: readonly number[]): string[] =>
  hands.flatMap((each) => [...(each === 0 ? '' : String(each)), 'enter']);

/** Hands on the question in front: those given, the other letters none. */
export function counted(program: RoomProgram, state: RoomState, hands: readonly number[]): RoomState {
  const slots = (program.room.letters[state.place]?.length ?? 0) + 1;
  const all = Array.from({ length: slots }, (_, at) => hands[at] ?? 0);
  return press(program, state, ['enter', ...typing(all)]);
}

export const noCounts = (handout: Handout): RoomCounts => ({
  handoutDigest: handout.digest,
  held: '2026-03-02T10:00:00.000Z',
  questions: [],
});
