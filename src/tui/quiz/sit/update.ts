/** What keys and the clock do in a sitting. Pure: the time comes with each action; saving is done by who watches the state. */
import {
  confirmAnswer,
  finishSitting,
  givenFor,
  mayShow,
  resumePlace,
  takeChoices,
} from '../../../quiz/sitting.js';
import { drillLayout } from '../../drill/layout.js';
import { moveIn } from '../../drill/question.js';
import { chosenPaints, NO_PAINT } from '../../drill/update.js';
import { type Command, commandIn } from '../../kit/keys.js';
import { stepBy } from '../../kit/moves.js';
import type { Happening } from '../../kit/program.js';
import { INTERRUPTED } from '../../kit/stage.js';
import { onShowing } from '../../result/update.js';
import { onSheet, type SheetPanel } from '../../sheet/keys.js';
import { onPanel } from '../../sheet/panel.js';
import { picturedIn, sitKeys } from './keys.js';
import { closed, goOn, openPlace, show, uncover } from './places.js';
import {
  clockText,
  type GradedScreen,
  isAnsweredAt,
  isOpenAt,
  judgedOf,
  type QuestionScreen,
  questionAt,
  questionOf,
  type SitScreen,
  type SitState,
  type SitWorld,
  secondsAt,
} from './state.js';

/** The screen in front in another look, with the panel that opens over it. */
const inLook = (
  state: SitState,
  screen: SitScreen,
  { panel }: { readonly panel?: SheetPanel },
): SitState => ({ ...state, screen, ...(panel === undefined ? {} : { overlay: panel }) });

/** Closes the question in front when its time is up. */
function watchClock(world: SitWorld, state: SitState): SitState {
  const { screen } = state;
  if (screen.name !== 'question' || secondsAt(world, state, screen.place) !== 0) return state;
  const { drill } = questionAt(world, screen.place);
  // A question that was closed before is only being looked at.
  if (givenFor(state.sitting, drill.id)?.closed === true) return state;
  const counts = isAnsweredAt(world, state, screen.place) ? 'what you took counts' : 'nothing was taken';
  const { overlay: _closed, ...open } = closed(world, state, screen.place);
  return {
    ...goOn(world, open, screen.place),
    notice: `Time is up for question ${screen.place + 1}; ${counts}.`,
  };
}

/** Keys that lead away from a question; undefined for others. */
function onLeaving(world: SitWorld, state: SitState, place: number, command: Command): SitState | undefined {
  switch (command) {
    case 'next':
      return openPlace(world, state, place + 1);
    case 'previous':
      return openPlace(world, state, Math.max(0, place - 1));
    case 'overview':
      return show(state, { name: 'overview', selected: place });
    case 'back':
      return { ...state, overlay: { name: 'leave' } };
    default:
      return undefined;
  }
}

function answerQuestion(
  world: SitWorld,
  state: SitState,
  screen: QuestionScreen,
  command: Command,
  key: string,
): SitState {
  const { place } = screen;
  const { drill: question } = questionAt(world, place);
  const take = (answer: typeof screen.answer): SitState => ({
    ...state,
    sitting: takeChoices(state.sitting, question.id, answer, state.now),
  });
  const shown = questionOf(world, state, screen);
  const sheet = onSheet(shown, command, () => drillLayout(state, world.world, shown).sheet !== undefined);
  if (sheet !== undefined) return inLook(state, { ...screen, inGrey: sheet.shown.inGrey === true }, sheet);
  switch (command) {
    case 'confirm':
      return isOpenAt(world, state, place)
        ? goOn(
            world,
            { ...state, sitting: confirmAnswer(state.sitting, question.id, screen.answer, state.now) },
            place,
          )
        : openPlace(world, state, place + 1);
    case 'time':
      return {
        ...state,
        notice: `${clockText(secondsAt(world, state, place) ?? 0)} left for this question.`,
      };
    case 'caution': {
      const pigments = chosenPaints(shown);
      return pigments.length === 0
        ? { ...state, notice: NO_PAINT }
        : { ...state, overlay: { name: 'caution', pigments } };
    }
    default: {
      const left = onLeaving(world, state, place, command);
      if (left !== undefined) return left;
      const next = moveIn(shown, command, key);
      if (next === undefined) return state;
      const isChosen = command === 'digit' || next.answer !== shown.answer;
      const changed = isChosen ? take(next.answer) : state;
      return { ...changed, screen: { ...screen, focus: next.focus, answer: next.answer } };
    }
  }
}

/** Before the clock of a question runs. */
function onCovered(world: SitWorld, state: SitState, place: number, command: Command): SitState {
  if (command === 'confirm') return uncover(world, state, place);
  return onLeaving(world, state, place, command) ?? state;
}

function onList(
  world: SitWorld,
  state: SitState,
  screen: Extract<SitScreen, { name: 'overview' | 'done' }>,
  command: Command,
): SitState {
  const count = world.order.length;
  switch (command) {
    case 'up':
    case 'down':
      return { ...state, screen: { ...screen, selected: stepBy(command, screen.selected, count) } };
    case 'confirm':
      if (screen.name === 'overview') return openPlace(world, state, screen.selected);
      return show(state, { name: 'result', place: screen.selected, top: 0, from: 'done' });
    case 'finish':
      return { ...state, overlay: { name: 'finish' } };
    case 'back':
      return screen.name === 'done' ? { ...state, ending: 0 } : { ...state, overlay: { name: 'leave' } };
    default:
      return state;
  }
}

function onResult(world: SitWorld, state: SitState, screen: GradedScreen, command: Command): SitState {
  const isDone = screen.from === 'done';
  if (command === 'confirm' || (command === 'back' && isDone))
    return isDone
      ? show(state, { name: 'done', selected: screen.place })
      : openPlace(world, state, screen.place + 1);
  if (command === 'back') return { ...state, overlay: { name: 'leave' } };
  const look = onShowing(state, world.world, judgedOf(world, state, screen), command);
  const { answered: _same, ...how } = look.shown;
  return inLook(state, { ...screen, ...how }, look);
}

function onOverlay(world: SitWorld, state: SitState, command: Command): SitState {
  const { overlay, ...rest } = state;
  const pictured = picturedIn(world, state);
  if ((overlay?.name === 'sheet' || overlay?.name === 'scene') && pictured !== undefined) {
    const look = onPanel(state, world.world, pictured, overlay, command);
    const { inGrey = false } = look.shown;
    const ofBest = 'ofBest' in look.shown && look.shown.ofBest === true;
    return inLook(rest, { ...state.screen, inGrey, ofBest } as SitScreen, look);
  }
  if (command !== 'confirm') return rest;
  if (overlay?.name === 'leave') return { ...rest, ending: 0 };
  if (overlay?.name === 'finish') {
    const sitting = finishSitting(rest.sitting, rest.now);
    return mayShow(world.handout.rules, sitting, false) === 'all'
      ? show({ ...rest, sitting }, { name: 'done', selected: 0 })
      : { ...rest, sitting, ending: 0 };
  }
  return rest;
}

function onKey(world: SitWorld, before: SitState, key: string): SitState {
  const command = commandIn(sitKeys(world, before), key);
  if (command === undefined) return before;
  const { notice: _read, ...state } = before;
  if (command === 'stop') return { ...state, ending: INTERRUPTED };
  if (state.overlay !== undefined) return onOverlay(world, state, command);
  if (command === 'keys') return { ...state, overlay: { name: 'keys' } };
  const { screen } = state;
  switch (screen.name) {
    case 'begin':
      if (command === 'confirm')
        return openPlace(world, state, resumePlace(world.handout, world.order, state.sitting, state.now));
      return { ...state, ending: 0 };
    case 'covered':
      return onCovered(world, state, screen.place, command);
    case 'question':
      return answerQuestion(world, state, screen, command, key);
    case 'result':
      return onResult(world, state, screen, command);
    case 'overview':
    case 'done':
      return onList(world, state, screen, command);
  }
}

/** The state after what came to it. */
export function updateSitting(world: SitWorld, state: SitState, action: Happening): SitState {
  switch (action.type) {
    case 'resize':
      return { ...state, size: action.size };
    case 'tick':
      return watchClock(world, { ...state, now: action.at });
    case 'key': {
      const { screen } = state;
      const watched = watchClock(world, { ...state, now: action.at });
      // The key was meant for the question whose time has just run out.
      if (watched.screen !== screen) return watched;
      return onKey(world, watched, action.key);
    }
    default:
      return state;
  }
}
