/** What happens in a sitting, event by event. The events are what its file holds; the state of the sitting is read from them. */
import type { Answer } from '../drills/types.js';
import { canonicalJson } from '../text/canonical-json.js';

/** One thing that happened. */
export type SittingEvent = {
  /** The moment; ISO 8601 with a zone. */
  readonly at: string;
} & (
  | {
      readonly event: 'begin';
      readonly name: string;
      /** `paper`: typed in by the teacher from a sheet of paper. Absent: sat on a screen. */
      readonly source?: 'paper' | undefined;
    }
  /** `ready`: the page of a question is up and the question still covered; `shown`: it was uncovered, and a clock runs. */
  | { readonly event: 'ready' | 'shown' | 'closed'; readonly drill: string }
  /** `chosen`: on the screen, not confirmed; `taken`: confirmed, and what counts. */
  | { readonly event: 'chosen' | 'taken'; readonly drill: string; readonly answer: Answer }
  | { readonly event: 'handed-in' }
  /** The sitting went on although the end of its file had been changed. */
  | { readonly event: 'gap' }
);

/** What was done for one question. */
export interface GivenAnswer {
  /** Id of the drill. */
  readonly drill: string;
  /** When its page came up with the question covered; absent without a clock. */
  readonly ready?: string | undefined;
  /** When the question was first shown; absent: not yet. */
  readonly shown?: string | undefined;
  /** The confirmed choices, by field; empty: nothing is confirmed. */
  readonly answer: Answer;
  /** When they were confirmed; absent: not yet. */
  readonly at?: string | undefined;
  /** Choices made since and not confirmed. They do not count. */
  readonly choices?: Answer | undefined;
  /** Handed in for good: its result was shown or its time ran out. */
  readonly closed?: boolean | undefined;
}

/** A sitting as its events leave it. */
export interface SittingState {
  readonly name: string;
  readonly started: string;
  /** In the order in which the questions were met. */
  readonly answers: readonly GivenAnswer[];
  readonly finished?: string | undefined;
  /** `paper`: typed in from a sheet of paper; its times are those of the typing. Absent: sat on a screen. */
  readonly source?: 'paper' | undefined;
}

/** Whether two answers hold the same choices. */
export const isSameAnswer = (one: Answer | undefined, other: Answer | undefined): boolean =>
  canonicalJson(one) === canonicalJson(other);

function withEvent(given: GivenAnswer, event: Extract<SittingEvent, { drill: string }>): GivenAnswer {
  switch (event.event) {
    case 'ready':
    case 'shown':
      return given[event.event] === undefined ? { ...given, [event.event]: event.at } : given;
    case 'closed':
      return { ...given, closed: true };
    case 'chosen': {
      const { choices: _before, ...rest } = given;
      return isSameAnswer(event.answer, given.answer) ? rest : { ...rest, choices: event.answer };
    }
    case 'taken': {
      const { choices: _before, ...rest } = given;
      return { ...rest, answer: event.answer, at: event.at };
    }
  }
}

/** The state after one more event. A sitting is handed in once; the rest is as the last event says. */
export function afterEvent(state: SittingState, event: SittingEvent): SittingState {
  switch (event.event) {
    case 'begin':
      return {
        ...state,
        name: event.name,
        started: event.at,
        ...(event.source === undefined ? {} : { source: event.source }),
      };
    case 'handed-in':
      return state.finished === undefined ? { ...state, finished: event.at } : state;
    case 'gap':
      return state;
    default: {
      const before = state.answers.find(({ drill }) => drill === event.drill);
      const changed = withEvent(before ?? { drill: event.drill, answer: {} }, event);
      const answers =
        before === undefined
          ? [...state.answers, changed]
          : state.answers.map((given) => (given === before ? changed : given));
      return { ...state, answers };
    }
  }
}

/** The state that events leave; one of them begins the sitting. */
export function stateOf(events: readonly SittingEvent[]): SittingState {
  return events.reduce(afterEvent, { name: '', started: '', answers: [] });
}
