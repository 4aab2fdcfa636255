/** A set of drills: which comes next, and which results are kept back until when. */
import { firstAnswer } from '../../drills/answers.js';
import { type Answered, dueResults } from '../../practice/index.js';
import type { SetChoice, SetItem } from './deps.js';
import { ask, show, withNotice } from './moves.js';
import type { DrillScreen, PracticeWorld, SetRun, State } from './state.js';

/** The screen of one drill, nothing chosen yet; undefined when there is no such drill. */
export function drillScreen(
  world: PracticeWorld,
  item: SetItem,
  at: number,
  { attempt = 1, place = 0 } = {},
): DrillScreen | undefined {
  const drill = item.drill ?? world.drills.get(item.drillId);
  if (drill === undefined) return undefined;
  const fields = world.kindOf(drill).fields(drill);
  return {
    name: 'drill',
    item,
    drill,
    fields,
    answer: firstAnswer(fields),
    focus: 0,
    hint: 'hidden',
    attempt,
    place,
    shownAt: at,
    worked: false,
    laying: false,
  };
}

export interface SetRequest {
  readonly items: readonly SetItem[];
  readonly choice?: SetChoice;
  /** No new drill starts after so many minutes. */
  readonly minutes?: number;
  /** To be said with the first drill. */
  readonly note?: string;
  readonly at: number;
}

function withoutDrills(state: State): State {
  const { set: _none, ...rest } = state;
  return withNotice(show(rest, { name: 'home' }), 'No drill for this choice; try another family or box.');
}

/** Starts a set. */
export function beginSet(state: State, world: PracticeWorld, request: SetRequest): State {
  const { choice = {}, minutes, note, at } = request;
  // Asked by key, not by value: a drill may be made only when it is read.
  const items = request.items.filter((item) => 'drill' in item || world.drills.has(item.drillId));
  if (items.length === 0) return withoutDrills(state);
  const set: SetRun = {
    items,
    index: 0,
    answers: [],
    held: [],
    due: [],
    choice,
    ...(minutes === undefined ? {} : { deadline: at + minutes * 60_000 }),
  };
  return nextDrill({ ...state, set }, world, at, note);
}

/** What the set came to; the figures are asked for. */
export function showSummary(state: State): State {
  const next = show(state, { name: 'summary', selected: 0 });
  const { answers = [] } = state.set ?? {};
  return answers.length === 0 ? next : ask(next, { type: 'summarise', answers });
}

/** The next drill of the set, or its summary when there is none left or the time is up. */
function nextDrill(state: State, world: PracticeWorld, at: number, message?: string): State {
  const { set } = state;
  if (set === undefined) return show(state, { name: 'home' });
  const item = set.items[set.index];
  // A box of few paints may hold none of a family, which is seen only when each was to be made.
  if (item === undefined && set.answers.length === 0) return withoutDrills(state);
  if (item === undefined || at > (set.deadline ?? Number.POSITIVE_INFINITY)) return showSummary(state);
  const screen = drillScreen(world, item, at, { place: set.answers.length });
  if (screen === undefined)
    return nextDrill({ ...state, set: { ...set, index: set.index + 1 } }, world, at, message);
  return show(state, message === undefined ? screen : { ...screen, message });
}

/** Goes on with a set that was left. */
export function goOn(state: State, world: PracticeWorld, at: number): State {
  if (state.set === undefined) return state;
  // Coming back is a decision of its own: the time for the set is not held against it.
  const { deadline: _over, ...set } = state.set;
  return nextDrill({ ...state, set }, world, at);
}

/** Shows the result of one of the set's answers; it is no longer kept back. */
export function showResult(state: State, place: number, from: 'set' | 'summary'): State {
  const answered = state.set?.answers[place];
  if (state.set === undefined || answered === undefined) return state;
  const set = { ...state.set, held: state.set.held.filter((held) => held !== place) };
  return show({ ...state, set }, { name: 'result', answered, place, worked: false, top: 0, from });
}

/** Goes on after a result: to the next result kept back until now, or to the next drill. */
export function afterResult(state: State, world: PracticeWorld, at: number): State {
  const { set } = state;
  if (set === undefined) return show(state, { name: 'home' });
  const [place, ...due] = set.due;
  return place === undefined
    ? nextDrill(state, world, at)
    : showResult({ ...state, set: { ...set, due } }, place, 'set');
}

/** Takes a first answer into the set and shows its result, or keeps the result back as the timing says. */
export function takeAnswer(state: State, world: PracticeWorld, answered: Answered, at: number): State {
  if (state.set === undefined) return state;
  const place = state.set.answers.length;
  const set: SetRun = {
    ...state.set,
    answers: [...state.set.answers, answered],
    index: state.set.index + 1,
    held: [...state.set.held, place],
  };
  const held = set.held.flatMap((at) => {
    const feedback = set.answers[at]?.feedback;
    return feedback === undefined ? [] : [{ place: at, feedback }];
  });
  const due = dueResults(held);
  if (due.length > 0) return afterResult({ ...state, set: { ...set, due } }, world, at);
  const when =
    answered.feedback === 'third' ? 'with two others or at the end of the set' : 'at the end of the set';
  return nextDrill(
    { ...state, set },
    world,
    at,
    `Laid down; its result comes ${when}. Enter: the next drill.`,
  );
}
