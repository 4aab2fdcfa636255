/** From one question of a sitting to another. Pure. */
import { closeQuestion, givenFor, isCovered, readyQuestion, showQuestion } from '../../../quiz/sitting.js';
import {
  isAnsweredAt,
  isOpenAt,
  openingAnswer,
  questionAt,
  type SitScreen,
  type SitState,
  type SitWorld,
} from './state.js';

/** The state with a screen in front and no panel over it. */
export const show = (state: SitState, screen: SitScreen): SitState => {
  const { overlay: _closed, ...rest } = state;
  return { ...rest, screen };
};

/** Opens the question at a place; past the last one the list of all. */
export function openPlace(world: SitWorld, state: SitState, place: number): SitState {
  if (place >= world.order.length) return show(state, { name: 'overview', selected: 0 });
  const { drill } = questionAt(world, place);
  const { rules } = world.handout;
  if (isCovered(rules, givenFor(state.sitting, drill.id))) {
    const ready = { ...state, sitting: readyQuestion(state.sitting, drill.id, state.now) };
    return show(ready, { name: 'covered', place });
  }
  return uncover(world, state, place);
}

/** Shows the question at a place, or its result where that stands already. */
export function uncover(world: SitWorld, state: SitState, place: number): SitState {
  const { drill } = questionAt(world, place);
  const shown = { ...state, sitting: showQuestion(state.sitting, drill.id, state.now) };
  if (world.handout.rules.showResult === 'each' && !isOpenAt(world, shown, place))
    return show(shown, { name: 'result', place, top: 0, from: 'sitting' });
  return show(shown, { name: 'question', place, focus: 0, answer: openingAnswer(world, shown, place) });
}

/** The question at a place closed. */
export function closed(world: SitWorld, state: SitState, place: number): SitState {
  const { drill } = questionAt(world, place);
  return { ...state, sitting: closeQuestion(state.sitting, drill.id, state.now) };
}

/** After an answer or the end of its time: its result, or the next question. */
export function goOn(world: SitWorld, state: SitState, place: number): SitState {
  const { showResult, backAllowed } = world.handout.rules;
  const isOver = isAnsweredAt(world, state, place) || !isOpenAt(world, state, place);
  if (showResult === 'each' && isOver)
    return show(closed(world, state, place), { name: 'result', place, top: 0, from: 'sitting' });
  const left = backAllowed ? state : closed(world, state, place);
  return openPlace(world, left, place + 1);
}
