/** What keys and the clock do while a quiz is held in the room. Pure: the time comes with each action. */
import { MOST_HANDS } from '../../../quiz/room-counts.js';
import { withVote } from '../../../quiz/room-votes.js';
import { type Command, commandIn } from '../../kit/keys.js';
import { stepBy } from '../../kit/moves.js';
import type { Happening } from '../../kit/program.js';
import { INTERRUPTED } from '../../kit/stage.js';
import { onShowing } from '../../result/update.js';
import { onSheet, type SheetPanel } from '../../sheet/keys.js';
import { onPanel } from '../../sheet/panel.js';
import { picturedIn, roomKeys } from './keys.js';
import { slideLayout } from './layout.js';
import {
  type GradedStage,
  judgedIn,
  lettersIn,
  mostVoted,
  questionIn,
  type RoomStage,
  type RoomState,
  type RoomWorld,
  shownQuestion,
  votesAt,
} from './state.js';
import { setTimer } from './timer.js';

const at = (state: RoomState, stage: RoomStage): RoomState => ({ ...state, stage });
const ask = (state: RoomState, turn: RoomState['turn']): RoomState =>
  at({ ...state, turn }, { name: 'question', at: 0 });

/** A question that was counted opens with its hands. */
function openQuestion(world: RoomWorld, state: RoomState, place: number): RoomState {
  const { timerEnd: _ended, ...still } = state;
  if (place >= world.handout.questions.length) return { ...still, isOver: true, selected: 0 };
  const next = { ...still, isOver: false, place: Math.max(0, place), inGrey: false };
  const isCounted = votesAt(world, next, next.place).first !== undefined;
  return isCounted ? at({ ...next, turn: 'first' }, { name: 'shown' }) : ask(next, 'first');
}

/** Takes a vote whose numbers are all there. */
function takeVote(world: RoomWorld, state: RoomState, typed: readonly string[]): RoomState {
  const { place, turn } = state;
  const { drill } = questionIn(world, place);
  const vote = typed.map(Number);
  const order = world.handout.questions.map((each) => each.drill.id);
  const letters = lettersIn(world, place);
  const counts = withVote(state.counts, order, { drill: drill.id, letters, turn, vote });
  const { timerEnd: _ended, ...still } = state;
  return at({ ...still, counts }, { name: 'shown' });
}

type Counting = Extract<RoomStage, { name: 'count' }>;

function onCount(
  world: RoomWorld,
  state: RoomState,
  stage: Counting,
  command: Command,
  key: string,
): RoomState {
  const { typed, at: here, isAnew } = stage;
  const now = typed[here] ?? '';
  const count = (number: string): RoomState =>
    at(state, { ...stage, typed: typed.with(here, number), isAnew: false });
  const goTo = (place: number): RoomState => at(state, { ...stage, at: place, isAnew: true });
  switch (command) {
    case 'digit': {
      const next = isAnew ? key : now + key;
      return Number(next) > MOST_HANDS
        ? { ...state, notice: `At most ${MOST_HANDS} hands; ${key} was not taken.` }
        : count(next);
    }
    case 'erase':
      return count(now.slice(0, -1));
    case 'up':
      return goTo(Math.max(0, here - 1));
    case 'back':
      return here === 0 ? ask(state, state.turn) : goTo(here - 1);
    case 'down':
    case 'confirm':
      if (here < typed.length - 1) return goTo(here + 1);
      return command === 'confirm' ? takeVote(world, state, typed) : state;
    default:
      return state;
  }
}

function startCount(world: RoomWorld, state: RoomState, turn = state.turn): RoomState {
  // One number more: hands for none of them.
  const typed = Array.from({ length: lettersIn(world, state.place).length + 1 }, () => '');
  return at({ ...state, turn }, { name: 'count', typed, at: 0, isAnew: true });
}

function openLetter(state: RoomState, letter: number): RoomState {
  return at(state, { name: 'result', at: letter, top: 0 });
}

const withPanel = (state: RoomState, panel: SheetPanel | undefined): RoomState =>
  panel === undefined ? state : { ...state, overlay: panel };

function onQuestion(
  world: RoomWorld,
  state: RoomState,
  stage: Extract<RoomStage, { name: 'question' }>,
  command: Command,
  key: string,
): RoomState {
  const answers = lettersIn(world, state.place).length;
  switch (command) {
    case 'confirm':
      return startCount(world, state);
    case 'digit': {
      const started = startCount(world, state);
      return onCount(world, started, started.stage as Counting, command, key);
    }
    case 'up':
    case 'down':
      return at(state, { ...stage, at: stepBy(command, stage.at, answers) });
    case 'overview':
      return at(state, { name: 'shown' });
    case 'time':
    case 'more':
    case 'less':
      return setTimer(state, command);
    default: {
      const shown = shownQuestion(world, state);
      const look = onSheet(shown, command, () => slideLayout(world, state).sheet !== undefined);
      return look === undefined
        ? state
        : withPanel({ ...state, inGrey: look.shown.inGrey === true }, look.panel);
    }
  }
}

function onShown(world: RoomWorld, state: RoomState, command: Command, key: string): RoomState {
  const letters = lettersIn(world, state.place);
  const { second } = votesAt(world, state, state.place);
  switch (command) {
    case 'confirm':
      return openLetter(state, mostVoted(world, state, state.place) ?? 0);
    case 'open':
      return openLetter(
        state,
        letters.findIndex(({ letter }) => letter === key.toUpperCase()),
      );
    case 'again':
      return ask(state, 'second');
    case 'recount':
      return startCount(world, state, second === undefined ? 'first' : 'second');
    case 'time':
    case 'more':
    case 'less':
      return setTimer(state, command);
    default:
      return state;
  }
}

function onResult(world: RoomWorld, state: RoomState, stage: GradedStage, command: Command): RoomState {
  switch (command) {
    case 'confirm':
      return openQuestion(world, state, state.place + 1);
    case 'back':
      return at(state, { name: 'shown' });
    case 'less':
    case 'more': {
      const { length } = lettersIn(world, state.place);
      return openLetter(state, (stage.at + (command === 'more' ? 1 : length - 1)) % length);
    }
    default: {
      const { shown, panel } = onShowing(state, world.world, judgedIn(world, state, stage), command);
      const { answered: _same, ...how } = shown;
      return withPanel(at(state, { ...stage, ...how }), panel);
    }
  }
}

function onList(world: RoomWorld, state: RoomState, command: Command): RoomState {
  const count = world.handout.questions.length;
  switch (command) {
    case 'up':
    case 'down':
      return { ...state, selected: stepBy(command, state.selected, count) };
    case 'confirm':
      return openQuestion(world, state, state.selected);
    default:
      return { ...state, ending: 0 };
  }
}

function onBegin(world: RoomWorld, state: RoomState, command: Command): RoomState {
  if (command === 'back') return { ...state, ending: 0 };
  const { found } = world;
  if (command !== 'confirm' || found === undefined) return ask(state, 'first');
  const going = { ...state, goesOn: true, counts: found.counts };
  const open = world.handout.questions.findIndex(
    (_, place) => votesAt(world, going, place).first === undefined,
  );
  return openQuestion(world, going, open < 0 ? 0 : open);
}

function onOverlay(world: RoomWorld, before: RoomState, command: Command): RoomState {
  const { overlay, ...state } = before;
  if (overlay?.name === 'leave') return command === 'confirm' ? { ...state, ending: 0 } : state;
  if (overlay?.name !== 'sheet' && overlay?.name !== 'scene') return state;
  const { shown, panel } = onPanel(state, world.world, picturedIn(world, state), overlay, command);
  if ('answered' in shown) {
    const { answered: _same, ...how } = shown;
    return withPanel(at(state, { ...(state.stage as GradedStage), ...how }), panel);
  }
  return withPanel({ ...state, inGrey: shown.inGrey === true }, panel);
}

function onKey(world: RoomWorld, before: RoomState, key: string, now: number): RoomState {
  const command = commandIn(roomKeys(world, before), key);
  if (command === undefined) return before;
  const { notice: _read, ...rest } = before;
  const state = { ...rest, now };
  if (command === 'stop') return { ...state, ending: INTERRUPTED };
  if (state.overlay !== undefined) return onOverlay(world, state, command);
  if (command === 'keys') return { ...state, overlay: { name: 'keys' } };
  if (state.isOver) return onList(world, state, command);
  const { stage } = state;
  if (stage.name === 'begin') return onBegin(world, state, command);
  if (stage.name === 'count') return onCount(world, state, stage, command, key);
  if (stage.name === 'result') return onResult(world, state, stage, command);
  if (command === 'next') return openQuestion(world, state, state.place + 1);
  if (command === 'previous') return openQuestion(world, state, state.place - 1);
  if (command === 'back') return { ...state, overlay: { name: 'leave' } };
  return stage.name === 'question'
    ? onQuestion(world, state, stage, command, key)
    : onShown(world, state, command, key);
}

/** The state after what came to it. */
export function updateRoom(world: RoomWorld, state: RoomState, action: Happening): RoomState {
  switch (action.type) {
    case 'resize':
      return { ...state, size: action.size };
    case 'tick':
      return { ...state, now: action.at };
    case 'key':
      return onKey(world, state, action.key, action.at);
    default:
      return state;
  }
}
