/** What keys do while a quiz is held in the room. Pure. */
import { MOST_HANDS } from '../../quiz/room-counts.js';
import { scrolled } from '../kit/page.js';
import { resultPage } from '../result/layout.js';
import { commandIn, type QuizCommand } from './quiz-keys.js';
import {
  countsOf,
  fieldsIn,
  isCounted,
  questionIn,
  type RoomStage,
  type RoomState,
  type RoomWorld,
  roomAnswer,
  roomBindings,
  roomGrade,
} from './room-state.js';
import { gradedScreen, INTERRUPTED, practiceState, type QuizAction } from './stage.js';

const at = (state: RoomState, stage: RoomStage): RoomState => ({ ...state, stage });

function openQuestion(world: RoomWorld, state: RoomState, place: number): RoomState {
  if (place >= world.handout.questions.length) return { ...state, isOver: true, selected: 0 };
  return {
    ...state,
    isOver: false,
    place: Math.max(0, place),
    stage: isCounted(state, Math.max(0, place)) ? { name: 'shown' } : { name: 'question' },
  };
}

/** The number of hands after a key, kept to what a room holds. */
function handsAfter(hands: number, command: QuizCommand, key: string): number {
  const next =
    command === 'digit'
      ? hands * 10 + Number(key)
      : command === 'erase'
        ? Math.floor(hands / 10)
        : command === 'more'
          ? hands + 1
          : command === 'less'
            ? hands - 1
            : hands;
  // One figure too many starts the number anew: a slip, not a thousand hands.
  if (next > MOST_HANDS) return command === 'digit' ? Number(key) : MOST_HANDS;
  return Math.max(0, next);
}

function withHands(state: RoomState, field: number, option: number, hands: number): RoomState {
  return {
    ...state,
    counts: state.counts.map((rows, place) =>
      place === state.place
        ? rows.map((row, index) =>
            index === field ? row.map((each, which) => (which === option ? hands : each)) : row,
          )
        : rows,
    ),
  };
}

function onCount(
  world: RoomWorld,
  state: RoomState,
  stage: Extract<RoomStage, { name: 'count' }>,
  command: QuizCommand,
  key: string,
): RoomState {
  const fields = fieldsIn(world, state.place);
  const options = fields[stage.field]?.options.length ?? 0;
  const toField = (field: number): RoomState =>
    at(state, { name: 'count', field: Math.min(fields.length - 1, Math.max(0, field)), option: 0 });
  switch (command) {
    case 'up':
      return at(state, { ...stage, option: Math.max(0, stage.option - 1) });
    case 'down':
      return at(state, { ...stage, option: Math.min(options - 1, stage.option + 1) });
    case 'next-field':
      return toField(stage.field + 1);
    case 'previous-field':
      return toField(stage.field - 1);
    case 'confirm':
      return stage.field < fields.length - 1 ? toField(stage.field + 1) : at(state, { name: 'shown' });
    case 'back':
      return stage.field > 0 ? toField(stage.field - 1) : at(state, { name: 'question' });
    default: {
      const hands = countsOf(state, state.place, stage.field)[stage.option] ?? 0;
      return withHands(state, stage.field, stage.option, handsAfter(hands, command, key));
    }
  }
}

/** The room's result, as the result screen takes it. */
export function roomResult(world: RoomWorld, state: RoomState): ReturnType<typeof gradedScreen> | undefined {
  if (state.isOver || state.stage.name !== 'result') return undefined;
  const { drill } = questionIn(world, state.place);
  return gradedScreen(
    drill,
    roomAnswer(world, state, state.place),
    roomGrade(world, state, state.place),
    state.stage.top,
  );
}

function onResult(world: RoomWorld, state: RoomState, command: QuizCommand): RoomState {
  if (command === 'confirm') return openQuestion(world, state, state.place + 1);
  if (command === 'back') return at(state, { name: 'shown' });
  if (command === 'previous') return openQuestion(world, state, state.place - 1);
  const graded = roomResult(world, state);
  if (graded === undefined || state.stage.name !== 'result') return state;
  const top = scrolled(
    resultPage(practiceState(state, graded), world.world, graded),
    state.stage.top,
    command as 'up',
  );
  return at(state, { name: 'result', top });
}

function onQuestion(world: RoomWorld, state: RoomState, command: QuizCommand): RoomState {
  const isShown = state.stage.name === 'shown';
  switch (command) {
    case 'confirm':
      return at(state, isShown ? { name: 'result', top: 0 } : { name: 'count', field: 0, option: 0 });
    case 'recount':
      return at(state, { name: 'count', field: 0, option: 0 });
    case 'next':
      return openQuestion(world, state, state.place + 1);
    case 'previous':
      return openQuestion(world, state, state.place - 1);
    case 'back':
      return { ...state, overlay: { name: 'leave' } };
    default:
      return state;
  }
}

function onList(world: RoomWorld, state: RoomState, command: QuizCommand): RoomState {
  const last = world.handout.questions.length - 1;
  switch (command) {
    case 'up':
      return { ...state, selected: Math.max(0, state.selected - 1) };
    case 'down':
      return { ...state, selected: Math.min(last, state.selected + 1) };
    case 'confirm':
      return { ...state, isOver: false, place: state.selected, stage: { name: 'result', top: 0 } };
    case 'back':
      return { ...state, ending: 0 };
    default:
      return state;
  }
}

function onKey(world: RoomWorld, before: RoomState, key: string): RoomState {
  const command = commandIn(roomBindings(world, before), key);
  if (command === undefined) return before;
  const { notice: _read, overlay, ...state } = before;
  if (command === 'stop') return { ...state, ending: INTERRUPTED };
  if (overlay !== undefined)
    return overlay.name === 'leave' && command === 'confirm' ? { ...state, ending: 0 } : state;
  if (command === 'keys') return { ...state, overlay: { name: 'keys' } };
  if (state.isOver) return onList(world, state, command);
  const { stage } = state;
  if (stage.name === 'count') return onCount(world, state, stage, command, key);
  return stage.name === 'result' ? onResult(world, state, command) : onQuestion(world, state, command);
}

/** Makes the reducer of a quiz in the room. */
export function createRoomReducer(world: RoomWorld): (state: RoomState, action: QuizAction) => RoomState {
  return (state, action) => {
    if (state.ending !== undefined) return state;
    if (action.type === 'resize') return { ...state, size: action.size };
    return action.type === 'key' ? onKey(world, state, action.key) : state;
  };
}
