/** Runs a quiz in the room. Loads Ink: check the terminal first (terminal-check.ts). */
import { kindOf } from '../../drills/kinds/index.js';
import type { Handout } from '../../quiz/handout.js';
import { createGrader } from '../../quiz/marking.js';
import { cleanText } from '../../text/sanitize.js';
import { type QuizProgram, runQuizProgram } from './quiz-app.js';
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
} from './room-state.js';
import { createRoomReducer } from './room-update.js';
import { roomView } from './room-view.js';
import { type QuizDeps, quizWorld } from './stage.js';

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
  size: RoomState['size'],
): QuizProgram<RoomState> & { readonly room: RoomWorld } {
  const room = { handout, grader: createGrader(handout), world: quizWorld(handout, deps) };
  return {
    deps,
    room,
    world: room.world,
    initial: {
      place: 0,
      isOver: false,
      selected: 0,
      stage: { name: 'question' },
      counts: emptyCounts(room.grader),
      size,
      settings: deps.settings,
      colourLevel: room.world.colourLevelFor(deps.settings.colour),
    },
    reduce: createRoomReducer(room),
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
  const size = { columns: process.stdout.columns || 80, rows: process.stdout.rows || 24 };
  const program = roomProgram(handout, deps, size);
  const last = await runQuizProgram(program);
  return { code: last.ending ?? 1, lines: roomLines(program.room, last) };
}
