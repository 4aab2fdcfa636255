/** What keys do while a quiz is held in the room. Pure. */
import { MOST_HANDS } from '../../../quiz/room-counts.js';
import { type Command, commandIn } from '../../kit/keys.js';
import { step } from '../../kit/moves.js';
import type { Happening } from '../../kit/program.js';
import { INTERRUPTED } from '../../kit/stage.js';
import { onShowing } from '../../result/update.js';
import { onPanel } from '../../sheet/panel.js';
import {
  countsOf,
  fieldsIn,
  type GradedStage,
  isCounted,
  judgedIn,
  type RoomStage,
  type RoomState,
  type RoomWorld,
  roomKeys,
} from './state.js';

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
function handsAfter(hands: number, command: Command, key: string): number {
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
  command: Command,
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

function onResult(world: RoomWorld, state: RoomState, stage: GradedStage, command: Command): RoomState {
  if (command === 'confirm') return openQuestion(world, state, state.place + 1);
  if (command === 'back') return at(state, { name: 'shown' });
  if (command === 'previous') return openQuestion(world, state, state.place - 1);
  const { shown, panel } = onShowing(state, world.world, judgedIn(world, state, stage), command);
  const { answered: _same, ...how } = shown;
  const next = at(state, { ...stage, ...how });
  return panel === undefined ? next : { ...next, overlay: panel };
}

function onQuestion(world: RoomWorld, state: RoomState, command: Command): RoomState {
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

function onList(world: RoomWorld, state: RoomState, command: Command): RoomState {
  const count = world.handout.questions.length;
  switch (command) {
    case 'up':
      return { ...state, selected: step(state.selected, -1, count) };
    case 'down':
      return { ...state, selected: step(state.selected, 1, count) };
    case 'confirm':
      return { ...state, isOver: false, place: state.selected, stage: { name: 'result', top: 0 } };
    case 'back':
      return { ...state, ending: 0 };
    default:
      return state;
  }
}

function onKey(world: RoomWorld, before: RoomState, key: string): RoomState {
  const command = commandIn(roomKeys(world, before), key);
  if (command === undefined) return before;
  const { notice: _read, overlay, ...state } = before;
  if (command === 'stop') return { ...state, ending: INTERRUPTED };
  if ((overlay?.name === 'sheet' || overlay?.name === 'scene') && state.stage.name === 'result') {
    const { stage } = state;
    const { shown, panel } = onPanel(state, world.world, judgedIn(world, state, stage), overlay, command);
    const { answered: _same, ...how } = shown;
    const next = at(state, { ...stage, ...how });
    return panel === undefined ? next : { ...next, overlay: panel };
  }
  if (overlay !== undefined)
    return overlay.name === 'leave' && command === 'confirm' ? { ...state, ending: 0 } : state;
  if (command === 'keys') return { ...state, overlay: { name: 'keys' } };
  if (state.isOver) return onList(world, state, command);
  const { stage } = state;
  if (stage.name === 'count') return onCount(world, state, stage, command, key);
  return stage.name === 'result' ? onResult(world, state, stage, command) : onQuestion(world, state, command);
}

/** The state after what came to it. */
export function updateRoom(world: RoomWorld, state: RoomState, action: Happening): RoomState {
  if (action.type === 'resize') return { ...state, size: action.size };
  return action.type === 'key' ? onKey(world, state, action.key) : state;
}
