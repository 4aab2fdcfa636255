/** How the open choices of a drill are shown and walked. Independent of the size of the terminal, so that keys never change meaning. */
import type { ValueScaleId } from '../../colour/index.js';
import { optionLabel } from '../../drills/answers.js';
import type { Answer, Field } from '../../drills/types.js';

/**
 * `tray`: one option a line, up and down choose; `line`: options on one line, left and right choose.
 */
export type FieldForm = 'tray' | 'line';

/** Longest line of options that still reads as a line, in characters. */
const LONGEST_LINE = 48;

/** The form of a field. */
export function showsAs(field: Field): FieldForm {
  if (field.shape === 'scale') return 'line';
  if (field.options.some(({ swatch }) => swatch !== undefined)) return 'tray';
  const length = field.options.reduce((sum, { label }) => sum + label.length + 3, 0);
  return length > LONGEST_LINE ? 'tray' : 'line';
}

/** Index of the chosen option; 0 when nothing fits. */
export function chosenIndex(field: Field, answer: Answer): number {
  const wanted = Object.hasOwn(answer, field.id) ? answer[field.id] : undefined;
  return Math.max(
    0,
    field.options.findIndex(({ id }) => id === wanted),
  );
}

/** The answer with another option in one field; past either end it stays at the end. */
export function withOption(answer: Answer, field: Field, index: number): Answer {
  const option = field.options[Math.min(field.options.length - 1, Math.max(0, index))];
  return option === undefined ? answer : { ...answer, [field.id]: option.id };
}

/**
 * The field that left and right act on: the focused one when it is a line, else the first line after it, else the
 * first there is. So in a tray of paints left and right set the amount without leaving the tray.
 */
export function sideField(fields: readonly Field[], focus: number): Field | undefined {
  const isLine = (field: Field): boolean => showsAs(field) === 'line';
  const focused = fields[focus];
  if (focused !== undefined && isLine(focused)) return focused;
  return fields.slice(focus + 1).find(isLine) ?? fields.find(isLine);
}

/** The field that a digit picks from: the focused one, unless it is a scale and there is a tray. */
export function digitField(fields: readonly Field[], focus: number): Field | undefined {
  const focused = fields[focus];
  if (focused?.shape === 'list') return focused;
  return fields.find((field) => showsAs(field) === 'tray') ?? focused;
}

/** A field with its options called so; ids stay as they are. */
export const onScale = (field: Field, scale: ValueScaleId): Field => ({
  ...field,
  options: field.options.map((option) => ({ ...option, label: optionLabel(option, scale) })),
});
