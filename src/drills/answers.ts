/** Checking answers against the fields of a drill. */
import type { ValueScaleId } from '../colour/value.js';
import { InputError } from '../errors.js';
import { stepText } from '../words/voice.js';
import type { Answer, Field, FieldOption } from './types.js';

/**
 * The option chosen in a field.
 * @throws InputError naming the field and what it takes
 */
export function chosen(fields: readonly Field[], answer: Answer, fieldId: string): FieldOption {
  const field = fields.find(({ id }) => id === fieldId);
  if (field === undefined) throw new InputError(`the drill has no choice called ${fieldId}`);
  const wanted = Object.hasOwn(answer, fieldId) ? answer[fieldId] : undefined;
  const option = field.options.find(({ id }) => id === wanted);
  if (option === undefined) {
    const choices = field.options.map(({ id }) => id).join(', ');
    throw new InputError(
      wanted === undefined
        ? `${field.label} is not chosen; it takes one of: ${choices}`
        : `${field.label} cannot be "${wanted}"; it takes one of: ${choices}`,
    );
  }
  return option;
}

/** Checks that an answer fills every field and nothing else. @throws InputError as {@link chosen} does */
export function requireComplete(fields: readonly Field[], answer: Answer): void {
  for (const { id } of fields) chosen(fields, answer, id);
  const extra = Object.keys(answer).find((key) => !fields.some(({ id }) => id === key));
  if (extra !== undefined) throw new InputError(`the drill has no choice called ${extra}`);
}

/** The answer that takes the first option everywhere: where a screen starts. */
export function firstAnswer(fields: readonly Field[]): Answer {
  return Object.fromEntries(fields.map(({ id, options }) => [id, options[0]?.id ?? '']));
}

/** How many different answers a drill allows. */
export const countAnswers = (fields: readonly Field[]): number =>
  fields.reduce((product, { options }) => product * options.length, 1);

/** Every way to take one of each list, the first changing fastest. */
export function* everyCombination<T>([list, ...rest]: readonly (readonly T[])[]): Generator<readonly T[]> {
  if (list === undefined) {
    yield [];
    return;
  }
  for (const others of everyCombination(rest)) for (const one of list) yield [one, ...others];
}

/** Every answer that a drill allows, the first choice changing fastest. */
export function* everyAnswer(fields: readonly Field[]): Generator<Answer> {
  const choices = fields.map(({ id, options }) => options.map((option) => [id, option.id] as const));
  for (const picks of everyCombination(choices)) yield Object.fromEntries(picks);
}

/** What an option is called on the learner's scale: a step is a number of it, "4.5" for the step 6 where values are Munsell's. */
export const optionLabel = ({ label, step }: FieldOption, scale: ValueScaleId): string =>
  step === undefined || scale === 'paper-first' ? label : stepText(step, { scale });
