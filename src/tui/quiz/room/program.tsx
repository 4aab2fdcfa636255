/** Runs a quiz in the room. Loads Ink: check the terminal first (terminal-check.ts). */
import { isOurs } from '../../../errors.js';
import type { Handout } from '../../../quiz/handout.js';
import type { RoomCounts } from '../../../quiz/room-counts.js';
import { handsWords, NONE, voteWords } from '../../../quiz/room-votes.js';
import { cleanText } from '../../../text/sanitize.js';
import { glyphsFor } from '../../kit/glyphs.js';
import { voiceOf } from '../../kit/look.js';
import type { Program } from '../../kit/program.js';
import { runPrograms, terminalSize } from '../../kit/shell.js';
import type { Size } from '../../kit/stage.js';
import { type QuizDeps, quizStage, quizWorld } from '../classroom.js';
import { roomKeys } from './keys.js';
import { lettersIn, mostVoted, type RoomState, type RoomWorld, roomWorld, votesAt } from './state.js';
import { timerRuns } from './timer.js';
import { updateRoom } from './update.js';
import { roomView } from './view.js';

/** A quiz to be held in the room. */
export interface RoomRequest {
  readonly deps: QuizDeps;
  readonly handout: Handout;
  /** Counts of an earlier hour, and the name of their file. */
  readonly found?: { readonly file: string; readonly counts: RoomCounts };
  /** Name of the file for a new room. */
  readonly fresh: string;
  /** Why a file that is there cannot be gone on with. */
  readonly note?: string;
  /** Must have the counts on disk when it returns. @param goesOn whether in the file that was found */
  save(counts: RoomCounts, goesOn: boolean): void;
}

/** How a quiz in the room ended. */
export interface RoomEnding {
  /** 0 left, 1 not saved, 130 interrupted. */
  readonly code: number;
  /** Counts and results in words, a line each. */
  readonly lines: readonly string[];
  readonly goesOn: boolean;
  /** What could not be saved. */
  readonly fault?: string;
}

/** Seconds that the timer is set to at first: enough to talk to a neighbour. */
const TIMER_SECONDS = 60;

/** A quiz in the room as a program of the screens. */
export function roomProgram(
  request: RoomRequest,
  size: Size,
): Program<RoomState> & { readonly room: RoomWorld } {
  const { deps, handout, found, note } = request;
  const now = deps.now();
  const counts = { handoutDigest: handout.digest, held: new Date(now).toISOString(), questions: [] };
  const room = roomWorld(handout, quizWorld(handout, deps), voiceOf(deps.settings), {
    fresh: { file: request.fresh, counts },
    ...(found === undefined ? {} : { found }),
    ...(note === undefined ? {} : { note }),
  });
  // What is on the disk, or needs no saving yet.
  let saved: readonly RoomCounts[] = [counts, ...(found === undefined ? [] : [found.counts])];
  return {
    name: 'room',
    room,
    world: room.world,
    initial: {
      ...quizStage(deps, room.world, size),
      place: 0,
      isOver: false,
      selected: 0,
      stage: found === undefined && note === undefined ? { name: 'question', at: 0 } : { name: 'begin' },
      turn: 'first',
      inGrey: false,
      counts,
      goesOn: false,
      timerSeconds: TIMER_SECONDS,
      now,
    },
    glyphs: glyphsFor(deps.env),
    now: () => deps.now(),
    update: (state, action) => updateRoom(room, state, action),
    keys: (state) => roomKeys(room, state),
    view: (state, glyphs) => roomView(room, state, glyphs),
    // What cannot be saved is said until it can: the next vote tries again.
    keep: (state) => {
      const { savingNote: _before, ...rest } = state;
      if (saved.includes(rest.counts)) return rest;
      try {
        request.save(rest.counts, rest.goesOn);
      } catch (fault) {
        if (!isOurs(fault)) throw fault;
        return { ...rest, savingNote: fault.message };
      }
      saved = [rest.counts];
      return rest;
    },
    ticks: timerRuns,
  };
}

/** What the room chose, for the lines printed after leaving. */
export function roomLines(world: RoomWorld, state: RoomState): string[] {
  return world.handout.questions.flatMap(({ drill }, place) => {
    const votes = votesAt(world, state, place);
    const { first, second } = votes;
    if (first === undefined) return [];
    const letters = lettersIn(world, place);
    const marked = letters.map(({ letter, label, answer }, at) => {
      const { mark, verdict } = world.grader.grade(place, answer);
      return `   ${letter} ${label}: ${handsWords(votes, at)}; ${mark} of 100 (${verdict})`;
    });
    const none = (first[letters.length] ?? 0) + (second?.[letters.length] ?? 0);
    const most = mostVoted(world, state, place);
    const led =
      most === undefined ? '' : `, ${world.grader.grade(place, letters[most]?.answer ?? {}).mark} of 100`;
    return [
      `${place + 1}. ${cleanText(drill.title, 80)}: ${voteWords(letters, second ?? first)}${led}`,
      ...marked,
      ...(none > 0 ? [`   ${NONE}: ${handsWords(votes, letters.length)}`] : []),
    ];
  });
}

export async function runRoom(request: RoomRequest): Promise<RoomEnding> {
  const program = roomProgram(request, terminalSize());
  const last = (await runPrograms(program)) as RoomState;
  const { savingNote: fault, ending, goesOn } = last;
  const code = typeof ending === 'number' ? ending : 1;
  return {
    code: fault !== undefined && code === 0 ? 1 : code,
    lines: roomLines(program.room, last),
    goesOn,
    ...(fault === undefined ? {} : { fault }),
  };
}
