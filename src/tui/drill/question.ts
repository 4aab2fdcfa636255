/** A question with its open choices, as every program shows it, and the keys that move in it. Pure. */
import type { Answer, DrillCommon, Field } from '../../drills/types.js';
import { chosenIndex, digitField, showsAs, sideField, withOption } from '../kit/fields.js';
import { type Binding, type Command, digits, LESS_MORE, leftRight, letter, upDown } from '../kit/keys.js';
import { step, turn } from '../kit/moves.js';

export interface Question {
  readonly drill: DrillCommon;
  readonly fields: readonly Field[];
  readonly answer: Answer;
  /** Index of the field that the keys act on. */
  readonly focus: number;
  /** `offered`: the price has been named and the next press shows it. */
  readonly hint: 'hidden' | 'offered' | 'shown';
  /** A line above it: left from the drill before, or why it is closed. */
  readonly message?: string;
  /** The worked example of the welcome: the answer is set and nothing is recorded. */
  readonly worked?: boolean;
  /** The picture in the greys of the value check. */
  readonly inGrey?: boolean;
}

const choose = <Q extends Question>(question: Q, by: number, field = question.fields[question.focus]): Q =>
  field === undefined
    ? question
    : { ...question, answer: withOption(question.answer, field, chosenIndex(field, question.answer) + by) };

function upOrDown<Q extends Question>(question: Q, by: number): Q {
  const field = question.fields[question.focus];
  if (field !== undefined && showsAs(field) === 'tray') return choose(question, by, field);
  return { ...question, focus: step(question.focus, by, question.fields.length) };
}

function pickDigit<Q extends Question>(question: Q, key: string): Q {
  const field = digitField(question.fields, question.focus);
  const index = Number(key) - 1;
  if (field === undefined || index >= field.options.length) return question;
  return { ...question, answer: withOption(question.answer, field, index) };
}

/** The question after a key that moves or chooses in it; undefined for any other key. */
export function moveIn<Q extends Question>(question: Q, command: Command, key: string): Q | undefined {
  const { fields, focus } = question;
  switch (command) {
    case 'up':
      return upOrDown(question, -1);
    case 'down':
      return upOrDown(question, 1);
    case 'less':
      return choose(question, -1, sideField(fields, focus));
    case 'more':
      return choose(question, 1, sideField(fields, focus));
    case 'next-field':
      return { ...question, focus: turn(focus, 1, fields.length) };
    case 'previous-field':
      return { ...question, focus: turn(focus, -1, fields.length) };
    case 'digit':
      return pickDigit(question, key);
    default:
      return undefined;
  }
}

/** Keys that move and choose: those of the help line that come first, and those that may come last. */
export function movingKeys({ fields, focus }: Question): {
  readonly first: Binding[];
  readonly last: Binding[];
} {
  const field = fields[focus];
  const isTray = field !== undefined && showsAs(field) === 'tray';
  const side = sideField(fields, focus);
  const hasScale = side !== undefined;
  const rows: Binding = {
    keys: { tab: 'next-field', 'back-tab': 'previous-field' },
    show: 'Tab',
    does: 'row',
    stays: !hasScale,
  };
  return {
    first: [
      { ...upDown(isTray ? 'choose' : 'row'), stays: true },
      ...(hasScale ? [{ ...leftRight(side.shape === 'scale' ? LESS_MORE : 'choose'), stays: true }] : []),
    ],
    last: [
      ...(fields.length > 1 ? [rows] : []),
      digits('1', 'choose by number', true),
      letter('c', 'caution', 'about this paint', true),
    ],
  };
}
