/** The keys of a quiz in the room. */
import {
  type Binding,
  back,
  type Command,
  close,
  digits,
  enter,
  KEYS,
  letter,
  stop,
  upDown,
} from '../../kit/keys.js';
import { showingKeys } from '../../result/keys.js';
import type { Pictured } from '../../sheet/keys.js';
import { panelKeys, sheetKeys } from '../../sheet/keys.js';
import { slideLayout } from './layout.js';
import {
  judgedIn,
  lettersIn,
  mostVoted,
  type RoomState,
  type RoomWorld,
  shownQuestion,
  votesAt,
} from './state.js';

const STOP = stop('stop at once; the counts are kept');

/** Each letter opens its answer. */
function lettersKey(world: RoomWorld, { place }: RoomState): Binding {
  const names = lettersIn(world, place).map((each) => each.letter);
  const keys = names.map((name) => [name.toLowerCase(), 'open' satisfies Command] as const);
  const capitals = names.map((name) => [name, 'open' satisfies Command] as const);
  return {
    keys: Object.fromEntries([...keys, ...capitals]),
    show: `A-${names.at(-1) ?? 'A'}`,
    does: 'open',
    stays: true,
  };
}

function timerKeys({ timerEnd }: RoomState): Binding[] {
  return [
    letter('t', 'time', timerEnd === undefined ? 'timer' : 'end the timer'),
    {
      keys: { '+': 'more', '=': 'more', '-': 'less' },
      show: '+ -',
      does: 'timer 30 s more, less',
      quiet: true,
    },
  ];
}

function stageKeys(world: RoomWorld, state: RoomState): Binding[] {
  const { stage, place } = state;
  const moving = [letter('n', 'next', 'next'), letter('p', 'previous', 'before')];
  switch (stage.name) {
    case 'begin':
      return world.found === undefined
        ? [enter('begin'), back('leave')]
        : [enter('go on with them'), letter('n', 'restart', 'begin anew'), back('leave')];
    case 'question': {
      const { isAll } = slideLayout(world, state);
      return [
        enter('count hands'),
        digits('0', 'hands for A', false),
        ...(isAll ? [] : [upDown('answers')]),
        ...timerKeys(state),
        letter('o', 'overview', 'open without a count', true),
        ...moving,
        ...sheetKeys(state, world.world, shownQuestion(world, state)),
        back('leave'),
      ];
    }
    case 'count':
      return [
        digits('0', 'how many', false),
        enter(stage.at === stage.typed.length - 1 ? 'show the hands' : 'next letter'),
        { keys: { up: 'up', down: 'down' }, show: '{up}{down}', does: 'move' },
        { keys: { erase: 'erase' }, show: 'Backspace', does: 'take the last figure back', quiet: true },
        {
          keys: { escape: 'back' },
          show: 'Esc',
          does: stage.at === 0 ? 'to the question' : 'before',
          stays: true,
        },
      ];
    case 'shown': {
      const { first, second } = votesAt(world, state, place);
      const most = mostVoted(world, state, place);
      return [
        ...(most === undefined ? [] : [enter(`open ${lettersIn(world, place)[most]?.letter}`)]),
        lettersKey(world, state),
        ...(first === undefined || second !== undefined ? [] : [letter('h', 'again', 'hands again')]),
        letter('r', 'recount', 'count again'),
        ...timerKeys(state),
        ...moving,
        back('leave'),
      ];
    }
    case 'result':
      return [
        enter('next question'),
        { keys: { left: 'less', right: 'more' }, show: '{left}{right}', does: 'other letters' },
        ...showingKeys(state, world.world, judgedIn(world, state, stage)),
        back('back to the hands'),
      ];
  }
}

/** What a panel is about. */
export function picturedIn(world: RoomWorld, state: RoomState): Pictured {
  return state.stage.name === 'result' ? judgedIn(world, state, state.stage) : shownQuestion(world, state);
}

/** The keys that work now, most used first. */
export function roomKeys(world: RoomWorld, state: RoomState): Binding[] {
  const { overlay } = state;
  switch (overlay?.name) {
    case 'leave':
      return [enter('leave'), back('stay'), STOP];
    case 'keys':
      return [close(), STOP];
    case 'sheet':
    case 'scene':
      return [...panelKeys(state, world.world, picturedIn(world, state), overlay), STOP];
    default:
      if (state.isOver) return [upDown('move'), enter('open the question'), back('close'), KEYS, STOP];
      return [...stageKeys(world, state), KEYS, STOP];
  }
}
