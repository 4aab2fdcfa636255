/** The keys of a sitting. */

import { movingKeys } from '../../drill/question.js';
import { type Binding, back, close, enter, KEYS, letter, stop, upDown } from '../../kit/keys.js';
import { showingKeys } from '../../result/keys.js';
import { panelKeys, sheetKeys } from '../../sheet/keys.js';
import {
  isOpenAt,
  judgedOf,
  type QuestionScreen,
  questionOf,
  type SitState,
  type SitWorld,
} from './state.js';

const STOP = stop('stop at once; what was chosen is saved');

/** Keys to the other questions, where one may go back. */
const movingOn = ({ handout }: SitWorld): Binding[] =>
  handout.rules.backAllowed
    ? [letter('n', 'next', 'next'), letter('p', 'previous', 'back'), letter('o', 'overview', 'all questions')]
    : [];

function questionKeys(world: SitWorld, state: SitState, screen: QuestionScreen): Binding[] {
  const question = questionOf(world, state, screen);
  const { rules } = world.handout;
  const moving = movingOn(world);
  const sheet = sheetKeys(state, world.world, question);
  if (!isOpenAt(world, state, screen.place)) return [enter('go on'), ...moving, ...sheet, back('leave')];
  const { first, last } = movingKeys(question);
  const time = rules.timePerQuestionSeconds === undefined ? [] : [letter('t', 'time', 'time left', true)];
  return [...first, enter('take it'), ...moving, ...sheet, ...last, ...time, back('leave')];
}

function screenKeys(world: SitWorld, state: SitState): Binding[] {
  const { screen } = state;
  switch (screen.name) {
    case 'begin':
      return [enter(state.isResumed ? 'go on' : 'begin'), back('leave')];
    case 'covered':
      return [enter('show it, start the clock'), ...movingOn(world), back('leave')];
    case 'question':
      return questionKeys(world, state, screen);
    case 'result': {
      const isDone = screen.from === 'done';
      const showing = showingKeys(state, world.world, judgedOf(world, state, screen));
      return [enter(isDone ? 'back to the list' : 'next'), ...showing, back(isDone ? 'back' : 'leave')];
    }
    case 'overview': {
      const { backAllowed } = world.handout.rules;
      const picking = backAllowed ? [upDown('move'), enter('open it')] : [];
      return [...picking, letter('f', 'finish', 'hand in'), back('leave')];
    }
    case 'done':
      return [upDown('move'), enter('open a result'), back('close')];
  }
}

/** What the picture goes with, where one is in front. */
export function picturedIn(world: SitWorld, state: SitState) {
  const { screen } = state;
  if (screen.name === 'question') return questionOf(world, state, screen);
  return screen.name === 'result' ? judgedOf(world, state, screen) : undefined;
}

/** The keys that work now, most used first. */
export function sitKeys(world: SitWorld, state: SitState): Binding[] {
  const { overlay } = state;
  switch (overlay?.name) {
    case 'leave':
      return [enter('leave; go on later'), back('stay'), STOP];
    case 'finish':
      return [enter('hand in'), back('not yet'), STOP];
    case 'caution':
    case 'keys':
      return [close(), STOP];
    case 'sheet':
    case 'scene': {
      const shown = picturedIn(world, state);
      return [...(shown === undefined ? [] : panelKeys(state, world.world, shown, overlay)), STOP];
    }
    default:
      return [...screenKeys(world, state), KEYS, STOP];
  }
}
