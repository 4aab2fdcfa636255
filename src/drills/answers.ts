/** Checking answers against the fields of a drill. */
import type { ValueScaleId } from '../colour/value.js';
import { stepText } from '../words/voice.js';
import type { Answer, Field, FieldOption } from './types.js';

/**
 * The option chosen in a field.
 * @throws RangeError naming the field and what it takes
 */
export function chosen(fields: readonly Field[], answer: Answer, fieldId: string): FieldOption {
  const field = fields.find(({ id }) => id === fieldId);
  if (field === undefined) throw new RangeError(`the drill has no choice called ${fieldId}`);
  const wanted = Object.hasOwn(answer, fieldId) ? answer[fieldId] : undefined;
  const option = field.options.find(({ id }) => id === wanted);
  if (option === undefined) {
    const choices = field.options.map(({ id }) => id).join(', ');
    throw new RangeError(
      wanted === undefined
        ? `${field.label} is not chosen; it takes one of: ${choices}`
        : `${field.label} cannot be "${wanted}"; it takes one of: ${choices}`,
    );
  }
  return option;
}

/** Checks that an answer fills every field and nothing else. @throws RangeError as {@link chosen} does */
export function requireComplete(fields: readonly Field[], answer: Answer): void {
  for (const { id } of fields) chosen(fields, answer, id);
  const extra = Object.keys(answer).find((key) => !fields.some(({ id }) => id === key));
  if (extra !== undefined) throw new RangeError(`the drill has no choice called ${extra}`);
}

/** The answer that takes the first option everywhere: where a screen starts. */
export function firstAnswer(fields: readonly Field[]): Answer {
  return Object.fromEntries(fields.map(({ id, options }) => [id, options[0]?.id ?? '']));
}

/** How many different answers a drill allows. */
export const countAnswers = (fields: readonly Field[]): number =>
  fields.reduce((product, { options }) => product * options.length, 1);

/** Every answer that a drill allows, the first choice changing fastest. */
export function* everyAnswer([field, ...rest]: readonly Field[]): Generator<Answer> {
  if (field === undefined) {
    yield {};
    return;
  }
  for (const answer of everyAnswer(rest))
    for (const { id } of field.options) yield { [field.id]: id, ...answer };
}

/** What an option is called on the learner's scale: a step is a number of it, "4.5" for the step 6 where values are Munsell's. */
export const optionLabel = ({ label, step }: FieldOption, scale: ValueScaleId): string =>
  step === undefined || scale === 'paper-first' ? label : stepText(step, { scale });
