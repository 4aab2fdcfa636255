/** Runs a quiz in the room. Loads Ink: check the terminal first (terminal-check.ts). */
import { kindOf } from '../../../drills/kinds/index.js';
import type { Handout } from '../../../quiz/handout.js';
import { createGrader } from '../../../quiz/marking.js';
import { cleanText } from '../../../text/sanitize.js';
import { glyphsFor } from '../../kit/glyphs.js';
import type { Program } from '../../kit/program.js';
import { runPrograms, terminalSize } from '../../kit/shell.js';
import type { Size } from '../../kit/stage.js';
import { type QuizDeps, quizStage, quizWorld } from '../classroom.js';
import {
  countsOf,
  emptyCounts,
  fieldsIn,
  handsWords,
  isCounted,
  type RoomState,
  type RoomWorld,
  roomAnswer,
  roomGrade,
  roomKeys,
} from './state.js';
import { updateRoom } from './update.js';
import { roomView } from './view.js';

/** How a quiz in the room ended. */
export interface RoomEnding {
  readonly code: number;
  /** Counts and results in words, a line each. */
  readonly lines: readonly string[];
}

/** A quiz in the room as a program of the screens. */
export function roomProgram(
  handout: Handout,
  deps: QuizDeps,
  size: Size,
): Program<RoomState> & { readonly room: RoomWorld } {
  const room: RoomWorld = { handout, grader: createGrader(handout), world: quizWorld(handout, deps) };
  return {
    name: 'room',
    room,
    world: room.world,
    initial: {
      ...quizStage(deps, room.world, size),
      place: 0,
      isOver: false,
      selected: 0,
      stage: { name: 'question' },
      counts: emptyCounts(room.grader),
    },
    glyphs: glyphsFor(deps.env),
    now: () => deps.now(),
    update: (state, action) => updateRoom(room, state, action),
    keys: (state) => roomKeys(room, state),
    view: (state, glyphs) => roomView(room, state, glyphs),
  };
}

/** What the room chose, for the lines printed after leaving. */
export function roomLines(world: RoomWorld, state: RoomState): string[] {
  return world.handout.questions.flatMap(({ drill }, place) => {
    if (!isCounted(state, place)) return [];
    const kind = kindOf(world.handout.studio, drill);
    const { mark, verdict, best } = roomGrade(world, state, place);
    const rows = fieldsIn(world, place).map(({ label, options }, index) => {
      const hands = countsOf(state, place, index);
      const counted = options.flatMap(({ label: option }, at) =>
        (hands[at] ?? 0) > 0 ? [`${cleanText(option, 80)} ${hands[at]}`] : [],
      );
      return `   ${label}: ${counted.length === 0 ? 'no hands' : counted.join(', ')}`;
    });
    return [
      `${place + 1}. ${cleanText(drill.title, 80)}`,
      ...rows,
      `   most hands (${handsWords(world, state, place)}): ${kind.label(drill, roomAnswer(world, state, place))}, ${mark} of 100 (${verdict})`,
      `   best: ${best.label}`,
    ];
  });
}

export async function runRoom(handout: Handout, deps: QuizDeps): Promise<RoomEnding> {
  const program = roomProgram(handout, deps, terminalSize());
  const last = (await runPrograms(program)) as RoomState;
  return { code: typeof last.ending === 'number' ? last.ending : 1, lines: roomLines(program.room, last) };
}
