/** The room at every size and in every form: nothing is cut or out of sight, and every key is told. */
import { afterEach, describe, expect, it } from 'vitest';
import { widthOf } from '../../src/text/wrap.js';
import { inAscii } from '../../src/tui/kit/glyphs.js';
import type { Size } from '../../src/tui/kit/stage.js';
import { letterSizes } from '../../src/tui/quiz/room/large.js';
import { offeredIn, slideLayout } from '../../src/tui/quiz/room/layout.js';
import type { RoomState } from '../../src/tui/quiz/room/state.js';
import { frameFaults, keyFaults } from '../tui/fits.js';
import { Stills } from '../tui/still.js';
import { COLOURED, FIVE, type Form, OTHER_FORMS } from '../tui/walk.js';
import { everyKindHandout } from './fixture.js';
import { counted, press, type RoomProgram, roomOn } from './room-stands.js';

const { handout } = everyKindHandout();
const TIGHTEST: Size = { columns: 60, rows: 18 };
const SIZES = [TIGHTEST, ...FIVE];

let stills: Stills | undefined;
afterEach(() => stills?.close());

/** Every stage of one question. */
function stagesOf(program: RoomProgram, place: number): Record<string, RoomState> {
  const asked: RoomState = { ...program.initial, place };
  const shown = counted(program, asked, [12, 9, 0, 4]);
  const twice = counted(program, press(program, shown, ['2']), [5, 16, 1, 4]);
  return {
    asked,
    timed: press(program, asked, ['t']),
    counting: press(program, asked, ['enter', '1', '2', 'enter', '7']),
    'without hands': press(program, asked, ['o']),
    shown,
    tied: counted(program, asked, [8, 8, 8]),
    'asked again': press(program, shown, ['2', 't']),
    'counted twice': twice,
    opened: press(program, twice, ['b']),
  };
}

const squeezed = (text: string): string => inAscii(text).replace(/\s+/g, '');

/** Answers of the slide that do not stand on it in full, nor on one of the slides that the arrow leads to. */
function unsaid(program: RoomProgram, state: RoomState): string[] {
  const offered = offeredIn(program.room, state);
  const seen = offered.map((_, at) => {
    const moved = { ...state, stage: { name: 'question', at } as const };
    const { labelColumns } = slideLayout(program.room, moved, letterSizes(program.glyphs));
    const text = stills?.of(moved, program).lines.map((line) => line.slice(-labelColumns - 1)) ?? [];
    return squeezed(text.join(' '));
  });
  return offered
    .filter(({ label }) => !seen.some((text) => text.includes(squeezed(label))))
    .map(({ label }) => label);
}

function faultsOf(program: RoomProgram, form: Form, places: readonly number[]): string[] {
  return places.flatMap((place) =>
    Object.entries(stagesOf(program, place)).flatMap(([name, state]) => {
      const still = (stills as Stills).of(state, program);
      // While hands are typed Esc goes a letter back.
      const faults = frameFaults(still, state, form.env);
      const cut = still.lines.filter((line) => widthOf(line) > state.size.columns);
      return [
        ...faults,
        ...cut,
        ...(form.isSpoken === true
          ? []
          : keyFaults({ program, stills: stills as Stills, env: form.env }, state, still.lines)),
        ...(name === 'asked' && form.isSpoken !== true
          ? unsaid(program, state).map((one) => `not said: ${one}`)
          : []),
      ].map(
        (fault) =>
          `${state.size.columns}x${state.size.rows} ${handout.questions[place]?.drill.id} ${name}: ${fault}`,
      );
    }),
  );
}

const all = handout.questions.map((_, place) => place);

describe('the room', () => {
  it.each(SIZES)('has room at $columns by $rows', (size) => {
    stills = new Stills();
    expect(faultsOf(roomOn(handout, size), COLOURED, all)).toEqual([]);
  });

  it.each(OTHER_FORMS)('has room with $name', (form) => {
    stills = new Stills(form.isSpoken);
    for (const size of [TIGHTEST, { columns: 200, rows: 60 }])
      expect(faultsOf(roomOn(handout, size, form), form, all)).toEqual([]);
  });

  it('shows the picture from 80 columns on, and at 200 by 60 letters and patches that fill it', () => {
    const pictured = (size: Size) => {
      const program = roomOn(handout, size);
      return all
        .filter((place) => program.world.sceneOf(handout.questions[place]?.drill as never) !== undefined)
        .map((place) =>
          slideLayout(program.room, { ...program.initial, place }, letterSizes(program.glyphs)),
        );
    };
    const large = pictured({ columns: 200, rows: 60 });
    expect(large.length).toBeGreaterThan(5);
    for (const { sheet, size } of large) {
      expect(sheet?.lines).toBeGreaterThan(20);
      expect(size).toBe('full');
    }
    const small = pictured({ columns: 80, rows: 24 });
    expect(small.filter(({ sheet }) => sheet !== undefined).length / small.length).toBeGreaterThan(0.5);
  });
});
