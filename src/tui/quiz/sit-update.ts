/** What keys and the clock do in a sitting. Pure: the time comes with each action; saving is done by who watches the state. */
import {
  closeQuestion,
  confirmAnswer,
  finishSitting,
  givenFor,
  mayShow,
  resumePlace,
  showQuestion,
  takeChoices,
} from '../../quiz/sitting.js';
import { cautionsFor, updateDrill } from '../drill/update.js';
import { scrolled } from '../kit/page.js';
import { resultPage } from '../result/layout.js';
import { commandIn, type QuizCommand } from './quiz-keys.js';
import {
  drillOf,
  isAnsweredAt,
  isOpenAt,
  openingAnswer,
  questionAt,
  type SitScreen,
  type SitState,
  type SitWorld,
  secondsAt,
  sitBindings,
  standingAnswer,
} from './sit-state.js';
import { clockText, gradedScreen, INTERRUPTED, practiceState, type QuizAction } from './stage.js';

const show = (state: SitState, screen: SitScreen): SitState => {
  const { overlay: _closed, ...rest } = state;
  return { ...rest, screen };
};

const moved = (selected: number, by: number, count: number): number =>
  Math.min(count - 1, Math.max(0, selected + by));

/** Opens the question at a place; past the last one the list of all. */
function openPlace(world: SitWorld, state: SitState, place: number): SitState {
  if (place >= world.order.length) return show(state, { name: 'overview', selected: 0 });
  const { drill } = questionAt(world, place);
  const shown = { ...state, sitting: showQuestion(state.sitting, drill.id, state.now) };
  const isResult = world.handout.rules.showResult === 'each' && !isOpenAt(world, shown, place);
  if (isResult && isAnsweredAt(world, shown, place))
    return show(shown, { name: 'result', place, top: 0, from: 'sitting' });
  return show(shown, { name: 'question', place, focus: 0, answer: openingAnswer(world, shown, place) });
}

function closed(world: SitWorld, state: SitState, place: number): SitState {
  const { drill } = questionAt(world, place);
  return { ...state, sitting: closeQuestion(state.sitting, drill.id, state.now) };
}

/** After an answer or the end of its time: its result, or the next question. */
function goOn(world: SitWorld, state: SitState, place: number): SitState {
  const { showResult, backAllowed } = world.handout.rules;
  if (showResult === 'each' && isAnsweredAt(world, state, place))
    return show(closed(world, state, place), { name: 'result', place, top: 0, from: 'sitting' });
  const left = backAllowed ? state : closed(world, state, place);
  return openPlace(world, left, place + 1);
}

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

function answerQuestion(
  world: SitWorld,
  state: SitState,
  screen: Extract<SitScreen, { name: 'question' }>,
  command: QuizCommand,
  key: string,
): SitState {
  const { place } = screen;
  const { drill: question } = questionAt(world, place);
  const take = (answer: typeof screen.answer): SitState => ({
    ...state,
    sitting: takeChoices(state.sitting, question.id, answer, state.now),
  });
  const drill = drillOf(world, state);
  if (drill === undefined) return state;
  switch (command) {
    case 'confirm':
      return isOpenAt(world, state, place)
        ? goOn(
            world,
            { ...state, sitting: confirmAnswer(state.sitting, question.id, screen.answer, state.now) },
            place,
          )
        : openPlace(world, state, place + 1);
    case 'next':
      return openPlace(world, state, place + 1);
    case 'previous':
      return openPlace(world, state, Math.max(0, place - 1));
    case 'overview':
      return show(state, { name: 'overview', selected: place });
    case 'time':
      return {
        ...state,
        notice: `${clockText(secondsAt(world, state, place) ?? 0)} left for this question.`,
      };
    case 'back':
      return { ...state, overlay: { name: 'leave' } };
    case 'caution': {
      const pigments = cautionsFor(world.world, drill);
      return pigments.length === 0
        ? { ...state, notice: 'No special caution is on record for this paint; the usual hygiene holds.' }
        : { ...state, overlay: { name: 'caution', pigments } };
    }
    case 'up':
    case 'down':
    case 'less':
    case 'more':
    case 'next-field':
    case 'previous-field':
    case 'digit': {
      const practice = practiceState(state, drill);
      const { screen: next } = updateDrill(practice, world.world, drill, command, key, state.now);
      if (next.name !== 'drill') return state;
      const isChosen = command === 'digit' || next.answer !== drill.answer;
      const changed = isChosen ? take(next.answer) : state;
      return { ...changed, screen: { ...screen, focus: next.focus, answer: next.answer } };
    }
    default:
      return state;
  }
}

function onList(
  world: SitWorld,
  state: SitState,
  screen: Extract<SitScreen, { name: 'overview' | 'done' }>,
  command: QuizCommand,
): SitState {
  const count = world.order.length;
  switch (command) {
    case 'up':
      return { ...state, screen: { ...screen, selected: moved(screen.selected, -1, count) } };
    case 'down':
      return { ...state, screen: { ...screen, selected: moved(screen.selected, 1, count) } };
    case 'confirm':
      if (screen.name === 'overview') return openPlace(world, state, screen.selected);
      if (!isAnsweredAt(world, state, screen.selected))
        return { ...state, notice: 'Nothing was chosen for this question.' };
      return show(state, { name: 'result', place: screen.selected, top: 0, from: 'done' });
    case 'finish':
      return { ...state, overlay: { name: 'finish' } };
    case 'back':
      return screen.name === 'done' ? { ...state, ending: 0 } : { ...state, overlay: { name: 'leave' } };
    default:
      return state;
  }
}

/** The result in front, as the result screen takes it. */
export function resultOf(world: SitWorld, state: SitState): ReturnType<typeof gradedScreen> | undefined {
  const { screen } = state;
  if (screen.name !== 'result') return undefined;
  const { drill, index } = questionAt(world, screen.place);
  const answer = standingAnswer(world, state, screen.place);
  return gradedScreen(drill, answer, world.grader.grade(index, answer), screen.top);
}

function onResult(
  world: SitWorld,
  state: SitState,
  screen: Extract<SitScreen, { name: 'result' }>,
  command: QuizCommand,
): SitState {
  const isDone = screen.from === 'done';
  if (command === 'confirm' || (command === 'back' && isDone))
    return isDone
      ? show(state, { name: 'done', selected: screen.place })
      : openPlace(world, state, screen.place + 1);
  if (command === 'back') return { ...state, overlay: { name: 'leave' } };
  const graded = resultOf(world, state);
  if (graded === undefined || command === 'keys' || command === 'stop') return state;
  const top = scrolled(
    resultPage(practiceState(state, graded), world.world, graded),
    screen.top,
    command as 'up',
  );
  return { ...state, screen: { ...screen, top } };
}

function onOverlay(world: SitWorld, state: SitState, command: QuizCommand): SitState {
  const { overlay, ...rest } = state;
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
  const command = commandIn(sitBindings(world, before), key);
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
    case 'question':
      return answerQuestion(world, state, screen, command, key);
    case 'result':
      return onResult(world, state, screen, command);
    case 'overview':
    case 'done':
      return onList(world, state, screen, command);
  }
}

/** Makes the reducer of a sitting. */
export function createSitReducer(world: SitWorld): (state: SitState, action: QuizAction) => SitState {
  return (state, action) => {
    if (state.ending !== undefined) return state;
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
    }
  };
}
